package rootwright.working.division;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaExpansion;
import rootwright.algebra.notation.FormulaNames;
import rootwright.algebra.notation.FormulaReader;
import rootwright.algebra.notation.PlainWriter;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.Refusal;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.answer.Answer;
import rootwright.working.ask.ProblemReader;
import rootwright.working.kind.Kinds;
import rootwright.working.problem.Problem;
import rootwright.working.problem.Statement;
import rootwright.working.route.ClassProfile;
import rootwright.working.route.Working;
import rootwright.working.solve.Given;
import rootwright.working.solve.Solution;
import rootwright.working.step.Idea;
import rootwright.working.step.Step;
import rootwright.working.subject.Inquiry;
import rootwright.working.subject.Subject;

/**
 * “The remainder when x⁵⁰ is divided by x² + x + 1”: at a root of the divisor a polynomial and its
 * remainder are equal, so its powers are reduced by the divisor.
 */
public final class RemainderOfPolynomial implements Subject {

  private static final int LONGEST = 400;

  private static final Pattern FORM =
      Pattern.compile(
          "(?:the\\s+)?remainder\\s+(?:(?:when|if)\\s+(?<of>.+?)\\s+is\\s+divided\\s+by\\s+(?<by>.+)"
              + "|of\\s+(?<what>.+?)\\s+(?:on\\s+division\\s+by|divided\\s+by|when\\s+divided\\s+by)\\s+(?<other>.+)"
              + "|(?:on\\s+division\\s+by|divided\\s+by|by)\\s+(?<alone>.+))",
          Pattern.CASE_INSENSITIVE | Pattern.DOTALL);

  private final Kinds kinds;

  /** The kinds that reduce powers. */
  public RemainderOfPolynomial(Kinds kinds) {
    this.kinds = kinds;
  }

  /**
   * @param dividend F
   * @param divisor D
   */
  private record Texts(String dividend, String divisor) {}

  private static Optional<Texts> texts(Inquiry inquiry) {
    String ask = inquiry.ask().strip();
    if (ask.length() > LONGEST || !inquiry.conditions().isEmpty()) {
      return Optional.empty();
    }
    Matcher matcher = FORM.matcher(ask);
    if (!matcher.matches()) {
      return Optional.empty();
    }
    String alone = matcher.group("alone");
    if (alone != null) {
      return inquiry.polynomial().isEmpty() || !alone.matches(".*\\p{L}.*")
          ? Optional.empty()
          : Optional.of(new Texts(inquiry.polynomial(), alone));
    }
    String of = matcher.group("of") != null ? matcher.group("of") : matcher.group("what");
    String by = matcher.group("by") != null ? matcher.group("by") : matcher.group("other");
    boolean it = of.matches("(?i)it|P\\(x\\)|the polynomial|P");
    return (it == inquiry.polynomial().isEmpty()) || !by.matches(".*\\p{L}.*")
        ? Optional.empty()
        : Optional.of(new Texts(it ? inquiry.polynomial() : of, by));
  }

  @Override
  public boolean recognises(Inquiry inquiry) {
    return texts(inquiry).isPresent();
  }

  /** F, D and the problem about a root of D. */
  private record Read(Formula dividend, Formula divisor, String unknown, Problem problem) {}

  private static Read readAll(Inquiry inquiry) throws UnreadableException {
    Texts texts = texts(inquiry).orElseThrow();
    Formula dividend = FormulaReader.formula(texts.dividend());
    Formula divisor = FormulaReader.formula(texts.divisor());
    Set<String> names = FormulaNames.in(divisor);
    if (names.size() != 1 || !names.containsAll(FormulaNames.in(dividend))) {
      throw new UnreadableException(
          new Refusal(
              "unsupported",
              "Dividend and divisor should be polynomials in one letter, with numbers for coefficients.",
              inquiry.statement().find(),
              0,
              "such as “remainder when x^50 is divided by x^2 + x + 1”",
              ""));
    }
    String x = names.iterator().next();
    String root = x.equals("r") ? "s" : "r";
    Formula atRoot =
        dividend.rewrite(part -> part.equals(Formula.name(x)) ? Formula.name(root) : part);
    Problem problem =
        ProblemReader.read(
            new Statement(
                PlainWriter.write(divisor),
                "reduce(%s)".formatted(PlainWriter.write(atRoot)),
                List.of(),
                Optional.of(x)));
    return new Read(dividend, divisor, x, problem);
  }

