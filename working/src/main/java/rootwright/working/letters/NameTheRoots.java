package rootwright.working.letters;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaExpansion;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.algebra.value.ExactRoot;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.ExactValues;
import rootwright.working.answer.Answer;
import rootwright.working.route.Attempt;
import rootwright.working.route.RouteOn;
import rootwright.working.step.Idea;
import rootwright.working.step.Setting;

/** The roots written in one of them; the coefficients without the letter then give that one. */
final class NameTheRoots implements RouteOn<LettersAsked> {

  @Override
  public String name() {
    return "name-the-roots";
  }

  @Override
  public String title() {
    return "write all roots in one of them and compare coefficients";
  }

  @Override
  public String teaches() {
    return "A condition leaves fewer unknown roots than there are coefficients.";
  }

  @Override
  public Attempt attempt(LettersAsked asked) {
    LetteredProblem problem = asked.problem();
    int n = problem.polynomial().degree();
    List<Condition.Zeros> zeros = problem.conditions(Condition.Zeros.class);
    if (n < 2
        || n > 3
        || zeros.size() != 1
        || zeros.get(0).zeros().size() != 1
        || asked.solution().equations().size() != 1) {
      return new Attempt.Declined("it needs degree 2 or 3 and one condition on the roots");
    }
    Optional<RationalFunction> first = first(zeros.get(0).zeros().get(0), problem.roots());
    if (first.isEmpty()) {
      return new Attempt.Declined("the condition does not give one root by another");
    }
    Vieta vieta = new Vieta(problem);
    List<Integer> known = new ArrayList<>();
    for (int k = 1; k <= n; k++) {
      if (vieta.isNumber(k)) {
        known.add(k);
      }
    }
    if (known.size() != n - 1) {
      return new Attempt.Declined(
          "the letter stands in more than one coefficient, or above them all");
    }
    return worked(asked, vieta, first.get(), known);
  }

  /** Unknown 1 is the root s. */
  private Attempt worked(
      LettersAsked asked, Vieta vieta, RationalFunction first, List<Integer> known) {
    LetteredProblem problem = asked.problem();
    int n = problem.polynomial().degree();
    String s = problem.roots().get(1);
    RationalFunction second = RationalFunction.of(MultivariatePolynomial.unknown(1));
    LetterLines lines = new LetterLines();
    known.forEach(k -> vieta.write(lines, k));
    lines.argue(
        Idea.SUBSTITUTE,
        "the condition",
        Formula.equation(Formula.name(problem.roots().get(0)), formula(first, s)));
    List<RationalFunction> values = new ArrayList<>(List.of(first, second));
    int equationAt = known.get(known.size() - 1);
    if (n == 3) {
      int used = known.contains(1) ? 1 : known.contains(3) ? 3 : 0;
      if (used == 0) {
        return new Attempt.Declined("neither the sum nor the product of the roots is a number");
      }
      equationAt = known.get(0) == used ? known.get(1) : known.get(0);
      RationalFunction third =
          used == 1
              ? vieta.elementary(1).minus(first).minus(second)
              : vieta.elementary(3).over(first.times(second));
      values.add(third.lowestTerms());
      lines.argue(
          Idea.SUBSTITUTE,
          used == 1 ? "the sum of the roots" : "the product of the roots",
          Formula.equation(Formula.name(problem.roots().get(2)), formula(third, s)));
    }
    RationalFunction difference =
        elementary(values, equationAt).minus(vieta.elementary(equationAt)).lowestTerms();
    Polynomial equation = InLetters.inOne(difference.numerator(), 1).primitive();
    if (equation.degree() < 1) {
      return new Attempt.Declined("the coefficients leave the roots open");
    }
    Formula written = difference(values, equationAt, vieta, s);
    Formula zero = formula(difference, s);
    Setting setting = Setting.ofLetters(List.of(s));
    lines.add(setting, Idea.ELIMINATE, "the other coefficient: must be 0", written, zero);
    LetterSolution.factored(equation, s)
        .ifPresent(
            factors ->
                lines.add(
                    setting,
                    Idea.ARITHMETIC,
                    "factor",
                    PolynomialFormula.of(equation, s),
                    factors));
    List<ExactValue> roots = ExactValues.rootsOf(equation).stream().map(ExactRoot::value).toList();
    lines.solutions(Idea.CASES, "all that make it 0", s, equation, roots);
    int open = 1;
    while (known.contains(open)) {
      open++;
    }
    return letters(asked, vieta, lines, values, open, roots);
  }

