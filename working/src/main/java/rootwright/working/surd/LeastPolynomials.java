package rootwright.working.surd;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaReader;
import rootwright.algebra.notation.NormalForm;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.Refusal;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.value.SurdSum;
import rootwright.working.answer.Answer;
import rootwright.working.gate.Warning;
import rootwright.working.gate.WarningCode;
import rootwright.working.problem.SurdReader;
import rootwright.working.route.ClassProfile;
import rootwright.working.route.Working;
import rootwright.working.solve.Derivation;
import rootwright.working.solve.Given;
import rootwright.working.solve.SecondOpinion;
import rootwright.working.solve.Solution;
import rootwright.working.solve.TwoChecks;
import rootwright.working.step.Idea;
import rootwright.working.step.Setting;
import rootwright.working.step.Step;
import rootwright.working.subject.Inquiry;
import rootwright.working.subject.Subject;

/**
 * The polynomial of least degree with rational coefficients that has given numbers with square
 * roots among its roots: each number brings its conjugates.
 */
public final class LeastPolynomials implements Subject {

  private static final String X = "x";

  private static final int HIGHEST_DEGREE = 16;

  private static final Pattern ASK =
      Pattern.compile(
          "(?:find |what is )?(?:the |a )?(?:(?:minimal|minimum|least|monic|integer|rational|lowest|"
              + "irreducible) )*polynomial(?: of (?:least|lowest|smallest) degree)?"
              + "(?: (?:with|over) (?:the )?(?<field>rational|integer|whole|real)s?"
              + "(?: numbers)?(?: coefficients)?)? (?:of|for|with roots?|having|that has|with)"
              + "(?: the)?(?: roots?)?(?<list>.*?)(?: (?:as|among its) roots?)?",
          Pattern.DOTALL | Pattern.CASE_INSENSITIVE);

  private final TwoChecks checks = new TwoChecks();

  @Override
  public boolean recognises(Inquiry inquiry) {
    return inquiry.polynomial().isEmpty()
        && inquiry.conditions().isEmpty()
        && inquiry.ask().length() < 500
        && ASK.matcher(inquiry.ask().strip()).matches();
  }

  private record Read(List<Formula> written, List<SurdSum> numbers, boolean real) {}

  private static Read readNumbers(Inquiry inquiry) throws UnreadableException {
    Matcher matcher = ASK.matcher(inquiry.ask().strip().replaceAll("\\.$", ""));
    if (!matcher.matches()) {
      throw new IllegalStateException(inquiry.ask());
    }
    String list = Optional.ofNullable(matcher.group("list")).orElse("").strip();
    Formula formula = FormulaReader.formula(list.replaceAll("^\\((.*)\\)$", "$1"));
    List<Formula> written =
        formula instanceof Formula.Listing listing ? listing.items() : List.of(formula);
    List<SurdSum> numbers = new ArrayList<>();
    for (Formula one : written) {
      numbers.add(
          SurdReader.of(one)
              .orElseThrow(
                  () ->
                      refused(
                          inquiry,
                          "%s is no number written with square roots and i."
                              .formatted(UnicodeWriter.write(one)))));
    }
    boolean real = Optional.ofNullable(matcher.group("field")).orElse("").equalsIgnoreCase("real");
    return new Read(written, numbers, real);
  }

  @Override
  public Given read(Inquiry inquiry) throws UnreadableException {
    return given(readNumbers(inquiry));
  }

  private static Given given(Read read) {
    Formula nothing = new Formula.Words("");
    Formula list =
        read.written().size() == 1 ? read.written().get(0) : new Formula.Listing(read.written());
    return new Given(
        nothing,
        nothing,
        X,
        List.of(),
        new Formula.Application("polynomial with roots", List.of(list)),
        List.of(),
        List.of());
  }

