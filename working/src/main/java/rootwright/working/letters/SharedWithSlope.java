package rootwright.working.letters;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.factor.RationalRoot;
import rootwright.algebra.factor.RationalRoots;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.algebra.value.ExactRoot;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.ExactValues;
import rootwright.algebra.value.RationalValue;
import rootwright.working.answer.Answer;
import rootwright.working.route.Attempt;
import rootwright.working.route.RouteOn;
import rootwright.working.step.Claim;
import rootwright.working.step.Idea;
import rootwright.working.step.NumberDomain;
import rootwright.working.step.Step;

/** A repeated root is a root of P and of P′: the zeros of P′ are put into P. */
final class SharedWithSlope implements RouteOn<LettersAsked> {

  @Override
  public String name() {
    return "shared-with-derivative";
  }

  @Override
  public String title() {
    return "a repeated root is a root of P and of P′";
  }

  @Override
  public String teaches() {
    return "Where P and P′ share a root the curve touches the axis.";
  }

  @Override
  public Attempt attempt(LettersAsked asked) {
    LetteredProblem problem = asked.problem();
    LetteredPolynomial polynomial = problem.polynomial();
    List<Condition.Zeros> zeros = problem.conditions(Condition.Zeros.class);
    boolean repeated =
        zeros.size() == 1
            && zeros
                .get(0)
                .zeros()
                .equals(
                    problem.roots().size() < 2
                        ? List.of()
                        : List.of(
                            Formula.name(problem.roots().get(0))
                                .minus(Formula.name(problem.roots().get(1)))));
    if (!repeated || asked.solution().equations().size() != 1) {
      return new Attempt.Declined("no repeated root is asked for");
    }
    Optional<Polynomial> slope = slope(polynomial);
    if (slope.isEmpty()) {
      return new Attempt.Declined("the letter stands in the derivative too");
    }
    List<RationalRoot> points = RationalRoots.of(slope.get());
    List<ExactRoot> all = ExactValues.rootsOf(slope.get());
    if (points.isEmpty()
        || all.stream().anyMatch(root -> !(root.value() instanceof RationalValue))) {
      return new Attempt.Declined("the derivative has a zero that is not rational");
    }
    LetterLines lines = new LetterLines();
    Formula x = Formula.name(polynomial.unknown());
    lines.add(
        problem.setting().withLetter(polynomial.unknown()),
        Idea.VANISHING,
        "the derivative",
        new Formula.Application("P'", List.of(x)),
        PolynomialFormula.of(slope.get(), polynomial.unknown()));
    List<ExactValue> values =
        points.stream().<ExactValue>map(point -> new RationalValue(point.value())).toList();
    lines.write(
        new Step(
            LetterLines.values(polynomial.unknown(), values),
            "its zeros",
            Idea.CASES,
            new Claim.SolutionSet(slope.get(), NumberDomain.COMPLEX, values)));
    List<ExactValue> found = new ArrayList<>();
    for (RationalRoot point : points) {
      Formula value = new Formula.Application("P", List.of(Formula.number(point.value())));
      RationalFunction at = FunctionAsked.valueOf(value, polynomial, problem.roots()).orElseThrow();
      Formula written = InLetters.formula(at, polynomial.letters());
      lines.add(problem.setting(), Idea.EVALUATE, "must be 0", value, written);
      Polynomial equation = InLetters.inOne(at.numerator(), 1);
      if (equation.degree() < 1) {
        continue;
      }
      List<ExactValue> here = ExactValues.rootsOf(equation).stream().map(ExactRoot::value).toList();
      lines.solutions(Idea.ARITHMETIC, "so", asked.letter(), equation, here);
      here.stream().filter(one -> !found.contains(one)).forEach(found::add);
    }
    found.sort(ExactValues.order());
    return new Answer.Solutions(found)
            .equals(new Answer.Solutions(ConditionInLetter.all(asked.solution())))
        ? JudgedLines.end(lines, title(), asked)
        : new Attempt.Declined("the values must be told apart by the discriminant here");
  }

  /** P′ with numbers for coefficients. */
  private static Optional<Polynomial> slope(LetteredPolynomial polynomial) {
    List<Rational> ascending = new ArrayList<>();
    for (int power = 1; power <= polynomial.degree(); power++) {
      MultivariatePolynomial coefficient = polynomial.coefficient(power);
      if (!coefficient.isConstant()) {
        return Optional.empty();
      }
      ascending.add(coefficient.coefficient(Monomial.ONE).times(Rational.of(power)));
    }
    return Optional.of(Polynomial.ofAscending(ascending));
  }
}
