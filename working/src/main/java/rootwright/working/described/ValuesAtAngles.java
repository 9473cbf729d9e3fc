package rootwright.working.described;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Pattern;
import rootwright.algebra.enclosure.ComplexBall;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaReader;
import rootwright.algebra.notation.NormalForm;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.ReadFormula;
import rootwright.algebra.notation.Reading;
import rootwright.algebra.notation.Refusal;
import rootwright.algebra.notation.RootNames;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.value.ExactRoot;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.ExactValues;
import rootwright.working.answer.Answer;
import rootwright.working.check.exact.Valuation;
import rootwright.working.check.second.Enclosed;
import rootwright.working.kind.Kinds;
import rootwright.working.problem.Angle;
import rootwright.working.problem.Problem;
import rootwright.working.route.ClassProfile;
import rootwright.working.route.Working;
import rootwright.working.solve.Derivation;
import rootwright.working.solve.Given;
import rootwright.working.solve.SecondOpinion;
import rootwright.working.solve.SlipRunner;
import rootwright.working.solve.Solution;
import rootwright.working.solve.TwoChecks;
import rootwright.working.step.Claim;
import rootwright.working.step.Setting;
import rootwright.working.step.Step;
import rootwright.working.subject.Inquiry;
import rootwright.working.subject.Subject;

/**
 * The exact value of an expression in values at angles, where no polynomial is given: {@code
 * cos(π/7)·cos(2π/7)·cos(3π/7)}.
 *
 * <p>Where the values, or their squares, are all the roots of a polynomial and the expression is
 * symmetric in them, it is worked by that polynomial too.
 */
public final class ValuesAtAngles implements Subject {

  private static final Pattern ANGLES =
      Pattern.compile(".*(?:cos|sin|tan|cot|sec|csc)[^a-z].*(?:π|pi).*", Pattern.DOTALL);

  private static final int DIGITS = 50;

  private final Kinds kinds;
  private final TwoChecks checks = new TwoChecks();

  /** The kinds that work asks about a polynomial once it is found. */
  public ValuesAtAngles(Kinds kinds) {
    this.kinds = kinds;
  }

  @Override
  public boolean recognises(Inquiry inquiry) {
    return inquiry.polynomial().isEmpty()
        && inquiry.conditions().isEmpty()
        && inquiry.ask().length() < 2_000
        && ANGLES.matcher(inquiry.ask().toLowerCase(Locale.ROOT)).matches();
  }

  @Override
  public Given read(Inquiry inquiry) throws UnreadableException {
    ReadFormula read = FormulaReader.read(inquiry.ask());
    return given(
        ListedNumbers.tidied(read.formula()), read.readings().stream().map(Reading::text).toList());
  }

  private static Given given(Formula ask, List<String> readings) {
    Formula nothing = new Formula.Words("");
    return new Given(nothing, nothing, Described.UNKNOWN, List.of(), ask, List.of(), readings);
  }

  @Override
  public Solution work(Inquiry inquiry, ClassProfile profile) throws UnreadableException {
    Given given = read(inquiry);
    Formula ask = given.find();
    AngleField field =
        AngleField.of(List.of(ask))
            .orElseThrow(
                () ->
                    refused(
                        inquiry,
                        "too-large",
                        "The angles have no common measure of at least 2π/%d."
                            .formatted(AngleField.LARGEST_ORDER)));
    Polynomial element =
        field
            .residue(ask)
            .orElseThrow(
                () ->
                    refused(
                        inquiry,
                        "not-a-value",
                        "This is no rational expression in values at angles, or a denominator in it"
                            + " is zero."));
    Polynomial minimal = field.minimalPolynomial(element);
    ExactValue value = value(ask, minimal);
    Answer answer = new Answer.Exact(value);
    SecondOpinion second = secondOpinion(ask, minimal, value);
    List<Working> routes = new ArrayList<>();
    Optional<Solution> handed = byPolynomial(ask, inquiry.ask(), profile, answer);
    handed.map(Solution::routes).ifPresent(routes::addAll);
    if (profile.has(UnityLines.ROUTE)) {
      List<Step> lines = UnityLines.of(ask, field, minimal, value);
      Derivation.confirmed("route " + UnityLines.ROUTE, lines, checks);
      routes.add(UnityLines.working(lines, answer));
    }
    routes.sort(Working.CHEAPEST_FIRST);
    return Solution.of(
            "value",
            given,
            "Find the exact value of %s.".formatted(UnicodeWriter.write(ask)),
            answer,
            second)
        .withRoutes(routes)
        .withDeclined(handed.map(Solution::declined).orElse(List.of()))
        .withSlips(
            new SlipRunner.Slipped(
                handed.map(Solution::slips).orElse(List.of()),
                handed.map(Solution::silent).orElse(List.of())));
  }

