package rootwright.working.clothing;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaReader;
import rootwright.algebra.notation.NormalForm;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.Refusal;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.value.ExactRoot;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.ExactValues;
import rootwright.algebra.value.RationalValue;
import rootwright.working.answer.Answer;
import rootwright.working.check.Verdict;
import rootwright.working.check.second.RootsCheck;
import rootwright.working.gate.Warning;
import rootwright.working.gate.WarningCode;
import rootwright.working.route.ClassProfile;
import rootwright.working.route.Working;
import rootwright.working.solve.CheckFailedException;
import rootwright.working.solve.Derivation;
import rootwright.working.solve.Given;
import rootwright.working.solve.SecondOpinion;
import rootwright.working.solve.Solution;
import rootwright.working.solve.TwoChecks;
import rootwright.working.step.Claim;
import rootwright.working.step.Idea;
import rootwright.working.step.NumberDomain;
import rootwright.working.step.Step;
import rootwright.working.subject.Inquiry;
import rootwright.working.subject.Subject;

/**
 * Equations that become polynomials: in powers of one base, with one square root, with the unknown
 * below a stroke. What the way back does not allow is thrown out by name.
 */
public final class DisguisedEquations implements Subject {

  private static final String ROUTE = "undress";

  @Override
  public boolean recognises(Inquiry inquiry) {
    String text = inquiry.polynomial();
    boolean like =
        text.contains("=")
            && text.length() < 500
            && inquiry.conditions().isEmpty()
            && (text.contains("^")
                || text.contains("ˣ")
                || text.contains("√")
                || text.contains("sqrt")
                || text.contains("/")
                || text.contains("frac"));
    if (!like) {
      return false;
    }
    try {
      return undressed(text).isPresent();
    } catch (UnreadableException unreadable) {
      return false;
    }
  }

  private record Read(Formula equation, String unknown, Undressed undressed) {}

  private static Optional<Read> undressed(String text) throws UnreadableException {
    Formula equation = FormulaReader.formula(text);
    if (!(equation instanceof Formula.Relation relation)
        || relation.sides().size() != 2
        || relation.comparisons().get(0) != Formula.Comparison.EQUAL) {
      return Optional.empty();
    }
    Set<String> names = new LinkedHashSet<>();
    collect(equation, names);
    if (names.size() != 1) {
      return Optional.empty();
    }
    String unknown = names.iterator().next();
    Formula left =
        NormalForm.of(
            relation.sides().get(1).equals(Formula.number(0))
                ? relation.sides().get(0)
                : relation.sides().get(0).minus(relation.sides().get(1)));
    return ExponentialEquation.of(left, unknown)
        .or(() -> RadicalEquation.of(left, unknown))
        .or(() -> FractionEquation.of(left, unknown))
        .map(found -> new Read(equation, unknown, found));
  }

  private static void collect(Formula formula, Set<String> names) {
    if (formula instanceof Formula.Name name) {
      names.add(name.spelling());
    }
    formula.parts().forEach(part -> collect(part, names));
  }

  @Override
  public Given read(Inquiry inquiry) throws UnreadableException {
    return given(undressed(inquiry.polynomial()).orElseThrow(), ask(inquiry));
  }

  private static DisguisedAsk ask(Inquiry inquiry) throws UnreadableException {
    return DisguisedAsk.of(inquiry.ask())
        .orElseThrow(
            () ->
                new UnreadableException(
                    new Refusal(
                        "unexpected",
                        "Of an equation that is no polynomial the real solutions can be asked for,"
                            + " their sum, their product or their number.",
                        inquiry.statement().find(),
                        0,
                        "sum of the solutions",
                        "sum of the solutions")));
  }

  private static Given given(Read read, DisguisedAsk ask) {
    return new Given(
        read.equation(),
        read.equation(),
        read.unknown(),
        List.of(),
        new Formula.Words(ask.words()),
        List.of(),
        List.of());
  }

