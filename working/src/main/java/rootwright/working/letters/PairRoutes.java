package rootwright.working.letters;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PolynomialFormula;
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
import rootwright.working.step.LetteredSetting;
import rootwright.working.step.Setting;

/** The routes to common roots and resultants of two polynomials. */
final class PairRoutes {

  static final List<RouteOn<PairAsked>> LETTER = List.of(new ByResultant(), new BySubtraction());

  static final List<RouteOn<PairProblem>> COMMON = List.of(new ByDivision());

  private PairRoutes() {}

  /** lead^m·∏ B(r) over the roots r of A: the resultant. */
  static Formula resultant(PairProblem problem) {
    Formula product =
        new Formula.Aggregate(
            Formula.Aggregate.Operation.PRODUCT,
            new Formula.Application("B", List.of(Formula.name(problem.names().get(0)))));
    MultivariatePolynomial lead = problem.first().lead();
    if (lead.equals(MultivariatePolynomial.ONE)) {
      return product;
    }
    Formula written = InLetters.formula(lead, problem.letters());
    int m = problem.second().degree();
    return (m == 1 ? written : written.power(m)).times(product);
  }

  /** The setting in which A has roots and B may be applied. */
  static LetteredSetting setting(PairProblem problem) {
    List<String> names = new ArrayList<>(List.of(problem.names().get(0)));
    return new LetteredSetting(
        problem.letters(),
        problem.first().polynomial(),
        names,
        Map.of("A", problem.first().polynomial(), "B", problem.second().polynomial()),
        Map.of());
  }

  /** The resultant as a polynomial in the letters. */
  static RationalFunction resultantValue(PairProblem problem) {
    LetteredRoots roots = new LetteredRoots(problem.first());
    RationalFunction body = RationalFunction.ZERO;
    for (int power = problem.second().degree(); power >= 0; power--) {
      body =
          body.times(roots.root(0))
              .plus(RationalFunction.of(roots.inner(problem.second().coefficient(power))));
    }
    RationalFunction product = roots.productOfImages(body);
    RationalFunction lead =
        RationalFunction.of(roots.inner(problem.first().lead())).power(problem.second().degree());
    return roots.outer(product.times(lead));
  }

  /** The resultant must vanish. */
  private static final class ByResultant implements RouteOn<PairAsked> {
    @Override
    public String name() {
      return "resultant";
    }

    @Override
    public String title() {
      return "the resultant is 0 exactly when a root is shared";
    }

    @Override
    public String teaches() {
      return "The product of B(r) over the roots r of A is 0 when one r is a root of B.";
    }

    @Override
    public Attempt attempt(PairAsked asked) {
      LetterLines lines = new LetterLines();
      lines.add(
          setting(asked.problem()),
          Idea.ELIMINATE,
          "the resultant: must be 0",
          resultant(asked.problem()),
          PolynomialFormula.of(asked.resultant(), asked.letter()));
      JudgedLines.solve(
          lines,
          asked.letter(),
          asked.resultant(),
          asked.candidates().stream().map(Candidate::value).toList());
      return ended(lines, title(), asked);
    }
  }

  /** The difference of the two has the common root too. */
  private static final class BySubtraction implements RouteOn<PairAsked> {
    @Override
    public String name() {
      return "subtract";
    }

    @Override
    public String title() {
      return "subtract: a common root is a root of the difference";
    }

    @Override
    public String teaches() {
      return "Whatever two equations have in common, their difference has too.";
    }

