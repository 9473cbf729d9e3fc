package rootwright.working.route;

import java.util.List;
import java.util.Map;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.symmetric.Partition;
import rootwright.algebra.symmetric.SymmetricPolynomial;
import rootwright.working.ask.Asked;
import rootwright.working.problem.RootFunction;
import rootwright.working.step.Idea;

/**
 * Power sums by Newton's identities (Newton 1707, Arithmetica universalis), and mixed sums through
 * power sums: Σ r²s = S_1·S_2 − S_3.
 */
final class NewtonSums implements Route {

  private static final String TITLE = "power sums by Newton's identities";

  /** How far beyond the degree an index may lie. */
  private static final int BEYOND = 4;

  /** Most products of power sums that a mixed sum may take. */
  private static final int MOST_PRODUCTS = 6;

  @Override
  public String name() {
    return "newton";
  }

  @Override
  public String title() {
    return TITLE;
  }

  @Override
  public String teaches() {
    return "Each power sum follows from the coefficients and the power sums before it.";
  }

  @Override
  public Attempt attempt(Asked asked) {
    if (asked.symmetric().isEmpty()) {
      return asked.quotient().isPresent()
          ? Reasons.ROOT_IN_DENOMINATOR
          : Reasons.notSymmetric(asked);
    }
    SymmetricPolynomial ask = asked.symmetric().get();
    if (OrbitSums.isElementary(ask)) {
      return Reasons.READ_OFF;
    }
    int degree = asked.problem().degree();
    int weight = ask.terms().keySet().stream().mapToInt(Partition::weight).max().orElse(0);
    if (weight > degree + BEYOND) {
      return new Attempt.Declined(
          "degree %d lies far beyond the %d roots: a recurrence or reduced powers are shorter"
              .formatted(weight, degree));
    }
    return asked
        .sumOverRoots()
        .filter(RootFunction::isPolynomial)
        .map(f -> overRoots(asked, f.numerator()))
        .orElseGet(() -> mixed(asked, ask, weight));
  }

  private static Attempt overRoots(Asked asked, Polynomial f) {
    PowerSumLines sums = PowerSumLines.of(asked, f.degree());
    Lines lines = new Lines(asked.problem().setting());
    if (f.equals(Polynomial.monomial(Rational.ONE, f.degree()))) {
      sums.write(lines, List.of(f.degree()), Map.of(f.degree(), asked.formula()));
    } else {
      sums.write(lines, PowerSumLines.indices(f));
      sums.total(lines, asked.formula(), f);
    }
    return Attempt.Worked.of(TITLE, lines.steps(), sums.value(f));
  }

  private static Attempt mixed(Asked asked, SymmetricPolynomial ask, int weight) {
    PowerSumLines sums = PowerSumLines.of(asked, weight);
    NamedForm form = new NamedForm(ask.toPowerSums().polynomial(), sums::name);
    if (form.form().terms().size() > MOST_PRODUCTS) {
      return new Attempt.Declined("it takes too many products of power sums");
    }
    Lines lines = new Lines(asked.problem().setting());
    lines.add(Idea.EXPAND, product(ask, sums), asked.formula(), form.written());
    sums.write(lines, form.indices());
    Rational value = form.value(sums.values());
    lines.add(
        Idea.ARITHMETIC,
        "with these numbers",
        asked.formula(),
        form.worked(sums.values()),
        Formula.number(value));
    return Attempt.Worked.of(TITLE, lines.steps(), value);
  }

  /** What the product of power sums makes besides, where it is short to say. */
  private static String product(SymmetricPolynomial ask, PowerSumLines sums) {
    Partition partition = ask.terms().lastKey();
    if (ask.terms().size() > 1 || partition.length() != 2) {
      return "multiply the power sums out; what is too much is taken off";
    }
    Formula product =
        Combination.product(List.of(sums.name(partition.part(1)), sums.name(partition.part(0))));
    return "%s makes all products, those of a root with itself too"
        .formatted(UnicodeWriter.write(product));
  }
}
