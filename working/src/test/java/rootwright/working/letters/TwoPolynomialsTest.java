package rootwright.working.letters;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import cc.redberry.rings.Rings;
import cc.redberry.rings.poly.univar.UnivariatePolynomial;
import cc.redberry.rings.poly.univar.UnivariateResultants;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaExpansion;
import rootwright.algebra.notation.FormulaReader;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.check.ClaimCheck;
import rootwright.working.check.Verdict;
import rootwright.working.check.exact.ExactCheck;
import rootwright.working.check.second.EnclosureCheck;
import rootwright.working.solve.Solution;
import rootwright.working.step.Claim;
import rootwright.working.step.Setting;

/** Two polynomials: what they share, and expressions in the roots of both. */
class TwoPolynomialsTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        // Worked out by hand: the norm of B over the roots of A, and n·p₂ + 2p₁p₁ + m·p₂.
        "x^2 - 3x + 1 and x^3 - 2x + 2; Π (r - s); 19",
        "x^2 - 3x + 1 and x^3 - 2x + 2; Σ (r + s)^2; 29",
        "x^2 + kx + 10 and x^2 + 5x + 2k; k if they share exactly one root; -7",
        "x^2 + kx + 10 and x^2 + 5x + 2k; k if a common root; -7 or 5",
        // i and -i for k = 0; 1 and -1 otherwise.
        "x^2 + kx + 1 and x^3 + x + k; k if a common root; -2 or 0 or 2",
        "x^3 - 6x^2 + 11x - 6 and x^2 - 5x + 6; common roots; 2 or 3",
        "x^2 - 2 and x^2 - 3; common roots; no such value",
        // Dickson, First Course in the Theory of Equations, 1922, section 58, exercises 1 and 4:
        // the
        // repeated roots, shared with the derivative.
        "x^3 - 7x^2 + 15x - 9 and 3x^2 - 14x + 15; common roots; 3",
        "x^4 - 8x^3 + 22x^2 - 24x + 9 and 4x^3 - 24x^2 + 44x - 24; common roots; 1 or 3",
        // Dickson 1922, section 45 exercise 2: the discriminant 13068 of y³ − 15y + 4, which is
        // minus the resultant with its derivative.
        "y^3 - 15y + 4 and 3y^2 - 15; resultant; -13068",
        "2x^2 - 3x + 1 and 3x^2 + x - 5; resultant; 15",
        // B(r) is 5 and -3 at every root of A.
        "x^2 - 3x - 1 and x^2 - 3x + 4; resultant; 25",
        "x^2 - 5 and x^3 - 5x - 3; resultant; 9",
        "2x^2 - 3x + 1 and 3x^2 + x - 5; Π (r - s); 5/12",
        "2x^2 - 3x + 1 and 3x^2 + x - 5; Σ 1/(r-s); -121/15",
      })
  void whatTwoPolynomialsShareIsFound(String polynomials, String find, String answer)
      throws Exception {
    assertThat(Lettered.answer(polynomials, find)).isEqualTo(answer);
  }

  @Test
  void theResultantOfTwoQuadraticsIsTheKnownOne() throws Exception {
    // Dickson 1922, section 112, with lead coefficients 1: (b − d)² + (a − c)(ad − bc).
    Formula found =
        FormulaReader.formula(Lettered.answer("x^2 + a x + b and x^2 + c x + d", "resultant"));
    Formula known = FormulaReader.formula("(b-d)^2 + (a-c)(a d - b c)");
    Map<String, Integer> numbers = Map.of("a", 0, "b", 1, "c", 2, "d", 3);
    assertThat(FormulaExpansion.expand(found, numbers))
        .isEqualTo(FormulaExpansion.expand(known, numbers));
  }

  @Test
  void theIdenticalCaseIsThrownOutWithItsReasonAndIsASlip() throws UnreadableException {
    Solution solution =
        Lettered.work("x^2+kx+10 and x^2+5x+2k", "k if they share exactly one root");
    assertThat(Lettered.codes(solution)).containsExactly("extraneous");
    assertThat(solution.warnings().get(0).text()).contains("all roots in common");
    assertThat(Lettered.slips(solution)).containsExactly("identical-case-kept -7, 5");
    assertThat(solution.routes())
        .extracting(working -> working.route())
        .containsExactlyInAnyOrder("resultant", "subtract");
  }

  @Test
  void aTermMetOnceInsteadOfForEveryPairIsASlip() throws UnreadableException {
    assertThat(Lettered.slips(Lettered.work("x^2-3x+1 and x^3-2x+2", "Σ (r + s)^2")))
        .containsExactly("constant-once 11");
  }

  @Test
  void aPairThatMakesADenominatorZeroLeavesNoValue() throws UnreadableException {
    Solution solution = Lettered.work("x^2-3x+2 and x^2-1", "Σ 1/(r-s)");
    assertThat(solution.answer().kind()).isEqualTo("none");
    assertThat(Lettered.codes(solution)).contains("zero-denominator");
  }

  @Test
  void resultantsAgreeWithAnIndependentLibrary() throws Exception {
    long seed = Long.getLong("rootwright.seed", 20_263L);
    SplittableRandom random = new SplittableRandom(seed);
    for (int k = 0; k < 25; k++) {
      long[] a = coefficients(random, 2 + k % 2);
      long[] b = coefficients(random, 2 + k % 3);
      String found = Lettered.answer(text(a) + " and " + text(b), "resultant");
      var theirs = UnivariateResultants.Resultant(ring(a), ring(b));
      assertThat(found)
          .as("%s and %s, seed %d", text(a), text(b), seed)
          .isEqualTo(theirs.toString());
    }
  }

  @Test
  void wrongValuesOverPairsAreRefutedByBothChecks() {
    Polynomial a = Polynomial.ofDescending(1, -3, 1);
    Polynomial b = Polynomial.ofDescending(1, 0, -2, 2);
    Formula.Aggregate product =
        new Formula.Aggregate(
            Formula.Aggregate.Operation.PRODUCT, Formula.name("r").minus(Formula.name("s")));
    for (ClaimCheck check : List.of(new ExactCheck(), new EnclosureCheck())) {
      for (long value : new long[] {19, -19}) {
        Claim claim =
            new Claim.EqualOverPairs(
                Setting.of(a, List.of("r")), b, List.of("r", "s"), product, Formula.number(value));
        assertThat(check.of(claim))
            .isInstanceOf(value == 19 ? Verdict.Confirmed.class : Verdict.Refuted.class);
      }
    }
  }

  @Test
  void whatIsNoAskAboutTwoPolynomialsIsRefused() {
    assertThatThrownBy(() -> Lettered.work("x^2-1 and x^2-3", "r + 1"))
        .isInstanceOf(UnreadableException.class)
        .hasMessageContaining("resultant");
    assertThatThrownBy(() -> Lettered.work("x^2+k and x^2-3", "k"))
        .isInstanceOf(UnreadableException.class)
        .hasMessageContaining("Nothing is given");
  }

  private static UnivariatePolynomial<cc.redberry.rings.bigint.BigInteger> ring(
      long... descending) {
    cc.redberry.rings.bigint.BigInteger[] ascending =
        new cc.redberry.rings.bigint.BigInteger[descending.length];
    for (int k = 0; k < descending.length; k++) {
      ascending[descending.length - 1 - k] =
          cc.redberry.rings.bigint.BigInteger.valueOf(descending[k]);
    }
    return UnivariatePolynomial.create(Rings.Z, ascending);
  }

  private static long[] coefficients(SplittableRandom random, int degree) {
    long[] descending = new long[degree + 1];
    for (int k = 0; k <= degree; k++) {
      descending[k] = random.nextLong(-6, 7);
    }
    descending[0] = random.nextLong(1, 5);
    return descending;
  }

  private static String text(long... descending) {
    StringBuilder text = new StringBuilder();
    for (int k = 0; k < descending.length; k++) {
      text.append(k == 0 ? "" : " + ")
          .append('(')
          .append(descending[k])
          .append(")x^")
          .append(descending.length - 1 - k);
    }
    return text.toString();
  }
}
