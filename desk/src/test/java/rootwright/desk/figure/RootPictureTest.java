package rootwright.desk.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;

class RootPictureTest {

  /** (x − 1)²(x² + 4), multiplied out by hand: x⁴ − 2x³ + 5x² − 8x + 4. */
  private static final Polynomial REPEATED = polynomial(1, -2, 5, -8, 4);

  private static Polynomial polynomial(long... highestFirst) {
    Polynomial sum = Polynomial.ZERO;
    for (int i = 0; i < highestFirst.length; i++) {
      sum =
          sum.plus(Polynomial.monomial(Rational.of(highestFirst[i]), highestFirst.length - 1 - i));
    }
    return sum;
  }

  @Test
  void rootsArePlacedWithTheirMultiplicity() {
    List<PicturedRoot> roots = RootPicture.of(REPEATED).roots();
    assertThat(roots).extracting(PicturedRoot::multiplicity).containsExactly(2, 1, 1);
    assertThat(roots).extracting(PicturedRoot::isReal).containsExactly(true, false, false);
    assertThat(Double.parseDouble(roots.get(0).real())).isCloseTo(1, within(1e-12));
    assertThat(Double.parseDouble(roots.get(1).imaginary())).isCloseTo(2, within(1e-12));
    assertThat(Double.parseDouble(roots.get(2).imaginary())).isCloseTo(-2, within(1e-12));
  }

  @Test
  void coefficientsAreWrittenHighestFirst() {
    assertThat(RootPicture.of(REPEATED).coefficients()).containsExactly("1", "-2", "5", "-8", "4");
  }

  /** x³ − x² − 2x + 3: S = 3, 1, 5, then by S_k = S_{k−1} + 2S_{k−2} − 3S_{k−3}: −2, 5, −14. */
  @Test
  void theSequenceShowsTheFirstSumsAndMarksTheAskedOne() {
    SequencePicture picture = SequencePicture.of(polynomial(1, -1, -2, 3), 2);
    assertThat(picture.sums())
        .extracting(PicturedSum::value)
        .containsExactly("3", "1", "5", "-2", "5", "-14");
    assertThat(picture.sums()).filteredOn(PicturedSum::asked).hasSize(1);
    assertThat(picture.sums().get(2).asked()).isTrue();
  }

  @Test
  void aFarSumIsNotDrawn() {
    assertThat(SequencePicture.of(REPEATED, 100_000).sums()).hasSize(11);
  }
}
