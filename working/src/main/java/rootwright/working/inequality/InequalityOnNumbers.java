package rootwright.working.inequality;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaExpansion;
import rootwright.algebra.notation.NormalForm;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.Refusal;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.working.answer.Answer;
import rootwright.working.gate.Warning;
import rootwright.working.gate.WarningCode;
import rootwright.working.route.ClassProfile;
import rootwright.working.route.Working;
import rootwright.working.solve.Given;
import rootwright.working.solve.SecondOpinion;
import rootwright.working.solve.Solution;
import rootwright.working.solve.TwoChecks;
import rootwright.working.step.Claim;
import rootwright.working.step.Idea;
import rootwright.working.step.NumberDomain;
import rootwright.working.step.Setting;
import rootwright.working.step.Step;
import rootwright.working.subject.Inquiry;
import rootwright.working.subject.Subject;

/**
 * An inequality whose difference of sides is a quadratic form in the letters, or in their squares,
 * perhaps over a positive denominator: a sum of squares proves it, a small example refutes it.
 */
public final class InequalityOnNumbers implements Subject {

  private final TwoChecks checks = new TwoChecks();

  @Override
  public boolean recognises(Inquiry inquiry) {
    return InequalityReader.isLike(inquiry);
  }

  @Override
  public Given read(Inquiry inquiry) throws UnreadableException {
    return given(InequalityReader.read(inquiry));
  }

  private static Given given(Inequality inequality) {
    Formula nothing = new Formula.Words("");
    List<Formula> conditions = new ArrayList<>();
    inequality
        .apart()
        .ifPresent(
            apart ->
                conditions.add(
                    new Formula.Relation(
                        List.of(apart, Formula.number(0)), List.of(Formula.Comparison.NOT_EQUAL))));
    inequality.given().ifPresent(conditions::add);
    inequality
        .domain()
        .ifPresent(
            domain ->
                conditions.add(
                    new Formula.Words(
                        "%s %s"
                            .formatted(
                                String.join(", ", inequality.letters()),
                                domain == NumberDomain.POSITIVE ? "positive" : "real"))));
    return new Given(
        nothing, nothing, "", inequality.letters(), inequality.claim(), conditions, List.of());
  }

  /** numerator/denominator of the difference in the letters that are left. */
  private record Reduced(RationalFunction function, Formula put) {}

  @Override
  public Solution work(Inquiry inquiry, ClassProfile profile) throws UnreadableException {
    Inequality inequality = InequalityReader.read(inquiry);
    Reduced reduced = reduced(inequality);
    MultivariatePolynomial over = reduced.function().numerator();
    MultivariatePolynomial under = reduced.function().denominator();
    boolean clear = under.isConstant() || isPositive(under, inequality);
    Rational scale =
        under.isConstant() ? under.coefficient(Monomial.ONE).reciprocal() : Rational.ONE;
    MultivariatePolynomial numerator = over.times(scale);
    if (clear) {
      Optional<Solution> proved = proved(inequality, reduced, numerator, under, profile);
      if (proved.isPresent()) {
        return proved.get();
      }
    }
    Optional<List<Rational>> example = SmallCounterexample.of(inequality, reduced.function());
    if (example.isPresent()) {
      return refuted(inequality, example.get(), profile);
    }
    throw new UnreadableException(
        new Refusal(
            "too-hard",
            "Neither squares prove it nor does an example in small numbers refute it here.",
            inquiry.statement().find(),
            0,
            "a difference of sides that is quadratic in the letters, or in their squares",
            ""));
  }

  private static Reduced reduced(Inequality inequality) throws UnreadableException {
    Map<String, Integer> numbers = InequalityReader.numbers(inequality.letters());
    RationalFunction function = FormulaExpansion.expand(inequality.difference(), numbers);
    Formula put = inequality.difference();
    if (inequality.condition().isPresent()) {
      String letter = inequality.condition().get().getKey();
      RationalFunction value = inequality.condition().get().getValue();
      Formula written =
          PolynomialFormula.of(
              value.numerator().times(value.denominator().coefficient(Monomial.ONE).reciprocal()),
              inequality.letters());
      put =
          inequality
              .difference()
              .rewrite(part -> part.equals(Formula.name(letter)) ? written : part);
      function = FormulaExpansion.expand(put, numbers);
    }
    return new Reduced(function.isPolynomial() ? function : function.lowestTerms(), put);
  }

  /** A product of positive letters, or a sum of squares with positive factors, is positive. */
  private static boolean isPositive(MultivariatePolynomial under, Inequality inequality) {
    boolean all = under.terms().values().stream().allMatch(c -> c.signum() > 0);
    boolean even =
        under.terms().keySet().stream()
            .allMatch(
                monomial -> {
                  for (int k = 0; k < monomial.length(); k++) {
                    if (monomial.exponent(k) % 2 != 0) {
                      return false;
                    }
                  }
                  return true;
                });
    boolean constant = under.terms().containsKey(Monomial.ONE);
    return all
        && ((inequality.positive() && inequality.condition().isEmpty()) || (even && constant));
  }

