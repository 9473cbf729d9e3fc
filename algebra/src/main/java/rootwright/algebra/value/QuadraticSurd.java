package rootwright.algebra.value;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import rootwright.algebra.enclosure.ComplexBall;
import rootwright.algebra.enclosure.Precision;
import rootwright.algebra.enclosure.RealBall;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;

/**
 * A number a + b√d that is not rational. For negative d it is a + b√|d|·i.
 *
 * <p>Square factors of d are moved into b on construction, as far as {@link SquareSplit} finds
 * them; equality does not depend on that, for it compares a, the sign of b, and b²d.
 *
 * @param a the rational part
 * @param b the factor of the root, not zero
 * @param d the number under the root, not a square; squarefree if below 10^15
 */
public record QuadraticSurd(Rational a, Rational b, BigInteger d) implements ExactValue {

  /**
   * Moves square factors out of the root.
   *
   * @throws IllegalArgumentException if {@code b} is zero or {@code d} is a square: the number
   *     would be rational
   */
  public QuadraticSurd {
    if (b.isZero() || d.signum() == 0) {
      throw new IllegalArgumentException("%s + %s*sqrt(%s) is rational".formatted(a, b, d));
    }
    SquareSplit split = SquareSplit.of(d);
    if (split.rest().equals(BigInteger.ONE)) {
      throw new IllegalArgumentException("%s + %s*sqrt(%s) is rational".formatted(a, b, d));
    }
    b = b.times(Rational.of(split.root()));
    d = split.rest();
  }

  /** The number a + b√d, whatever kind it is. */
  public static ExactValue of(Rational a, Rational b, BigInteger d) {
    if (b.isZero() || d.signum() == 0) {
      return new RationalValue(a);
    }
    if (d.signum() > 0) {
      BigInteger[] root = d.sqrtAndRemainder();
      if (root[1].signum() == 0) {
        return new RationalValue(a.plus(b.times(Rational.of(root[0]))));
      }
    }
    return new QuadraticSurd(a, b, d);
  }

  /** The number a + b√d for rational d, whatever kind it is. */
  public static ExactValue of(Rational a, Rational b, Rational d) {
    return of(a, b.over(Rational.of(d.denominator())), d.numerator().multiply(d.denominator()));
  }

  @Override
  public boolean isReal() {
    return d.signum() > 0;
  }

  /** a − b√d: the other root of the minimal polynomial. */
  public QuadraticSurd conjugate() {
    return new QuadraticSurd(a, b.negate(), d);
  }

  /** The number with the other sign. */
  public QuadraticSurd negate() {
    return new QuadraticSurd(a.negate(), b.negate(), d);
  }

  /** a² − b²d: the product with the conjugate, never zero. */
  public Rational norm() {
    return a.times(a).minus(radicand());
  }

  /** b²d: the square of the irrational part. */
  private Rational radicand() {
    return b.times(b).times(Rational.of(d));
  }

  /** Whether the other number is c + e√d for rational c and e. */
  public boolean sharesFieldWith(QuadraticSurd other) {
    return d.equals(other.d) || ratio(other).signum() > 0;
  }

  /** √(d·d′) if that is whole, else 0. */
  private BigInteger ratio(QuadraticSurd other) {
    BigInteger product = d.multiply(other.d);
    if (product.signum() < 0) {
      return BigInteger.ZERO;
    }
    BigInteger[] root = product.sqrtAndRemainder();
    return root[1].signum() == 0 ? root[0] : BigInteger.ZERO;
  }

  /** The factor of √d in the other number. */
  private Rational factorOf(QuadraticSurd other) {
    if (d.equals(other.d)) {
      return other.b;
    }
    BigInteger root = ratio(other);
    if (root.signum() == 0) {
      throw new IllegalArgumentException(this + " and " + other + " have unlike roots");
    }
    // For negative d both √d are on the positive imaginary axis, so √d′ = √(d·d′)/|d|·√d.
    return other.b.times(new Rational(root, d.abs()));
  }

  /** The sum. */
  public QuadraticSurd plus(Rational other) {
    return new QuadraticSurd(a.plus(other), b, d);
  }

  /**
   * The sum.
   *
   * @throws IllegalArgumentException if the other number has an unlike root
   */
  public ExactValue plus(QuadraticSurd other) {
    return of(a.plus(other.a), b.plus(factorOf(other)), d);
  }

  /**
   * The difference.
   *
   * @throws IllegalArgumentException if the other number has an unlike root
   */
  public ExactValue minus(QuadraticSurd other) {
    return plus(other.negate());
  }

  /** The product. */
  public ExactValue times(Rational other) {
    return of(a.times(other), b.times(other), d);
  }

