package rootwright.working.recurrence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import cc.redberry.rings.IntegersZp64;
import cc.redberry.rings.poly.univar.UnivariatePolynomialArithmetic;
import cc.redberry.rings.poly.univar.UnivariatePolynomialZp64;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.algebra.value.RationalValue;
import rootwright.working.letters.Lettered;
import rootwright.working.route.Working;
import rootwright.working.solve.Solution;

/** Sequences typed as a recurrence with first members. */
class LinearRecurrencesTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        // OEIS A000045 (Fibonacci), A000032 (Lucas), A000129 (Pell), A001045 (Jacobsthal), A001608
        // (Perrin), A000073 (tribonacci), A000225 (2ⁿ − 1, the tower of Hanoi); from memory.
        "F_50 if F_0=0, F_1=1, F_{n+2}=F_{n+1}+F_n; 12586269025",
        "F_100 if F_0=0, F_1=1, F_{n+2}=F_{n+1}+F_n; 354224848179261915075",
        "L_12 if L_0=2, L_1=1, L_n = L_{n-1} + L_{n-2}; 322",
        "x_20 if x_0 = 0, x_1 = 1, x_{n+1} = 2x_n + x_{n-1}; 15994428",
        "J(11) if J(0)=0, J(1)=1, J(n+2) = J(n+1) + 2J(n); 683",
        "u_11 if u_0=3, u_1=0, u_2=2, u_{k+3}=u_{k+1}+u_k; 22",
        "t_12 if t_0=0, t_1=0, t_2=1, t_{n+3}=t_{n+2}+t_{n+1}+t_n; 274",
        "h_10 if h_1=1, h_{n+1} = 2h_n + 1; 1023",
        // Pisano periods, OEIS A001175: 60 modulo 10, 16 modulo 7, 300 modulo 100.
        "period mod 10 if F_0=0, F_1=1, F_{n+2}=F_{n+1}+F_n; 60",
        "period mod 7 if F_0=0, F_1=1, F_{n+2}=F_{n+1}+F_n; 16",
        "period of F_n mod 100 if F_0=0, F_1=1, F_{n+2}=F_{n+1}+F_n; 300",
        "last two digits of F_100 if F_0=0, F_1=1, F_{n+2}=F_{n+1}+F_n; 75",
        // By hand: 2·3¹⁰ … with roots 2 and 3; (n + 1)·2ⁿ for a double root.
        "u_10 if u_0=2, u_1=3, u_{k+2}=5u_{k+1}-6u_k; -55977",
        "u_5 if u_0=2, u_1=3, u_{k+2}=3u_{k+1}+2u_k; 573",
        "closed form if u_0=2, u_1=3, u_{k+2}=5u_{k+1}-6u_k; -3^k + 3*2^k",
        "closed form if u_0=1, u_1=4, u_{n+2} = 4u_{n+1} - 4u_n; (n + 1)*2^n",
        "closed form if u_0 = 1, u_{n+1} = 2u_n + 1; 2*2^n - 1",
        "characteristic polynomial if u_0=2, u_1=3, u_{k+2}=5u_{k+1}-6u_k; x^2 - 5*x + 6",
        "u₇ if u₀=3, u₁=0, u₂=2, uₖ₊₃=uₖ₊₁+uₖ; 7",
        "the remainder when u_100 is divided by 13 if u_0=2, u_1=3, u_{k+2}=5u_{k+1}-6u_k; 6",
      })
  void membersAreFoundByAWorking(String find, String answer) throws UnreadableException {
    Solution solution = Lettered.work("", find);
    assertThat(Lettered.text(solution)).isEqualTo(answer);
    assertThat(solution.second().agrees()).isTrue();
    assertThat(solution.statement()).startsWith("Let ").endsWith(".");
  }

  @Test
  void theSequenceMayStandInThePolynomialsPlace() throws UnreadableException {
    assertThat(Lettered.answer("u_0=2, u_1=3, u_{k+2}=5u_{k+1}-6u_k", "u_10")).isEqualTo("-55977");
  }

  @Test
  void aSequenceOfPowerSumsIsRecognised() throws UnreadableException {
    Solution solution = Lettered.work("", "u_5 if u_0=2, u_1=3, u_{k+2}=3u_{k+1}+2u_k");
    assertThat(solution.routes())
        .extracting(Working::route)
        .contains("power-sums", "step-by-step", "characteristic-roots");
    assertThat(Lettered.slips(Lettered.work("", "u_5 if u_0=1, u_1=3, u_{k+2}=3u_{k+1}+2u_k")))
        .contains("taken-for-power-sums 573");
  }

  @Test
  void aLateRemainderIsReachedBySquaring() throws UnreadableException {
    Solution solution = Lettered.work("", "F_100 mod 100 if F_0=0, F_1=1, F_{n+2}=F_{n+1}+F_n");
    assertThat(solution.routes()).extracting(Working::route).contains("squaring");
  }

  @Test
  void remaindersFarOutAreFoundAtOnce() throws UnreadableException {
    // The period modulo 7 is 16, and 10¹⁸ = 16·62500000000000000.
    assertThat(Lettered.answer("", "F_(10^18) mod 7 if F_0=0, F_1=1, F_{n+2}=F_{n+1}+F_n"))
        .isEqualTo("0");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "u_10 if u_0=2, u_{k+2}=5u_{k+1}-6u_k; u_1 is not given",
        "u_10 if u_0=2, u_1=3, u_2=4, u_{k+2}=5u_{k+1}-6u_k; By the recurrence u_2 is 3",
        "u_10 if u_0=2, u_1=3, u_{k+1}=u_k^2 - 6u_{k-1}; not linear",
        "u_30000 if u_0=2, u_1=3, u_{k+2}=5u_{k+1}-6u_k; up to index 20000",
        "u_3 if u_5=2, u_6=3, u_{k+2}=5u_{k+1}-6u_k; begins with u_5",
        "u_10 mod 7 if u_0=1, u_1=1, u_{n+2} = u_{n+1}/2 + u_n; whole",
        "closed form if u_0=3, u_1=0, u_2=2, u_{k+3}=u_{k+1}+u_k; no short exact form",
        "beauty of u_10 if u_0=2, u_1=3, u_{k+2}=5u_{k+1}-6u_k; is not asked",
      })
  void whatCannotBeWorkedIsRefusedWithTheReason(String find, String reason) {
    assertThatThrownBy(() -> Lettered.work("", find))
        .isInstanceOf(UnreadableException.class)
        .hasMessageContaining(reason);
  }

  @Test
  void closedFormsTakeTheMembersOfTheirSequences() {
    long seed = Long.getLong("rootwright.seed", 20_264L);
    SplittableRandom random = new SplittableRandom(seed);
    for (int sample = 0; sample < 40; sample++) {
      int r = random.nextInt(-4, 5);
      int s = random.nextInt(-4, 5);
      if (r == 0 || s == 0) {
        continue;
      }
      Recurrence sequence =
          new Recurrence(
              "u",
              "n",
              List.of(Rational.of(r + s), Rational.of(-r * s)),
              Rational.ZERO,
              0,
              List.of(Rational.of(random.nextInt(-5, 6)), Rational.of(random.nextInt(-5, 6))));
      ClosedForm form = ClosedForm.of(sequence).orElseThrow();
      for (int n = 0; n < 12; n++) {
        Rational member = sequence.members(n + 2).get(n);
        assertThat(
                form.enclosure(n, 40).minus(new RationalValue(member).enclosure(40)).containsZero())
            .as("roots %d and %d, index %d, seed %d", r, s, n, seed)
            .isTrue();
      }
    }
  }

  @Test
  void bothWaysToARemainderAgreeWithTheMembers() {
    long seed = Long.getLong("rootwright.seed", 20_265L);
    SplittableRandom random = new SplittableRandom(seed);
    for (int sample = 0; sample < 40; sample++) {
      int order = random.nextInt(1, 5);
      Recurrence sequence = random(random, order);
      BigInteger modulus = BigInteger.valueOf(random.nextInt(2, 500));
      int index = random.nextInt(0, 60);
      BigInteger member = sequence.members(index + order + 1).get(index).numerator().mod(modulus);
      Residues residues = new Residues(sequence, modulus);
      assertThat(residues.byPowers(BigInteger.valueOf(index)))
          .as("%s, seed %d", sequence, seed)
          .isEqualTo(member)
          .isEqualTo(residues.byMatrices(BigInteger.valueOf(index)));
      assertThat(sequence.at(BigInteger.valueOf(index)))
          .isEqualTo(sequence.members(index + order + 1).get(index));
    }
  }

  @Test
  void remaindersAgreeWithRings() {
    long seed = Long.getLong("rootwright.seed", 20_266L);
    SplittableRandom random = new SplittableRandom(seed);
    long prime = 1_000_003;
    for (int sample = 0; sample < 10; sample++) {
      int order = random.nextInt(2, 5);
      Recurrence sequence = random(random, order).homogeneous();
      int index = random.nextInt(100, 5000);
      long[] coefficients = new long[sequence.order() + 1];
      for (int k = 0; k <= sequence.order(); k++) {
        coefficients[k] = sequence.characteristic().coefficient(k).numerator().longValueExact();
      }
      UnivariatePolynomialZp64 modulus =
          UnivariatePolynomialZp64.create(new IntegersZp64(prime), coefficients);
      UnivariatePolynomialZp64 power =
          UnivariatePolynomialArithmetic.polyPowMod(
              UnivariatePolynomialZp64.create(new IntegersZp64(prime), new long[] {0, 1}),
              cc.redberry.rings.bigint.BigInteger.valueOf(index),
              modulus,
              true);
      BigInteger value = BigInteger.ZERO;
      for (int k = 0; k < sequence.order(); k++) {
        value =
            value.add(
                BigInteger.valueOf(power.get(k)).multiply(sequence.first().get(k).numerator()));
      }
      assertThat(
              new Residues(sequence, BigInteger.valueOf(prime)).byPowers(BigInteger.valueOf(index)))
          .as("%s, index %d, seed %d", sequence, index, seed)
          .isEqualTo(value.mod(BigInteger.valueOf(prime)));
    }
  }

  private static Recurrence random(SplittableRandom random, int order) {
    List<Rational> coefficients = new ArrayList<>();
    List<Rational> first = new ArrayList<>();
    for (int k = 0; k < order; k++) {
      int c = random.nextInt(-4, 5);
      coefficients.add(Rational.of(k == order - 1 && c == 0 ? 1 : c));
      first.add(Rational.of(random.nextInt(-9, 10)));
    }
    return new Recurrence("u", "n", coefficients, Rational.of(random.nextInt(-2, 3)), 0, first);
  }
}
