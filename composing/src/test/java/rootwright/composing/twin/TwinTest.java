package rootwright.composing.twin;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.ask.AskedReader;
import rootwright.working.ask.ProblemReader;
import rootwright.working.problem.Problem;
import rootwright.working.problem.Statement;

class TwinTest {

  private static final Problem OLD = problem("2x^3 - 6x^2 + x + 5", "Σ r^2");

  @ParameterizedTest
  @CsvSource({
    "4x^3 - 12x^2 + 2x + 10, Σ r^2, same problem scaled",
    "2x^3 - 6x^2 + x + 5, Σ r^2, same problem",
    "'2x^3 - 6x^2 + x + 5', 'r^2 + s^2 + t^2', same problem",
    "2z^3 - 6z^2 + z + 5, a^2 + b^2 + c^2, same problem renamed",
    "2x^3 + 6x^2 + x - 5, Σ r^2, 'mirror image, same key 8'",
    "5x^3 + x^2 - 6x + 2, Σ 1/r^2, 'reciprocal twin, same key 8'",
    "5x^3 - x^2 - 6x - 2, Σ 1/r^2, 'mirrored reciprocal twin, same key 8'",
    "2x^3 - 12x^2 + 19x - 4, Σ (r - 1)^2, 'same problem shifted: every root moved by 1'",
    "2x^3 - 12x^2 + 19x - 4, Σ r^2, 'same roots shifted, another ask: every root moved by 1'"
  })
  void theRelationOfTwoProblemsIsNamed(String polynomial, String ask, String words) {
    assertThat(Twin.relation(OLD, problem(polynomial, ask)).map(Twin::words)).hasValue(words);
  }

  @Test
  void anotherAskOfTheSamePolynomialIsNoTwin() {
    assertThat(Twin.relation(OLD, problem("2x^3 - 6x^2 + x + 5", "Σ r^3"))).isEmpty();
  }

  @Test
  void aMirroredPolynomialWithAnAskThatChangesItsSignIsNoTwin() {
    // Σr³ of the mirrored polynomial is minus the old key: the ask was not turned with it.
    Problem cubes = problem("2x^3 - 6x^2 + x + 5", "Σ r^3");

    assertThat(Twin.relation(cubes, problem("2x^3 + 6x^2 + x - 5", "Σ r^3"))).isEmpty();
    assertThat(Twin.relation(cubes, problem("2x^3 + 6x^2 + x - 5", "-Σ r^3")).map(Twin::relation))
        .hasValue(Relation.MIRRORED);
  }

  @Test
  void onlyAShiftIsNotRefused() {
    assertThat(List.of(Relation.values()).stream().filter(relation -> !relation.isRefused()))
        .containsExactly(Relation.SHIFTED, Relation.SHIFTED_ROOTS);
  }

  @Test
  void aCyclicSumIsRecognisedUnderOtherNamesOfTheRoots() {
    Problem cyclic = problem("x^3 - 7x + 7", "r^2 s + s^2 t + t^2 r");

    assertThat(Twin.relation(cyclic, problem("x^3 - 7x + 7", "s^2 r + r^2 t + t^2 s")))
        .hasValueSatisfying(twin -> assertThat(twin.relation()).isEqualTo(Relation.SAME));
    assertThat(Twin.relation(cyclic, problem("x^3 - 7x + 7", "r^2 s + s^2 t + t^2 s"))).isEmpty();
  }

  @Test
  void scalingThePolynomialChangesADiscriminantSoItIsNoTwin() {
    assertThat(
            Twin.relation(
                problem("x^3 - 4x + 1", "discriminant"), problem("2x^3 - 8x + 2", "discriminant")))
        .isEmpty();
  }

  @Test
  void aPolynomialWithARootOfZeroHasNoReciprocalTwinAndStillAFingerprint() {
    assertThat(Fingerprint.of(problem("x^3 - 3x^2 + x", "Σ r^2")).text()).contains("e_1^2 - 2*e_2");
  }

  @Test
  void theFingerprintOfALongAskIsShortAndStillTellsProblemsApart() {
    Fingerprint far = Fingerprint.of(problem("x^3 - x^2 - 2x + 3", "Σ r^20"));

    assertThat(far.text()).hasSizeLessThan(90);
    assertThat(far).isEqualTo(Fingerprint.of(problem("2x^3 - 2x^2 - 4x + 6", "Σ r^20")));
    assertThat(far).isEqualTo(Fingerprint.of(problem("x^3 + x^2 - 2x - 3", "Σ r^20")));
    assertThat(far).isNotEqualTo(Fingerprint.of(problem("x^3 - x^2 - 2x + 3", "Σ r^22")));
  }

  @Test
  void twinsShareAFingerprintAndTheirKeysAgree() {
    long seed = Long.getLong("rootwright.seed", 41L);
    SplittableRandom random = new SplittableRandom(seed);
    List<String[]> asks =
        List.of(
            new String[] {"Σ r^2", "Σ r^2", "Σ 1/r^2"},
            new String[] {"Σ 1/(r - 2)", "-Σ 1/(r + 2)", "Σ r/(1 - 2r)"},
            new String[] {"Π (1 + r)", "Π (1 - r)", "Π (1 + 1/r)"},
            new String[] {"Σ r^2 s", "-Σ r^2 s", "Σ 1/(r^2 s)"});
    for (int round = 0; round < 40; round++) {
      Polynomial p = cubic(random);
      String[] ask = asks.get(round % asks.size());
      Problem one = problem(text(p), ask[0]);
      Problem scaled = problem(text(p.times(Rational.of(-3))), ask[0]);
      Problem mirrored = problem(text(p.compose(Polynomial.X.negate())), ask[1]);
      Problem reversed = problem(text(p.reversed()), ask[2]);
      Optional<Rational> key = AskedReader.read(one).value();
      for (Problem twin : List.of(scaled, mirrored, reversed)) {
        assertThat(Fingerprint.of(twin))
            .as("%s of %s, seed %d", ask[0], p, seed)
            .isEqualTo(Fingerprint.of(one));
        assertThat(AskedReader.read(twin).value()).as("%s, seed %d", p, seed).isEqualTo(key);
      }
      Problem other = problem(text(p.plus(Polynomial.ONE)), ask[0]);
      if (p.coefficient(0).plus(Rational.ONE).isZero()) {
        continue;
      }
      assertThat(Twin.relation(one, other).isPresent())
          .as("%s, seed %d", p, seed)
          .isEqualTo(Fingerprint.of(one).equals(Fingerprint.of(other)));
    }
  }

  private static Polynomial cubic(SplittableRandom random) {
    return Polynomial.ofDescending(
        1 + random.nextInt(4), random.nextInt(-6, 7), random.nextInt(-6, 7), 1 + random.nextInt(6));
  }

  private static String text(Polynomial p) {
    StringBuilder text = new StringBuilder();
    for (int k = p.degree(); k >= 0; k--) {
      text.append(p.coefficient(k)).append(' ');
    }
    return text.toString();
  }

  private static Problem problem(String polynomial, String ask) {
    try {
      return ProblemReader.read(Statement.of(polynomial, ask));
    } catch (UnreadableException unreadable) {
      throw new IllegalArgumentException(polynomial + " with " + ask, unreadable);
    }
  }
}
