package rootwright.composing.blueprint;

import java.math.BigInteger;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import rootwright.algebra.notation.PlainWriter;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.value.RationalValue;
import rootwright.composing.level.Level;
import rootwright.composing.scan.ScanControl;
import rootwright.composing.twin.Fingerprint;
import rootwright.working.answer.Answer;
import rootwright.working.kind.Kinds;
import rootwright.working.problem.Problem;
import rootwright.working.route.ClassProfile;
import rootwright.working.solve.Solution;

/**
 * Problems of the same kind and level with other numbers, for versions A, B, C of a paper: the same
 * shortest route, the same live slips, the same form of answer, and keys that all differ.
 */
public final class Siblings {

  /** How far the estimated difficulties of two versions may lie apart, in logits; by judgement. */
  private static final Rational NEAR = Rational.of(3, 10);

  private static final int SMALLEST_BOX = 6;

  private final Kinds kinds;
  private final Composer composer;

  /** With the kinds of ask to work candidates by. */
  public Siblings(Kinds kinds) {
    this.kinds = kinds;
    this.composer = new Composer(kinds);
  }

  /**
   * Finds siblings.
   *
   * @param many how many
   * @param seed what chance starts from
   * @throws ContradictoryBlueprintException if the problem has no single rational answer
   */
  public Composition of(Problem problem, int many, long seed, ScanControl control)
      throws UnreadableException {
    Solution original = kinds.solve(problem, ClassProfile.EVERYTHING);
    if (!(original.answer() instanceof Answer.Exact exact)
        || !(exact.value() instanceof RationalValue key)) {
      throw new ContradictoryBlueprintException(
          List.of("only a problem with one rational answer has siblings"));
    }
    Blueprint blueprint = blueprint(problem, key.number(), many, seed);
    Set<Answer> keys = new HashSet<>(Set.of(original.answer()));
    return composer.compose(
        blueprint,
        Set.of(Fingerprint.of(problem).text()),
        solution -> judge(solution, original, keys),
        control);
  }

  private static Judgement judge(Solution solution, Solution original, Set<Answer> keys) {
    Judgement usual = new Judgement(solution, refusal(solution, original), List.of());
    if (usual.refusal().isPresent()) {
      return usual;
    }
    return keys.add(solution.answer())
        ? new Judgement(
            solution, Optional.empty(), List.of("the same route and slips, another key"))
        : new Judgement(solution, Optional.of("its key is that of another version"), List.of());
  }

  private static Optional<String> refusal(Solution solution, Solution original) {
    if (solution.routes().size() < 2) {
      return Optional.of("fewer than two routes confirm the key");
    }
    if (!solution.routes().get(0).route().equals(original.routes().get(0).route())) {
      return Optional.of("another route is the shortest");
    }
    if (!liveSlips(solution).equals(liveSlips(original))) {
      return Optional.of("other slips are live");
    }
    boolean near =
        Level.of(solution)
            .flatMap(
                one ->
                    Level.of(original)
                        .map(other -> one.difficulty().minus(other.difficulty()).absolute()))
            .filter(apart -> apart.compareTo(NEAR) <= 0)
            .isPresent();
    return near ? Optional.empty() : Optional.of("the estimated difficulty is too far away");
  }

  private static Set<String> liveSlips(Solution solution) {
    return solution.slips().stream().map(Solution.WrongTurning::name).collect(Collectors.toSet());
  }

  private static Blueprint blueprint(Problem problem, Rational key, int many, long seed) {
    Polynomial primitive = problem.polynomial().primitive();
    int largest = SMALLEST_BOX;
    for (Rational coefficient : primitive.ascending()) {
      largest =
          Math.max(largest, coefficient.numerator().abs().min(BigInteger.valueOf(40)).intValue());
    }
    int lead = primitive.lead().numerator().min(BigInteger.TEN).intValue();
    AnswerWish answer =
        key.isInteger()
            ? new AnswerWish.Whole()
            : new AnswerWish.Fraction(key.denominator().min(BigInteger.valueOf(60)).longValue());
    return new Blueprint(
        PlainWriter.write(problem.ask()),
        problem.degree(),
        largest,
        lead == 1 ? 1 : Math.min(largest, lead + 1),
        answer,
        RootsWish.NO_RATIONAL_ROOT,
        OptionalInt.empty(),
        Set.of(),
        Set.of(),
        0,
        OptionalInt.empty(),
        4,
        many,
        seed);
  }
}
