package rootwright.working.route;

import java.math.BigInteger;
import java.util.List;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.answer.Answer;
import rootwright.working.ask.Asked;
import rootwright.working.problem.RootFunction;
import rootwright.working.step.Idea;

/**
 * Replaces high powers of a root by lower ones, by P(r) = 0, and adds up over the roots; for an ask
 * in one root the reduced expression is where it ends.
 */
final class ReducePowers implements Route {

  private static final String TITLE = "reduce the powers by P(r) = 0";

  /** Highest power that is reduced, by repeated squaring. */
  private static final int HIGHEST_POWER = 4_000;

  /** Most digits of a number that a person writes. */
  private static final int LONGEST_NUMBER = 150;

  @Override
  public String name() {
    return "reduce-powers";
  }

  @Override
  public String title() {
    return TITLE + " and add up";
  }

  @Override
  public String teaches() {
    return "P(r) = 0 turns every high power of a root into lower ones.";
  }

  @Override
  public Attempt attempt(Asked asked) {
    if (asked.sumOverRoots().isPresent()) {
      return reduced(asked, asked.sumOverRoots().get(), asked.problem().roots().get(0));
    } else if (asked.singleRoot().isPresent()) {
      return reduced(asked, asked.singleRoot().get(), rootIn(asked));
    }
    return new Attempt.Declined("the ask is no sum of one expression over all roots");
  }

  private static Attempt reduced(Asked asked, RootFunction f, String root) {
    if (!f.isPolynomial()) {
      return Reasons.ROOT_IN_DENOMINATOR;
    }
    int power = f.numerator().degree();
    if (power < asked.problem().degree()) {
      return new Attempt.Declined("no power in it reaches the degree of the polynomial");
    } else if (power > HIGHEST_POWER) {
      return new Attempt.Declined("the power %d makes the numbers too long".formatted(power));
    }
    if (isTooLong(f.numerator().remainder(asked.problem().polynomial()))) {
      return new Attempt.Declined(
          "reducing the power %d takes numbers of more than %d digits"
              .formatted(power, LONGEST_NUMBER));
    }
    return asked.sumOverRoots().isPresent()
        ? total(asked, root, f.numerator())
        : single(asked, root, f.numerator());
  }

  private static boolean isTooLong(Polynomial remainder) {
    BigInteger bound = BigInteger.TEN.pow(LONGEST_NUMBER);
    return remainder.ascending().stream()
        .anyMatch(
            c -> c.numerator().abs().compareTo(bound) > 0 || c.denominator().compareTo(bound) > 0);
  }

  private static Attempt single(Asked asked, String root, Polynomial f) {
    Lines lines = new Lines(asked.problem().setting());
    Formula called = asked.formula();
    if (isNested(called)) {
      called = PolynomialFormula.of(f, root);
      lines.add(Idea.EXPAND, "multiply out", asked.formula(), called);
    }
    Polynomial remainder = Reduction.write(lines, root, f, called);
    return new Attempt.Worked(
        TITLE,
        lines.steps(),
        remainder.degree() > 0
            ? new Answer.PolynomialIn(remainder, root)
            : Answer.exact(remainder.coefficient(0)),
        List.of());
  }

  private static Attempt total(Asked asked, String root, Polynomial f) {
    Lines lines = new Lines(asked.problem().setting());
    Formula called = PolynomialFormula.of(f, root);
    if (asked.formula() instanceof Formula.Aggregate aggregate && isNested(aggregate.body())) {
      lines.add(Idea.EXPAND, "multiply out", aggregate.body(), called);
    }
    Polynomial remainder = Reduction.write(lines, root, f, called);
    PowerSumLines sums = PowerSumLines.of(asked, Math.max(0, remainder.degree()));
    sums.write(lines, PowerSumLines.indices(remainder));
    sums.total(lines, asked.formula(), remainder);
    return Attempt.Worked.of(TITLE + " and add up", lines.steps(), sums.value(remainder));
  }

  /** Whether a bracket has to be multiplied out before the powers can be seen. */
  private static boolean isNested(Formula formula) {
    return formula.contains(
        part ->
            (part instanceof Formula.Power power && power.base() instanceof Formula.Sum)
                || (part instanceof Formula.Product product
                    && product.factors().stream().anyMatch(Formula.Sum.class::isInstance)));
  }

  /** The name of the root in an ask that is in one root; the only root may go unnamed. */
  static String rootIn(Asked asked) {
    return asked.problem().roots().stream()
        .filter(
            root ->
                asked
                    .formula()
                    .contains(
                        part -> part instanceof Formula.Name name && name.spelling().equals(root)))
        .findFirst()
        .orElse(asked.problem().roots().get(0));
  }
}