  private Optional<Solution> proved(
      Inequality inequality,
      Reduced reduced,
      MultivariatePolynomial numerator,
      MultivariatePolynomial under,
      ClassProfile profile) {
    QuadraticShape shape = QuadraticShape.of(numerator, inequality.letters());
    Optional<Squares> squares = shape.form().flatMap(Squares::of);
    Optional<MultivariatePolynomial> quotient = Optional.empty();
    if (squares.isEmpty() && inequality.positive() && inequality.condition().isEmpty()) {
      quotient = overSum(numerator, inequality.letters().size());
      if (quotient.isPresent()) {
        shape = QuadraticShape.of(quotient.get(), inequality.letters());
        squares = shape.form().flatMap(Squares::of);
      }
    }
    if (squares.isEmpty()) {
      return Optional.empty();
    }
    Formula squaresWritten = shape.written(squares.get());
    Formula letters = Formula.sum(inequality.letters().stream().map(Formula::name).toList());
    Formula sum = quotient.isEmpty() ? squaresWritten : letters.times(squaresWritten);
    Formula right =
        under.isConstant() ? sum : sum.over(PolynomialFormula.of(under, inequality.letters()));
    Setting setting = Setting.ofLetters(inequality.letters());
    List<Step> steps = new ArrayList<>();
    if (inequality.condition().isPresent()) {
      steps.add(
          Step.argument(
              Idea.ELIMINATE,
              "the condition solved for a letter and put in",
              Formula.equation(
                  Formula.name(inequality.condition().get().getKey()),
                  PolynomialFormula.of(
                      inequality
                          .condition()
                          .get()
                          .getValue()
                          .numerator()
                          .times(
                              inequality
                                  .condition()
                                  .get()
                                  .getValue()
                                  .denominator()
                                  .coefficient(Monomial.ONE)
                                  .reciprocal()),
                      inequality.letters()))));
    }
    Formula left = NormalForm.of(reduced.put());
    Claim claim = Claim.equal(setting, left, NormalForm.of(right));
    SecondOpinion second = checks.require(left, claim);
    steps.add(
        new Step(
            Formula.equation(left, NormalForm.of(right)),
            "the difference of the sides as a sum of squares",
            Idea.BUILD,
            claim));
    boolean definite = squares.get().terms().size() == shape.size();
    String equality = shape.equality(squares.get());
    boolean holds =
        !inequality.strict() || (definite && shape.hasConstant()) || excluded(inequality, sum);
    if (inequality.strict() && !holds) {
      return Optional.empty();
    }
    steps.add(
        Step.argument(
            Idea.INEQUALITY,
            quotient.isPresent()
                ? "squares are not negative, and the sum of positive numbers is positive"
                : under.isConstant()
                    ? "squares of real numbers are not negative"
                    : "squares are not negative, and below the stroke stands a positive number",
            new Formula.Words(
                UnicodeWriter.write(left) + (inequality.strict() ? " > 0" : " ≥ 0"))));
    boolean excluded = inequality.apart().isPresent() && inequality.strict();
    steps.add(
        Step.argument(
            Idea.INEQUALITY,
            excluded ? "when all squares are 0, which is excluded" : "when all squares are 0",
            new Formula.Words("equality " + equality)));
    Answer answer = new Answer.Truth(true);
    Working working =
        Working.of(
            "sum-of-squares-proof",
            "write the difference of the sides as a sum of squares",
            "What is a sum of squares of real numbers is not negative, and 0 only if all are 0.",
            steps,
            answer);
    List<Solution.WrongTurning> slips =
        List.of(
            new Solution.WrongTurning(
                "one-example-against",
                "Complex numbers cannot be compared; an example with them says nothing.",
                new Answer.Truth(false),
                Idea.INEQUALITY,
                10));
    return Optional.of(
        Solution.of("inequality", given(inequality), statement(inequality, true), answer, second)
            .withConditions(List.of("equality " + equality))
            .withWarnings(warnings(inequality))
            .withRoutes(profile.has(working.route()) ? List.of(working) : List.of())
            .withSlips(slips));
  }

  /** Whether the only square is one that is said not to be 0. */
  private static boolean excluded(Inequality inequality, Formula sum) {
    return inequality
        .apart()
        .filter(
            apart ->
                sum.equals(NormalForm.of(apart).power(2))
                    || sum.equals(NormalForm.of(new Formula.Negative(apart)).power(2)))
        .isPresent();
  }

