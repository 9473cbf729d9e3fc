package rootwright.working.proof;

import java.util.SplittableRandom;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.working.check.Verdict;

/**
 * Tries a general identity on numbers drawn by chance, for two to seven roots. That is a test and
 * no proof, and is labelled so; it is the second opinion beside {@link ExpansionCheck}, which
 * proves one n at a time.
 */
public final class SampledCheck {

  /** How many instances are tried; those where a denominator vanishes are drawn again. */
  public static final int INSTANCES = 60;

  private static final int MOST_DRAWS = 600;

  private SampledCheck() {}

  /**
   * What the samples say.
   *
   * @param seed of the numbers
   */
  public static Verdict of(General general, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    int agreed = 0;
    String why = "";
    for (int draw = 0; draw < MOST_DRAWS && agreed < INSTANCES; draw++) {
      int n = Letters.FEWEST + draw % (Letters.MOST - Letters.FEWEST + 1);
      Identity identity = general.in(Letters.usual(n));
      try {
        if (!holds(identity, random)) {
          return new Verdict.Refuted(
              "it fails for %d roots drawn with seed %d: %s"
                  .formatted(n, seed, UnicodeWriter.write(identity.shown())));
        }
        agreed++;
      } catch (UnsayableException undefined) {
        why = undefined.why();
      }
    }
    return agreed == INSTANCES
        ? Verdict.confirmed("sampled, %d instances of 2 to 7 roots".formatted(agreed))
        : new Verdict.Undecided(why);
  }

  private static boolean holds(Identity identity, SplittableRandom random) {
    SampledEvaluation evaluation = new SampledEvaluation(identity, random.split());
    Surd first = evaluation.valueOf(identity.sides().get(0));
    return identity.sides().stream().skip(1).allMatch(side -> first.same(evaluation.valueOf(side)));
  }
}
