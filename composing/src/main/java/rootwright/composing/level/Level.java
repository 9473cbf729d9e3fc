package rootwright.composing.level;

import java.util.List;
import java.util.Optional;
import rootwright.algebra.number.Rational;
import rootwright.working.route.Working;
import rootwright.working.solve.Solution;

/**
 * How hard a problem is likely to be, from 1 to 5: a judgement, until answers calibrate it.
 *
 * @param number from 1, a read-off, to 5
 * @param difficulty where the model puts the problem, in logits: a student of ability 0 has even
 *     chances at 0
 * @param features what was counted, with its weights; their shares and {@link #START} add up to the
 *     difficulty
 * @param words the level explained: "level 3, estimated: one idea beyond reading off, six steps,
 *     numbers under 100"
 */
public record Level(int number, Rational difficulty, List<Feature> features, String words) {

  /** The difficulty of a problem that has none of the features. */
  public static final Rational START = Rational.of(-22, 10);

  /** Levels 1 to 4 end below these difficulties. */
  private static final List<Rational> ENDS =
      List.of(Rational.of(-3, 2), Rational.of(-1, 2), Rational.of(1, 2), Rational.of(3, 2));

  public Level {
    features = List.copyOf(features);
  }

  /**
   * The estimated level by the shortest working; empty if there is no working to judge by.
   *
   * <p>The model is a weighted sum of the features, after the linear logistic test model (Fischer
   * 1973, from memory); the weights are a judgement of practice.
   */
  public static Optional<Level> of(Solution solution) {
    return solution.routes().stream().findFirst().map(shortest -> of(solution, shortest));
  }

  private static Level of(Solution solution, Working shortest) {
    List<Feature> features = Features.of(solution, shortest);
    Rational difficulty = features.stream().map(Feature::share).reduce(START, Rational::plus);
    int number = numberOf(difficulty);
    return new Level(number, difficulty, features, LevelWords.of(number, features, shortest));
  }

  /** The level of a difficulty: below −1.5, −0.5, 0.5, 1.5, and the rest. */
  static int numberOf(Rational difficulty) {
    return 1 + (int) ENDS.stream().filter(end -> difficulty.compareTo(end) >= 0).count();
  }
}
