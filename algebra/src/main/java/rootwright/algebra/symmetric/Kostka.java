package rootwright.algebra.symmetric;

import java.math.BigInteger;
import java.util.HashMap;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import rootwright.algebra.number.Rational;

/**
 * Kostka numbers K(λ, μ): how many tableaux of shape λ, weakly rising along rows and strictly down
 * columns, hold μ_1 ones, μ_2 twos and so on (Macdonald, Symmetric Functions and Hall Polynomials,
 * I.6). Counted by taking away the greatest entries, a horizontal strip, and remembering shapes.
 */
public final class Kostka {

  private final Partition content;
  private final Map<Partition, BigInteger> known = new HashMap<>();

  private Kostka(Partition content) {
    this.content = content;
  }

  /** K(shape, content); 0 unless both have the same weight. */
  public static BigInteger number(Partition shape, Partition content) {
    return shape.weight() == content.weight()
        ? new Kostka(content).count(shape, content.length())
        : BigInteger.ZERO;
  }

  /**
   * The Schur polynomial s_λ = Σ K(λ, μ) m_μ in n variables.
   *
   * @throws IllegalArgumentException if there is no variable
   */
  public static SymmetricPolynomial schur(int variables, Partition shape) {
    NavigableMap<Partition, Rational> terms = new TreeMap<>();
    for (Partition content : Partition.all(shape.weight(), variables)) {
      terms.put(content, Rational.of(number(shape, content)));
    }
    return SymmetricPolynomial.of(variables, terms);
  }

  private BigInteger count(Partition shape, int entries) {
    if (entries == 0) {
      return BigInteger.ONE;
    }
    // The weight of a shape tells how many entries are left, so the shape alone is the key.
    BigInteger remembered = known.get(shape);
    if (remembered == null) {
      int[] rows = shape.padded(shape.length());
      remembered = strip(shape, rows, 0, content.part(entries - 1), entries);
      known.put(shape, remembered);
    }
    return remembered;
  }

  /** Shortens rows from {@code row} on: each at most down to the length of the row below it. */
  private BigInteger strip(Partition shape, int[] rows, int row, int left, int entries) {
    if (row == rows.length) {
      return left == 0 ? count(Partition.of(rows), entries - 1) : BigInteger.ZERO;
    }
    BigInteger sum = BigInteger.ZERO;
    int whole = shape.part(row);
    for (int taken = 0; taken <= Math.min(left, whole - shape.part(row + 1)); taken++) {
      rows[row] = whole - taken;
      sum = sum.add(strip(shape, rows, row + 1, left - taken, entries));
    }
    rows[row] = whole;
    return sum;
  }
}
