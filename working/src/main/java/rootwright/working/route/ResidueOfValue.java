package rootwright.working.route;

import java.math.BigInteger;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.working.answer.Answer;
import rootwright.working.ask.Asked;
import rootwright.working.check.exact.Valuation;
import rootwright.working.problem.Problem;
import rootwright.working.problem.WholeNumber;
import rootwright.working.step.Idea;

/**
 * The residue of a whole value that is small enough to be written: divide and keep what is left.
 */
final class ResidueOfValue implements Route {

  private static final int LONGEST_VALUE = 100;
  private static final BigInteger FARTHEST = BigInteger.valueOf(200);

  @Override
  public String name() {
    return "residue-of-value";
  }

  @Override
  public String title() {
    return "work out the value and divide";
  }

  @Override
  public String teaches() {
    return "The residue is what the division leaves, from 0 to m − 1.";
  }

  @Override
  public Attempt attempt(Asked asked) {
    Problem problem = asked.problem();
    if (!(problem.ask() instanceof Formula.Modulo ask) || isFar(ask.of())) {
      return new Attempt.Declined("the value is too long to be written");
    }
    Optional<BigInteger> modulus =
        WholeNumber.of(ask.modulus()).filter(m -> m.compareTo(BigInteger.ONE) > 0);
    if (modulus.isEmpty()
        || !(Valuation.of(ask.of(), problem.setting()) instanceof Valuation.Determined value)) {
      return new Attempt.Declined("there is no single value");
    }
    Rational number = value.value();
    if (!number.isInteger() || number.numerator().bitLength() > LONGEST_VALUE) {
      return new Attempt.Declined(
          number.isInteger()
              ? "the value is too long to be written"
              : "the value is a fraction, and residues of fractions need inverses");
    }
    Lines lines = new Lines(problem.setting());
    lines.add(
        Idea.ARITHMETIC,
        "the value, divided by " + modulus.get(),
        ask.of(),
        Formula.number(number),
        ResidueAsk.divided(number.numerator(), modulus.get()));
    return lines.steps().isEmpty()
        ? new Attempt.Declined("nothing has to be worked out")
        : new Attempt.Worked(
            title(),
            lines.steps(),
            new Answer.Residue(number.numerator().mod(modulus.get()), modulus.get()),
            List.of());
  }

  private static boolean isFar(Formula of) {
    return of.contains(
        part ->
            part instanceof Formula.Family family
                && WholeNumber.of(family.index())
                    .filter(k -> k.abs().compareTo(FARTHEST) <= 0)
                    .isEmpty());
  }
}
