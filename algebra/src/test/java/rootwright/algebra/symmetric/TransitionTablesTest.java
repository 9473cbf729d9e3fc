package rootwright.algebra.symmetric;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;

/** The published transition tables; their sources stand at the head of the resource. */
class TransitionTablesTest {

  /** One printed row: a function and its coefficients in another basis. */
  record Row(int weight, Partition function, Map<Partition, Rational> coefficients) {
    @Override
    public String toString() {
      return "weight " + weight + ", " + function;
    }
  }

  static Stream<Row> powerSumsInElementary() {
    return rows("power-sum products in elementary products");
  }

  static Stream<Row> elementaryInPowerSums() {
    return rows("elementary products in power-sum products");
  }

  static Stream<Row> monomialInElementary() {
    return rows("monomial functions in elementary products");
  }

  static Stream<Row> powerSumsInMonomial() {
    return rows("power-sum products in monomial functions");
  }

  static Stream<Row> elementaryInMonomial() {
    return rows("elementary products in monomial functions");
  }

  static Stream<Row> kostkaNumbers() {
    return rows("Kostka numbers: shape by content");
  }

  @ParameterizedTest
  @MethodSource("powerSumsInElementary")
  void powerSumProductsHaveThePrintedElementaryForm(Row row) {
    PowerSumForm product = new PowerSumForm(row.weight(), product(row.function()));
    assertThat(product.toElementary().polynomial()).isEqualTo(products(row.coefficients()));
  }

  @ParameterizedTest
  @MethodSource("elementaryInPowerSums")
  void elementaryProductsHaveThePrintedFormInPowerSums(Row row) {
    ElementaryForm product = ElementaryForm.of(row.weight(), product(row.function()));
    assertThat(product.toPowerSums().polynomial()).isEqualTo(products(row.coefficients()));
  }

  @ParameterizedTest
  @MethodSource("monomialInElementary")
  void monomialFunctionsHaveThePrintedElementaryForm(Row row) {
    SymmetricPolynomial monomial = SymmetricPolynomial.monomial(row.weight(), row.function());
    MultivariatePolynomial printed = products(row.coefficients());
    assertThat(monomial.toElementary().polynomial()).isEqualTo(printed);
    assertThat(ClassroomReduction.of(monomial).form().polynomial()).isEqualTo(printed);
  }

  @ParameterizedTest
  @MethodSource("powerSumsInMonomial")
  void powerSumProductsMultiplyOutToThePrintedOrbits(Row row) {
    PowerSumForm product = new PowerSumForm(row.weight(), product(row.function()));
    SymmetricPolynomial printed = SymmetricPolynomial.of(row.weight(), row.coefficients());
    assertThat(product.toSymmetric()).isEqualTo(printed);
    assertThat(printed.toPowerSums()).isEqualTo(product);
  }

  @ParameterizedTest
  @MethodSource("elementaryInMonomial")
  void elementaryProductsMultiplyOutToThePrintedOrbits(Row row) {
    SymmetricPolynomial product =
        row.function().parts().stream()
            .map(k -> SymmetricPolynomial.elementary(row.weight(), k))
            .reduce(SymmetricPolynomial::times)
            .orElseThrow();
    SymmetricPolynomial printed = SymmetricPolynomial.of(row.weight(), row.coefficients());
    assertThat(product).isEqualTo(printed);
    assertThat(ElementaryForm.of(row.weight(), product(row.function())).toSymmetric())
        .isEqualTo(printed);
  }

  @ParameterizedTest
  @MethodSource("kostkaNumbers")
  void kostkaNumbersAreAsPrinted(Row row) {
    row.coefficients()
        .forEach(
            (content, printed) ->
                assertThat(Rational.of(Kostka.number(row.function(), content))).isEqualTo(printed));
    assertThat(Kostka.schur(row.weight(), row.function()))
        .isEqualTo(SymmetricPolynomial.of(row.weight(), row.coefficients()));
  }

  private static MultivariatePolynomial products(Map<Partition, Rational> coefficients) {
    return coefficients.entrySet().stream()
        .map(entry -> product(entry.getKey()).times(entry.getValue()))
        .reduce(MultivariatePolynomial.ZERO, MultivariatePolynomial::plus);
  }

  private static MultivariatePolynomial product(Partition indices) {
    return indices.parts().stream()
        .map(k -> MultivariatePolynomial.term(Rational.ONE, Monomial.power(k - 1, 1)))
        .reduce(MultivariatePolynomial.ONE, MultivariatePolynomial::times);
  }

  static Stream<Row> rows(String title) {
    List<Row> rows = new ArrayList<>();
    boolean wanted = false;
    int weight = 0;
    List<Partition> columns = List.of();
    for (String line : lines()) {
      if (line.startsWith("@")) {
        weight = Integer.parseInt(line.substring("@ weight ".length(), line.indexOf(':')));
        wanted = line.endsWith(": " + title);
        columns = List.of();
      } else if (wanted && columns.isEmpty()) {
        columns = Arrays.stream(line.split(",")).skip(1).map(Partition::parse).toList();
      } else if (wanted) {
        String[] cells = line.split(",");
        Map<Partition, Rational> coefficients = new TreeMap<>();
        for (int k = 1; k < cells.length; k++) {
          coefficients.put(columns.get(k - 1), Rational.parse(cells[k]));
        }
        rows.add(new Row(weight, Partition.parse(cells[0]), coefficients));
      }
    }
    // 1 + 2 + 3 + 5 + 7 + 11 partitions of the weights 1 to 6.
    assertThat(rows).hasSize(29);
    return rows.stream();
  }

  private static List<String> lines() {
    try (BufferedReader reader =
        new BufferedReader(
            new InputStreamReader(
                Objects.requireNonNull(
                    TransitionTablesTest.class.getResourceAsStream("transition-tables.csv")),
                StandardCharsets.UTF_8))) {
      return reader.lines().filter(line -> !line.isEmpty() && !line.startsWith("#")).toList();
    } catch (IOException failure) {
      throw new IllegalStateException(failure);
    }
  }
}
