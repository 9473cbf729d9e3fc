package rootwright.working.clothing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.enclosure.RealBall;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaReader;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.value.ExactRoot;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.ExactValues;
import rootwright.algebra.value.QuadraticSurd;
import rootwright.algebra.value.RationalValue;
import rootwright.working.answer.Answer;
import rootwright.working.ask.ProblemReader;
import rootwright.working.gate.Warning;
import rootwright.working.gate.WarningCode;
import rootwright.working.problem.Problem;
import rootwright.working.problem.Statement;
import rootwright.working.route.ClassProfile;
import rootwright.working.route.Working;
import rootwright.working.solve.CheckFailedException;
import rootwright.working.solve.Given;
import rootwright.working.solve.SecondOpinion;
import rootwright.working.solve.Solution;
import rootwright.working.step.Idea;
import rootwright.working.step.Step;
import rootwright.working.subject.Inquiry;
import rootwright.working.subject.Subject;

/**
 * √r + √s for a quadratic with positive roots: its square is r + s + 2·√(rs). The same twice gives
 * fourth roots. Where a root sign does not come out the ask is left to others.
 */
public final class RootsOfRoots implements Subject {

  private static final String ROUTE = "square";

  private static final int DIGITS = 40;

  @Override
  public boolean recognises(Inquiry inquiry) {
    String ask = inquiry.ask();
    boolean like =
        ask.contains("√") || ask.contains("sqrt") || ask.contains("∜") || ask.contains("1/4");
    if (!like || ask.length() > 60 || !inquiry.conditions().isEmpty()) {
      return false;
    }
    try {
      return index(FormulaReader.formula(ask)).isPresent() && problem(inquiry).degree() == 2;
    } catch (UnreadableException unreadable) {
      return false;
    }
  }

  /** 2 or 4 for the sum of two such roots of two different names. */
  private static Optional<Integer> index(Formula ask) {
    if (!(ask instanceof Formula.Sum sum) || sum.terms().size() != 2) {
      return Optional.empty();
    }
    Optional<Integer> first = indexOfTerm(sum.terms().get(0));
    boolean alike =
        first.equals(indexOfTerm(sum.terms().get(1)))
            && !sum.terms().get(0).equals(sum.terms().get(1));
    return alike ? first.filter(k -> k == 2 || k == 4) : Optional.empty();
  }

  private static Optional<Integer> indexOfTerm(Formula term) {
    if (term instanceof Formula.Radical radical && radical.radicand() instanceof Formula.Name) {
      return Optional.of(radical.index());
    }
    return term instanceof Formula.Power power
            && power.base() instanceof Formula.Name
            && power.exponent().equals(Formula.number(Rational.of(1, 4)))
        ? Optional.of(4)
        : Optional.empty();
  }

  private static Problem problem(Inquiry inquiry) throws UnreadableException {
    Statement statement = inquiry.statement();
    return ProblemReader.read(
        new Statement(statement.polynomial(), "S_1", statement.roots(), statement.unknown()));
  }

  @Override
  public Given read(Inquiry inquiry) throws UnreadableException {
    return Given.of(problem(inquiry)).withFind(FormulaReader.formula(inquiry.ask()));
  }

  @Override
  public Solution work(Inquiry inquiry, ClassProfile profile) throws UnreadableException {
    Given given = read(inquiry);
    Polynomial p = problem(inquiry).polynomial().monic();
    Rational sum = p.coefficient(1).negate();
    Rational product = p.coefficient(0);
    int index = index(given.find()).orElseThrow();
    List<Step> steps = new ArrayList<>();
    List<ExactValue> roots = ExactValues.rootsOf(p).stream().map(ExactRoot::value).toList();
    boolean positive =
        sum.signum() > 0 && product.signum() > 0 && roots.stream().allMatch(ExactValue::isReal);
    String why = "the roots are not both positive, so it is open which square roots are meant";
    Optional<ExactValue> value = Optional.empty();
    if (positive) {
      why = "the square root of the product is not rational, so nested root signs stay";
      value = squared(sum, product, "√", steps);
      if (index == 4 && value.isPresent()) {
        value =
            rational(value.get())
                .flatMap(
                    inner ->
                        rational(root(product))
                            .flatMap(second -> squared(inner, second, "∜", steps)));
      }
    }
    if (value.isEmpty()) {
      return solution(given, new Answer.None(why), List.of(), positive, List.of(), profile);
    }
    check(given.find(), value.get(), ExactValues.rootsOf(p), index);
    Rational wrong = index == 2 ? sum : rational(root(sum)).orElse(sum);
    ExactValue slip = root(wrong);
    Answer answer = new Answer.Exact(value.get());
    return solution(
        given,
        answer,
        steps,
        true,
        slip.equals(value.get())
            ? List.of()
            : List.of(
                new Solution.WrongTurning(
                    "cross-term-dropped",
                    "The square of √r + √s has the cross term 2√(rs).",
                    new Answer.Exact(slip),
                    Idea.EXPAND,
                    25)),
        profile);
  }