  /** The polynomial over the sum of all letters, if that divides it. */
  private static Optional<MultivariatePolynomial> overSum(
      MultivariatePolynomial polynomial, int letters) {
    int last = letters - 1;
    MultivariatePolynomial others = MultivariatePolynomial.ZERO;
    for (int k = 0; k < last; k++) {
      others = others.plus(MultivariatePolynomial.unknown(k));
    }
    List<MultivariatePolynomial> parts = polynomial.coefficientsIn(last);
    MultivariatePolynomial quotient = MultivariatePolynomial.ZERO;
    MultivariatePolynomial carried = MultivariatePolynomial.ZERO;
    for (int power = parts.size() - 1; power >= 1; power--) {
      carried = parts.get(power).minus(others.times(carried));
      quotient =
          quotient.plus(carried.times(MultivariatePolynomial.unknown(last).power(power - 1)));
    }
    return parts.get(0).minus(others.times(carried)).isZero()
        ? Optional.of(quotient)
        : Optional.empty();
  }

  private static List<Warning> warnings(Inequality inequality) {
    return inequality.domain().isPresent()
        ? List.of()
        : List.of(
            new Warning(
                WarningCode.DOMAIN_OPEN,
                "Say that the numbers are real: complex numbers cannot be compared."));
  }

  private Solution refuted(Inequality inequality, List<Rational> example, ClassProfile profile) {
    Setting setting = Setting.ofLetters(List.of());
    List<Formula> put = new ArrayList<>();
    for (int k = 0; k < example.size(); k++) {
      setting = setting.withDefinition(inequality.letters().get(k), Formula.number(example.get(k)));
      put.add(
          Formula.equation(
              Formula.name(inequality.letters().get(k)), Formula.number(example.get(k))));
    }
    List<Step> steps = new ArrayList<>();
    steps.add(
        Step.argument(
            Idea.CASES, "an example", put.size() == 1 ? put.get(0) : new Formula.Listing(put)));
    List<String> values = new ArrayList<>();
    Optional<SecondOpinion> second = Optional.empty();
    for (Formula side : inequality.claim().sides()) {
      Rational value = valueAt(side, inequality, example);
      values.add(value.toString().replace('-', '−'));
      Formula number = Formula.number(value);
      if (!side.equals(number)) {
        second = Optional.of(checks.require(side, Claim.equal(setting, side, number)));
        steps.add(Step.equation(setting, Idea.ARITHMETIC, "put in", side, number));
      }
    }
    steps.add(
        Step.argument(
            Idea.INEQUALITY,
            "so the claim is false",
            new Formula.Words("%s and %s".formatted(values.get(0), values.get(1)))));
    Answer answer = new Answer.Truth(false);
    Working working =
        Working.of(
            "counterexample",
            "numbers for which it fails",
            "One example against a claim refutes it.",
            steps,
            answer);
    return Solution.of(
            "inequality",
            given(inequality),
            statement(inequality, false),
            answer,
            second.orElse(SecondOpinion.by("the example put in")))
        .withWarnings(warnings(inequality))
        .withRoutes(profile.has(working.route()) ? List.of(working) : List.of())
        .withSlips(
            List.of(
                new Solution.WrongTurning(
                    "example-believed",
                    "Examples that fit prove nothing.",
                    new Answer.Truth(true),
                    Idea.CASES,
                    20)));
  }

  private static Rational valueAt(Formula side, Inequality inequality, List<Rational> example) {
    try {
      RationalFunction function =
          FormulaExpansion.expand(side, InequalityReader.numbers(inequality.letters()));
      return function.numerator().at(example).over(function.denominator().at(example));
    } catch (UnreadableException impossible) {
      throw new IllegalStateException("a side that was read cannot be read", impossible);
    }
  }

  private static String statement(Inequality inequality, boolean holds) {
    String names =
        LetterNames.joined(
            inequality.letters().stream()
                .map(letter -> UnicodeWriter.write(Formula.name(letter)))
                .toList());
    return "Let %s be %s%s. %s %s%s."
        .formatted(
            names,
            inequality.positive()
                ? inequality.letters().size() == 1 ? "a positive number" : "positive numbers"
                : inequality.letters().size() == 1 ? "a real number" : "real numbers",
            inequality.given().map(given -> " with " + UnicodeWriter.write(given)).orElse("")
                + inequality
                    .apart()
                    .map(
                        apart ->
                            " with "
                                + UnicodeWriter.write(
                                    new Formula.Relation(
                                        List.of(apart, Formula.number(0)),
                                        List.of(Formula.Comparison.NOT_EQUAL))))
                    .orElse(""),
            holds ? "Prove that" : "Prove or refute:",
            UnicodeWriter.write(inequality.claim()),
            holds && !inequality.strict() ? ", and say when there is equality" : "");
  }
}
