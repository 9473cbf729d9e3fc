package rootwright.working.proof;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import rootwright.algebra.notation.Formula;
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

  /** The identity for one number of roots, with what does not depend on the numbers drawn. */
  private record Instance(Identity identity, Map<Formula, List<Formula>> images) {}

  /**
   * What the samples say.
   *
   * @param seed of the numbers
   */
  public static Verdict of(General general, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Map<Integer, Instance> instances = new HashMap<>();
    int agreed = 0;
    String why = "";
    for (int draw = 0; draw < MOST_DRAWS && agreed < INSTANCES; draw++) {
      int n = Letters.FEWEST + draw % (Letters.MOST - Letters.FEWEST + 1);
      Instance instance =
          instances.computeIfAbsent(
              n, roots -> new Instance(general.in(Letters.usual(roots)), new HashMap<>()));
      try {
        if (!holds(instance, random)) {
          return new Verdict.Refuted(
              "it fails for %d roots drawn with seed %d: %s"
                  .formatted(n, seed, UnicodeWriter.write(instance.identity().shown())));
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

  private static boolean holds(Instance instance, SplittableRandom random) {
    Identity identity = instance.identity();
    SampledEvaluation evaluation =
        new SampledEvaluation(identity, instance.images(), random.split());
    Surd first = evaluation.valueOf(identity.sides().get(0));
    return identity.sides().stream().skip(1).allMatch(side -> first.same(evaluation.valueOf(side)));
  }
}