  @Override
  public Solution work(Inquiry inquiry, ClassProfile profile) throws UnreadableException {
    DisguisedAsk ask = ask(inquiry);
    Read read = undressed(inquiry.polynomial()).orElseThrow();
    Undressed undressed = read.undressed();
    Answer answer = answer(ask, undressed, undressed.kept());
    List<Step> steps = steps(read, ask, answer);
    Derivation.confirmed("route " + ROUTE, steps, new TwoChecks());
    boolean shown = profile.has(ROUTE) && !(answer instanceof Answer.None);
    Working working =
        Working.of(
            ROUTE,
            "bring it to a polynomial, solve, and come back",
            "Every step that is no equivalence can add solutions: put them back.",
            steps,
            answer);
    return Solution.of(
            "disguised-equation",
            given(read, ask),
            "Find %s of %s.".formatted(ask.words(), UnicodeWriter.write(read.equation())),
            answer,
            second(undressed))
        .withWarnings(warnings(undressed))
        .withRoutes(shown ? List.of(working) : List.of())
        .withSlips(slips(ask, undressed, answer));
  }

  private static List<Warning> warnings(Undressed undressed) {
    List<Warning> warnings = new ArrayList<>();
    for (Undressed.Rejected rejected : undressed.rejected()) {
      if (rejected.value().isReal()) {
        warnings.add(
            new Warning(
                WarningCode.EXTRANEOUS,
                "%s = %s is no solution: %s."
                    .formatted(
                        undressed.letter(),
                        UnicodeWriter.write(rejected.value().toFormula()),
                        rejected.why())));
      }
    }
    return warnings;
  }

  private static Answer answer(DisguisedAsk ask, Undressed undressed, List<ExactValue> values) {
    if (ask == DisguisedAsk.NUMBER) {
      return new Answer.Count(BigInteger.valueOf(values.size()));
    } else if (ask == DisguisedAsk.SOLUTIONS) {
      return undressed.base() == 1
          ? new Answer.Solutions(values)
          : logarithms(values, undressed.base());
    } else if (values.isEmpty()) {
      return new Answer.None("there is no real solution");
    }
    if (undressed.base() > 1) {
      return ask == DisguisedAsk.PRODUCT && values.size() > 1
          ? new Answer.None("a product of logarithms has no simpler form")
          : Totals.product(values)
              .map(product -> number(Totals.logarithm(product, undressed.base())))
              .orElseGet(() -> new Answer.None("the solutions have no common closed form"));
    }
    Optional<ExactValue> total =
        ask == DisguisedAsk.SUM ? Totals.sum(values) : Totals.product(values);
    return total
        .<Answer>map(Answer.Exact::new)
        .orElseGet(() -> new Answer.None("only some conjugates are solutions"));
  }

  private static Answer logarithms(List<ExactValue> values, int base) {
    List<Formula> all = values.stream().map(value -> Totals.logarithm(value, base)).toList();
    if (all.stream().allMatch(Formula.Numeral.class::isInstance)) {
      return new Answer.Solutions(
          all.stream()
              .<ExactValue>map(one -> new RationalValue(((Formula.Numeral) one).value()))
              .toList());
    }
    return new Answer.FunctionOf(all.size() == 1 ? all.get(0) : new Formula.Listing(all));
  }

  private static Answer number(Formula formula) {
    return formula instanceof Formula.Numeral numeral
        ? Answer.exact(numeral.value())
        : new Answer.FunctionOf(formula);
  }

