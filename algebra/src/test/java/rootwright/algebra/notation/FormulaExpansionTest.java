package rootwright.algebra.notation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import cc.redberry.rings.Rings;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.RationalFunction;

class FormulaExpansionTest {

  private static final List<String> NAMES = List.of("r", "s", "t");
  private static final Map<String, Integer> NUMBERS = Map.of("r", 0, "s", 1, "t", 2);

  private static RationalFunction expand(String text) throws UnreadableException {
    return FormulaExpansion.expand(FormulaReader.formula(text), NUMBERS);
  }

  private static Refusal refusal(String text) {
    return catchThrowableOfType(UnreadableException.class, () -> expand(text)).refusal();
  }

  @Test
  void bracketsAreMultipliedOutAndFractionsBroughtTogether() throws UnreadableException {
    assertThat(expand("(r+s)^2 - (r-s)^2").isSameFunction(expand("4rs"))).isTrue();
    assertThat(expand("1/r + 1/s").isSameFunction(expand("(r+s)/(rs)"))).isTrue();
    assertThat(expand("r^-2").isSameFunction(expand("1/r^2"))).isTrue();
    assertThat(expand("1/rs").isSameFunction(expand("1/s/r"))).isTrue();
    assertThat(expand("(r+s+t)^0").isSameFunction(RationalFunction.ONE)).isTrue();
  }

  /** An independent general-purpose library multiplies the same text out. */
  @Test
  void anotherLibraryMultipliesOutToTheSamePolynomial() throws UnreadableException {
    long seed = RandomFormulas.seed(81);
    SplittableRandom random = new SplittableRandom(seed);
    for (int sample = 0; sample < 300; sample++) {
      Formula formula = polynomialFormula(random, 3);
      String text = PlainWriter.write(formula);
      MultivariatePolynomial ours = FormulaExpansion.expand(formula, NUMBERS).numerator();
      var ring = Rings.MultivariateRing(3, Rings.Q);
      var theirs = ring.parse(text, "r", "s", "t");
      var written = ring.parse(PlainWriter.write(PolynomialFormula.of(ours, NAMES)), "r", "s", "t");
      assertThat((Object) written).as("seed %d: %s", seed, text).isEqualTo(theirs);
    }
  }

  private static Formula polynomialFormula(SplittableRandom random, int depth) {
    if (depth == 0 || random.nextInt(5) == 0) {
      return random.nextBoolean()
          ? Formula.name(NAMES.get(random.nextInt(3)))
          : Formula.number(Rational.of(random.nextInt(1, 9), random.nextInt(1, 4)));
    }
    List<Formula> parts = new ArrayList<>();
    for (int k = 0; k < 2 + random.nextInt(2); k++) {
      parts.add(polynomialFormula(random, depth - 1));
    }
    return switch (random.nextInt(4)) {
      case 0 -> new Formula.Product(parts);
      case 1 -> new Formula.Power(parts.get(0), Formula.number(random.nextInt(1, 4)));
      case 2 -> parts.get(0).minus(parts.get(1));
      default -> new Formula.Sum(parts);
    };
  }

  @Test
  void whatCannotBeMultipliedOutIsNamedWithItsPlace() {
    assertThat(refusal("r + k").code()).isEqualTo("unknown-letter");
    assertThat(refusal("r + k").at()).isEqualTo(4);
    assertThat(refusal("1/(r-r)").code()).isEqualTo("zero-denominator");
    assertThat(refusal("(r-r)^(-1)").code()).isEqualTo("zero-denominator");
    assertThat(refusal("√r + s").text()).startsWith("A root sign cannot stand");
    assertThat(refusal("(r+s+t)^400").code()).isEqualTo("too-large");
    assertThat(refusal("(r+1)^5000").code()).isEqualTo("too-large");
    assertThat(refusal("2^(2^(2^(2^(2^2))))").code()).isEqualTo("too-large");
    assertThat(refusal("10^10^10 r").code()).isEqualTo("too-large");
    assertThat(refusal("r^s").code()).isEqualTo("exponent");
  }

  @Test
  void membersOfAFamilyMayHaveANumber() throws UnreadableException {
    RationalFunction function =
        FormulaExpansion.expand(FormulaReader.formula("e_1^2 - 2e_2"), Map.of("e_1", 0, "e_2", 1));
    assertThat(PlainWriter.write(PolynomialFormula.of(function, List.of("e_1", "e_2"))))
        .isEqualTo("e_1^2 - 2*e_2");
  }
}
