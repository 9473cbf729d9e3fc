package rootwright.working.fraction;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rootwright.algebra.factor.Factorisation;
import rootwright.algebra.factor.IrreducibleFactor;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaExpansion;
import rootwright.algebra.notation.FormulaNames;
import rootwright.algebra.notation.Refusal;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.answer.Answer;
import rootwright.working.gate.Warning;
import rootwright.working.gate.WarningCode;
import rootwright.working.route.ClassProfile;
import rootwright.working.route.Working;
import rootwright.working.solve.Derivation;
import rootwright.working.solve.Given;
import rootwright.working.solve.SecondOpinion;
import rootwright.working.solve.Solution;
import rootwright.working.solve.TwoChecks;
import rootwright.working.step.Claim;
import rootwright.working.step.Idea;
import rootwright.working.step.Setting;
import rootwright.working.step.Step;
import rootwright.working.subject.Inquiry;
import rootwright.working.subject.Subject;

/**
 * A fraction with numbers for coefficients split into partial fractions, a repeated factor with all
 * its powers, and expressions in the numerators.
 */
public final class PartialFractionsOfNumbers implements Subject {

  private final TwoChecks checks = new TwoChecks();

  @Override
  public boolean recognises(Inquiry inquiry) {
    return FractionReader.isLike(inquiry);
  }

  @Override
  public Given read(Inquiry inquiry) throws UnreadableException {
    return given(FractionReader.read(inquiry));
  }

  private static Given given(FractionReader.Read read) {
    Formula shown =
        read.ask().isPresent() ? read.ask().get() : new Formula.Words("partial fractions");
    List<Formula> conditions =
        read.shape().map(shape -> Formula.equation(read.whole(), shape)).stream().toList();
    Formula place = conditions.isEmpty() ? read.whole() : new Formula.Words("");
    return new Given(place, place, read.fractions().x(), List.of(), shown, conditions, List.of());
  }

  @Override
  public Solution work(Inquiry inquiry, ClassProfile profile) throws UnreadableException {
    FractionReader.Read read = FractionReader.read(inquiry);
    ExplicitFractions fractions = read.fractions();
    Optional<List<Rational>> solved = fractions.solution();
    if (solved.isEmpty()) {
      return incomplete(read);
    }
    Map<String, Rational> values = new LinkedHashMap<>();
    for (int k = 0; k < solved.get().size(); k++) {
      values.put(fractions.letters().get(k), solved.get().get(k));
    }
    Answer answer = answer(read, values, inquiry);
    Formula sum = FractionLines.sum(fractions, Optional.of(values));
    SecondOpinion second =
        checks.require(
            sum, Claim.equal(Setting.ofLetters(List.of(fractions.x())), read.whole(), sum));
    FractionLines lines = new FractionLines(fractions, read.whole(), values);
    List<Working> found = new ArrayList<>();
    boolean linear =
        Factorisation.of(fractions.below()).factors().stream()
            .anyMatch(factor -> factor.polynomial().degree() == 1);
    List<Step> last = last(read, values, answer);
    if (linear) {
      found.add(
          working(
              "cover-up",
              "put in the numbers at which the denominator is 0",
              "Equal polynomials are equal everywhere, also where the fractions are not defined.",
              joined(lines.coverUp(), last),
              answer));
    }
    found.add(
        working(
            "compare-coefficients",
            "compare all coefficients",
            "Equal polynomials have the same coefficients.",
            joined(lines.compare(), last),
            answer));
    List<Working> routes = new ArrayList<>();
    List<Solution.DeclinedRoute> declined = new ArrayList<>();
    if (!linear) {
      declined.add(
          new Solution.DeclinedRoute(
              "cover-up",
              "put in the numbers at which the denominator is 0",
              "the denominator has no rational zero"));
    }
    for (Working working : found) {
      if (profile.has(working.route())) {
        routes.add(working);
      } else {
        declined.add(
            new Solution.DeclinedRoute(
                working.route(), working.title(), "this class does not have it yet"));
      }
    }
    routes.sort(Working.CHEAPEST_FIRST);
    return Solution.of("partial-fractions", given(read), statement(read), answer, second)
        .withConditions(conditions(fractions))
        .withWarnings(warnings(fractions))
        .withRoutes(routes)
        .withDeclined(declined)
        .withSlips(slips(read, values, answer, inquiry));
  }

