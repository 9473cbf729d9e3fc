package rootwright.working.route;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.algebra.value.ExactRoot;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.ExactValues;
import rootwright.algebra.value.QuadraticSurd;
import rootwright.algebra.value.RationalValue;
import rootwright.working.answer.Answer;
import rootwright.working.problem.Problem;
import rootwright.working.step.Claim;
import rootwright.working.step.Idea;
import rootwright.working.step.Setting;

/**
 * The lines that find an expression A in two or three roots from A + B and (A − B)², B being what
 * it turns into when two roots are exchanged.
 */
final class TwoPartners {

  static final String TITLE = "find the sum and the difference of the two values";

  private final Problem problem;
  private final OrbitSums orbits;
  private final CoefficientLines coefficients;
  private final SymmetricFraction sum;
  private final SymmetricFraction factor;
  private final SymmetricFraction discriminant;

  private TwoPartners(
      Problem problem,
      SymmetricFraction sum,
      SymmetricFraction factor,
      SymmetricFraction discriminant) {
    this.problem = problem;
    this.orbits = new OrbitSums(problem.roots());
    this.coefficients = CoefficientLines.of(problem);
    this.sum = sum;
    this.factor = factor;
    this.discriminant = discriminant;
  }

  /** For an expression with two images under renaming; empty if the lines would be too long. */
  static Optional<TwoPartners> of(Problem problem, RationalFunction ask) {
    int n = problem.degree();
    RationalFunction partner = ask.rename(n == 2 ? new int[] {1, 0} : new int[] {1, 0, 2});
    RationalFunction differences = RationalFunction.of(differences(n));
    Optional<SymmetricFraction> sum = symmetric(ask.plus(partner), n);
    boolean opposite = ask.plus(partner).numerator().isZero();
    Optional<SymmetricFraction> factor =
        symmetric((opposite ? ask : ask.minus(partner)).over(differences), n);
    Optional<SymmetricFraction> discriminant = symmetric(differences.power(2), n);
    return sum.isPresent() && factor.isPresent() && discriminant.isPresent()
        ? Optional.of(new TwoPartners(problem, sum.get(), factor.get(), discriminant.get()))
        : Optional.empty();
  }

  private static Optional<SymmetricFraction> symmetric(RationalFunction function, int n) {
    return SymmetricFraction.of(function, n, NamedForm::elementary);
  }

  /** (r − s)(s − t)(t − r), or r − s for two roots. */
  private static MultivariatePolynomial differences(int n) {
    MultivariatePolynomial product = MultivariatePolynomial.ONE;
    for (int k = 0; k < (n == 2 ? 1 : n); k++) {
      product =
          product.times(
              MultivariatePolynomial.unknown(k).minus(MultivariatePolynomial.unknown((k + 1) % n)));
    }
    return product;
  }

  /** The lines and the two values. */
  Attempt worked() {
    Optional<Rational> total = sum.value(coefficients.values());
    Optional<Rational> multiple = factor.value(coefficients.values());
    if (total.isEmpty() || multiple.isEmpty()) {
      return Reasons.ZERO_DENOMINATOR;
    }
    boolean opposite = sum.over().form().isZero();
    Setting setting = problem.setting();
    Formula a = problem.ask();
    Formula difference = a;
    if (!opposite) {
      a = Formula.name("A");
      Formula b = Formula.name("B");
      Formula partner =
          Renaming.exchange(problem.roots().get(0), problem.roots().get(1)).of(problem.ask());
      setting = setting.withDefinition("A", problem.ask()).withDefinition("B", partner);
      difference = a.minus(b);
    }
    Lines lines = new Lines(setting);
    if (!opposite) {
      introduce(lines);
    }
    SortedSet<Integer> wanted = new TreeSet<>(sum.indices());
    wanted.addAll(factor.indices());
    wanted.addAll(discriminant.indices());
    coefficients.write(lines, wanted);
    if (!opposite) {
      lines.add(
          Idea.SUM_AND_DIFFERENCE,
          "together they are symmetric",
          a.plus(Formula.name("B")),
          sum.inOrbits(orbits),
          sum.written(),
          sum.worked(coefficients.values()),
          Formula.number(total.get()));
    }
    Rational square = difference(lines, difference, multiple.get());
    if (opposite) {
      square = square.times(4);
    }
    return finish(lines, a, total.get(), square);
  }