  @Override
  public Given read(Inquiry inquiry) throws UnreadableException {
    return given(readAll(inquiry));
  }

  private static Given given(Read read) {
    Formula words =
        new Formula.Words(
            "remainder of %s by %s"
                .formatted(
                    UnicodeWriter.write(read.dividend()), UnicodeWriter.write(read.divisor())));
    Formula nothing = new Formula.Words("");
    return new Given(nothing, nothing, read.unknown(), List.of(), words, List.of(), List.of());
  }

  @Override
  public Solution work(Inquiry inquiry, ClassProfile profile) throws UnreadableException {
    Read read = readAll(inquiry);
    Solution found = kinds.solve(read.problem(), profile);
    Optional<Polynomial> remainder = found.reduced().map(Solution.Reduced::polynomial);
    if (remainder.isEmpty()) {
      throw new UnreadableException(
          new Refusal(
              "too-large",
              "The remainder cannot be worked out here.",
              inquiry.statement().find(),
              0,
              "a lower power, or a divisor of lower degree",
              ""));
    }
    Answer answer = new Answer.PolynomialIn(remainder.get(), read.unknown());
    Formula x = Formula.name(read.unknown());
    Step first =
        Step.argument(
            Idea.VANISHING,
            "so at a root of the divisor the dividend is equal to the remainder, whose degree is lower",
            new Formula.Words(
                "%s = (%s)·Q(%s) + R(%s)"
                    .formatted(
                        UnicodeWriter.write(read.dividend()),
                        UnicodeWriter.write(read.divisor()),
                        read.unknown(),
                        read.unknown())));
    Step last =
        Step.argument(
            Idea.STATE,
            "the same for every root, and as a polynomial",
            Formula.equation(
                new Formula.Application("R", List.of(x)),
                PolynomialFormula.of(remainder.get(), x)));
    List<Working> routes = new ArrayList<>();
    for (Working working : found.routes()) {
      List<Step> steps = new ArrayList<>();
      steps.add(first);
      steps.addAll(working.steps());
      steps.add(last);
      routes.add(working.withSteps(steps).withAnswer(answer));
    }
    return Solution.of("remainder", given(read), statement(read), answer, found.second())
        .withRoutes(routes)
        .withDeclined(found.declined())
        .withSlips(slips(read, answer));
  }

  /** The divisor x − c is zero at c, not at −c. */
  private static List<Solution.WrongTurning> slips(Read read, Answer answer)
      throws UnreadableException {
    Polynomial divisor = read.problem().polynomial();
    if (divisor.degree() != 1) {
      return List.of();
    }
    Rational turned = divisor.coefficient(0).over(divisor.lead());
    Polynomial dividend = FormulaExpansion.polynomial(read.dividend(), read.unknown());
    Answer wrong =
        new Answer.PolynomialIn(Polynomial.constant(dividend.at(turned)), read.unknown());
    return wrong.equals(answer)
        ? List.of()
        : List.of(
            new Solution.WrongTurning(
                "root-with-wrong-sign",
                "The divisor x − c is 0 at c, not at −c.",
                wrong,
                Idea.EVALUATE,
                25));
  }

  private static String statement(Read read) {
    return "Find the remainder when %s is divided by %s."
        .formatted(UnicodeWriter.write(read.dividend()), UnicodeWriter.write(read.divisor()));
  }
}