  private static List<Step> joined(List<Step> lines, List<Step> last) {
    List<Step> all = new ArrayList<>(lines);
    all.addAll(last);
    return all;
  }

  /** The line for an expression in the letters, if one is asked. */
  private static List<Step> last(
      FractionReader.Read read, Map<String, Rational> values, Answer answer) {
    if (read.ask().isEmpty() || !(answer instanceof Answer.Exact exact)) {
      return List.of();
    }
    Setting setting = Setting.ofLetters(List.of());
    for (Map.Entry<String, Rational> value : values.entrySet()) {
      setting = setting.withDefinition(value.getKey(), Formula.number(value.getValue()));
    }
    Formula value = exact.value().toFormula();
    return List.of(Step.equation(setting, Idea.ARITHMETIC, "put in", read.ask().get(), value));
  }

  private static Answer answer(
      FractionReader.Read read, Map<String, Rational> values, Inquiry inquiry)
      throws UnreadableException {
    if (read.ask().isEmpty()) {
      return new Answer.FunctionOf(FractionLines.sum(read.fractions(), Optional.of(values)));
    }
    Formula ask = read.ask().get();
    if (!values.keySet().containsAll(FormulaNames.in(ask))) {
      throw new UnreadableException(
          new Refusal(
              "unknown-letter",
              "Only the letters above the strokes can be asked for.",
              inquiry.statement().find(),
              0,
              "such as " + String.join(", ", values.keySet()),
              String.join(", ", values.keySet())));
    }
    if (ask instanceof Formula.Listing listing) {
      List<Formula> each = new ArrayList<>();
      for (Formula item : listing.items()) {
        each.add(Formula.equation(item, Formula.number(value(item, values))));
      }
      return new Answer.Items(List.of(new Formula.Listing(each)));
    }
    try {
      return Answer.exact(value(ask, values));
    } catch (UnreadableException undefined) {
      return new Answer.None("a denominator of the expression is 0");
    }
  }

  private static Rational value(Formula expression, Map<String, Rational> values)
      throws UnreadableException {
    Formula numbers =
        expression.rewrite(
            part ->
                part instanceof Formula.Name name && values.containsKey(name.spelling())
                    ? Formula.number(values.getOrDefault(name.spelling(), Rational.ZERO))
                    : part);
    return FormulaExpansion.polynomial(numbers, "x").coefficient(0);
  }

  /** The form that was given has no solution, or more than one. */
  private static Solution incomplete(FractionReader.Read read) {
    boolean repeated = !read.fractions().below().isSquarefree();
    String why =
        "no numbers, or more than one choice of them, make this form equal to the fraction";
    Formula full =
        FractionLines.sum(
            new ExplicitFractions(
                read.fractions().x(),
                read.fractions().above(),
                read.fractions().below(),
                FractionReader.parts(read.fractions().below(), read.fractions().x())),
            Optional.empty());
    return Solution.none("partial-fractions", given(read), statement(read), why)
        .withWarnings(
            List.of(
                new Warning(
                    repeated ? WarningCode.REPEATED_ROOT : WarningCode.CONTRADICTORY,
                    "The form is not the right one%s; %s is."
                        .formatted(
                            repeated
                                ? ": a repeated factor needs all its powers below a stroke"
                                : "",
                            UnicodeWriter.write(full)))));
  }

  private Working working(
      String route, String title, String teaches, List<Step> steps, Answer answer) {
    Derivation.confirmed("route " + route, steps, checks);
    return Working.of(route, title, teaches, steps, answer);
  }

