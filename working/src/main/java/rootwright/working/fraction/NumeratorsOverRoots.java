package rootwright.working.fraction;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaExpansion;
import rootwright.algebra.notation.FormulaReader;
import rootwright.algebra.notation.NormalForm;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.Refusal;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.ask.ProblemReader;
import rootwright.working.kind.Kinds;
import rootwright.working.problem.Problem;
import rootwright.working.problem.Statement;
import rootwright.working.route.ClassProfile;
import rootwright.working.solve.Derivation;
import rootwright.working.solve.Given;
import rootwright.working.solve.Solution;
import rootwright.working.solve.TwoChecks;
import rootwright.working.step.Idea;
import rootwright.working.step.Setting;
import rootwright.working.step.Step;
import rootwright.working.subject.Inquiry;
import rootwright.working.subject.Subject;

/**
 * Expressions in the numerators A, B, C of the partial fractions of F(x)/P(x), asked as {@code
 * 1/A+1/B+1/C if F(x)/P(x) = A/(x-r)+B/(x-s)+C/(x-t)}: every numerator is F(r)/P′(r).
 */
public final class NumeratorsOverRoots implements Subject {

  private static final Pattern FORM =
      Pattern.compile(".*[A-Z]\\s*/\\s*\\(\\s*[a-z]\\s*[-−]\\s*[^)]+\\).*", Pattern.DOTALL);

  private final Kinds kinds;
  private final TwoChecks checks = new TwoChecks();

  /** The kinds that work what the ask becomes. */
  public NumeratorsOverRoots(Kinds kinds) {
    this.kinds = kinds;
  }

  @Override
  public boolean recognises(Inquiry inquiry) {
    return !inquiry.polynomial().isEmpty()
        && inquiry.conditions().size() == 1
        && inquiry.conditions().get(0).contains("=")
        && FORM.matcher(inquiry.conditions().get(0)).matches();
  }

  /**
   * @param problem with the ask in the roots
   * @param asked the ask in the numerators, as typed
   * @param identity the condition, as typed
   * @param above F
   * @param meanings each numerator as F(r)/P′(r)
   */
  private record Read(
      Problem problem,
      Formula asked,
      Formula identity,
      Polynomial above,
      Map<String, Formula> meanings) {}

  private static Read readAll(Inquiry inquiry) throws UnreadableException {
    Statement statement = inquiry.statement();
    Problem plain =
        ProblemReader.read(
            new Statement(statement.polynomial(), "S_1", List.of(), statement.unknown()));
    Formula identity = FormulaReader.formula(inquiry.conditions().get(0));
    if (!(identity instanceof Formula.Relation relation) || relation.sides().size() != 2) {
      throw refused(inquiry, "The partial fractions should be one equation.");
    }
    String x = plain.unknown();
    Map<String, String> letters = new LinkedHashMap<>();
    Formula whole = relation.sides().get(0);
    if (!numerators(relation.sides().get(1), x, letters)) {
      letters.clear();
      whole = relation.sides().get(1);
      if (!numerators(relation.sides().get(0), x, letters)) {
        throw refused(
            inquiry,
            "One side should be A/(%s − r) + B/(%s − s) + …, one for each root.".formatted(x, x));
      }
    }
    if (letters.size() != plain.degree()) {
      throw refused(
          inquiry,
          "There are %d fractions and %d roots.".formatted(letters.size(), plain.degree()));
    }
    if (!plain.polynomial().isSquarefree()) {
      throw refused(
          inquiry,
          "A root is repeated, so its partial fractions have powers of x − r below as well; with"
              + " distinct roots this form is right.");
    }
    Polynomial above = above(whole, plain, inquiry);
    if (above.degree() >= plain.degree()) {
      throw refused(inquiry, "The numerator has to have a lower degree than P; divide first.");
    }
    Map<String, Formula> meanings = new LinkedHashMap<>();
    letters.forEach(
        (letter, root) ->
            meanings.put(
                letter,
                NormalForm.of(
                    PolynomialFormula.of(above, root)
                        .over(new Formula.Application("P'", List.of(Formula.name(root)))))));
    Formula asked = FormulaReader.formula(inquiry.ask());
    Formula inRoots = NormalForm.of(asked.rewrite(part -> simplified(part, meanings)));
    Problem problem =
        new Problem(
            plain.polynomial(),
            plain.stated(),
            x,
            List.copyOf(letters.values()),
            inRoots,
            plain.reading());
    return new Read(problem, asked, identity, above, meanings);
  }

  /** The numerator for its letter, and no fraction below a stroke. */
  private static Formula simplified(Formula part, Map<String, Formula> meanings) {
    if (part instanceof Formula.Name name) {
      return meanings.getOrDefault(name.spelling(), part);
    }
    if (part instanceof Formula.Quotient outer && outer.under() instanceof Formula.Quotient below) {
      Formula one = Formula.number(1);
      Formula above = outer.over().equals(one) ? below.under() : outer.over().times(below.under());
      return below.over().equals(one) ? above : above.over(below.over());
    }
    return part;
  }

