package rootwright.algebra.value;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rootwright.algebra.enclosure.ComplexBall;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;

class ExactValuesTest {

  private static final long SEED = Long.getLong("rootwright.seed", 5L);

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          # Dickson, First Course in the Theory of Equations, 1922: sec 46 ex 1, p 49
          1 0 -15 4      | -4 ; 2-1r3 ; 2+1r3
          # sec 48 ex 3 and ex 4, p 51
          1 0 -3 6 -2    | -1-1r2 ; -1+1r2 ; 1+1r-1 ; 1-1r-1
          1 0 -2 -8 -3   | 1-1r2 ; 1+1r2 ; -1+1r-2 ; -1-1r-2
          # Hall & Knight, Higher Algebra, 1887, XXXV.e (from memory)
          1 0 -3 -42 -40 | -1 ; 4 ; -3/2+1/2r-31 ; -3/2-1/2r-31
          # DLMF 1.11(iii) (from memory)
          1 -4 0 5 2     | 1/2-1/2r5 ; 3/2-1/2r17 ; 1/2+1/2r5 ; 3/2+1/2r17
          # Dickson sec 79 ex 5 and ex 2, p 99
          1 -4 9 -16 20  | 0+2r-1 ; 0-2r-1 ; 2+1r-1 ; 2-1r-1
          28 9 0 -1      | 1/4 ; -2/7+1/7r-3 ; -2/7-1/7r-3
          # Dickson sec 114 ex 4, p 152
          1 0 3 32 67 32 65 | -2+1r-1 ; -2-1r-1 ; 0+1r-1 ; 0-1r-1 ; 2+3r-1 ; 2-3r-1
          # Dickson sec 21 ex 10, p 20
          1 -2 -5 -6 2   | 2-1r3 ; 2+1r3 ; -1+1r-1 ; -1-1r-1
          """)
  void rootsAreTheOnesThatBooksPrint(String coefficients, String expected) {
    List<ExactValue> wanted =
        Arrays.stream(expected.split(";")).map(text -> value(text.trim())).toList();
    assertThat(ExactValues.rootsOf(polynomial(coefficients)))
        .extracting(ExactRoot::value)
        .isEqualTo(wanted);
  }

  /** {@code 3/2-1/2r17} stands for 3/2 − (1/2)√17. */
  private static ExactValue value(String text) {
    int bar = text.indexOf('r');
    if (bar < 0) {
      return new RationalValue(Rational.parse(text));
    }
    int sign = Math.max(text.lastIndexOf('+', bar), text.lastIndexOf('-', bar));
    return new QuadraticSurd(
        Rational.parse(text.substring(0, sign)),
        Rational.parse(text.substring(sign, bar).replace("+", "")),
        new BigInteger(text.substring(bar + 1)));
  }

  @Test
  void rootsOfHigherDegreeAreNamedByTheirPlace() {
    Polynomial cubic = Polynomial.ofDescending(1, 3, -2, -5);
    List<ExactRoot> roots =
        ExactValues.rootsOf(cubic.power(2).times(Polynomial.ofDescending(2, -3)));
    assertThat(roots)
        .containsExactly(
            new ExactRoot(new RootOf(cubic, 0), 2),
            new ExactRoot(new RootOf(cubic, 1), 2),
            new ExactRoot(new RootOf(cubic, 2), 2),
            new ExactRoot(new RationalValue(Rational.of(3, 2)), 1));
    // Dickson sec 46 ex 4, p 49, rounded as it should have been
    assertThat(roots.get(0).value().decimal(8)).contains("-3.1284191");
    assertThat(roots.get(1).value().decimal(8)).contains("-1.2016397");
    assertThat(roots.get(2).value().decimal(8)).contains("1.3300587");
  }

  @Test
  void decimalsOfRootsAreRoundedCorrectlyToAnyLength() {
    // 2^(1/3) from the whole cube root of 2·10^(3k), by the JDK alone
    for (int digits : new int[] {1, 2, 10, 33, 120}) {
      BigInteger scaled = BigInteger.TWO.multiply(BigInteger.TEN.pow(3 * (digits + 5)));
      BigInteger low = BigInteger.ZERO;
      BigInteger high = scaled;
      while (high.subtract(low).compareTo(BigInteger.ONE) > 0) {
        BigInteger middle = low.add(high).shiftRight(1);
        if (middle.pow(3).compareTo(scaled) <= 0) {
          low = middle;
        } else {
          high = middle;
        }
      }
      BigDecimal expected =
          new BigDecimal(low, digits + 5).round(new MathContext(digits, RoundingMode.HALF_UP));
      String found =
          new RootOf(Polynomial.ofDescending(1, 0, 0, -2), 0).decimal(digits).orElseThrow();
      assertThat(new BigDecimal(found.endsWith(".") ? found + "0" : found))
          .isEqualByComparingTo(expected);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "-19/11, -1.727272727",
    "1/2, 0.5000000000",
    "2/3, 0.6666666667",
    "12345678901234567/1000, 1.234567890e13",
    "1/3000000000, 3.333333333e-10",
    "99999999999/10000000000, 10.00000000"
  })
  void rationalDecimalsHaveTenSignificantDigits(String number, String expected) {
    assertThat(new RationalValue(Rational.parse(number)).decimal(10)).contains(expected);
  }

  @Test
  void wholeNumbersHaveNoDecimal() {
    assertThat(RationalValue.of(-7).decimal(10)).isEmpty();
    assertThat(QuadraticSurd.of(Rational.TWO, Rational.of(3), BigInteger.valueOf(-1)).decimal(10))
        .isEmpty();
  }

  @Test
  void decimalsOfSurdsAgreeWithTheSquareRootOfTheJdk() {
    BigDecimal root = new BigDecimal(229).sqrt(new MathContext(60));
    BigDecimal expected =
        root.add(BigDecimal.valueOf(3)).divide(BigDecimal.valueOf(2)).round(new MathContext(10));
    assertThat(surd(Rational.of(3, 2), Rational.of(1, 2), 229).decimal(10))
        .contains(expected.toPlainString());
    // The parts nearly cancel: 10000 − √99999999 is about 1/20000.
    BigDecimal small =
        BigDecimal.valueOf(10000)
            .subtract(new BigDecimal(99999999).sqrt(new MathContext(80)))
            .round(new MathContext(10, RoundingMode.HALF_UP));
    assertThat(surd(Rational.of(10000), Rational.MINUS_ONE, 99999999).decimal(10))
        .hasValueSatisfying(text -> assertThat(new BigDecimal(text)).isEqualByComparingTo(small));
    assertThat(surd(Rational.ZERO, Rational.ONE, -2).decimal(10)).contains("1.414213562*i");
    assertThat(surd(Rational.of(-3, 2), Rational.of(-1, 2), -31).decimal(10))
        .contains("-1.500000000 - 2.783882181*i");
  }

  @Test
  void squareFactorsLeaveTheRoot() {
    assertThat(surd(Rational.of(7), Rational.ONE, 12))
        .isEqualTo(surd(Rational.of(7), Rational.TWO, 3));
    assertThat(((QuadraticSurd) surd(Rational.ONE, Rational.ONE, -72)).d())
        .isEqualTo(BigInteger.valueOf(-2));
    assertThat(surd(Rational.ONE, Rational.TWO, 9)).isEqualTo(RationalValue.of(7));
    assertThatThrownBy(() -> new QuadraticSurd(Rational.ONE, Rational.ONE, BigInteger.valueOf(4)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("rational");
  }

  @Test
  void everySmallRadicandIsSplitIntoASquareAndASquarefreeRest() {
    for (int n = 1; n <= 3000; n++) {
      SquareSplit split = SquareSplit.of(BigInteger.valueOf(-n));
      assertThat(split.root().pow(2).multiply(split.rest())).isEqualTo(BigInteger.valueOf(-n));
      int rest = -split.rest().intValueExact();
      for (int k = 2; k * k <= rest; k++) {
        assertThat(rest % (k * k)).as("%d divided by %d²", n, k).isNotZero();
      }
    }
  }

  /** Two primes beyond the trial bound, made by the JDK: their square is still recognised. */
  @Test
  void squaresOfLargePrimesAreRecognised() {
    BigInteger prime = BigInteger.valueOf(1_000_003);
    BigInteger other = BigInteger.valueOf(1_000_033);
    assertThat(SquareSplit.of(prime.pow(2).multiply(BigInteger.valueOf(12))))
        .isEqualTo(new SquareSplit(prime.multiply(BigInteger.TWO), BigInteger.valueOf(3)));
    assertThat(SquareSplit.of(prime.multiply(other)).root()).isEqualTo(BigInteger.ONE);
  }

  /** Beyond 10^15 a square may stay under the root; the number is recognised all the same. */
  @Test
  void numbersAreEqualHoweverTheRootIsWritten() {
    BigInteger prime = BigInteger.valueOf(1_000_003);
    BigInteger rest = new BigInteger("1000000000000000000000007");
    ExactValue one = QuadraticSurd.of(Rational.ONE, Rational.ONE, prime.pow(2).multiply(rest));
    ExactValue other = QuadraticSurd.of(Rational.ONE, Rational.of(prime), rest);
    assertThat(one).isEqualTo(other).hasSameHashCodeAs(other);
    assertThat(((QuadraticSurd) one).minus((QuadraticSurd) other)).isEqualTo(RationalValue.of(0));
  }

  @Test
  void arithmeticOfSurdsFollowsTheEnclosures() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int round = 0; round < 200; round++) {
      long d = new long[] {2, 3, 5, -1, -3, 229}[random.nextInt(6)];
      QuadraticSurd x = randomSurd(random, d);
      QuadraticSurd y = randomSurd(random, d);
      ComplexBall a = x.enclosure(30);
      ComplexBall b = y.enclosure(30);
      assertThat(x.plus(y).enclosure(25).overlaps(a.plus(b))).as("seed %d", SEED).isTrue();
      assertThat(x.times(y).enclosure(25).overlaps(a.times(b))).as("seed %d", SEED).isTrue();
      assertThat(x.over(y).enclosure(25).overlaps(a.over(b, 100))).as("seed %d", SEED).isTrue();
      assertThat(x.over(y)).isEqualTo(x.times(y.reciprocal()));
      assertThat(x.times(x.conjugate())).isEqualTo(new RationalValue(x.norm()));
      ComplexBall image = ComplexBall.ZERO;
      for (Rational c : reversed(x.minimalPolynomial().ascending())) {
        image = image.times(a).plus(ComplexBall.of(c, 120));
      }
      assertThat(image.containsZero()).isTrue();
    }
  }

  private static List<Rational> reversed(List<Rational> list) {
    List<Rational> copy = new ArrayList<>(list);
    Collections.reverse(copy);
    return copy;
  }

  private static QuadraticSurd randomSurd(SplittableRandom random, long d) {
    return new QuadraticSurd(
        Rational.of(random.nextInt(-9, 10), random.nextInt(1, 5)),
        Rational.of(random.nextInt(1, 10), random.nextInt(1, 5)),
        BigInteger.valueOf(d));
  }

  @Test
  void realNumbersAreOrderedBySize() {
    List<ExactValue> ascending =
        List.of(
            new RationalValue(Rational.of(-3)),
            surd(Rational.ONE, Rational.MINUS_ONE, 2),
            new RationalValue(Rational.of(5, 4)),
            new RootOf(Polynomial.ofDescending(1, 0, 0, -2), 0),
            surd(Rational.ZERO, Rational.ONE, 2),
            new RationalValue(Rational.of(141421356238L, 100000000000L)));
    for (int i = 0; i < ascending.size(); i++) {
      for (int j = 0; j < ascending.size(); j++) {
        assertThat(Integer.signum(ExactValues.compareReal(ascending.get(i), ascending.get(j))))
            .isEqualTo(Integer.compare(i, j));
      }
    }
    assertThatThrownBy(
            () -> ExactValues.compareReal(surd(Rational.ZERO, Rational.ONE, -1), ascending.get(0)))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void formulasKeepOneFractionBar() {
    Formula root229 = new Formula.Radical(Formula.number(229), 2);
    assertThat(surd(Rational.of(3, 2), Rational.of(1, 2), 229).toFormula())
        .isEqualTo(Formula.number(3).plus(root229).over(Formula.number(2)));
    assertThat(surd(Rational.of(7), Rational.TWO, 3).toFormula())
        .isEqualTo(
            Formula.number(7)
                .plus(Formula.number(2).times(new Formula.Radical(Formula.number(3), 2))));
    assertThat(surd(Rational.TWO, Rational.of(-3), -1).toFormula())
        .isEqualTo(Formula.number(2).minus(Formula.number(3).times(new Formula.ImaginaryUnit())));
    assertThat(new RationalValue(Rational.of(-19, 11)).toFormula())
        .isEqualTo(Formula.number(Rational.of(-19, 11)));
    assertThat(surd(Rational.ZERO, Rational.ONE, -1).toFormula())
        .isEqualTo(new Formula.ImaginaryUnit());
  }

  @Test
  void finerEnclosuresOfANamedRootStayAtTheSameRoot() {
    Polynomial polynomial = Polynomial.ofDescending(1, 0, 5, 0, 5, 0, 1);
    assertThat(ExactValues.rootsOf(polynomial)).hasSize(6);
    for (ExactRoot root : ExactValues.rootsOf(polynomial)) {
      ComplexBall coarse = root.value().enclosure(20);
      ComplexBall fine = root.value().enclosure(200);
      assertThat(fine.overlaps(coarse)).isTrue();
      assertThat(fine.radius().top()).isLessThan(-650);
    }
  }

  private static ExactValue surd(Rational a, Rational b, long d) {
    return QuadraticSurd.of(a, b, BigInteger.valueOf(d));
  }

  private static Polynomial polynomial(String descending) {
    return Polynomial.ofDescending(
        Arrays.stream(descending.trim().split(" ")).mapToLong(Long::parseLong).toArray());
  }
}
