package rootwright.algebra.companion;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.Optional;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;

/**
 * The companion matrix C of a polynomial P: its eigenvalues are the roots of P with their
 * multiplicity, so the trace of f(C) is Σ f(r) and its determinant ∏ f(r).
 *
 * <p>Kept as the whole-number matrix a·C, where a is the lead of P in primitive form.
 */
public final class CompanionMatrix {

  private final Polynomial primitive;
  private final BigInteger lead;

  private CompanionMatrix(Polynomial primitive) {
    this.primitive = primitive;
    lead = primitive.numerator(primitive.degree());
  }

  /**
   * The companion matrix of a polynomial.
   *
   * @throws IllegalArgumentException if the polynomial is constant
   */
  public static CompanionMatrix of(Polynomial polynomial) {
    if (polynomial.degree() < 1) {
      throw new IllegalArgumentException("a constant has no companion matrix: " + polynomial);
    }
    return new CompanionMatrix(polynomial.primitive());
  }

  /**
   * The trace of C^k, the sum of the k-th powers of the roots. O(n³ log k) products of whole
   * numbers.
   *
   * @throws ArithmeticException if k is negative and a root is zero
   */
  public Rational tracePower(int exponent) {
    if (exponent < 0) {
      if (primitive.numerator(0).signum() == 0) {
        throw new ArithmeticException("a root is zero: no power " + exponent + " of " + primitive);
      }
      return of(primitive.reversed()).tracePower(Math.negateExact(exponent));
    }
    BigInteger trace = SquareMatrix.trace(scaled().power(BigInteger.valueOf(exponent)));
    return new Rational(trace, lead.pow(exponent));
  }

  /**
   * The trace of C^k modulo m, for any whole k. O(n³ log k) products.
   *
   * @throws IllegalArgumentException if m is not positive
   */
  public TraceResidue tracePower(BigInteger exponent, BigInteger modulus) {
    if (modulus.signum() <= 0) {
      throw new IllegalArgumentException("modulus is not positive: " + modulus);
    }
    if (exponent.signum() < 0) {
      return primitive.numerator(0).signum() == 0
          ? new TraceResidue.NotInvertible(BigInteger.ZERO)
          : of(primitive.reversed()).tracePower(exponent.negate(), modulus);
    }
    if (!lead.gcd(modulus).equals(BigInteger.ONE)) {
      return new TraceResidue.NotInvertible(lead);
    }
    BigInteger inverse = lead.modInverse(modulus);
    SquareMatrix matrix = scaled().times(inverse).modulo(modulus);
    BigInteger trace = SquareMatrix.trace(matrix.powerModulo(exponent, modulus));
    return new TraceResidue.Known(trace.mod(modulus));
  }

  /** The trace of f(C): Σ f(r) over the roots. */
  public Rational trace(Polynomial element) {
    Scaled value = at(element);
    return new Rational(SquareMatrix.trace(value.matrix()), value.under());
  }

  /** The determinant of f(C): ∏ f(r) over the roots. */
  public Rational determinant(Polynomial element) {
    Scaled value = at(element);
    return new Rational(value.matrix().determinant(), value.under().pow(primitive.degree()));
  }

  /** The trace of A(C)·B(C)⁻¹: Σ A(r)/B(r); nothing if a root makes B zero. */
  public Optional<Rational> trace(Polynomial numerator, Polynomial denominator) {
    Scaled over = at(numerator);
    Scaled under = at(denominator);
    return under
        .matrix()
        .traceOfQuotient(over.matrix())
        .map(trace -> trace.times(new Rational(under.under(), over.under())));
  }

  /** A whole-number matrix over one number. */
  private record Scaled(SquareMatrix matrix, BigInteger under) {}

  /** f(C) by Horner's rule on a·C: a^d·f(C) = Σ f_k·a^(d−k)·(a·C)^k. */
  private Scaled at(Polynomial element) {
    SquareMatrix base = scaled();
    SquareMatrix value = SquareMatrix.multipleOfOne(BigInteger.ZERO, primitive.degree());
    BigInteger scale = BigInteger.ONE;
    for (int k = element.degree(); k >= 0; k--) {
      value =
          value
              .times(base)
              .plus(
                  SquareMatrix.multipleOfOne(
                      element.numerator(k).multiply(scale), primitive.degree()));
      scale = scale.multiply(lead);
    }
    return new Scaled(
        value, element.denominator().multiply(lead.pow(Math.max(element.degree(), 0))));
  }

  /** a·C: a below the diagonal, the negated coefficients in the last column. */
  private SquareMatrix scaled() {
    int size = primitive.degree();
    BigInteger[][] entries = new BigInteger[size][size];
    for (int row = 0; row < size; row++) {
      Arrays.fill(entries[row], BigInteger.ZERO);
      if (row > 0) {
        entries[row][row - 1] = lead;
      }
      entries[row][size - 1] = primitive.numerator(row).negate();
    }
    return new SquareMatrix(entries);
  }
}
