package rootwright.working.route;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import rootwright.algebra.factor.RationalRoot;
import rootwright.algebra.factor.RationalRoots;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.working.ask.Asked;
import rootwright.working.check.exact.Expansion;
import rootwright.working.problem.Problem;
import rootwright.working.step.Idea;
import rootwright.working.step.Setting;

/**
 * Splits rational roots off until nothing or a quadratic is left, and puts the known roots into the
 * ask.
 */
final class SplitOffRationalRoot implements Route {

  private static final String TITLE = "split off the rational roots";

  /** Most terms of what is left, in the sum and the product of the last two roots. */
  private static final int MOST_TERMS = 6;

  @Override
  public String name() {
    return "rational-root";
  }

  @Override
  public String title() {
    return TITLE;
  }

  @Override
  public String teaches() {
    return "A rational root divides out, and what is left has lower degree.";
  }

  @Override
  public Attempt attempt(Asked asked) {
    if (asked.quotient().isEmpty()) {
      return Reasons.notSymmetric(asked);
    }
    List<Rational> known = new ArrayList<>();
    Polynomial polynomial = asked.problem().polynomial();
    for (RationalRoot root : RationalRoots.of(polynomial)) {
      known.addAll(Collections.nCopies(root.multiplicity(), root.value()));
    }
    if (known.isEmpty()) {
      return new Attempt.Declined("there is no rational root");
    }
    int left = polynomial.degree() - known.size();
    if (left > 2) {
      return new Attempt.Declined(
          "without its rational roots the polynomial still has degree %d".formatted(left));
    }
    Optional<Formula> written = WrittenOut.of(asked.problem());
    if (written.isEmpty()) {
      return new Attempt.Declined("written out root by root, the ask is too long");
    }
    Split split = new Split(asked.problem(), known, written.get());
    return left == 0 ? split.allKnown() : split.twoLeft();
  }

  /** One working in the making. */
  private static final class Split {

    private final Problem problem;
    private final List<Rational> known;
    private final Formula written;
    private final Polynomial rest;
    private final Lines lines;

    Split(Problem problem, List<Rational> known, Formula written) {
      this.problem = problem;
      this.known = List.copyOf(known);
      this.written = written;
      Polynomial split =
          known.stream().map(Split::factor).reduce(Polynomial.ONE, Polynomial::times);
      this.rest = problem.polynomial().divide(split).quotient();
      this.lines = new Lines(problem.setting());
    }

    Attempt allKnown() {
      Optional<RationalFunction> settled = Expansion.of(knownPutIn(), problem);
      if (settled.isEmpty()) {
        return Reasons.ZERO_DENOMINATOR;
      }
      Rational value = settled.get().numerator().coefficient(Monomial.ONE);
      factor();
      lines.add(
          Idea.ARITHMETIC, "with the roots put in", problem.ask(), knownPutIn(), number(value));
      return Attempt.Worked.of(TITLE, lines.steps(), value);
    }

    Attempt twoLeft() {
      KnownAndOpen parts = KnownAndOpen.of(knownPutIn(), lastTwo());
      if (parts.open().contains(part -> part instanceof Formula.Application)) {
        // For the last two roots P would be what is left of it, which is another polynomial.
        return new Attempt.Declined("P itself stands in what is left for the last two roots");
      }
      Optional<SymmetricFraction> open = inLastTwo(parts.open());
      if (open.isEmpty()) {
        return new Attempt.Declined("what is left is not symmetric in the last two roots");
      } else if (open.get().size() > MOST_TERMS + 1) {
        return new Attempt.Declined("what is left in the last two roots is too long");
      }
      CoefficientLines coefficients = new CoefficientLines(rest, lastTwo(), problem.unknown());
      Optional<Rational> value = open.get().value(coefficients.values());
      if (value.isEmpty()) {
        return Reasons.ZERO_DENOMINATOR;
      }
      factor();
      Lines left = lines.in(Setting.of(rest, lastTwo()));
      for (int k : open.get().indices()) {
        List<Formula> sides = new ArrayList<>(List.of(sumOrProduct(k)));
        sides.addAll(coefficients.worked(k));
        left.add(
            Idea.READ_COEFFICIENTS,
            "from " + text(PolynomialFormula.of(rest, problem.unknown())),
            sides);
      }
      left.add(
          Idea.BUILD,
          "by their sum and product",
          parts.open(),
          open.get().written(),
          open.get().worked(coefficients.values()),
          number(value.get()));
      return finish(parts, value.get());
    }

    private Attempt finish(KnownAndOpen parts, Rational open) {
      Optional<RationalFunction> settled = Expansion.of(parts.known(), problem);
      if (settled.isEmpty()) {
        return Reasons.ZERO_DENOMINATOR;
      }
      Rational value = parts.join(settled.get().numerator().coefficient(Monomial.ONE), open);
      lines.add(
          Idea.ARITHMETIC, "all roots together", problem.ask(), parts.joined(open), number(value));
      return Attempt.Worked.of(TITLE, lines.steps(), value);
    }

    private void factor() {
      Formula x = Formula.name(problem.unknown());
      List<Formula> factors = new ArrayList<>();
      for (Rational root : new TreeSet<>(known)) {
        lines.add(
            Idea.RATIONAL_ROOT,
            "%s is a root".formatted(text(number(root))),
            new Formula.Application("P", List.of(number(root))),
            PutIn.of(problem.polynomial(), root),
            number(Rational.ZERO));
        Formula linear = PolynomialFormula.of(factor(root), problem.unknown());
        factors.add(Combination.power(linear, Collections.frequency(known, root)));
      }
      if (rest.degree() > 0) {
        factors.add(PolynomialFormula.of(rest, problem.unknown()));
      } else {
        factors.add(0, number(rest.coefficient(0)));
      }
      lines
          .in(problem.setting().withFree(problem.unknown()))
          .add(
              Idea.RATIONAL_ROOT,
              "divide",
              new Formula.Application("P", List.of(x)),
              Combination.product(factors));
    }

    private Formula knownPutIn() {
      Map<String, Formula> meanings = new HashMap<>();
      for (int k = 0; k < known.size(); k++) {
        meanings.put(problem.roots().get(k), number(known.get(k)));
      }
      return new Renaming(meanings).of(written);
    }

    private List<String> lastTwo() {
      return problem.roots().subList(problem.degree() - 2, problem.degree());
    }

    private Optional<SymmetricFraction> inLastTwo(Formula open) {
      int[] images = new int[problem.degree()];
      images[problem.degree() - 1] = 1;
      return Expansion.of(open, problem)
          .flatMap(
              expansion -> SymmetricFraction.of(expansion.rename(images), 2, this::sumOrProduct));
    }

    private Formula sumOrProduct(int k) {
      Formula one = Formula.name(lastTwo().get(0));
      Formula other = Formula.name(lastTwo().get(1));
      return k == 1 ? one.plus(other) : one.times(other);
    }

    /** The primitive linear polynomial with this root. */
    private static Polynomial factor(Rational root) {
      return Polynomial.withRoots(List.of(root)).primitive();
    }

    private static Formula number(Rational value) {
      return Formula.number(value);
    }

    private static String text(Formula formula) {
      return UnicodeWriter.write(formula);
    }
  }
}