  /** A → r for A/(x − r) + …; whether every term has that form. */
  private static boolean numerators(Formula side, String x, Map<String, String> letters) {
    List<Formula> terms = side instanceof Formula.Sum sum ? sum.terms() : List.of(side);
    for (Formula term : terms) {
      if (term instanceof Formula.Quotient quotient
          && quotient.over() instanceof Formula.Name letter
          && quotient.under() instanceof Formula.Sum below
          && below.terms().size() == 2
          && below.terms().get(0).equals(Formula.name(x))
          && below.terms().get(1) instanceof Formula.Negative negative
          && negative.of() instanceof Formula.Name root) {
        letters.put(letter.spelling(), root.spelling());
      } else {
        return false;
      }
    }
    return true;
  }

  /** F with F/P equal to the side. */
  private static Polynomial above(Formula side, Problem plain, Inquiry inquiry)
      throws UnreadableException {
    if (!(side instanceof Formula.Quotient quotient)) {
      throw refused(inquiry, "One side should be a fraction with P(x) below.");
    }
    String x = plain.unknown();
    Formula below =
        quotient
            .under()
            .rewrite(
                part ->
                    part.equals(new Formula.Application("P", List.of(Formula.name(x))))
                        ? PolynomialFormula.of(plain.polynomial(), x)
                        : part);
    Polynomial under = FormulaExpansion.polynomial(below, x);
    Polynomial over = FormulaExpansion.polynomial(quotient.over(), x);
    if (under.isZero() || !under.monic().equals(plain.polynomial().monic())) {
      throw refused(inquiry, "Below does not stand the polynomial that is given.");
    }
    return over.times(plain.polynomial().lead().over(under.lead()));
  }

  @Override
  public Given read(Inquiry inquiry) throws UnreadableException {
    return given(readAll(inquiry));
  }

  private static Given given(Read read) {
    Problem problem = read.problem();
    return new Given(
        PolynomialFormula.of(problem.polynomial(), problem.unknown()),
        problem.stated(),
        problem.unknown(),
        problem.roots(),
        read.asked(),
        List.of(read.identity()),
        problem.reading());
  }

  @Override
  public Solution work(Inquiry inquiry, ClassProfile profile) throws UnreadableException {
    Read read = readAll(inquiry);
    Problem problem = read.problem();
    Derivation derivation = Derivation.confirmed("the numerators", lines(read), checks);
    Formula equation =
        Formula.equation(
            PolynomialFormula.of(problem.polynomial(), problem.unknown()), Formula.number(0));
    String statement =
        "Let %s be the roots of %s, which are distinct, and let %s. Find %s."
            .formatted(
                String.join(
                    ", ",
                    problem.roots().stream()
                        .map(name -> UnicodeWriter.write(Formula.name(name)))
                        .toList()),
                UnicodeWriter.write(equation),
                UnicodeWriter.write(read.identity()),
                UnicodeWriter.write(read.asked()));
    return derivation.before(kinds.solve(problem, profile), given(read), statement, List.of());
  }

  private static List<Step> lines(Read read) {
    Problem problem = read.problem();
    String x = problem.unknown();
    String root = problem.roots().get(0);
    Setting setting = problem.setting();
    Formula under = new Formula.Application("P'", List.of(Formula.name(root)));
    List<Step> steps = new ArrayList<>();
    steps.add(
        Step.equation(
            setting.withFree(x),
            Idea.PARTIAL_FRACTIONS,
            "times P(%s) it is an identity of polynomials of degree below %d; it holds for more than"
                    .formatted(x, problem.degree())
                + " that many numbers, so also for %s = %s, although that was excluded"
                    .formatted(x, root),
            PolynomialFormula.of(read.above(), x)
                .over(new Formula.Application("P", List.of(Formula.name(x)))),
            new Formula.Aggregate(
                Formula.Aggregate.Operation.SUM,
                NormalForm.of(
                    PolynomialFormula.of(read.above(), root)
                        .over(under.times(Formula.name(x).minus(Formula.name(root))))))));
    read.meanings()
        .forEach(
            (letter, meaning) ->
                steps.add(
                    Step.equation(
                        setting.withDefinition(letter, meaning),
                        Idea.PARTIAL_FRACTIONS,
                        "cover-up",
                        Formula.name(letter),
                        meaning)));
    return steps;
  }

  private static UnreadableException refused(Inquiry inquiry, String sentence) {
    String find = inquiry.statement().find();
    int at = Math.max(0, find.indexOf(inquiry.conditions().get(0)));
    return new UnreadableException(
        new Refusal(
            "condition-unread",
            sentence,
            find,
            find.codePointCount(0, at),
            "F(x)/P(x) = A/(x − r) + B/(x − s) + …",
            ""));
  }
}
