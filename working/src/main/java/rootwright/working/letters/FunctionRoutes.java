package rootwright.working.letters;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.symmetric.SymmetricQuotient;
import rootwright.working.answer.Answer;
import rootwright.working.ask.AskedReader;
import rootwright.working.problem.Problem;
import rootwright.working.route.Attempt;
import rootwright.working.route.RouteOn;
import rootwright.working.step.Idea;
import rootwright.working.step.LetteredSetting;

/** The routes to an expression as a function of the letters. */
final class FunctionRoutes {

  static final List<RouteOn<FunctionAsked>> ALL =
      List.of(new Built(), new Newton(), new AtAPoint(), new LogDerivative());

  private FunctionRoutes() {}

  private static Attempt ends(LetterLines lines, String title, FunctionAsked asked) {
    return new Attempt.Worked(
        title, lines.steps(), new Answer.FunctionOf(asked.written()), List.of());
  }

  /** Written in e_1, e_2, …, which are read off. */
  private static final class Built implements RouteOn<FunctionAsked> {
    @Override
    public String name() {
      return "build-from-e";
    }

    @Override
    public String title() {
      return "write the ask in e₁, e₂, … and put the letters in";
    }

    @Override
    public String teaches() {
      return "The coefficients give e₁, e₂, … whatever the letters are.";
    }

    @Override
    public Attempt attempt(FunctionAsked asked) {
      LetteredProblem problem = asked.problem();
      if (LetterEquations.mentions(
          asked.expression(), Set.copyOf(problem.polynomial().letters()))) {
        return new Attempt.Declined("a letter stands in the ask itself");
      }
      int n = problem.polynomial().degree();
      if (n > 8) {
        return new Attempt.Declined("there are too many roots to write it in e₁, e₂, …");
      }
      Problem shape =
          new Problem(
              Polynomial.X.power(n).minus(Polynomial.ofDescending(3)),
              problem.stated(),
              problem.polynomial().unknown(),
              problem.roots(),
              asked.expression(),
              List.of());
      Optional<SymmetricQuotient> quotient = AskedReader.read(shape).quotient();
      if (quotient.isEmpty()) {
        return new Attempt.Declined("it is not written as a symmetric expression of the roots");
      }
      MultivariatePolynomial over = quotient.get().numerator().toElementary().polynomial();
      MultivariatePolynomial under = quotient.get().denominator().toElementary().polynomial();
      LetterLines lines = new LetterLines();
      SortedSet<Integer> used = new TreeSet<>();
      for (int k = 1; k <= n; k++) {
        if (over.degreeIn(k - 1) > 0 || under.degreeIn(k - 1) > 0) {
          used.add(k);
        }
      }
      Vieta vieta = new Vieta(problem);
      used.forEach(k -> vieta.write(lines, k));
      List<String> names = new ArrayList<>();
      for (int k = 1; k <= n; k++) {
        names.add("e_" + k);
      }
      Formula inE = PolynomialFormula.of(over, names);
      if (!under.equals(MultivariatePolynomial.ONE)) {
        inE = inE.over(PolynomialFormula.of(under, names));
      }
      lines.add(
          problem.setting(),
          Idea.BUILD,
          "symmetric in the roots",
          asked.expression(),
          inE,
          asked.written());
      return lines.steps().isEmpty()
          ? new Attempt.Declined("the coefficients give it at once")
          : ends(lines, title(), asked);
    }
  }

  /** Newton's identities, one power sum after another. */
  private static final class Newton implements RouteOn<FunctionAsked> {
    @Override
    public String name() {
      return "newton";
    }

    @Override
    public String title() {
      return "Newton's identities with letters";
    }

    @Override
    public String teaches() {
      return "The power sums follow one another, letters or not.";
    }

