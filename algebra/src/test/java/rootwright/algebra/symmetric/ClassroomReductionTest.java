package rootwright.algebra.symmetric;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import rootwright.algebra.number.Rational;
import rootwright.algebra.symmetric.ClassroomReduction.Stage;

class ClassroomReductionTest {

  /** r³ + s³ + t³: e₁³ makes the cubes and 3·Σ r²s + 6rst; −3e₁e₂ takes Σ r²s away; +3e₃ mends. */
  @Test
  void theSumOfCubesIsBuiltInThreeStages() {
    ClassroomReduction reduction = ClassroomReduction.of(SymmetricPolynomial.powerSum(3, 3));
    assertThat(reduction.stages())
        .extracting(Stage::elementaryProduct)
        .containsExactly(List.of(1, 1, 1), List.of(2, 1), List.of(3));
    assertThat(reduction.stages())
        .extracting(Stage::coefficient)
        .containsExactly(Rational.ONE, Rational.of(-3), Rational.of(3));
    assertThat(reduction.stages().get(0).expansion())
        .isEqualTo(SymmetricPolynomial.elementary(3, 1).power(3));
    assertThat(reduction.form()).hasToString("1*e1^3 + -3*e1*e2 + 3*e3");
  }

  @Test
  void everyStageSubtractsWhatItSaysAndNothingRemains() {
    SplittableRandom random = Samples.random();
    for (int trial = 0; trial < 60; trial++) {
      SymmetricPolynomial start = Samples.polynomial(random, 1 + trial % 5, 8);
      ClassroomReduction reduction = ClassroomReduction.of(start);
      SymmetricPolynomial left = start;
      for (Stage stage : reduction.stages()) {
        assertThat(stage.leading()).isEqualTo(left.terms().lastKey());
        SymmetricPolynomial product =
            stage.elementaryProduct().stream()
                .map(k -> SymmetricPolynomial.elementary(start.variables(), k))
                .reduce(
                    SymmetricPolynomial.constant(start.variables(), Rational.ONE),
                    SymmetricPolynomial::times);
        assertThat(stage.expansion()).isEqualTo(product);
        left = left.minus(product.times(stage.coefficient()));
        assertThat(stage.remainder()).isEqualTo(left);
      }
      assertThat(left.isZero()).as("seed %d, trial %d", Samples.SEED, trial).isTrue();
      assertThat(reduction.form()).isEqualTo(start.toElementary());
    }
  }
}
