package rootwright.working.values;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.ideal.Ideal;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.Refusal;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.symmetric.Discriminant;
import rootwright.algebra.symmetric.SymmetricQuotient;
import rootwright.algebra.value.ExactRoot;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.ExactValues;
import rootwright.working.answer.Answer;
import rootwright.working.ask.AskLimits;
import rootwright.working.gate.Warning;
import rootwright.working.gate.WarningCode;
import rootwright.working.kind.Kinds;
import rootwright.working.problem.Problem;
import rootwright.working.route.ClassProfile;
import rootwright.working.route.Working;
import rootwright.working.solve.Given;
import rootwright.working.solve.SecondOpinion;
import rootwright.working.solve.Solution;
import rootwright.working.solve.TwoChecks;
import rootwright.working.step.Idea;
import rootwright.working.step.NumberDomain;
import rootwright.working.step.Step;

/** Data that leave some e_k open or irrational; an ask may be determined all the same. */
final class OpenData {

  /** Highest power in an ask that is worked without knowing the numbers. */
  private static final int HIGHEST_ASKED = 30;

  /** Most values of an ask that are named. */
  private static final int MOST_VALUES = 6;

  private final TwoChecks checks;
  private final Kinds kinds;

  OpenData(TwoChecks checks, Kinds kinds) {
    this.checks = checks;
    this.kinds = kinds;
  }

  /**
   * The solution.
   *
   * @throws UnreadableException if a power in the ask is too high
   */
  Solution of(SymmetricData data, DataAskText ask, Ideal ideal, String find, ClassProfile profile)
      throws UnreadableException {
    if (data.count() == 1) {
      return oneNumber(data, ask, ideal, find, profile);
    } else if (DataReader.isHigh(ask.shown(), HIGHEST_ASKED)) {
      throw new UnreadableException(
          new Refusal(
              "too-large",
              "The data do not determine the numbers, so asks are worked up to power %d."
                  .formatted(HIGHEST_ASKED),
              find,
              0,
              "a lower power",
              ""));
    }
    if (!(ask instanceof DataAskText.ForExpression expression)) {
      return undetermined(data, ask, Optional.empty());
    }
    Optional<SymmetricQuotient> quotient = DataReader.symmetric(expression.formula(), data.names());
    if (quotient.isEmpty()) {
      return Unsolved.none(
          data,
          ask,
          "the data do not determine the numbers, and the ask is not symmetric in them",
          List.of(
              new Warning(
                  WarningCode.NOT_SYMMETRIC,
                  "The ask changes when two of the numbers are exchanged.")));
    }
    MultivariatePolynomial over = quotient.get().numerator().toElementary().polynomial();
    MultivariatePolynomial under = quotient.get().denominator().toElementary().polynomial();
    List<MultivariatePolynomial> equations = new ArrayList<>(Elimination.equations(data));
    int unknowns = data.count() + 2;
    MultivariatePolynomial element = over;
    if (!under.equals(MultivariatePolynomial.ONE)) {
      MultivariatePolynomial inverse = MultivariatePolynomial.unknown(data.count() + 1);
      equations.add(MultivariatePolynomial.ONE.minus(inverse.times(under)));
      element = over.times(inverse);
    }
    Optional<Ideal> larger = Ideal.of(equations, unknowns);
    if (larger.isEmpty()) {
      return Unsolved.none(data, ask, "the equations are too hard to be solved here", List.of());
    } else if (larger.get().isEverything()) {
      return Unsolved.none(
          data,
          ask,
          "the data make the denominator of the ask zero",
          List.of(
              new Warning(
                  WarningCode.ZERO_DENOMINATOR, "The data make the denominator of the ask zero.")));
    }
    Optional<Rational> value = larger.get().constant(element);
    Optional<Polynomial> values =
        value.isPresent()
            ? Optional.empty()
            : larger.get().minimalPolynomial(element).map(Polynomial::squarefreePart);
    if (value.isEmpty() && values.isPresent() && values.get().degree() == 1) {
      value = Optional.of(values.get().coefficient(0).over(values.get().lead()).negate());
    }
    Checked checked = new Checked(data, expression.formula(), over, under, equations, larger.get());
    if (value.isPresent()) {
      return determined(checked, expression, value.get(), ideal);
    }
    return values
        .map(polynomial -> several(checked, expression, polynomial, ideal))
        .orElseGet(() -> undetermined(data, ask, Optional.of(quotient.get())));
  }

