package rootwright.working.review.given;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rootwright.algebra.factor.RationalRoots;
import rootwright.algebra.ideal.Ideal;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaExpansion;
import rootwright.algebra.notation.FormulaNames;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.working.answer.Answer;
import rootwright.working.check.exact.Valuation;
import rootwright.working.problem.Problem;
import rootwright.working.review.Diagnosis;
import rootwright.working.review.SlipMatch;
import rootwright.working.solve.Solution;
import rootwright.working.step.Setting;

/** Says of a wrong line what is true instead, and which wrong turning leads to it. */
final class Wrong {

  private static final List<Rational> TRIED = List.of(Rational.of(7), Rational.of(5));

  private final Ground ground;
  private final Truths truths;

  Wrong(Ground ground, Truths truths) {
    this.ground = ground;
    this.truths = truths;
  }

  /** What the left side is, as a sentence without its full stop. */
  String truth(Formula left, Formula right) {
    String name = UnicodeWriter.write(left);
    if (FormulaNames.in(left).isEmpty()) {
      return name + " is not " + UnicodeWriter.write(right);
    }
    Optional<String> values = solutions(left);
    if (values.isPresent()) {
      return "%s is %s, not %s".formatted(name, values.get(), UnicodeWriter.write(right));
    }
    Optional<Formula> value = ground.writing().of(left).flatMap(this::value);
    if (value.isPresent() && !value.get().equals(left)) {
      boolean turned =
          ground
              .writing()
              .difference(right, new Formula.Negative(value.get()))
              .map(MultivariatePolynomial::isZero)
              .orElse(false);
      return "%s is %s, not %s%s"
          .formatted(
              name,
              UnicodeWriter.write(value.get()),
              UnicodeWriter.write(right),
              turned ? ": the sign is turned" : "");
    }
    return "the two sides are not equal";
  }

  /** What a function is equal to, by the coefficients alone if that is enough. */
  private Optional<Formula> value(RationalFunction function) {
    for (boolean coefficientsOnly : List.of(true, false)) {
      Optional<MultivariatePolynomial> over = truths.value(function.numerator(), coefficientsOnly);
      Optional<MultivariatePolynomial> under =
          truths.value(function.denominator(), coefficientsOnly);
      if (over.isPresent()
          && under.isPresent()
          && isShort(over.get())
          && isShort(under.get())
          && !under.get().isZero()) {
        RationalFunction lowest = over(over.get(), under.get());
        Formula top = Spelt.of(lowest.numerator(), ground.names());
        return Optional.of(
            lowest.isPolynomial() ? top : top.over(Spelt.of(lowest.denominator(), ground.names())));
      }
    }
    return Optional.empty();
  }

  private static RationalFunction over(MultivariatePolynomial over, MultivariatePolynomial under) {
    return RationalFunction.of(over).over(RationalFunction.of(under)).lowestTerms();
  }

  private boolean isShort(MultivariatePolynomial value) {
    List<String> roots = ground.polynomials().stream().flatMap(p -> p.roots().stream()).toList();
    return value.terms().size() <= 6
        && Steps.unknownsIn(value).stream()
            .noneMatch(k -> roots.contains(ground.names().spelling(k)))
        && Steps.unknownsIn(value).stream()
            .noneMatch(k -> ground.names().spelling(k).contains(" "));
  }

  /** The values of a formula where they are finitely many rational numbers. */
  private Optional<String> solutions(Formula formula) {
    Optional<Polynomial> values =
        ground
            .writing()
            .of(formula)
            .filter(RationalFunction::isPolynomial)
            .flatMap(
                f ->
                    truths
                        .values(f.numerator(), truths.equations(true))
                        .or(() -> truths.values(f.numerator(), truths.equations(false))));
    if (values.isEmpty()) {
      return Optional.empty();
    }
    List<Rational> rational =
        RationalRoots.of(values.get()).stream().map(root -> root.value()).sorted().toList();
    return rational.size() == values.get().degree()
        ? Optional.of(
            String.join(
                " or ",
                rational.stream().map(r -> UnicodeWriter.write(Formula.number(r))).toList()))
        : Optional.empty();
  }

  /** The slips whose answer is exactly what these values are. */
  List<SlipMatch> ofAnswer(List<Formula> values) {
    Set<SlipMatch> found = new LinkedHashSet<>();
    for (Solution.WrongTurning slip : ground.solution().slips()) {
      if (isAnswer(slip.value(), values)) {
        found.add(new SlipMatch(slip.name(), slip.text()));
      }
    }
    return List.copyOf(found);
  }

