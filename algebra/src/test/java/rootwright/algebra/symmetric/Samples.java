package rootwright.algebra.symmetric;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;

/** Small worlds and seeded samples; {@code -Drootwright.seed=…} replays another run. */
final class Samples {

  static final long SEED = Long.getLong("rootwright.seed", 20_251_109L);

  private Samples() {}

  static SplittableRandom random() {
    return new SplittableRandom(SEED);
  }

  /** All partitions of the weights 0 to {@code most} into at most {@code parts} parts. */
  static Stream<Partition> partitions(int most, int parts) {
    return IntStream.rangeClosed(0, most)
        .boxed()
        .flatMap(weight -> Partition.all(weight, parts).stream());
  }

  /** All multisets of {@code size} whole numbers from −2 to 3. */
  static List<List<Rational>> multisets(int size) {
    List<List<Rational>> found = new ArrayList<>();
    collect(found, size, -2, List.of());
    return found;
  }

  private static void collect(
      List<List<Rational>> found, int left, int least, List<Rational> chosen) {
    if (left == 0) {
      found.add(chosen);
      return;
    }
    for (int next = least; next <= 3; next++) {
      List<Rational> longer = new ArrayList<>(chosen);
      longer.add(Rational.of(next));
      collect(found, left - 1, next, List.copyOf(longer));
    }
  }

  static List<Rational> point(SplittableRandom random, int size) {
    return Stream.generate(() -> Rational.of(random.nextInt(-9, 10), random.nextInt(1, 5)))
        .limit(size)
        .toList();
  }

  static SymmetricPolynomial polynomial(SplittableRandom random, int variables, int weight) {
    SymmetricPolynomial sum = SymmetricPolynomial.constant(variables, Rational.ZERO);
    for (int term = 0; term < 4; term++) {
      List<Partition> all = Partition.all(random.nextInt(0, weight + 1), variables);
      sum =
          sum.plus(
              SymmetricPolynomial.monomial(variables, all.get(random.nextInt(all.size())))
                  .times(Rational.of(random.nextInt(-20, 21), random.nextInt(1, 7))));
    }
    return sum;
  }

  /** e_k of n variables written out by choosing k of them, without the code under test. */
  static MultivariatePolynomial elementary(int variables, int k) {
    return IntStream.range(0, 1 << variables)
        .filter(chosen -> Integer.bitCount(chosen) == k)
        .mapToObj(
            chosen ->
                Monomial.of(
                    IntStream.range(0, variables).map(place -> chosen >> place & 1).toArray()))
        .map(monomial -> MultivariatePolynomial.term(Rational.ONE, monomial))
        .reduce(MultivariatePolynomial.ZERO, MultivariatePolynomial::plus);
  }

  static List<MultivariatePolynomial> elementaries(int variables) {
    return IntStream.rangeClosed(1, variables).mapToObj(k -> elementary(variables, k)).toList();
  }
}