  private void introduce(Lines lines) {
    String first = problem.roots().get(0);
    String second = problem.roots().get(1);
    lines.add(Idea.STATE, "call it A", Formula.name("A"), problem.ask());
    lines.add(
        Idea.STATE,
        "its partner, %s and %s exchanged".formatted(first, second),
        Formula.name("B"),
        Renaming.exchange(first, second).of(problem.ask()));
  }

  /** Writes the lines for the square of what changes its sign, and returns that square. */
  private Rational difference(Lines lines, Formula difference, Rational multiple) {
    List<Rational> values = coefficients.values();
    NamedForm form = discriminant.over().without(values);
    Rational discriminantValue = form.value(values);
    boolean bare = multiple.absolute().isOne() && factor.indices().isEmpty();
    Formula differences = written(1);
    lines.add(
        Idea.SUM_AND_DIFFERENCE,
        "changes its sign when two roots are exchanged",
        difference,
        !bare
            ? Combination.product(List.of(factor.inOrbits(orbits), differences))
            : multiple.isOne() ? differences : new Formula.Negative(differences));
    List<Formula> sides = new ArrayList<>();
    if (bare) {
      sides.add(difference.power(2));
    }
    sides.add(written(2));
    sides.add(form.written());
    sides.add(form.worked(values));
    sides.add(Formula.number(discriminantValue));
    lines.add(Idea.DISCRIMINANT, "the discriminant", sides);
    Rational square = multiple.times(multiple).times(discriminantValue);
    if (!bare) {
      lines.add(
          Idea.BUILD,
          "the symmetric factor",
          factor.inOrbits(orbits),
          factor.written(),
          factor.worked(values),
          Formula.number(multiple));
      lines.add(
          Idea.ARITHMETIC,
          "square the difference",
          difference.power(2),
          Formula.number(multiple).power(2).times(Formula.number(discriminantValue)),
          Formula.number(square));
    }
    return square;
  }

  /** The product of the differences, each with an exponent. */
  private Formula written(int exponent) {
    int n = problem.degree();
    List<Formula> factors = new ArrayList<>();
    for (int k = 0; k < (n == 2 ? 1 : n); k++) {
      Formula one = Formula.name(problem.roots().get(k));
      Formula other = Formula.name(problem.roots().get((k + 1) % n));
      factors.add(Combination.power(one.minus(other), exponent));
    }
    return Formula.product(factors);
  }

  /** A = (total ± √square)/2. */
  private Attempt finish(Lines lines, Formula a, Rational total, Rational square) {
    Rational product = total.times(total).minus(square).over(Rational.of(4));
    Polynomial orbit = Polynomial.ofAscending(List.of(product, total.negate(), Rational.ONE));
    List<ExactValue> values =
        ExactValues.rootsOf(orbit).stream().map(ExactRoot::value).distinct().toList();
    ExactValue root = QuadraticSurd.of(Rational.ZERO, Rational.ONE, square);
    List<Formula> sides = new ArrayList<>(List.of(a));
    if (values.size() == 1) {
      sides.add(Formula.number(total.over(Rational.TWO)));
    } else if (root instanceof RationalValue && !total.isZero()) {
      sides.add(
          new Formula.PlusMinus(Formula.number(total), root.toFormula()).over(Formula.number(2)));
    } else {
      sides.add(
          plusMinus(
              QuadraticSurd.of(total.over(Rational.TWO), Rational.of(1, 2), square).toFormula()));
    }
    String either =
        values.stream()
            .map(value -> UnicodeWriter.write(value.toFormula()))
            .collect(Collectors.joining(" or "));
    lines.addRoots(
        Idea.SUM_AND_DIFFERENCE,
        values.size() == 1
            ? "both values fall together"
            : "%s, according to the names".formatted(either),
        Formula.equation(sides.toArray(Formula[]::new)),
        new Claim.HasRoots(problem.setting(), orbit, problem.ask()));
    Answer answer =
        values.size() == 1
            ? Answer.exact(total.over(Rational.TWO))
            : new Answer.Values(values, orbit.primitive());
    return new Attempt.Worked(TITLE, lines.steps(), answer, List.of());
  }

  private static Formula plusMinus(Formula plus) {
    if (plus instanceof Formula.Quotient quotient && quotient.over() instanceof Formula.Sum) {
      return plusMinus(quotient.over()).over(quotient.under());
    } else if (plus instanceof Formula.Sum two) {
      return new Formula.PlusMinus(two.terms().get(0), two.terms().get(1));
    }
    return new Formula.PlusMinus(Formula.number(0), plus);
  }
}
