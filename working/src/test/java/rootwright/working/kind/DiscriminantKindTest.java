package rootwright.working.kind;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import rootwright.algebra.number.Rational;
import rootwright.algebra.roots.Resultant;
import rootwright.working.answer.Answer;
import rootwright.working.ask.ProblemReader;
import rootwright.working.problem.Statement;
import rootwright.working.route.ClassProfile;
import rootwright.working.solve.Solution;

class DiscriminantKindTest {

  private static final long SEED = Long.getLong("rootwright.seed", 20_261_126L);

  @ParameterizedTest(name = "{0}")
  @CsvFileSource(resources = "discriminants.csv", delimiter = ';', numLinesToSkip = 1)
  void publishedDiscriminantsComeOutByTheRoutesThatAreMadeForThem(
      String source, String coefficients, String value, String routes) {
    Solution solution = Solved.of(coefficients, "discriminant");
    assertThat(solution.answer()).as(source).isEqualTo(Answer.exact(Rational.parse(value)));
    if (routes != null) {
      assertThat(Solved.routes(solution)).contains(routes.split(" "));
    }
  }

  @Test
  void theFormulaIsShownWithTheLettersOfTheCoefficients() {
    assertThat(Solved.lines(Solved.of("3 5 -7", "discriminant"), "discriminant-formula"))
        .containsExactly("9*product((r - s)^2) = b^2 - 4*a*c = 5^2 - 4*3*(-7) = 109");
  }

  @Test
  void lettersOfTheRootsAreNotUsedForCoefficients() throws Exception {
    Solution solution =
        new Kinds()
            .solve(
                ProblemReader.read(
                    new Statement("3 5 -7", "discriminant", List.of("a", "b"), Optional.empty())),
                ClassProfile.EVERYTHING);
    assertThat(Solved.lines(solution, "discriminant-formula"))
        .containsExactly("9*product((a - b)^2) = 5^2 - 4*3*(-7) = 109");
  }

  /**
   * Swan, Factorization of polynomials over finite fields, Pacific Journal of Mathematics 12
   * (1962), theorem 2 (from memory): xⁿ + ax + b has the discriminant (−1)^(n(n−1)/2)·(nⁿb^(n−1) +
   * (−1)^(n−1)(n − 1)^(n−1)aⁿ).
   */
  @Test
  void trinomialsOfHighDegreeHaveTheirKnownDiscriminant() {
    for (int n : new int[] {16, 17, 20, 25, 30}) {
      int a = n % 3 + 1;
      int b = -(n % 5) - 1;
      Rational first = Rational.of(n).power(n).times(Rational.of(b).power(n - 1));
      Rational second = Rational.of(n - 1).power(n - 1).times(Rational.of(a).power(n));
      Rational sum = n % 2 == 1 ? first.plus(second) : first.minus(second);
      Rational expected = n * (n - 1) / 2 % 2 == 0 ? sum : sum.negate();
      String[] coefficients = new String[n + 1];
      Arrays.fill(coefficients, "0");
      coefficients[0] = "1";
      coefficients[n - 1] = String.valueOf(a);
      coefficients[n] = String.valueOf(b);
      assertThat(Solved.of(String.join(" ", coefficients), "discriminant").answer())
          .as("degree %d", n)
          .isEqualTo(Answer.exact(expected));
    }
  }

  @Test
  void theProductOfSquaredDifferencesIsShownAsASlip() {
    assertThat(Solved.of("2 0 -5 1", "discriminant").slips())
        .anySatisfy(
            slip -> {
              assertThat(slip.name()).isEqualTo("discriminant-normalisation");
              assertThat(slip.value()).isEqualTo(Answer.exact(Rational.parse("223/4")));
            });
  }

  @Test
  void withLeadOneTheSlipIsSilent() {
    Solution solution = Solved.of("1 0 -4 1", "discriminant");
    assertThat(solution.slips()).noneMatch(s -> s.name().equals("discriminant-normalisation"));
    assertThat(solution.silent()).anyMatch(s -> s.name().equals("discriminant-normalisation"));
  }

  /** The resultant of P and P′ is another way; res(P, P′) = (−1)^(n(n−1)/2)·a·D. */
  @Test
  void theResultantAgreesOnAnyPolynomial() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int k = 0; k < 20; k++) {
      int n = random.nextInt(2, 5);
      long[] c = new long[n + 1];
      Arrays.setAll(c, i -> random.nextInt(-4, 5));
      c[0] = random.nextInt(1, 4);
      String text = String.join(" ", Arrays.stream(c).mapToObj(Long::toString).toList());
      var p = Solved.polynomial(text);
      Rational expected = Resultant.of(p, p.derivative()).over(p.lead());
      assertThat(Solved.of(text, "discriminant").answer())
          .as("seed %d: %s", SEED, text)
          .isEqualTo(Answer.exact(n * (n - 1) / 2 % 2 == 0 ? expected : expected.negate()));
    }
  }
}
