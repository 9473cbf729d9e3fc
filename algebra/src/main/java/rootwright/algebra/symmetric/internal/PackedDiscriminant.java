package rootwright.algebra.symmetric.internal;

/**
 * The discriminant of the general monic polynomial x^n − e_1·x^(n−1) + … ± e_n in e_1, …, e_n, as a
 * determinant expanded by minors, each minor once.
 */
public final class PackedDiscriminant {

  private final int degree;
  private final Packing packing;

  private PackedDiscriminant(int degree) {
    this.degree = degree;
    packing = Packing.of(degree);
  }

  /**
   * For a degree of 2 at least.
   *
   * @throws ArithmeticException if a coefficient leaves the range of {@code long}
   */
  public static PackedPolynomial of(int degree) {
    return new PackedDiscriminant(degree).determinant();
  }

  private PackedPolynomial determinant() {
    int rows = degree - 1;
    PackedPolynomial[] minors = new PackedPolynomial[1 << rows];
    minors[0] = PackedPolynomial.term(packing, 0, 1);
    PackedPolynomial[][] entries = entries();
    // The minor of a set of columns uses as many first rows; expand it by its last row.
    for (int columns = 1; columns < minors.length; columns++) {
      int row = Integer.bitCount(columns) - 1;
      Accumulator sum = new Accumulator();
      for (int column = 0; column < rows; column++) {
        if ((columns >> column & 1) == 1) {
          int behind = Integer.bitCount(columns >> (column + 1));
          PackedPolynomial.addProduct(
              sum,
              entries[row][column],
              minors[columns & ~(1 << column)],
              behind % 2 == 0 ? 1 : -1);
        }
      }
      minors[columns] = sum.toPolynomial(packing);
    }
    long scale = 1;
    for (int factor = 0; factor < degree - 2; factor++) {
      scale = Math.multiplyExact(scale, (long) degree);
    }
    return minors[minors.length - 1].over(scale);
  }

  private PackedPolynomial[][] entries() {
    PackedPolynomial[][] entries = new PackedPolynomial[degree - 1][degree - 1];
    for (int row = 0; row < degree - 1; row++) {
      for (int column = row; column < degree - 1; column++) {
        Accumulator sum = new Accumulator();
        for (DiscriminantMatrix.Product product : DiscriminantMatrix.entry(degree, row, column)) {
          // a_j = (−1)^(n−j) e_(n−j)
          boolean positive = (product.left() + product.right()) % 2 == 0;
          sum.add(
              elementary(degree - product.left()) + elementary(degree - product.right()),
              positive ? product.factor() : -product.factor());
        }
        entries[row][column] = sum.toPolynomial(packing);
        entries[column][row] = entries[row][column];
      }
    }
    return entries;
  }

  private long elementary(int k) {
    return k == 0 ? 0 : 1L << packing.shift(k - 1);
  }
}