  @Override
  public Solution work(Inquiry inquiry, ClassProfile profile) throws UnreadableException {
    Read read = readNumbers(inquiry);
    List<SurdSum> roots = new ArrayList<>();
    for (Conjugates one : classes(read)) {
      one.members().forEach(root -> roots.addAll(Collections.nCopies(one.times(), root)));
    }
    if (roots.size() > HIGHEST_DEGREE) {
      throw refused(
          inquiry,
          "The polynomial would have degree %d; up to %d is worked."
              .formatted(roots.size(), HIGHEST_DEGREE));
    }
    if (read.real() && !roots.stream().allMatch(root -> roots.containsAll(root.conjugates()))) {
      return notRational(read);
    }
    Polynomial polynomial = SurdSum.withRoots(roots).primitive();
    Answer answer = new Answer.PolynomialIn(polynomial, X);
    List<Working> routes = new ArrayList<>();
    List<Step> lines = conjugateLines(read, polynomial);
    Derivation.confirmed("route conjugates", lines, checks);
    routes.add(
        working(
            "conjugates",
            "every number brings its conjugates",
            "With rational coefficients, a sign of a square root may be changed in every root.",
            lines,
            answer));
    squaring(read, polynomial)
        .ifPresent(
            steps -> {
              Derivation.confirmed("route square", steps, checks);
              routes.add(
                  working(
                      "square",
                      "isolate and square until no square root is left",
                      "Squaring removes a square root that stands alone.",
                      steps,
                      answer));
            });
    routes.removeIf(working -> !profile.has(working.route()));
    routes.sort(Working.CHEAPEST_FIRST);
    Step factors = linearFactors(roots, polynomial, "all conjugates");
    SecondOpinion second = checks.require(factors.shown(), factors.claim());
    return solution(read, answer, second).withRoutes(routes).withSlips(slips(read, answer));
  }

  /**
   * Conjugate numbers, and how often each of them is a root: as often as the one of them that is
   * listed most often.
   */
  private record Conjugates(List<SurdSum> members, int times) {}

  private static List<Conjugates> classes(Read read) {
    List<Conjugates> all = new ArrayList<>();
    for (SurdSum number : read.numbers()) {
      List<SurdSum> members = conjugates(number, read.real());
      if (all.stream().noneMatch(known -> known.members().contains(number))) {
        int times =
            members.stream()
                .mapToInt(member -> Collections.frequency(read.numbers(), member))
                .max()
                .orElse(1);
        all.add(new Conjugates(members, times));
      }
    }
    return all;
  }

  /** With real coefficients only the sign of i may be changed. */
  private static List<SurdSum> conjugates(SurdSum number, boolean real) {
    if (!real) {
      return number.conjugates();
    }
    List<SurdSum> both = new ArrayList<>(List.of(number));
    SurdSum other = SurdSum.ZERO;
    for (var term : number.terms().entrySet()) {
      SurdSum part =
          SurdSum.squareRoot(Rational.of(term.getKey())).times(SurdSum.of(term.getValue()));
      other = other.plus(term.getKey().signum() < 0 ? part.negate() : part);
    }
    if (!other.equals(number)) {
      both.add(other);
    }
    return both;
  }

  private Solution notRational(Read read) {
    String why =
        "with real coefficients a number brings only its complex conjugate, and the coefficients"
            + " are then not all rational";
    return solution(read, new Answer.None(why), SecondOpinion.NOTHING_TO_CHECK)
        .withWarnings(
            List.of(
                new Warning(
                    WarningCode.DOMAIN_OPEN,
                    "Real coefficients do not force a + √b to bring a − √b; ask for rational"
                        + " coefficients.")));
  }

  private static Solution solution(Read read, Answer answer, SecondOpinion second) {
    String numbers =
        read.written().stream().map(UnicodeWriter::write).collect(Collectors.joining(" and "));
    return Solution.of(
        "polynomial-with-roots",
        given(read),
        "Find the polynomial of least degree with %s coefficients that has %s among its roots, its"
                .formatted(read.real() ? "real" : "integer", numbers)
            + " coefficients without a common factor.",
        answer,
        second);
  }

  private static Working working(
      String route, String title, String teaches, List<Step> steps, Answer answer) {
    return Working.of(route, title, teaches, steps, answer);
  }

  private static List<Step> conjugateLines(Read read, Polynomial polynomial) {
    List<Step> steps = new ArrayList<>();
    List<Formula> factors = new ArrayList<>();
    for (Conjugates one : classes(read)) {
      Polynomial minimal = SurdSum.withRoots(one.members()).primitive();
      int size = one.members().size();
      steps.add(
          linearFactors(
              one.members(),
              minimal,
              size == 1
                  ? "a rational root stands alone"
                  : size == 2 ? "a root and its conjugate" : "a root with all its conjugates"));
      Formula factor = PolynomialFormula.of(minimal, X);
      factors.add(one.times() == 1 ? factor : factor.power(one.times()));
    }
    if (factors.size() > 1 || factors.get(0) instanceof Formula.Power) {
      steps.add(
          Step.equation(
              Setting.ofLetters(List.of(X)),
              Idea.EXPAND,
              "multiply the factors",
              NormalForm.of(Formula.product(factors)),
              PolynomialFormula.of(polynomial, X)));
    }
    return steps;
  }