  /** x + 1/x = 3: the number is a root of the equation that it satisfies. */
  private Solution oneNumber(
      SymmetricData data, DataAskText ask, Ideal ideal, String find, ClassProfile profile)
      throws UnreadableException {
    Polynomial polynomial =
        ideal
            .minimalPolynomial(MultivariatePolynomial.unknown(0))
            .orElseThrow()
            .squarefreePart()
            .primitive();
    Formula wanted =
        ask instanceof DataAskText.ForExpression expression
            ? expression.formula()
            : new Formula.Application("roots", List.of());
    Problem problem = data.problem(polynomial, wanted);
    if (ask instanceof DataAskText.ForPolynomial) {
      wanted =
          new Formula.Application(
              "polynomial with roots", List.of(Formula.name(data.names().get(0))));
      problem = data.problem(polynomial, wanted);
    }
    AskLimits.require(problem, find);
    Solution found = kinds.solve(problem, profile);
    Formula name = Formula.name(data.names().get(0));
    Step equation =
        Step.equation(
            problem.setting(),
            Idea.VANISHING,
            "clear the denominators: %s is a root of P".formatted(UnicodeWriter.write(name)),
            PolynomialFormula.of(polynomial, data.names().get(0)),
            Formula.number(0));
    checks.require(equation.shown(), equation.claim());
    List<Working> climbed =
        ask instanceof DataAskText.ForExpression
            ? ReciprocalPowers.of(problem, found.answer(), checks).stream().toList()
            : List.of();
    return before(
        equation,
        climbed,
        found,
        ValuesOfNumbers.given(data, ask.shown(), PolynomialFormula.of(polynomial, data.unknown())),
        data.inWords(data.domain().orElse(NumberDomain.COMPLEX), true)
            + " "
            + SolvedData.wanted(data, ask),
        data
            .domain()
            .filter(domain -> !DomainGate.allows(domain, polynomial))
            .map(
                domain ->
                    new Warning(
                        WarningCode.NOT_REAL,
                        "Not every solution of %s = 0 is in %s."
                            .formatted(
                                UnicodeWriter.write(
                                    PolynomialFormula.of(polynomial, data.unknown())),
                                domain.words())))
            .stream()
            .toList());
  }

  /** The solution with a line in front of every route. */
  private static Solution before(
      Step line,
      List<Working> more,
      Solution found,
      Given given,
      String statement,
      List<Warning> warnings) {
    List<Warning> all = new ArrayList<>(warnings);
    found.warnings().stream()
        .filter(w -> w.code() != WarningCode.REDUCIBLE && w.code() != WarningCode.NOT_SYMMETRIC)
        .forEach(all::add);
    List<Working> routes = new ArrayList<>(more);
    for (Working working : found.routes()) {
      List<Step> steps = new ArrayList<>(List.of(line));
      steps.addAll(working.steps());
      routes.add(working.withSteps(steps));
    }
    return found.restated(given, statement).withWarnings(all).withRoutes(routes);
  }

  private Solution determined(
      Checked checked, DataAskText.ForExpression ask, Rational value, Ideal ideal) {
    SymmetricData data = checked.data();
    Answer answer = Answer.exact(value);
    return checked
        .conclusion(Checked.linear(value), checks)
        .map(
            second ->
                solution(
                    data,
                    ask,
                    answer,
                    warnings(data, ideal),
                    new KnownValues(checked, value, checks).workings(answer),
                    second))
        .orElseGet(
            () -> Unsolved.none(data, ask, "the value could not be confirmed twice", List.of()));
  }

