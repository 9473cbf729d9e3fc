package rootwright.working.check.second;

import java.util.List;
import java.util.Optional;
import rootwright.algebra.enclosure.ComplexBall;
import rootwright.algebra.ideal.CommonZeros;
import rootwright.working.check.Verdict;
import rootwright.working.step.Claim;

/** Looks at the value of a polynomial on discs round the common zeros of others, or at samples. */
final class ConsequenceAtZeros {

  private static final String METHOD = "certified enclosures of the common zeros";
  private static final int DIGITS = 60;
  private static final int BITS = 232;
  private static final int SAMPLES = 3;

  private ConsequenceAtZeros() {}

  static Verdict of(Claim.Consequence claim) {
    for (int sample = 1; sample <= SAMPLES; sample++) {
      Optional<CommonZeros> zeros =
          CommonZeros.of(claim.equations(), claim.unknowns(), DIGITS, sample);
      if (zeros.isEmpty()) {
        return new Verdict.Undecided("no common zeros were enclosed");
      }
      for (List<ComplexBall> point : zeros.get().points()) {
        if (!CommonZeros.value(claim.conclusion(), point, BITS).containsZero()) {
          return new Verdict.Refuted("it is not zero at a common zero");
        }
      }
      if (zeros.get().complete()) {
        return Verdict.confirmed(METHOD, EnclosureCheck.DIGITS);
      }
    }
    return Verdict.confirmed(METHOD + ", sampled", EnclosureCheck.DIGITS);
  }
}
