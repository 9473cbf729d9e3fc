package rootwright.working.integers;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.algebra.stop.Stop;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.RationalValue;
import rootwright.working.answer.Answer;
import rootwright.working.route.ClassProfile;
import rootwright.working.route.Working;
import rootwright.working.solve.CheckFailedException;
import rootwright.working.solve.Given;
import rootwright.working.solve.SecondOpinion;
import rootwright.working.solve.SlipRunner;
import rootwright.working.solve.Solution;
import rootwright.working.solve.TwoChecks;
import rootwright.working.step.Step;
import rootwright.working.subject.Inquiry;
import rootwright.working.subject.Subject;

/**
 * Which whole quotients a² + b² + c over ab + d can have: from one solution the other root of the
 * quadratic leads to a smaller one, down to solutions that are easily listed (the descent of
 * Hurwitz 1907, Archiv der Mathematik und Physik 11, from memory).
 */
public final class VietaJumping implements Subject {

  /** Numbers up to this size are searched as a second opinion. */
  private static final int WINDOW = 400;

  private final TwoChecks checks = new TwoChecks();

  @Override
  public boolean recognises(Inquiry inquiry) {
    return JumpProblem.of(inquiry).isPresent();
  }

  @Override
  public Given read(Inquiry inquiry) throws UnreadableException {
    return given(JumpProblem.of(inquiry).orElseThrow());
  }

  @Override
  public Solution work(Inquiry inquiry, ClassProfile profile) throws UnreadableException {
    JumpProblem problem = JumpProblem.of(inquiry).orElseThrow();
    SortedMap<BigInteger, List<Long>> found = quotients(problem);
    secondOpinion(problem, found);
    Answer answer = answer(problem, found);
    List<Step> steps = new JumpLines(problem, found).steps();
    for (Step step : steps) {
      if (!step.isArgument()) {
        checks.require(step.shown(), step.claim());
      }
    }
    Working working =
        Working.of(
            "descent",
            "the other root of the quadratic leads to a smaller solution",
            "A smallest solution cannot be made smaller, and that leaves few cases.",
            steps,
            answer);
    SlipRunner.Slipped slipped = SlipRunner.run(JumpSlips.ALL, problem, answer);
    return Solution.of(
            "vieta-jumping",
            given(problem),
            statement(problem),
            answer,
            SecondOpinion.by("all pairs of numbers up to %d".formatted(WINDOW)))
        .withConditions(
            problem.offset() == 1
                ? List.of(
                    "%s is a perfect square, and every perfect square occurs, as %s = %s³ shows"
                        .formatted(problem.quotient(), problem.first(), problem.second()))
                : List.of())
        .withRoutes(profile.has(working.route()) ? List.of(working) : List.of())
        .withSlips(slipped);
  }

  /** The quotients at smallest solutions, each with one such pair, the larger number first. */
  static SortedMap<BigInteger, List<Long>> quotients(JumpProblem problem) {
    SortedMap<BigInteger, List<Long>> found = new TreeMap<>();
    long c = problem.constant().longValueExact();
    if (problem.offset() == 1) {
      return found;
    }
    for (long b = 1; b * b <= c; b++) {
      if (c % (b * b) == 0) {
        found.putIfAbsent(BigInteger.valueOf(2 + c / (b * b)), List.of(b, b));
      }
    }
    for (long b = 1; 2 * b + 1 <= c; b++) {
      for (long a = b + 1; a * a - b * b <= c; a++) {
        List<Long> pair = List.of(a, b);
        problem.quotient(a, b).ifPresent(k -> found.putIfAbsent(k, pair));
      }
    }
    return found;
  }

  static Answer answer(JumpProblem problem, SortedMap<BigInteger, List<Long>> found) {
    if (problem.offset() == 1) {
      return new Answer.FunctionOf(Formula.name(problem.second()).power(2));
    }
    List<ExactValue> values = new ArrayList<>();
    found.keySet().forEach(k -> values.add(new RationalValue(Rational.of(k))));
    return new Answer.Solutions(values);
  }

  private static void secondOpinion(JumpProblem problem, SortedMap<BigInteger, List<Long>> found) {
    TreeSet<BigInteger> seen = new TreeSet<>();
    for (long a = 1; a <= WINDOW; a++) {
      Stop.ifUnwanted();
      for (long b = 1; b <= a; b++) {
        problem.quotient(a, b).ifPresent(seen::add);
      }
    }
    boolean agrees =
        problem.offset() == 1
            ? seen.stream().allMatch(k -> k.sqrtAndRemainder()[1].signum() == 0)
            : found.keySet().containsAll(seen)
                && found.entrySet().stream()
                    .allMatch(e -> e.getValue().get(0) > WINDOW || seen.contains(e.getKey()));
    if (!agrees) {
      throw new CheckFailedException(
          "the answer", problem.shown(), "a search up to %d finds %s".formatted(WINDOW, seen));
    }
  }

  private static String statement(JumpProblem problem) {
    return "Let %s, %s and %s be positive integers with %s. Find all possible values of %s."
        .formatted(
            problem.first(),
            problem.second(),
            problem.quotient(),
            UnicodeWriter.write(problem.shown()),
            problem.quotient());
  }

  private static Given given(JumpProblem problem) {
    Formula nothing = new Formula.Words("");
    return new Given(
        nothing,
        nothing,
        "",
        List.of(problem.first(), problem.second()),
        Formula.name(problem.quotient()),
        List.of(problem.shown(), new Formula.Words("positive integers")),
        List.of());
  }

  /** “1, 2”: the quotients as they are listed. */
  static String listed(SortedMap<BigInteger, List<Long>> found) {
    return found.keySet().stream().map(String::valueOf).collect(Collectors.joining(", "));
  }
}