  /** The one root of the minimal polynomial that the expression can be. */
  private static ExactValue value(Formula ask, Polynomial minimal) {
    List<ExactValue> candidates =
        ExactValues.rootsOf(minimal).stream().map(ExactRoot::value).toList();
    for (int digits = DIGITS; ; digits *= 2) {
      ComplexBall ball = Enclosed.of(ask, digits);
      int now = digits;
      List<ExactValue> met =
          candidates.stream().filter(one -> one.enclosure(now).overlaps(ball)).toList();
      if (met.size() == 1) {
        return met.get(0);
      }
    }
  }

  /** The exact check: the expression is a root of its polynomial; the second: which one it is. */
  private SecondOpinion secondOpinion(Formula ask, Polynomial minimal, ExactValue value) {
    Formula a = Formula.name("A");
    checks.require(
        ask,
        Claim.equal(
            Setting.ofLetters(List.of()).withDefinition("A", ask),
            PolynomialFormula.of(minimal, "A").rewrite(part -> part.equals(a) ? ask : part),
            Formula.number(0)));
    boolean agrees = value.enclosure(DIGITS).overlaps(Enclosed.of(ask, DIGITS));
    return new SecondOpinion("power series of the cosine", agrees, OptionalInt.of(DIGITS - 20));
  }

  private Optional<Solution> byPolynomial(
      Formula ask, String text, ClassProfile profile, Answer answer) throws UnreadableException {
    Set<Formula> atoms = new LinkedHashSet<>();
    collect(ask, atoms);
    for (int power = 1; power <= 2; power++) {
      int raised = power;
      List<Formula> numbers =
          atoms.stream().map(atom -> raised == 1 ? atom : atom.power(2)).toList();
      if (numbers.size() < 2
          || numbers.size() > 12
          || !(Described.listed(numbers, text) instanceof Described.Known known)
          || known.polynomial().degree() != numbers.size()
          || !known.warnings().isEmpty()) {
        continue;
      }
      List<String> names = RootNames.usual(numbers.size(), Set.of(Described.UNKNOWN));
      Optional<Formula> inNames = inNames(ask, List.copyOf(atoms), power, names);
      if (inNames.isPresent()) {
        Problem problem =
            new Problem(
                known.polynomial(),
                PolynomialFormula.of(known.polynomial(), Described.UNKNOWN),
                Described.UNKNOWN,
                names,
                inNames.get(),
                List.of());
        if (Valuation.of(inNames.get(), problem.setting()) instanceof Valuation.Determined) {
          Solution found = kinds.solve(problem, profile);
          if (found.answer().equals(answer)) {
            return Optional.of(
                Derivation.confirmed(known.route(), known.lines(), checks)
                    .before(found, Given.of(problem), found.statement(), List.of()));
          }
        }
      }
    }
    return Optional.empty();
  }

  /** The expression with the k-th name for the k-th number; empty if that leaves an angle. */
  private static Optional<Formula> inNames(
      Formula ask, List<Formula> atoms, int power, List<String> names) {
    Formula named = replaced(ask, atoms, power, names);
    boolean left = named.contains(part -> part instanceof Formula.Application);
    return left ? Optional.empty() : Optional.of(NormalForm.of(named));
  }

  private static Formula replaced(
      Formula formula, List<Formula> atoms, int power, List<String> names) {
    int atom = atoms.indexOf(formula);
    if (atom >= 0 && power == 1) {
      return Formula.name(names.get(atom));
    }
    if (power == 2
        && formula instanceof Formula.Power raised
        && atoms.contains(raised.base())
        && raised.exponent() instanceof Formula.Numeral exponent
        && exponent.value().over(Rational.TWO).isInteger()) {
      Formula name = Formula.name(names.get(atoms.indexOf(raised.base())));
      int half = exponent.value().intValueExact() / 2;
      return half == 1 ? name : name.power(half);
    }
    return formula.withParts(
        formula.parts().stream().map(part -> replaced(part, atoms, power, names)).toList());
  }

  private static void collect(Formula formula, Set<Formula> atoms) {
    if (formula instanceof Formula.Application application
        && Angle.argument(application).isPresent()) {
      atoms.add(formula);
    } else {
      formula.parts().forEach(part -> collect(part, atoms));
    }
  }

  private static UnreadableException refused(Inquiry inquiry, String code, String sentence) {
    return new UnreadableException(
        new Refusal(code, sentence, inquiry.statement().find(), 0, "other angles", ""));
  }
}