    @Override
    public Attempt attempt(PairAsked asked) {
      PairProblem problem = asked.problem();
      MultivariatePolynomial difference =
          problem.first().polynomial().minus(problem.second().polynomial());
      if (difference.degreeIn(0) != 1) {
        return new Attempt.Declined("the difference is not linear in the unknown");
      }
      List<MultivariatePolynomial> parts = difference.coefficientsIn(0);
      RationalFunction root =
          InLetters.cleared(new RationalFunction(parts.get(0).negate(), parts.get(1)));
      String x = problem.first().unknown();
      LetterLines lines = new LetterLines();
      LetteredSetting setting = setting(problem).withLetter(x);
      Formula unknown = Formula.name(x);
      LetteredPolynomial linear = new LetteredPolynomial(difference, x, problem.letters());
      Formula factored = linear.formula();
      if (root.isPolynomial() && root.numerator().isConstant()) {
        Formula at = InLetters.formula(root, problem.letters());
        factored =
            InLetters.formula(parts.get(1), problem.letters())
                .times(
                    at instanceof Formula.Numeral numeral && numeral.value().signum() < 0
                        ? unknown.plus(Formula.number(numeral.value().negate()))
                        : unknown.minus(at));
      }
      lines.add(
          setting,
          Idea.ELIMINATE,
          "subtract",
          new Formula.Application("A", List.of(unknown))
              .minus(new Formula.Application("B", List.of(unknown))),
          factored);
      Polynomial slope = InLetters.inOne(parts.get(1), 1);
      List<ExactValue> flat =
          slope.degree() < 1
              ? List.of()
              : ExactValues.rootsOf(slope).stream().map(ExactRoot::value).toList();
      if (!flat.isEmpty()) {
        lines.solutions(
            Idea.CASES, "the one case: the difference is constant", asked.letter(), slope, flat);
      }
      Formula at = InLetters.formula(root, problem.letters());
      lines.argue(Idea.CASES, "the other case", Formula.equation(unknown, at));
      RationalFunction value = RationalFunction.ZERO;
      for (int power = problem.first().degree(); power >= 0; power--) {
        value = value.times(root).plus(RationalFunction.of(problem.first().coefficient(power)));
      }
      Formula putIn = new Formula.Application("A", List.of(at));
      RationalFunction cleared = InLetters.cleared(value);
      lines.add(
          setting(problem),
          Idea.EVALUATE,
          "put it into A: must be 0",
          putIn,
          InLetters.formula(cleared, problem.letters()));
      Polynomial equation = InLetters.inOne(cleared.numerator(), 1);
      if (equation.isZero()) {
        return new Attempt.Declined("that holds whatever the letter is");
      }
      List<ExactValue> found = new ArrayList<>();
      if (equation.degree() > 0) {
        found.addAll(ExactValues.rootsOf(equation).stream().map(ExactRoot::value).toList());
      }
      JudgedLines.solve(lines, asked.letter(), equation, found);
      List<ExactValue> both = new ArrayList<>(found);
      flat.stream().filter(one -> !both.contains(one)).forEach(both::add);
      boolean everything =
          asked.candidates().stream().map(Candidate::value).allMatch(both::contains);
      return everything
          ? ended(lines, title(), asked)
          : new Attempt.Declined("the difference does not show every case");
    }
  }

  private static Attempt ended(LetterLines lines, String title, PairAsked asked) {
    for (Candidate candidate : asked.candidates()) {
      candidate
          .objection()
          .ifPresent(
              objection ->
                  lines.argue(Idea.DOMAIN, "thrown out", new Formula.Words(objection.words())));
    }
    lines.argue(Idea.DOMAIN, "what is left", LetterLines.values(asked.letter(), asked.kept()));
    return new Attempt.Worked(title, lines.steps(), new Answer.Solutions(asked.kept()), List.of());
  }

  /** Euclid's divisions. */
  private static final class ByDivision implements RouteOn<PairProblem> {
    @Override
    public String name() {
      return "euclid";
    }

    @Override
    public String title() {
      return "divide one by the other, and the divisor by the remainder";
    }

    @Override
    public String teaches() {
      return "A common root is a root of every remainder; the last one that is not 0 has nothing else.";
    }

    @Override
    public Attempt attempt(PairProblem problem) {
      Polynomial a = problem.firstNumeric();
      Polynomial b = problem.secondNumeric();
      String x = problem.first().unknown();
      LetterLines lines = new LetterLines();
      Setting setting = Setting.ofLetters(List.of(x));
      if (a.degree() < b.degree()) {
        Polynomial swap = a;
        a = b;
        b = swap;
      }
      while (!b.isZero()) {
        Polynomial.Division division = a.divide(b);
        Polynomial rest = division.remainder().isZero() ? Polynomial.ZERO : division.remainder();
        Formula product =
            PolynomialFormula.of(b, x).times(PolynomialFormula.of(division.quotient(), x));
        lines.add(
            setting,
            Idea.REDUCE,
            rest.isZero() ? "it divides" : "divide",
            PolynomialFormula.of(a, x),
            rest.isZero() ? product : product.plus(PolynomialFormula.of(rest, x)));
        a = b;
        b = rest.isZero() ? rest : rest.primitive();
      }
      List<ExactValue> values =
          a.degree() < 1
              ? List.of()
              : ExactValues.rootsOf(a).stream().map(ExactRoot::value).toList();
      lines.solutions(
          Idea.VANISHING,
          a.degree() < 1
              ? "the last remainder is a number, so nothing is shared"
              : "the zeros of the last remainder",
          x,
          a,
          values);
      return new Attempt.Worked(title(), lines.steps(), new Answer.Solutions(values), List.of());
    }
  }
}
