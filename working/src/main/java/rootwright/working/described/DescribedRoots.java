package rootwright.working.described;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PlainWriter;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.answer.Answer;
import rootwright.working.ask.ProblemReader;
import rootwright.working.gate.Warning;
import rootwright.working.gate.WarningCode;
import rootwright.working.kind.Kinds;
import rootwright.working.problem.Problem;
import rootwright.working.problem.Statement;
import rootwright.working.route.ClassProfile;
import rootwright.working.route.Working;
import rootwright.working.solve.Derivation;
import rootwright.working.solve.Given;
import rootwright.working.solve.SecondOpinion;
import rootwright.working.solve.Solution;
import rootwright.working.solve.TwoChecks;
import rootwright.working.step.Claim;
import rootwright.working.subject.Inquiry;
import rootwright.working.subject.Subject;

/**
 * Problems whose roots are described: values at angles that are rational multiples of π, or roots
 * of unity. The polynomial is found first; everything else is asked of it.
 */
public final class DescribedRoots implements Subject {

  private static final Pattern ANGLES =
      Pattern.compile(".*(?:cos|sin|tan|cot|sec|csc)[^a-z].*(?:π|pi).*", Pattern.DOTALL);

  private static final Pattern OMEGA = Pattern.compile("ω|\\\\omega|\\bomega\\b");

  private static final Pattern POLYNOMIAL =
      Pattern.compile(
          "(?:find |what is )?(?:the |a )?(?:(?:minimal|least|monic|integer) )*(?:polynomial|equation)"
              + "(?: with (?:these|those|such|the) roots| of least degree)?\\.?");

  private final Kinds kinds;
  private final TwoChecks checks = new TwoChecks();

  /** The kinds that work asks about the polynomial once it is found. */
  public DescribedRoots(Kinds kinds) {
    this.kinds = kinds;
  }

  /**
   * The polynomial whose roots a text describes; empty if the text describes none, or only some of
   * its roots.
   */
  public static Optional<Polynomial> polynomialOf(String text) {
    String lower = text.toLowerCase(Locale.ROOT);
    if (!describes(lower)) {
      return Optional.empty();
    }
    try {
      return Described.read(text) instanceof Described.Known known
          ? Optional.of(known.polynomial())
          : Optional.empty();
    } catch (UnreadableException none) {
      return Optional.empty();
    }
  }

  private static boolean describes(String text) {
    return text.length() < 2_000
        && (ANGLES.matcher(text).matches() || UnityRoots.of(text).isPresent());
  }

  @Override
  public boolean recognises(Inquiry inquiry) {
    return describes(inquiry.polynomial().toLowerCase(Locale.ROOT));
  }

  @Override
  public Given read(Inquiry inquiry) throws UnreadableException {
    Described described = Described.read(inquiry.polynomial());
    if (described instanceof Described.Known known) {
      return given(known, asksForPolynomial(inquiry) ? itself(known) : problem(known, inquiry));
    }
    Described.Incomplete incomplete = (Described.Incomplete) described;
    return new Given(
        incomplete.shown(),
        incomplete.shown(),
        Described.UNKNOWN,
        List.of(),
        new Formula.Words(inquiry.ask()),
        List.of(),
        List.of());
  }

  @Override
  public Optional<Problem> aboutRoots(Inquiry inquiry) throws UnreadableException {
    return Described.read(inquiry.polynomial()) instanceof Described.Known known
            && !asksForPolynomial(inquiry)
        ? Optional.of(problem(known, inquiry))
        : Optional.empty();
  }

  @Override
  public Solution work(Inquiry inquiry, ClassProfile profile) throws UnreadableException {
    Described described = Described.read(inquiry.polynomial());
    if (!(described instanceof Described.Known known)) {
      return incomplete((Described.Incomplete) described, inquiry);
    }
    Derivation derivation = Derivation.confirmed(known.route(), known.lines(), checks);
    if (asksForPolynomial(inquiry)) {
      return polynomialItself(known, derivation);
    }
    Problem problem = problem(known, inquiry);
    return derivation.before(
        kinds.solve(problem, profile),
        given(known, problem),
        statement(known, problem),
        known.warnings());
  }

  private static boolean asksForPolynomial(Inquiry inquiry) {
    return POLYNOMIAL.matcher(inquiry.ask().strip().toLowerCase(Locale.ROOT)).matches();
  }

