package rootwright.working.inequality;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.hipparchus.linear.MatrixUtils;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.working.letters.Lettered;
import rootwright.working.solve.Solution;

/** Inequalities proved by squares, refuted by examples. */
class InequalityOnNumbersTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        // Hardy, Littlewood & Pólya, Inequalities, 1934, chapter II (from memory): the mean of the
        // squares, arithmetic and geometric mean for two and three numbers.
        "prove a^2+b^2 >= 2ab if a, b real; true",
        "prove 3(a^2+b^2+c^2) >= (a+b+c)^2 if a,b,c real; true",
        "prove a^3+b^3+c^3 >= 3abc if a,b,c positive; true",
        "prove (a+b)(1/a+1/b) >= 4 if a, b positive; true",
        "prove a/b + b/a >= 2 if a, b > 0; true",
        "prove r^2+s^2+t^2 >= rs+st+tr if r, s, t real; true",
        "prove a^4+b^4+c^4 >= a^2 b^2 + b^2 c^2 + c^2 a^2 if a,b,c real; true",
        "show that a^2+b^2+1 >= ab+a+b if a,b real; true",
        "prove x^2+x+1 > 0 if x real; true",
        "prove x^2+y^2 >= 2 if x+y=2, x,y real; true",
        "prove 2ab <= a^2+b^2 if a, b real; true",
        // 1 + 1 < 3; 0 = 0.
        "prove or refute a^2+b^2 >= 3ab if a, b real; false",
        "prove or refute x^2 > 0 if x real; false",
        "prove or refute a^3+b^3+c^3 >= 3abc if a,b,c real; false",
      })
  void inequalitiesAreProvedOrRefuted(String find, String answer) throws UnreadableException {
    Solution solution = Lettered.work("", find);
    assertThat(Lettered.text(solution)).isEqualTo(answer);
    assertThat(solution.routes()).isNotEmpty();
  }

  @Test
  void theEqualityCaseIsSaid() throws UnreadableException {
    assertThat(Lettered.work("", "prove r^2+s^2+t^2 >= rs+st+tr if r, s, t real").conditions())
        .containsExactly("equality exactly when r = s = t");
    assertThat(Lettered.work("", "prove x^2+y^2 >= 2 if x+y=2, x,y real").conditions())
        .containsExactly("equality exactly when x = 1");
  }

  @Test
  void complexNumbersAreNotCompared() throws UnreadableException {
    assertThat(Lettered.codes(Lettered.work("", "prove a^2+b^2 >= 2ab")))
        .containsExactly("domain-open");
    assertThatThrownBy(() -> Lettered.work("", "prove a^2+b^2 >= 2ab if a, b complex"))
        .isInstanceOf(UnreadableException.class)
        .hasMessageContaining("real or positive");
  }

  @Test
  void whatNeedsMoreThanSquaresIsRefused() {
    assertThatThrownBy(() -> Lettered.work("", "prove a^4+b^4+c^4 >= abc(a+b+c) if a, b, c real"))
        .isInstanceOf(UnreadableException.class)
        .hasMessageContaining("Neither squares prove it");
  }

  @Test
  void formsAreSumsOfSquaresExactlyWhenNoEigenvalueIsNegative() {
    long seed = Long.getLong("rootwright.seed", 20_270L);
    SplittableRandom random = new SplittableRandom(seed);
    for (int sample = 0; sample < 200; sample++) {
      int n = random.nextInt(2, 5);
      double[][] numbers = new double[n][n];
      List<List<Rational>> form = new ArrayList<>();
      for (int i = 0; i < n; i++) {
        form.add(new ArrayList<>());
        for (int j = 0; j < n; j++) {
          int value =
              j < i ? (int) numbers[j][i] : i == j ? random.nextInt(0, 9) : random.nextInt(-3, 4);
          numbers[i][j] = value;
          form.get(i).add(Rational.of(value));
        }
      }
      double least = Double.MAX_VALUE;
      for (double eigenvalue :
          new EigenDecompositionSymmetric(MatrixUtils.createRealMatrix(numbers)).getEigenvalues()) {
        least = Math.min(least, eigenvalue);
      }
      Optional<Squares> squares = Squares.of(form);
      if (Math.abs(least) > 1e-9) {
        assertThat(squares.isPresent()).as("%s, seed %d", form, seed).isEqualTo(least > 0);
      }
      squares.ifPresent(
          found -> {
            for (int i = 0; i < n; i++) {
              for (int j = 0; j < n; j++) {
                Rational sum = Rational.ZERO;
                for (Squares.Term term : found.terms()) {
                  sum =
                      sum.plus(
                          term.factor().times(term.linear().get(i)).times(term.linear().get(j)));
                }
                assertThat(sum).as("%s, seed %d", form, seed).isEqualTo(form.get(i).get(j));
              }
            }
          });
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        // With equal numbers: 3·2², 3·2·2, 5·5, 3/2, 3·2, 2·(3/2)².
        "least x^2+y^2+z^2 if x+y+z=6, x,y,z real; 12",
        "greatest xy+yz+zx if x+y+z=6, x,y,z real; 12",
        "greatest x y if x+y=10, x,y positive; 25",
        "least 1/x+1/y+1/z if x+y+z=6, x,y,z positive; 3/2",
        "greatest x+y+z if x^2+y^2+z^2=12, x,y,z real; 6",
        "least x^2+y^2 if x+y=3, x,y positive; 9/2",
        // p₅ by Newton's identities from e = 3, 2, 1.
        "p_5 if p_1=3, p_2=5, p_3=12; 68",
        "p_3 if e_1=2, e_2=3; -10",
      })
  void extremesWithEqualNumbersAndDataWithoutNamesAreWorked(String find, String answer)
      throws UnreadableException {
    Solution solution = Lettered.work("", find);
    assertThat(Lettered.text(solution)).isEqualTo(answer);
    assertThat(solution.routes()).isNotEmpty();
  }
}