  /** √(sum + 2·√product), if √product is rational. */
  private static Optional<ExactValue> squared(
      Rational sum, Rational product, String sign, List<Step> steps) {
    Optional<Rational> cross = rational(root(product));
    if (cross.isEmpty()) {
      return Optional.empty();
    }
    Rational square = sum.plus(cross.get().times(2));
    ExactValue value = root(square);
    steps.add(
        Step.argument(
            Idea.EXPAND,
            "square: the sum of the two, and twice the square root of their product",
            Formula.equation(
                new Formula.Words("(%sr + %ss)²".formatted(sign, sign)),
                Formula.number(sum)
                    .plus(Formula.number(2).times(new Formula.Radical(Formula.number(product), 2))),
                Formula.number(square))));
    steps.add(
        Step.argument(
            Idea.DOMAIN,
            "both are positive",
            Formula.equation(
                new Formula.Words("%sr + %ss".formatted(sign, sign)), value.toFormula())));
    return Optional.of(value);
  }

  private static ExactValue root(Rational square) {
    return QuadraticSurd.of(Rational.ZERO, Rational.ONE, square);
  }

  private static Optional<Rational> rational(ExactValue value) {
    return value instanceof RationalValue number ? Optional.of(number.number()) : Optional.empty();
  }

  /** The square roots of the enclosures of the roots, added up. */
  private static void check(Formula ask, ExactValue value, List<ExactRoot> roots, int index) {
    RealBall sum = RealBall.exact(0);
    for (ExactRoot root : roots) {
      RealBall one = root.value().enclosure(DIGITS).real().root(index, 4 * DIGITS);
      for (int k = 0; k < root.multiplicity(); k++) {
        sum = sum.plus(one);
      }
    }
    if (!sum.overlaps(value.enclosure(DIGITS).real())) {
      throw new CheckFailedException("the answer", ask, "enclosures of the roots lie elsewhere");
    }
  }

  private static Solution solution(
      Given given,
      Answer answer,
      List<Step> steps,
      boolean positive,
      List<Solution.WrongTurning> slips,
      ClassProfile profile) {
    boolean none = answer instanceof Answer.None;
    List<Working> routes =
        none || !profile.has(ROUTE)
            ? List.of()
            : List.of(
                Working.of(
                    ROUTE,
                    "square the ask",
                    "Squared, a sum of square roots shows the sum and the product of the roots.",
                    steps,
                    answer));
    List<Warning> warnings =
        none
            ? List.of(
                new Warning(
                    positive ? WarningCode.DOMAIN_OPEN : WarningCode.NOT_REAL,
                    "There is no answer in this form: " + ((Answer.None) answer).why() + "."))
            : List.of();
    return Solution.of(
            "roots-of-roots",
            given,
            "Let r, s be the roots of %s, which are positive. Find %s, the positive roots being meant."
                .formatted(
                    UnicodeWriter.write(Formula.equation(given.polynomial(), Formula.number(0))),
                    UnicodeWriter.write(given.find())),
            answer,
            none
                ? SecondOpinion.NOTHING_TO_CHECK
                : SecondOpinion.by("roots of the enclosures", DIGITS - 5))
        .withConditions(none ? List.of() : List.of("both roots are positive"))
        .withWarnings(warnings)
        .withRoutes(routes)
        .withSlips(slips);
  }
}