    @Override
    public Attempt attempt(FunctionAsked asked) {
      Optional<Integer> wanted = PowerAsked.of(asked.expression(), asked.problem().roots());
      int n = asked.problem().polynomial().degree();
      if (wanted.isEmpty() || wanted.get() < 2) {
        return new Attempt.Declined("the ask is no power sum");
      } else if (wanted.get() > 8) {
        return new Attempt.Declined("the power is too far out to be reached step by step");
      }
      LetterLines lines = new LetterLines();
      Vieta vieta = new Vieta(asked.problem());
      LetteredRoots roots = new LetteredRoots(asked.problem().polynomial());
      LetteredSetting setting = asked.problem().setting();
      for (int k = 1; k <= Math.min(n, wanted.get()); k++) {
        vieta.write(lines, k);
      }
      for (int k = 1; k <= wanted.get(); k++) {
        List<Formula> terms = new ArrayList<>();
        for (int j = 1; j <= Math.min(k, n); j++) {
          Formula e = Vieta.name(j);
          Formula term = j == k ? k == 1 ? e : Formula.number(k).times(e) : e.times(power(k - j));
          terms.add(j % 2 == 1 ? term : new Formula.Negative(term));
        }
        Formula value =
            InLetters.formula(
                roots.outer(roots.powerSum(k)), asked.problem().polynomial().letters());
        lines.add(setting, Idea.NEWTON, "Newton's identity", power(k), Formula.sum(terms), value);
      }
      lines.add(
          setting,
          Idea.STATE,
          "what was asked",
          asked.expression(),
          power(wanted.get()),
          asked.written());
      return ends(lines, title(), asked);
    }

    private static Formula power(int k) {
      return new Formula.Family("S", Formula.number(k));
    }
  }

  /** ∏(c − r) = P(c)/a. */
  private static final class AtAPoint implements RouteOn<FunctionAsked> {
    @Override
    public String name() {
      return "evaluate";
    }

    @Override
    public String title() {
      return "evaluate P instead of multiplying out";
    }

    @Override
    public String teaches() {
      return "P(c) is the lead times the product of all c − r.";
    }

    @Override
    public Attempt attempt(FunctionAsked asked) {
      Optional<LinearBody> body = LinearBody.of(asked, Formula.Aggregate.Operation.PRODUCT);
      if (body.isEmpty() || body.get().inverse()) {
        return new Attempt.Declined("the ask is no product of linear factors over all roots");
      }
      LetterLines lines = new LetterLines();
      LetteredPolynomial polynomial = asked.problem().polynomial();
      Formula value = new Formula.Application("P", List.of(body.get().point()));
      lines.add(
          asked.problem().setting(),
          Idea.EVALUATE,
          "put " + UnicodeWriter.write(body.get().point()) + " into P",
          value,
          InLetters.formula(
              FunctionAsked.valueOf(value, polynomial, asked.problem().roots()).orElseThrow(),
              polynomial.letters()));
      Formula lead = InLetters.formula(polynomial.lead(), polynomial.letters());
      boolean minus = body.get().rootFirst() && polynomial.degree() % 2 == 1;
      Formula over =
          polynomial.lead().equals(MultivariatePolynomial.ONE) ? value : value.over(lead);
      lines.add(
          asked.problem().setting(),
          Idea.EVALUATE,
          body.get().rootFirst()
              ? "P(c) = a·∏(c − r), and every factor changes its sign"
              : "P(c) = a·∏(c − r)",
          asked.expression(),
          minus ? new Formula.Negative(over) : over,
          asked.written());
      return ends(lines, title(), asked);
    }
  }

  /** Σ 1/(c − r) = P′(c)/P(c). */
  private static final class LogDerivative implements RouteOn<FunctionAsked> {
    @Override
    public String name() {
      return "log-derivative";
    }

    @Override
    public String title() {
      return "P′/P is the sum of 1/(x − r)";
    }

    @Override
    public String teaches() {
      return "One division gives the sum of reciprocals at once.";
    }

    @Override
    public Attempt attempt(FunctionAsked asked) {
      Optional<LinearBody> body = LinearBody.of(asked, Formula.Aggregate.Operation.SUM);
      if (body.isEmpty() || !body.get().inverse()) {
        return new Attempt.Declined("the ask is no sum of 1/(c − r) over all roots");
      }
      LetteredPolynomial polynomial = asked.problem().polynomial();
      LetterLines lines = new LetterLines();
      Formula point = body.get().point();
      Formula value = new Formula.Application("P", List.of(point));
      Formula slope = new Formula.Application("P'", List.of(point));
      for (Formula at : List.of(value, slope)) {
        lines.add(
            asked.problem().setting(),
            Idea.EVALUATE,
            at == value ? "put it into P" : "put it into the derivative",
            at,
            InLetters.formula(
                FunctionAsked.valueOf(at, polynomial, asked.problem().roots()).orElseThrow(),
                polynomial.letters()));
      }
      Formula quotient = slope.over(value);
      lines.add(
          asked.problem().setting(),
          Idea.LOG_DERIVATIVE,
          body.get().rootFirst() ? "P′/P at c, with the sign for r − c" : "P′/P at c",
          asked.expression(),
          body.get().rootFirst() ? new Formula.Negative(quotient) : quotient,
          asked.written());
      return ends(lines, title(), asked);
    }
  }
}
