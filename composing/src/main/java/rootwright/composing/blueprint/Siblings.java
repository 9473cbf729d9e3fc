package rootwright.composing.blueprint;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import rootwright.algebra.factor.RationalRoots;
import rootwright.algebra.notation.PlainWriter;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.value.RationalValue;
import rootwright.composing.level.Level;
import rootwright.composing.option.Choices;
import rootwright.composing.pattern.AnswerSort;
import rootwright.composing.twin.Fingerprint;
import rootwright.working.Subjects;
import rootwright.working.answer.Answer;
import rootwright.working.ask.ProblemReader;
import rootwright.working.kind.Kinds;
import rootwright.working.problem.Problem;
import rootwright.working.problem.Statement;
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
  private static final int LARGEST_BOX = 40;
  private static final long LARGEST_DENOMINATOR = 60;

  private final Kinds kinds;
  private final Composer composer;
  private final Subjects subjects;

  /** With the kinds of ask to work candidates by. */
  public Siblings(Kinds kinds) {
    this.kinds = kinds;
    this.composer = new Composer(kinds);
    this.subjects = new Subjects(kinds);
  }

  /**
   * Finds siblings of a problem about the roots of one polynomial.
   *
   * @param many how many
   * @param seed what chance starts from
   * @throws ContradictoryBlueprintException if the problem has no single answer
   * @throws UnreadableException if the ask cannot be read for other polynomials
   */
  public Composition of(Problem problem, int many, long seed, ComposingControl control)
      throws UnreadableException {
    Solution original = kinds.solve(problem, ClassProfile.EVERYTHING);
    sound(original);
    return composer.compose(
        blueprint(problem, original.answer(), many, seed),
        Set.of(Fingerprint.of(problem).text()),
        new Versions(original),
        control);
  }

  /**
   * Finds siblings of any statement: of one that is not about the roots of one polynomial with
   * numbers, by the patterns that make such statements, and by other numbers in its place.
   *
   * @param many how many
   * @param seed what chance starts from
   * @throws ContradictoryBlueprintException if the problem has no single answer
   * @throws UnreadableException if the statement cannot be read or worked
   */
  public Composition of(Statement statement, int many, long seed, ComposingControl control)
      throws UnreadableException {
    if (!subjects.standsAlone(statement)) {
      Composition scanned = of(ProblemReader.read(statement), many, seed, control);
      if (!scanned.problems().isEmpty() || control.isStopped()) {
        return scanned;
      }
    }
    Solution original = subjects.work(statement, ClassProfile.EVERYTHING);
    sound(original);
    List<StatementAsk> asks = new ArrayList<>();
    for (StatementSource source : new GivenStatement(statement, subjects).sources()) {
      asks.add(new StatementAsk(statement.find(), AnswerSort.SURDS, source, subjects));
    }
    Blueprint order =
        Blueprint.USUAL
            .withAsk(new AskWish.Given(statement.find()))
            .withAnswer(formOf(original.answer()))
            .withMany(many)
            .withSeed(seed);
    return composer.compose(
        asks,
        order,
        Set.of(Fingerprint.of(original.given()).text()),
        new Versions(original),
        control);
  }

  private static void sound(Solution original) {
    Optional<String> unfit = Judgement.sound(original, 1);
    if (unfit.isPresent()) {
      throw new ContradictoryBlueprintException(
          List.of("this problem has no siblings: " + unfit.get()));
    }
  }

  /**
   * The versions there are so far; another one must be like them, and not to be copied from them.
   */
  private static final class Versions implements Judge {

    private final Solution original;
    private final List<Choices> taken = new ArrayList<>();

    Versions(Solution original) {
      this.original = original;
      taken.add(Choices.of(original, Choices.USUAL));
    }

    @Override
    public Judgement of(Solution solution) {
      return new Judgement(
          solution, refusal(solution, original), List.of("the same route and slips, another key"));
    }

    @Override
    public Optional<String> against(Solution solution, Choices choices) {
      for (Choices other : taken) {
        if (other.key().value().equals(solution.answer())
            && !(solution.answer() instanceof Answer.Truth)) {
          return Optional.of("its key is that of another version");
        }
        if (holdsKeyOf(choices, other) || holdsKeyOf(other, choices)) {
          return Optional.of("its key is a wrong option of another version, at the same letter");
        }
      }
      taken.add(choices);
      return Optional.empty();
    }

    /** Whether the key of one version stands in another at the same letter, where it is wrong. */
    private static boolean holdsKeyOf(Choices other, Choices version) {
      int letter = version.keyIndex();
      return letter < other.options().size()
          && other.options().get(letter).value().equals(version.key().value());
    }
  }

  /** Why a problem is no sibling of another, keys apart; empty if it is one. */
  static Optional<String> refusal(Solution solution, Solution original) {
    Optional<String> unsound =
        Judgement.sound(solution, Math.min(2, original.routes().size()))
            .or(() -> Judgement.answer(solution, formOf(original.answer())));
    if (unsound.isPresent()) {
      return unsound;
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

  /** The order for other numbers as large as those of the problem. */
  static Blueprint blueprint(Problem problem, Answer answer, int many, long seed) {
    Polynomial primitive = problem.polynomial().primitive();
    int largest = SMALLEST_BOX;
    for (Rational coefficient : primitive.ascending()) {
      largest =
          Math.max(
              largest,
              coefficient.numerator().abs().min(BigInteger.valueOf(LARGEST_BOX)).intValue());
    }
    int lead = primitive.lead().numerator().min(BigInteger.TEN).intValue();
    RootsWish roots =
        !primitive.isSquarefree()
            ? RootsWish.ANY
            : RationalRoots.of(primitive).isEmpty()
                ? RootsWish.NO_RATIONAL_ROOT
                : RootsWish.DISTINCT;
    PolynomialWish wish =
        new PolynomialWish(
            problem.degree(),
            largest,
            lead == 1 ? 1 : 2,
            lead == 1 ? 1 : Math.min(largest, lead + 1),
            roots,
            new RealWish.Open());
    return Blueprint.of(PlainWriter.write(problem.ask()), problem.degree(), many, seed)
        .withPolynomial(wish)
        .withAnswer(formOf(answer));
  }

  private static AnswerWish formOf(Answer answer) {
    if (answer instanceof Answer.Exact exact && exact.value() instanceof RationalValue key) {
      return key.number().isInteger()
          ? new AnswerWish.Whole()
          : new AnswerWish.Fraction(
              key.number().denominator().min(BigInteger.valueOf(LARGEST_DENOMINATOR)).longValue());
    }
    if (answer instanceof Answer.Solutions all
        && all.values().stream()
            .allMatch(value -> value instanceof RationalValue key && key.number().isInteger())) {
      return new AnswerWish.Whole();
    }
    return new AnswerWish.Any();
  }
}
