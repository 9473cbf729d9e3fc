package rootwright.algebra.symmetric.internal;

import java.util.ArrayList;
import java.util.List;

/**
 * The matrix whose determinant is n^(n−2) times the discriminant of a polynomial of degree n with
 * coefficients a_0, …, a_n: the negated Bézout matrix of the two partial derivatives of the
 * homogeneous form Σ a_j x^j y^(n−j). It has n − 1 rows; its entries are quadratic in the a_j.
 *
 * <p>The partial derivatives' resultant as Sylvester's definition of the discriminant: Gelfand,
 * Kapranov, Zelevinsky, Discriminants, Resultants and Multidimensional Determinants, chapter 12
 * (from memory; the factor is checked against polynomials with chosen roots).
 */
public final class DiscriminantMatrix {

  private DiscriminantMatrix() {}

  /** A product factor·a_left·a_right. */
  public record Product(long factor, int left, int right) {}

  /** The products whose sum is the entry in this row and column; symmetric in both. */
  public static List<Product> entry(int degree, int row, int column) {
    int i = Math.min(row, column);
    int j = Math.max(row, column);
    List<Product> products = new ArrayList<>();
    for (int k = 0; k <= Math.min(i, degree - 2 - j); k++) {
      products.add(new Product((i - k + 1L) * (degree - j - 1 - k), i - k + 1, j + 1 + k));
      products.add(new Product(-(j + 2L + k) * (degree - i + k), j + 2 + k, i - k));
    }
    return products;
  }
}
