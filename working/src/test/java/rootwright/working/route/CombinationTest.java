package rootwright.working.route;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PlainWriter;
import rootwright.algebra.number.Rational;

class CombinationTest {

  private static final Formula A = Formula.name("a");
  private static final Formula B = Formula.name("b");

  @Test
  void factorsOneAndMultiplesOfZeroAreNotWritten() {
    Formula sum =
        new Combination()
            .plus(Rational.ONE, A)
            .plus(Rational.ZERO, B)
            .plus(Rational.MINUS_ONE, B)
            .plus(Rational.of(3, 2), A.times(B))
            .formula();
    assertThat(PlainWriter.write(sum)).isEqualTo("a - b + 3/2*a*b");
  }

  @Test
  void anEmptySumIsZero() {
    assertThat(new Combination().plus(Rational.ZERO).formula()).isEqualTo(Formula.number(0));
  }

  @Test
  void aNegativeNumberKeepsItsBracketAfterAFactor() {
    Formula sum = new Combination().plus(Rational.of(-3), Formula.number(-4)).formula();
    assertThat(PlainWriter.write(sum)).isEqualTo("-3*(-4)");
  }

  @Test
  void productsInProductsAreTakenApart() {
    Formula product = Combination.product(List.of(Formula.number(2), A.times(B), A));
    assertThat(PlainWriter.write(product)).isEqualTo("2*a*b*a");
  }
}
