package rootwright.algebra.modular;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.Random;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class WordArithmeticTest {

  private static final long SEED = Long.getLong("rootwright.seed", 20240613L);

  @Test
  void arithmeticAgreesWithLongNumbers() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int round = 0; round < 20_000; round++) {
      long m = Math.max(3, random.nextLong(1L << random.nextInt(2, 62)) | 1);
      OddModulus modulus = OddModulus.of(m);
      long a = random.nextLong();
      long b = random.nextLong();
      BigInteger big = BigInteger.valueOf(m);
      BigInteger left = BigInteger.valueOf(a);
      BigInteger right = BigInteger.valueOf(b);
      long x = modulus.represent(a);
      long y = modulus.represent(right);
      String context = "seed " + SEED + ": " + a + ", " + b + " modulo " + m;
      assertThat(modulus.residue(x)).as(context).isEqualTo(left.mod(big).longValue());
      assertThat(modulus.residue(modulus.plus(x, y)))
          .as(context)
          .isEqualTo(left.add(right).mod(big).longValue());
      assertThat(modulus.residue(modulus.minus(x, y)))
          .as(context)
          .isEqualTo(left.subtract(right).mod(big).longValue());
      assertThat(modulus.residue(modulus.times(x, y)))
          .as(context)
          .isEqualTo(left.multiply(right).mod(big).longValue());
      assertThat(modulus.residue(modulus.negate(x)))
          .as(context)
          .isEqualTo(left.negate().mod(big).longValue());
      if (left.gcd(big).equals(BigInteger.ONE)) {
        assertThat(modulus.isInvertible(x)).as(context).isTrue();
        assertThat(modulus.times(x, modulus.inverse(x))).as(context).isEqualTo(modulus.one());
      } else {
        assertThat(modulus.isInvertible(x)).as(context).isFalse();
        assertThatThrownBy(() -> modulus.inverse(x)).isInstanceOf(ArithmeticException.class);
      }
    }
  }

  @Test
  void longConvolutionsOfTheLargestResiduesDoNotOverflow() {
    OddModulus modulus = OddModulus.of((1L << 61) - 1);
    long[] largest = new long[500];
    Arrays.fill(largest, modulus.modulus() - 1);
    long each = modulus.times(largest[0], largest[0]);
    for (int length = 0; length <= 500; length++) {
      assertThat(modulus.convolution(largest, 0, largest, 499, length))
          .isEqualTo(modulus.times(each, modulus.represent(length)));
    }
  }

  @Test
  void smallModuliReduceSumsOfProducts() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int round = 0; round < 20_000; round++) {
      long m = Math.max(2, random.nextLong(1L << random.nextInt(2, 32)));
      SmallModulus modulus = SmallModulus.of(m);
      int length = random.nextInt(0, 30);
      long[] a = new long[length];
      long[] b = new long[length];
      BigInteger sum = BigInteger.ZERO;
      for (int k = 0; k < length; k++) {
        a[k] = random.nextBoolean() ? m - 1 : random.nextLong(m);
        b[k] = random.nextBoolean() ? m - 1 : random.nextLong(m);
      }
      for (int k = 0; k < length; k++) {
        sum = sum.add(BigInteger.valueOf(a[k]).multiply(BigInteger.valueOf(b[length - 1 - k])));
      }
      assertThat(modulus.convolution(a, 0, b, length - 1, length))
          .as("seed %d, modulo %d, %d terms", SEED, m, length)
          .isEqualTo(sum.mod(BigInteger.valueOf(m)).longValue());
      assertThat(modulus.represent(sum.negate()))
          .isEqualTo(sum.negate().mod(BigInteger.valueOf(m)).longValue());
    }
  }

  @Test
  void powersAgreeWithLongNumbers() {
    OddModulus modulus = OddModulus.of(999_999_999_999_999_989L);
    BigInteger m = BigInteger.valueOf(modulus.modulus());
    for (long exponent : new long[] {0, 1, 2, 63, 1_000_000_007L, Long.MAX_VALUE}) {
      assertThat(modulus.residue(modulus.power(modulus.represent(-3), exponent)))
          .isEqualTo(BigInteger.valueOf(-3).modPow(BigInteger.valueOf(exponent), m).longValue());
    }
  }

  @Test
  void evenAndLargeModuliAreRefused() {
    for (long bad : new long[] {-3, 0, 1, 4, 1L << 61, (1L << 61) + 1}) {
      assertThatThrownBy(() -> OddModulus.of(bad))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageContaining(Long.toString(bad));
    }
  }

  @Test
  void primesAgreeWithTheProbableOnesOfTheLibrary() {
    for (long number = 41; number < 20_000; number += 2) {
      assertThat(WordPrimes.isPrime(number))
          .as("%d", number)
          .isEqualTo(BigInteger.valueOf(number).isProbablePrime(60));
    }
    long before = 1L << 61;
    for (int k = 0; k < 20; k++) {
      long prime = WordPrimes.get(k).modulus();
      for (long between = before - 1; between > prime; between--) {
        assertThat(BigInteger.valueOf(between).isProbablePrime(60)).isFalse();
      }
      assertThat(BigInteger.valueOf(prime).isProbablePrime(60)).isTrue();
      before = prime;
    }
  }

  @Test
  void liftingFindsEveryNumberWithinHalfTheRange() {
    SplittableRandom random = new SplittableRandom(SEED);
    BigInteger[] wanted = new BigInteger[50];
    for (int k = 0; k < wanted.length; k++) {
      BigInteger size = new BigInteger(170, new Random(random.nextLong()));
      wanted[k] = k % 2 == 0 ? size : size.negate();
    }
    Lifting lifting = new Lifting(wanted.length);
    for (int number = 0; number < 3; number++) {
      OddModulus modulus = WordPrimes.get(number);
      long[] residues = new long[wanted.length];
      Arrays.setAll(residues, k -> modulus.represent(wanted[k]));
      lifting.add(modulus, residues);
    }
    assertThat(lifting.range().bitLength()).isGreaterThan(171);
    assertThat(lifting.values()).containsExactly(wanted);
  }
}
