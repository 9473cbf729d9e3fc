package rootwright.algebra.symmetric;

import static org.assertj.core.api.Assertions.assertThat;

import cc.redberry.rings.Rings;
import cc.redberry.rings.bigint.BigInteger;
import cc.redberry.rings.poly.univar.UnivariatePolynomial;
import cc.redberry.rings.poly.univar.UnivariateResultants;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;

/** The same computations by an independent library, from the definitions. */
class RingsAgreementTest {

  private static cc.redberry.rings.poly.multivar.MultivariatePolynomial<
          cc.redberry.rings.Rational<BigInteger>>
      toRings(MultivariatePolynomial polynomial, int unknowns) {
    return cc.redberry.rings.poly.multivar.MultivariatePolynomial.parse(
        polynomial.toString(),
        Rings.Q,
        IntStream.range(0, unknowns).mapToObj(k -> "x" + k).toArray(String[]::new));
  }

  @Test
  @SuppressWarnings("unchecked")
  void theElementaryFormSubstitutedByTheLibraryIsTheSumOverImagesBuiltByTheLibrary() {
    SplittableRandom random = Samples.random();
    for (int trial = 0; trial < 60; trial++) {
      int n = 2 + trial % 3;
      // A random monomial, symmetrised by adding its images under all renamings.
      int[] exponents = random.ints(n, 0, 5).toArray();
      var one = toRings(MultivariatePolynomial.term(Rational.ONE, Monomial.of(exponents)), n);
      var sum = one.createZero();
      for (int[] images : permutations(n)) {
        var renamed = one.createOne();
        for (int k = 0; k < n; k++) {
          renamed = renamed.multiply(one.createMonomial(images[k], exponents[k]));
        }
        sum = sum.add(renamed);
      }
      long images = permutations(n).size();
      Partition partition = Partition.of(exponents);
      SymmetricPolynomial symmetric =
          SymmetricPolynomial.monomial(n, partition)
              .times(Rational.of(images).over(Rational.of(partition.orbitSize(n))));
      var form = toRings(symmetric.toElementary().polynomial(), n);
      var elementaries =
          IntStream.rangeClosed(1, n)
              .mapToObj(k -> toRings(Samples.elementary(n, k), n))
              .toArray(cc.redberry.rings.poly.multivar.MultivariatePolynomial[]::new);
      assertThat((Object) form.composition(elementaries))
          .as("seed %d, trial %d: %s", Samples.SEED, trial, partition)
          .isEqualTo(sum);
    }
  }

  /** Newton's recurrence in Z[e], carried out by the library. */
  @Test
  void girardWaringAgreesWithTheRecurrenceInTheLibrary() {
    int n = 5;
    var sums =
        new ArrayList<
            cc.redberry.rings.poly.multivar.MultivariatePolynomial<
                cc.redberry.rings.Rational<BigInteger>>>();
    var zero = toRings(MultivariatePolynomial.ZERO, n);
    sums.add(zero);
    for (int k = 1; k <= 14; k++) {
      var sum = zero.clone();
      for (int i = 1; i <= Math.min(k, n); i++) {
        var e = zero.createMonomial(i - 1, 1);
        var term = i == k ? e.multiply(k) : e.multiply(sums.get(k - i));
        sum = i % 2 == 1 ? sum.add(term) : sum.subtract(term);
      }
      sums.add(sum);
      assertThat((Object) toRings(GirardWaring.powerSum(k, n).polynomial(), n)).isEqualTo(sum);
    }
  }

  @Test
  void discriminantsAgreeWithTheLibrary() {
    SplittableRandom random = Samples.random();
    for (int trial = 0; trial < 100; trial++) {
      int degree = 2 + trial % 9;
      long[] descending = random.longs(degree + 1L, -50, 51).toArray();
      descending[0] = 1 + trial % 4;
      UnivariatePolynomial<BigInteger> polynomial =
          UnivariatePolynomial.create(
              Rings.Z,
              IntStream.rangeClosed(0, degree)
                  .mapToObj(k -> BigInteger.valueOf(descending[degree - k]))
                  .toArray(BigInteger[]::new));
      assertThat(Discriminant.of(Polynomial.ofDescending(descending)).toString())
          .as("seed %d, trial %d: %s", Samples.SEED, trial, polynomial)
          .isEqualTo(UnivariateResultants.Discriminant(polynomial).toString());
    }
  }

  private static List<int[]> permutations(int n) {
    if (n == 0) {
      return List.of(new int[0]);
    }
    return permutations(n - 1).stream()
        .flatMap(
            shorter ->
                IntStream.range(0, n)
                    .mapToObj(
                        place ->
                            IntStream.range(0, n)
                                .map(k -> k == place ? n - 1 : shorter[k < place ? k : k - 1])
                                .toArray()))
        .toList();
  }
}