  /** Finitely many values, irrational ones among them. */
  private Solution several(
      Checked checked, DataAskText.ForExpression ask, Polynomial values, Ideal ideal) {
    SymmetricData data = checked.data();
    if (values.degree() > MOST_VALUES) {
      return Unsolved.none(
          data,
          ask,
          "the data leave %d values of the ask, too many to be named".formatted(values.degree()),
          List.of(
              new Warning(
                  WarningCode.SEVERAL_PARAMETERS,
                  "The data leave %d values; give more of them, or lower powers."
                      .formatted(values.degree()))));
    }
    List<ExactValue> all =
        ExactValues.rootsOf(values).stream().map(ExactRoot::value).distinct().toList();
    boolean real = data.domain().filter(d -> d != NumberDomain.COMPLEX).isPresent();
    List<ExactValue> kept = all.stream().filter(v -> !real || v.isReal()).toList();
    List<Warning> warnings = new ArrayList<>(warnings(data, ideal));
    if (kept.size() < all.size()) {
      warnings.add(
          new Warning(
              WarningCode.EXTRANEOUS,
              "Values that are not real are left out: the numbers are said to be real."));
    }
    if (kept.isEmpty()) {
      return Unsolved.none(data, ask, "no real numbers have these values", warnings);
    }
    warnings.add(
        new Warning(
            WarningCode.SEVERAL_PARAMETERS,
            "The data leave several values; ask for all of them, or give one more value."));
    return checked
        .conclusion(values, checks)
        .map(
            second ->
                solution(
                    data,
                    ask,
                    new Answer.Values(kept, values.primitive()),
                    warnings,
                    List.of(),
                    second))
        .orElseGet(
            () -> Unsolved.none(data, ask, "the data leave several values of the ask", warnings));
  }

  private static Solution solution(
      SymmetricData data,
      DataAskText.ForExpression ask,
      Answer answer,
      List<Warning> warnings,
      List<Working> workings,
      SecondOpinion second) {
    boolean one = answer instanceof Answer.Exact;
    return Solution.of(
            "value",
            ValuesOfNumbers.given(data, ask.shown(), new Formula.Words("")),
            data.inWords(data.domain().orElse(NumberDomain.COMPLEX), true)
                + (one ? " Find " : " Find all possible values of ")
                + UnicodeWriter.write(ask.shown())
                + ".",
            answer,
            second)
        .withWarnings(warnings)
        .withRoutes(workings);
  }

  /** Whether the numbers may be what they are said to be, as far as the discriminant tells. */
  private static List<Warning> warnings(SymmetricData data, Ideal ideal) {
    boolean real = data.domain().filter(d -> d != NumberDomain.COMPLEX).isPresent();
    if (!real) {
      return List.of();
    }
    Optional<Polynomial> discriminants =
        ideal.minimalPolynomial(Discriminant.universal(data.count()).polynomial());
    boolean never =
        discriminants.isPresent()
            && ExactValues.rootsOf(discriminants.get()).stream()
                .map(ExactRoot::value)
                .noneMatch(d -> d.isReal() && d.enclosure(30).real().high().signum() >= 0);
    return never
        ? List.of(
            new Warning(
                WarningCode.NOT_REAL,
                "The statement must not say “real”: the discriminant of the numbers is negative. Say “complex numbers” instead."))
        : List.of();
  }

  /** The data leave it open: two examples that differ show it. */
  private static Solution undetermined(
      SymmetricData data, DataAskText ask, Optional<SymmetricQuotient> quotient) {
    String examples = quotient.flatMap(q -> Examples.of(data, ask.shown(), q)).orElse("");
    return Unsolved.none(
        data,
        ask,
        "the data do not determine it",
        List.of(
            new Warning(
                WarningCode.SEVERAL_PARAMETERS,
                examples.isEmpty()
                    ? "The data leave more than one possibility for the numbers; give one more value."
                    : "The data do not determine it: " + examples + ". Give one more value.")));
  }
}