  /** The problem about the polynomial; ω, if it is used, runs over the roots. */
  private static Problem problem(Described.Known known, Inquiry inquiry)
      throws UnreadableException {
    String ask = inquiry.ask().strip();
    List<String> names = inquiry.statement().roots();
    if (names.isEmpty() && OMEGA.matcher(ask).find()) {
      names =
          IntStream.rangeClosed(1, known.polynomial().degree())
              .mapToObj(k -> k == 1 ? "ω" : "ω_" + k)
              .toList();
    }
    String whole =
        switch (ask.toLowerCase(Locale.ROOT)) {
          case "sum", "their sum", "the sum" -> "sum of the roots";
          case "product", "their product", "the product" -> "product of the roots";
          default -> ask;
        };
    return ProblemReader.read(
        new Statement(
            PlainWriter.write(PolynomialFormula.of(known.polynomial(), Described.UNKNOWN)),
            whole,
            names,
            Optional.of(Described.UNKNOWN)));
  }

  private static Problem itself(Described.Known known) throws UnreadableException {
    return ProblemReader.read(
        new Statement(
            PlainWriter.write(PolynomialFormula.of(known.polynomial(), Described.UNKNOWN)),
            "polynomial with roots (r_1)",
            IntStream.rangeClosed(1, known.polynomial().degree()).mapToObj(k -> "r_" + k).toList(),
            Optional.of(Described.UNKNOWN)));
  }

  private static Given given(Described.Known known, Problem problem) {
    return new Given(
        known.shown(),
        known.shown(),
        Described.UNKNOWN,
        problem.roots(),
        problem.ask(),
        List.of(),
        problem.reading());
  }

  private static String statement(Described.Known known, Problem problem) {
    List<String> names =
        problem.roots().stream()
            .filter(
                root ->
                    problem
                        .ask()
                        .contains(
                            part ->
                                part instanceof Formula.Name name && name.spelling().equals(root)))
            .toList();
    String ask = UnicodeWriter.write(problem.ask());
    if (names.size() == 1 && names.get(0).equals("ω")) {
      return "Let ω run over %s. Find %s.".formatted(known.words(), ask);
    }
    List<String> written =
        problem.roots().stream().map(name -> UnicodeWriter.write(Formula.name(name))).toList();
    return "Let %s be %s, in some order. Find %s."
        .formatted(String.join(", ", written), known.words(), ask);
  }

  private Solution polynomialItself(Described.Known known, Derivation derivation)
      throws UnreadableException {
    Problem problem = itself(known);
    Answer answer = new Answer.PolynomialIn(known.polynomial(), Described.UNKNOWN);
    List<Working> routes = new ArrayList<>();
    if (!derivation.steps().isEmpty()) {
      routes.add(
          Working.of(
              known.route(),
              known.route().equals("unity")
                  ? "divide xⁿ − 1 by what is not wanted"
                  : "write a multiple of the angle by powers",
              "Numbers that share a property expressed by powers are roots of one equation.",
              derivation.steps(),
              answer));
    }
    Claim claim = new Claim.HasRoots(problem.setting(), known.polynomial(), Formula.name("r_1"));
    SecondOpinion second = checks.require(problem.ask(), claim);
    return Solution.of(
            "polynomial-with-roots",
            given(known, problem),
            "Find the polynomial of least degree with integer coefficients whose roots are %s."
                .formatted(known.words()),
            answer,
            second)
        .withWarnings(known.warnings())
        .withRoutes(routes);
  }

  private static Solution incomplete(Described.Incomplete described, Inquiry inquiry) {
    String missing =
        String.join(", ", described.missing().stream().map(UnicodeWriter::write).toList());
    String why =
        "the listed numbers are not all the roots of a polynomial with rational coefficients";
    return Solution.none(
            "value",
            new Given(
                described.shown(),
                described.shown(),
                Described.UNKNOWN,
                List.of(),
                new Formula.Words(inquiry.ask()),
                List.of(),
                List.of()),
            "Consider the numbers %s. Find %s.".formatted(described.words(), inquiry.ask()),
            why)
        .withWarnings(
            List.of(
                new Warning(
                    WarningCode.NOT_SYMMETRIC,
                    missing.isEmpty()
                        ? "Some of the numbers are listed more often than others that belong to them;"
                            + " list each equally often."
                        : ("The list is not complete: every polynomial with rational coefficients and"
                                + " these roots has %s as well. List them too, or leave the place of"
                                + " the polynomial empty and ask for one expression in these numbers.")
                            .formatted(missing))));
  }
}
