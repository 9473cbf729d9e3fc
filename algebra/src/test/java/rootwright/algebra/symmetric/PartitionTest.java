package rootwright.algebra.symmetric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigInteger;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class PartitionTest {

  @Test
  void conjugatingTwiceGivesThePartitionBack() {
    Samples.partitions(10, 10)
        .forEach(
            partition -> {
              assertThat(partition.conjugate().conjugate()).isEqualTo(partition);
              assertThat(partition.conjugate().weight()).isEqualTo(partition.weight());
              assertThat(partition.conjugate().length()).isEqualTo(partition.part(0));
            });
  }

  /** OEIS A000041, from memory. */
  @Test
  void partitionsAreAsManyAsTheBookSays() {
    assertThat(IntStream.rangeClosed(0, 12).map(n -> Partition.all(n, n).size()))
        .containsExactly(1, 1, 2, 3, 5, 7, 11, 15, 22, 30, 42, 56, 77);
  }

  @Test
  void partitionsAreCountedAsTheyAreListed() {
    for (int weight = 0; weight <= 12; weight++) {
      for (int parts = 0; parts <= 6; parts++) {
        assertThat(Partition.count(weight, parts)).isEqualTo(Partition.all(weight, parts).size());
      }
    }
    // Hardy and Ramanujan, 1918, as MacMahon counted it; from memory.
    assertThat(Partition.count(200, 200)).isEqualTo(3_972_999_029_388L);
  }

  @Test
  void partitionsComeDescendingWithoutRepetitionAndWithinTheBound() {
    List<Partition> all = Partition.all(12, 4);
    assertThat(all).allMatch(partition -> partition.weight() == 12 && partition.length() <= 4);
    for (int k = 1; k < all.size(); k++) {
      assertThat(all.get(k)).isLessThan(all.get(k - 1));
    }
    // Into at most 4 parts: as many as into parts of at most 4 (conjugates).
    assertThat(all)
        .hasSize((int) Partition.all(12, 12).stream().filter(p -> p.part(0) <= 4).count());
  }

  /** Monomials of degree w in n variables are C(w + n − 1, n − 1). */
  @Test
  void orbitsOfOneWeightShareAllItsMonomials() {
    for (int n = 1; n <= 6; n++) {
      for (int weight = 0; weight <= 9; weight++) {
        int variables = n;
        BigInteger monomials = BigInteger.ONE;
        for (int k = 1; k < n; k++) {
          monomials =
              monomials
                  .multiply(BigInteger.valueOf((long) weight + k))
                  .divide(BigInteger.valueOf(k));
        }
        assertThat(
                Partition.all(weight, n).stream()
                    .map(partition -> partition.orbitSize(variables))
                    .reduce(BigInteger.ZERO, BigInteger::add))
            .isEqualTo(monomials);
      }
    }
  }

  @Test
  void anOrbitNeedsAsManyVariablesAsParts() {
    assertThat(Partition.of(2, 1, 1).orbitSize(2)).isZero();
  }

  @Test
  void writingAndReadingIsTheIdentity() {
    Samples.partitions(8, 8)
        .forEach(
            partition -> assertThat(Partition.parse(partition.toString())).isEqualTo(partition));
  }

  @Test
  void partsMayComeInAnyOrderButNotNegative() {
    assertThat(Partition.of(0, 1, 3, 0, 2)).isEqualTo(Partition.of(3, 2, 1));
    assertThatThrownBy(() -> Partition.of(2, -1)).hasMessageContaining("[2, -1]");
  }
}
