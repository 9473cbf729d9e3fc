package rootwright.algebra.roots;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;

/** The seed of the sampled tests: {@code -Drootwright.seed=…} replays another run. */
final class Seed {

  static final long VALUE = Long.getLong("rootwright.seed", 20240611L);

  private Seed() {}

  static SplittableRandom random() {
    return new SplittableRandom(VALUE);
  }

  /** A polynomial of this degree with small coefficients, not monic as a rule. */
  static Polynomial polynomial(SplittableRandom random, int degree) {
    List<Rational> ascending = new ArrayList<>();
    for (int k = 0; k < degree; k++) {
      ascending.add(Rational.of(random.nextInt(-9, 10)));
    }
    ascending.add(Rational.of(random.nextInt(1, 5)));
    return Polynomial.ofAscending(ascending);
  }
}