  private static Step linearFactors(List<SurdSum> roots, Polynomial polynomial, String reason) {
    List<Formula> factors = new ArrayList<>();
    if (!polynomial.lead().isOne()) {
      factors.add(Formula.number(polynomial.lead()));
    }
    roots.forEach(root -> factors.add(Formula.name(X).minus(SurdWriting.of(root))));
    return Step.equation(
        Setting.ofLetters(List.of(X)),
        Idea.CONJUGATE,
        reason,
        NormalForm.of(Formula.product(factors)),
        PolynomialFormula.of(polynomial, X));
  }

  /** For c + a√d + b√e: (A − c)² = p + q·√f, and once more. */
  private static Optional<List<Step>> squaring(Read read, Polynomial polynomial) {
    if (read.numbers().size() != 1 || read.numbers().get(0).conjugates().size() != 4) {
      return Optional.empty();
    }
    SurdSum number = read.numbers().get(0);
    Rational c = number.rationalPart();
    SurdSum moved = number.minus(SurdSum.of(c));
    SurdSum square = moved.times(moved);
    if (moved.terms().size() != 2 || square.conjugates().size() != 2) {
      return Optional.empty();
    }
    SurdSum rest = square.minus(SurdSum.of(square.rationalPart()));
    Rational last = rest.times(rest).rationalPart();
    Formula a = Formula.name("A");
    Formula shifted =
        NormalForm.of(
            c.isZero()
                ? a
                : c.signum() > 0 ? a.minus(Formula.number(c)) : a.plus(Formula.number(c.negate())));
    Rational p = square.rationalPart();
    Formula isolated =
        NormalForm.of(
            p.isZero()
                ? shifted.power(2)
                : p.signum() > 0
                    ? shifted.power(2).minus(Formula.number(p))
                    : shifted.power(2).plus(Formula.number(p.negate())));
    Setting setting = Setting.ofLetters(List.of()).withDefinition("A", read.written().get(0));
    return Optional.of(
        List.of(
            Step.equation(setting, Idea.SUBSTITUTE, "call it A", a, read.written().get(0)),
            Step.equation(
                setting, Idea.ELIMINATE, "square", shifted.power(2), SurdWriting.of(square)),
            Step.equation(
                setting,
                Idea.ELIMINATE,
                "the square root alone, and square again",
                isolated.power(2),
                Formula.number(last)),
            Step.equation(
                setting,
                Idea.EXPAND,
                "multiplied out",
                PolynomialFormula.of(polynomial, "A"),
                Formula.number(0))));
  }

  /** A root that is listed twice taken once. */
  private static List<Solution.WrongTurning> doubleRootOnce(Read read) {
    if (classes(read).stream().allMatch(one -> one.times() == 1)) {
      return List.of();
    }
    List<SurdSum> once = new ArrayList<>();
    classes(read).forEach(one -> once.addAll(one.members()));
    return List.of(
        new Solution.WrongTurning(
            "double-root-once",
            "A root that is given twice is a double root: its factor stands there twice.",
            new Answer.PolynomialIn(SurdSum.withRoots(once).primitive(), X),
            Idea.EXPAND,
            20));
  }

  /** The square of a sum of two square roots taken without its cross term. */
  private static List<Solution.WrongTurning> slips(Read read, Answer answer) {
    List<Solution.WrongTurning> once = doubleRootOnce(read);
    if (!once.isEmpty()) {
      return once;
    }
    if (read.numbers().size() != 1 || read.numbers().get(0).terms().size() != 2) {
      return List.of();
    }
    Rational total = Rational.ZERO;
    for (var term : read.numbers().get(0).terms().entrySet()) {
      total = total.plus(term.getValue().times(term.getValue()).times(Rational.of(term.getKey())));
    }
    Answer wrong =
        new Answer.PolynomialIn(
            Polynomial.ofAscending(List.of(total.negate(), Rational.ZERO, Rational.ONE))
                .primitive(),
            X);
    return wrong.equals(answer)
        ? List.of()
        : List.of(
            new Solution.WrongTurning(
                "cross-term-dropped",
                "The square of a sum has the cross term 2ab.",
                wrong,
                Idea.ELIMINATE,
                20));
  }

  private static UnreadableException refused(Inquiry inquiry, String sentence) {
    return new UnreadableException(
        new Refusal(
            "not-a-value",
            sentence,
            inquiry.statement().find(),
            0,
            "numbers such as √3 + √7 or 2 + i",
            ""));
  }
}
