package rootwright.working.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.ask.ProblemReader;
import rootwright.working.problem.Problem;
import rootwright.working.problem.Statement;
import rootwright.working.solve.TwoChecks;
import rootwright.working.step.Claim;

/** Both checks must tell images apart that are close to each other for large roots. */
class QuotientsOfHighPowersTest {

  private static final long SEED = Long.getLong("rootwright.seed", 20261125L);

  /** 1 − 3/(r⁴ + 3) is nearly 1 for all large r; the sum is over all roots nevertheless. */
  @Test
  void highPowersAboveAndBelowTheStrokeAreAddedUpOverAllRoots() throws UnreadableException {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int power : new int[] {1, 4, 20, 100}) {
      List<Rational> roots = new ArrayList<>();
      Rational sum = Rational.ZERO;
      for (int k = 0; k < 3; k++) {
        Rational root = Rational.of(random.nextLong(-4, 5));
        roots.add(root);
        Rational high = root.power(power);
        sum = sum.plus(high.over(high.plus(Rational.of(1_000_003))));
      }
      Polynomial polynomial = Polynomial.withRoots(roots);
      Problem problem =
          ProblemReader.read(
              Statement.of(polynomial(polynomial), "Σ r^%1$d/(r^%1$d + 1000003)".formatted(power)));
      Claim claim = Claim.equal(problem.setting(), problem.ask(), Formula.number(sum));
      assertThat(new TwoChecks().confirm("the sum", problem.ask(), claim))
          .as("power %d, roots %s, seed %d", power, roots, SEED)
          .isPresent();
    }
  }

  private static String polynomial(Polynomial polynomial) {
    List<String> descending = new ArrayList<>();
    for (int k = polynomial.degree(); k >= 0; k--) {
      descending.add(polynomial.coefficient(k).toString());
    }
    return String.join(" ", descending);
  }
}