  /** The slips that lead to this polynomial, or a multiple of it, in whichever letter. */
  List<SlipMatch> ofPolynomial(Formula formula) {
    List<SlipMatch> found = new ArrayList<>();
    for (Solution.WrongTurning slip : ground.solution().slips()) {
      if (slip.value() instanceof Answer.PolynomialIn in && isMultiple(in, formula)) {
        found.add(new SlipMatch(slip.name(), slip.text()));
      }
    }
    return found;
  }

  /** Whether this is a multiple of the polynomial, in whichever letter. */
  static boolean isMultiple(Answer.PolynomialIn answer, Formula formula) {
    Set<String> letters = FormulaNames.in(formula);
    if (letters.size() != 1) {
      return false;
    }
    try {
      Polynomial said = FormulaExpansion.polynomial(formula, letters.iterator().next());
      return said.degree() > 0 && said.monic().equals(answer.polynomial().monic());
    } catch (UnreadableException other) {
      return false;
    }
  }

  /** Whether these values are exactly those of an answer. */
  boolean isAnswer(Answer answer, List<Formula> values) {
    List<Formula> ours = answer.alternatives();
    return !values.isEmpty()
        && values.stream().allMatch(value -> ours.stream().anyMatch(our -> isSame(our, value)))
        && ours.stream().allMatch(our -> values.stream().anyMatch(value -> isSame(our, value)));
  }

  /** Whether two formulas are the same function, or for a polynomial answer the same equation. */
  boolean isSame(Formula one, Formula other) {
    if (one.equals(other)) {
      return true;
    }
    Optional<MultivariatePolynomial> zero = ground.writing().difference(one, other);
    return zero.isPresent()
        && (zero.get().isZero()
            || Ideal.of(ground.names().signs(), ground.names().size())
                .flatMap(ideal -> ideal.factors(zero.get()))
                .isPresent());
  }

  /**
   * The slips by which somebody reads a wrong value off a formula in the roots: numbers are put for
   * the letters, and the slip must give the value for each of them.
   */
  List<SlipMatch> ofFormula(Formula left, Formula right) {
    Optional<Set<SlipMatch>> common = Optional.empty();
    for (Rational number : TRIED) {
      Optional<List<SlipMatch>> found = at(number, left, right);
      if (found.isEmpty()) {
        return List.of();
      }
      Set<SlipMatch> here = new LinkedHashSet<>(found.get());
      common.ifPresent(here::retainAll);
      common = Optional.of(here);
    }
    return List.copyOf(common.orElse(Set.of()));
  }

  private Optional<List<SlipMatch>> at(Rational number, Formula left, Formula right) {
    if (ground.polynomials().size() != 1 || ground.polynomials().get(0).roots().isEmpty()) {
      return Optional.empty();
    }
    Applied p = ground.polynomials().get(0);
    List<Rational> ascending = new ArrayList<>();
    for (MultivariatePolynomial coefficient : p.ascending()) {
      ascending.add(number(coefficient, number));
    }
    Polynomial polynomial = Polynomial.ofAscending(ascending);
    if (polynomial.degree() != p.degree()
        || p.roots().stream().anyMatch(root -> root.contains(" "))) {
      return Optional.empty();
    }
    Formula asked = numbered(left, number, p.roots());
    Valuation wrong =
        Valuation.of(numbered(right, number, p.roots()), Setting.of(polynomial, p.roots()));
    if (!(wrong instanceof Valuation.Determined value)
        || !p.roots().containsAll(FormulaNames.in(asked))) {
      return Optional.empty();
    }
    Problem problem =
        new Problem(
            polynomial,
            PolynomialFormula.of(polynomial, ground.unknown()),
            ground.unknown(),
            p.roots(),
            asked,
            List.of());
    return Optional.of(new Diagnosis(problem).slips(Set.of(asked), Formula.number(value.value())));
  }

  /** The formula with the number put for every letter that is no root. */
  private Formula numbered(Formula formula, Rational number, List<String> roots) {
    return formula.rewrite(
        part ->
            part instanceof Formula.Name name
                    && !roots.contains(name.spelling())
                    && ground.names().isUnknown(name.spelling())
                    && !name.spelling().equals(ground.unknown())
                ? Formula.number(number)
                : part);
  }

  private static Rational number(MultivariatePolynomial polynomial, Rational letters) {
    Rational total = Rational.ZERO;
    for (var term : polynomial.terms().entrySet()) {
      Monomial monomial = term.getKey();
      total = total.plus(term.getValue().times(letters.power(monomial.degree())));
    }
    return total;
  }
}