  private static List<Step> steps(Read read, DisguisedAsk ask, Answer answer) {
    Undressed undressed = read.undressed();
    List<Step> steps = new ArrayList<>(undressed.lines());
    String letter = undressed.letter();
    List<ExactValue> real =
        ExactValues.rootsOf(undressed.polynomial()).stream()
            .map(ExactRoot::value)
            .filter(ExactValue::isReal)
            .toList();
    if (!real.isEmpty()) {
      steps.add(
          new Step(
              equations(letter, real.stream().map(ExactValue::toFormula).toList()),
              "the real roots",
              Idea.CASES,
              new Claim.SolutionSet(undressed.polynomial(), NumberDomain.REAL, real)));
    }
    for (Undressed.Rejected rejected : undressed.rejected()) {
      if (rejected.value().isReal()) {
        steps.add(
            Step.argument(
                Idea.DOMAIN,
                "thrown out: " + rejected.why(),
                new Formula.Relation(
                    List.of(Formula.name(letter), rejected.value().toFormula()),
                    List.of(Formula.Comparison.NOT_EQUAL))));
      }
    }
    if (!undressed.kept().isEmpty()) {
      List<Formula> values = solutions(undressed);
      steps.add(
          Step.argument(
              Idea.DOMAIN,
              undressed.base() == 1
                  ? values.size() == 1 ? "this solves the equation" : "these solve the equation"
                  : "back to the unknown",
              equations(read.unknown(), values)));
    }
    if (ask != DisguisedAsk.SOLUTIONS && !(answer instanceof Answer.None)) {
      List<Formula> values = solutions(undressed);
      Formula together =
          values.size() < 2 || ask == DisguisedAsk.NUMBER
              ? answer.formula()
              : ask == DisguisedAsk.SUM ? new Formula.Sum(values) : new Formula.Product(values);
      steps.add(
          Step.argument(
              Idea.STATE,
              undressed.base() > 1 && ask == DisguisedAsk.SUM
                  ? "logarithms add where numbers multiply"
                  : ask.words(),
              together.equals(answer.formula())
                  ? together
                  : Formula.equation(together, answer.formula())));
    }
    return steps;
  }

  /** What is kept, in the unknown of the equation. */
  private static List<Formula> solutions(Undressed undressed) {
    return undressed.kept().stream()
        .map(
            value ->
                undressed.base() == 1
                    ? value.toFormula()
                    : Totals.logarithm(value, undressed.base()))
        .toList();
  }

  /** x = 2, x = 9. */
  private static Formula equations(String letter, List<Formula> values) {
    List<Formula> equations =
        values.stream()
            .<Formula>map(value -> Formula.equation(Formula.name(letter), value))
            .toList();
    return equations.size() == 1 ? equations.get(0) : new Formula.Listing(equations);
  }

  private static List<Solution.WrongTurning> slips(
      DisguisedAsk ask, Undressed undressed, Answer answer) {
    List<Solution.WrongTurning> slips = new ArrayList<>();
    List<ExactValue> all =
        ExactValues.rootsOf(undressed.polynomial()).stream()
            .map(ExactRoot::value)
            .filter(ExactValue::isReal)
            .toList();
    if (undressed.base() == 1 && all.size() > undressed.kept().size()) {
      add(
          slips,
          answer,
          new Solution.WrongTurning(
              "extraneous-kept",
              "Squaring and clearing fractions can add solutions: put every one back.",
              answer(ask, undressed, all),
              Idea.DOMAIN,
              30));
    }
    if (undressed.base() > 1 && ask != DisguisedAsk.NUMBER) {
      Undressed plain =
          new Undressed(
              undressed.polynomial(),
              undressed.letter(),
              List.of(),
              undressed.kept(),
              List.of(),
              1);
      add(
          slips,
          answer,
          new Solution.WrongTurning(
              "wrong-letter",
              "That is the value for the power; the unknown is its exponent.",
              answer(ask, plain, undressed.kept()),
              Idea.SUBSTITUTE,
              25));
      if (ask == DisguisedAsk.SUM) {
        Totals.sum(undressed.kept())
            .ifPresent(
                sum ->
                    add(
                        slips,
                        answer,
                        new Solution.WrongTurning(
                            "logarithm-of-the-sum",
                            "Logarithms add where the numbers multiply.",
                            number(Totals.logarithm(sum, undressed.base())),
                            Idea.STATE,
                            15)));
      }
    }
    return slips;
  }

  private static void add(
      List<Solution.WrongTurning> slips, Answer answer, Solution.WrongTurning slip) {
    if (!slip.value().equals(answer) && !(slip.value() instanceof Answer.None)) {
      slips.add(slip);
    }
  }

  /** The roots on enclosures; the exact roots are those of the factors. */
  private static SecondOpinion second(Undressed undressed) {
    Verdict verdict =
        RootsCheck.of(undressed.polynomial(), ExactValues.rootsOf(undressed.polynomial()));
    if (!(verdict instanceof Verdict.Confirmed confirmed)) {
      throw new CheckFailedException(
          "the answer",
          PolynomialFormula.of(undressed.polynomial(), undressed.letter()),
          verdict.toString());
    }
    return SecondOpinion.by(confirmed.method());
  }
}