  private static List<String> conditions(ExplicitFractions fractions) {
    List<String> conditions = new ArrayList<>();
    for (IrreducibleFactor factor : Factorisation.of(fractions.below()).factors()) {
      if (factor.polynomial().degree() == 1) {
        Rational at = factor.polynomial().coefficient(0).over(factor.polynomial().lead()).negate();
        conditions.add("%s ≠ %s".formatted(fractions.x(), at.toString().replace('-', '−')));
      }
    }
    return conditions;
  }

  private static List<Warning> warnings(ExplicitFractions fractions) {
    return fractions.above().gcd(fractions.below()).degree() < 1
        ? List.of()
        : List.of(
            new Warning(
                WarningCode.REDUNDANT,
                "Numerator and denominator have a common factor, so some numerators are 0; shorten the fraction first."));
  }

  private static List<Solution.WrongTurning> slips(
      FractionReader.Read read, Map<String, Rational> values, Answer answer, Inquiry inquiry)
      throws UnreadableException {
    ExplicitFractions fractions = read.fractions();
    List<Solution.WrongTurning> slips = new ArrayList<>();
    Map<String, Rational> powersOnly = new LinkedHashMap<>(values);
    Map<String, Rational> turned = new LinkedHashMap<>(values);
    for (ExplicitFractions.Part part : fractions.parts()) {
      Polynomial denominator = part.denominator();
      boolean top = fractions.cofactor(part).gcd(denominator).degree() < 1;
      if (!top) {
        part.letters().forEach(letter -> powersOnly.put(letter, Rational.ZERO));
      }
      Polynomial radical = denominator.squarefreePart();
      if (radical.degree() == 1 && part.letters().size() == 1) {
        Rational mirrored = radical.coefficient(0).over(radical.lead());
        Rational c = fractions.cofactor(part).at(mirrored);
        if (top && !c.isZero()) {
          turned.put(part.letters().get(0), fractions.division().remainder().at(mirrored).over(c));
        }
      }
    }
    add(
        slips,
        read,
        powersOnly,
        "lower-power-forgotten",
        "A repeated factor brings a fraction for each of its powers.",
        inquiry);
    add(
        slips,
        read,
        turned,
        "root-with-wrong-sign",
        "The denominator x − c is 0 at c, not at −c.",
        inquiry);
    if (read.ask().isEmpty() && !fractions.division().quotient().isZero()) {
      ExplicitFractions proper =
          new ExplicitFractions(
              fractions.x(),
              fractions.division().remainder(),
              fractions.below(),
              fractions.parts());
      slips.add(
          new Solution.WrongTurning(
              "division-forgotten",
              "The numerator must have the lower degree; the quotient belongs to the answer.",
              new Answer.FunctionOf(FractionLines.sum(proper, Optional.of(values))),
              Idea.ARITHMETIC,
              30));
    }
    slips.removeIf(slip -> slip.value().equals(answer));
    return slips;
  }

  private static void add(
      List<Solution.WrongTurning> slips,
      FractionReader.Read read,
      Map<String, Rational> wrong,
      String name,
      String text,
      Inquiry inquiry)
      throws UnreadableException {
    slips.add(
        new Solution.WrongTurning(
            name, text, answer(read, wrong, inquiry), Idea.PARTIAL_FRACTIONS, 25));
  }

  private static String statement(FractionReader.Read read) {
    String whole = UnicodeWriter.write(read.whole());
    if (read.ask().isEmpty()) {
      return "Write %s as a sum of partial fractions.".formatted(whole);
    }
    Formula ask = read.ask().get();
    List<String> letters = read.fractions().letters();
    return "Let %s be the numbers with %s wherever both sides are defined. Find %s."
        .formatted(
            String.join(", ", letters),
            UnicodeWriter.write(Formula.equation(read.whole(), read.shape().orElse(ask))),
            UnicodeWriter.write(ask));
  }
}