  /**
   * The product.
   *
   * @throws IllegalArgumentException if the other number has an unlike root
   */
  public ExactValue times(QuadraticSurd other) {
    Rational factor = factorOf(other);
    return of(
        a.times(other.a).plus(b.times(factor).times(Rational.of(d))),
        a.times(factor).plus(b.times(other.a)),
        d);
  }

  /** One over the number. */
  public QuadraticSurd reciprocal() {
    Rational norm = norm();
    return new QuadraticSurd(a.over(norm), b.negate().over(norm), d);
  }

  /**
   * The quotient.
   *
   * @throws IllegalArgumentException if the other number has an unlike root
   */
  public ExactValue over(QuadraticSurd other) {
    return times(other.reciprocal());
  }

  /**
   * −1 or 1: the sign of a real number, which cannot be zero.
   *
   * @throws IllegalStateException if the number is not real
   */
  public int signum() {
    if (!isReal()) {
      throw new IllegalStateException(this + " is not real and has no sign");
    }
    // The part with the larger square decides.
    return a.times(a).compareTo(radicand()) > 0 ? a.signum() : b.signum();
  }

  @Override
  public Polynomial minimalPolynomial() {
    return Polynomial.ofAscending(List.of(norm(), a.times(Rational.TWO).negate(), Rational.ONE))
        .primitive();
  }

  @Override
  public ComplexBall enclosure(int digits) {
    int bits = Precision.bits(digits);
    if (!isReal()) {
      return ComplexBall.of(RealBall.of(a, bits), root(bits));
    }
    // a and b√d may nearly cancel. |a + b√d| = |norm| / |a − b√d|, so one of the two is summed
    // without cancellation and gives the other.
    boolean sameSign = a.signum() * b.signum() >= 0;
    RealBall rational = RealBall.of(a, bits);
    RealBall root = root(bits);
    RealBall ball =
        sameSign ? rational.plus(root) : RealBall.of(norm(), bits).over(rational.minus(root), bits);
    return ComplexBall.of(ball);
  }

  /** b√|d|. */
  private RealBall root(int bits) {
    Rational square = radicand().absolute();
    RealBall size =
        RealBall.of(Rational.of(square.numerator()), bits + 4)
            .squareRoot(bits + 4)
            .over(
                RealBall.of(Rational.of(square.denominator()), bits + 4).squareRoot(bits + 4),
                bits + 4);
    return b.signum() < 0 ? size.negate() : size;
  }

  @Override
  public Optional<String> decimal(int digits) {
    if (isReal()) {
      return Optional.of(Rounding.ofIrrational(this, digits));
    }
    boolean gaussian = d.equals(BigInteger.ONE.negate());
    if (gaussian && a.isInteger() && b.isInteger()) {
      return Optional.empty();
    }
    String imaginary =
        gaussian
            ? Rounding.ofRational(b.absolute(), digits)
            : Rounding.ofIrrational(
                new QuadraticSurd(Rational.ZERO, b.absolute(), d.negate()), digits);
    String real = a.isZero() ? "" : Rounding.ofRational(a, digits);
    return Optional.of(Rounding.joined(real, b.signum(), imaginary));
  }

  @Override
  public Formula toFormula() {
    BigInteger under =
        a.denominator().divide(a.denominator().gcd(b.denominator())).multiply(b.denominator());
    Rational scale = Rational.of(under);
    Formula root = written(b.times(scale).absolute());
    Formula signed = b.signum() < 0 ? new Formula.Negative(root) : root;
    if (under.equals(BigInteger.ONE)) {
      return a.isZero() ? signed : Formula.number(a).plus(signed);
    }
    if (a.isZero()) {
      Formula quotient = root.over(Formula.number(under));
      return b.signum() < 0 ? new Formula.Negative(quotient) : quotient;
    }
    return Formula.number(a.times(scale)).plus(signed).over(Formula.number(under));
  }

  /** factor·√d for a positive factor. */
  private Formula written(Rational factor) {
    List<Formula> factors = new ArrayList<>();
    if (!factor.isOne()) {
      factors.add(Formula.number(factor));
    }
    if (!d.abs().equals(BigInteger.ONE)) {
      factors.add(new Formula.Radical(Formula.number(d.abs()), 2));
    }
    if (d.signum() < 0) {
      factors.add(new Formula.ImaginaryUnit());
    }
    return Formula.product(factors);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof QuadraticSurd that
        && a.equals(that.a)
        && b.signum() == that.b.signum()
        && radicand().equals(that.radicand());
  }

  @Override
  public int hashCode() {
    return Objects.hash(a, b.signum(), radicand());
  }

  /** {@code 7 + 2*sqrt(3)}: for a programmer's eye. */
  @Override
  public String toString() {
    return a + " + " + b + "*sqrt(" + d + ")";
  }
}