  private Attempt letters(
      LettersAsked asked,
      Vieta vieta,
      LetterLines lines,
      List<RationalFunction> values,
      int open,
      List<ExactValue> roots) {
    String s = asked.problem().roots().get(1);
    RationalFunction of = elementary(values, open).lowestTerms();
    RationalFunction coefficient = vieta.elementary(open);
    Polynomial inLetter = InLetters.inOne(coefficient.numerator(), 1);
    if (!coefficient.isPolynomial() || inLetter.degree() != 1 || !of.isPolynomial()) {
      return new Attempt.Declined("the letter does not follow from the roots by one division");
    }
    vieta.write(lines, open);
    Polynomial letter =
        InLetters.inOne(of.numerator(), 1)
            .minus(Polynomial.constant(inLetter.coefficient(0)))
            .times(inLetter.coefficient(1).reciprocal());
    Set<ExactValue> found = new LinkedHashSet<>();
    for (ExactValue root : roots) {
      Optional<ExactValue> value = NumberAt.value(letter, root);
      if (value.isEmpty()) {
        return new Attempt.Declined("the roots are not written with square roots");
      }
      found.add(value.get());
    }
    Formula general = PolynomialFormula.of(letter, s);
    lines.argue(
        Idea.SUBSTITUTE,
        "the coefficient with the letter",
        Formula.equation(Formula.name(asked.letter()), general));
    for (ExactValue root : roots) {
      ExactValue value = NumberAt.value(letter, root).orElseThrow();
      lines.add(
          Setting.ofLetters(List.of()),
          Idea.ARITHMETIC,
          "for %s = %s".formatted(s, LetterSolution.text(root)),
          PolynomialFormula.of(letter, root.toFormula()),
          value.toFormula());
    }
    List<ExactValue> ordered = new ArrayList<>(found);
    ordered.sort(ExactValues.order());
    return new Answer.Solutions(ordered)
            .equals(new Answer.Solutions(ConditionInLetter.all(asked.solution())))
        ? JudgedLines.end(lines, title(), asked)
        : new Attempt.Declined("some values of the letter do not come from a root this way");
  }

  /** r as a function of s, if the condition is of degree 1 in r and has no other name. */
  private static Optional<RationalFunction> first(Formula zero, List<String> roots) {
    try {
      RationalFunction function =
          FormulaExpansion.expand(zero, Map.of(roots.get(0), 0, roots.get(1), 1)).lowestTerms();
      if (function.numerator().degreeIn(0) != 1) {
        return Optional.empty();
      }
      List<MultivariatePolynomial> parts = function.numerator().coefficientsIn(0);
      return Optional.of(new RationalFunction(parts.get(0).negate(), parts.get(1)).lowestTerms());
    } catch (UnreadableException otherNames) {
      return Optional.empty();
    }
  }

  private static RationalFunction elementary(List<RationalFunction> values, int k) {
    RationalFunction sum = RationalFunction.ZERO;
    int n = values.size();
    for (int mask = 0; mask < 1 << n; mask++) {
      if (Integer.bitCount(mask) == k) {
        RationalFunction product = RationalFunction.ONE;
        for (int j = 0; j < n; j++) {
          if ((mask >> j & 1) == 1) {
            product = product.times(values.get(j));
          }
        }
        sum = sum.plus(product).lowestTerms();
      }
    }
    return sum;
  }

  private static Formula difference(List<RationalFunction> values, int k, Vieta vieta, String s) {
    List<Formula> terms = new ArrayList<>();
    int n = values.size();
    for (int mask = 0; mask < 1 << n; mask++) {
      if (Integer.bitCount(mask) == k) {
        List<Formula> factors = new ArrayList<>();
        for (int j = 0; j < n; j++) {
          if ((mask >> j & 1) == 1) {
            factors.add(formula(values.get(j), s));
          }
        }
        terms.add(Formula.product(factors));
      }
    }
    Formula e = InLetters.formula(vieta.elementary(k), List.of(s));
    return e.equals(Formula.number(0)) ? Formula.sum(terms) : Formula.sum(terms).minus(e);
  }

  private static Formula formula(RationalFunction function, String s) {
    return InLetters.formula(function, List.of(s));
  }
}
