package rootwright.algebra.polynomial;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.number.Rational;
import rootwright.algebra.number.RepeatedSquaring;
import rootwright.algebra.stop.Stop;

/**
 * A polynomial in one unknown over the rational numbers, kept as integers over one common positive
 * denominator in lowest terms, so that {@code equals} is equality of polynomials.
 *
 * <p>Coefficients are indexed by the power they belong to: {@code coefficient(0)} is the constant
 * term. The zero polynomial has degree −1.
 */
public final class Polynomial {

  public static final Polynomial ZERO = new Polynomial(new BigInteger[0], BigInteger.ONE);
  public static final Polynomial ONE = constant(Rational.ONE);
  public static final Polynomial X = ofDescending(1, 0);

  private final BigInteger[] numerators;
  private final BigInteger denominator;

  private Polynomial(BigInteger[] ascending, BigInteger common) {
    int length = ascending.length;
    while (length > 0 && ascending[length - 1].signum() == 0) {
      length--;
    }
    BigInteger[] kept = length == ascending.length ? ascending : Arrays.copyOf(ascending, length);
    BigInteger divisor = common;
    for (int k = 0; k < length && !divisor.equals(BigInteger.ONE); k++) {
      divisor = divisor.gcd(kept[k]);
    }
    if (!divisor.equals(BigInteger.ONE)) {
      kept = kept.clone();
      for (int k = 0; k < length; k++) {
        kept[k] = kept[k].divide(divisor);
      }
    }
    numerators = kept;
    denominator = length == 0 ? BigInteger.ONE : common.divide(divisor);
  }

  /** The polynomial with these integer coefficients, highest power first, as a book prints them. */
  public static Polynomial ofDescending(long... coefficients) {
    BigInteger[] ascending = new BigInteger[coefficients.length];
    for (int k = 0; k < coefficients.length; k++) {
      ascending[coefficients.length - 1 - k] = BigInteger.valueOf(coefficients[k]);
    }
    return new Polynomial(ascending, BigInteger.ONE);
  }

  /** The polynomial with these coefficients, constant term first. */
  public static Polynomial ofAscending(List<Rational> coefficients) {
    BigInteger common = BigInteger.ONE;
    for (Rational coefficient : coefficients) {
      BigInteger under = coefficient.denominator();
      common = common.divide(common.gcd(under)).multiply(under);
    }
    BigInteger[] ascending = new BigInteger[coefficients.size()];
    for (int k = 0; k < ascending.length; k++) {
      Rational coefficient = coefficients.get(k);
      ascending[k] = coefficient.numerator().multiply(common.divide(coefficient.denominator()));
    }
    return new Polynomial(ascending, common);
  }

  /**
   * The polynomial with integer coefficients over one denominator, constant term first.
   *
   * @throws ArithmeticException if the denominator is zero
   */
  public static Polynomial ofAscending(BigInteger[] coefficients, BigInteger denominator) {
    if (denominator.signum() == 0) {
      throw new ArithmeticException("denominator of a polynomial is zero");
    }
    BigInteger[] ascending = coefficients.clone();
    if (denominator.signum() < 0) {
      Arrays.setAll(ascending, k -> ascending[k].negate());
    }
    return new Polynomial(ascending, denominator.abs());
  }

  /** The constant polynomial. */
  public static Polynomial constant(Rational value) {
    return new Polynomial(new BigInteger[] {value.numerator()}, value.denominator());
  }

  /** The polynomial c·x^k. */
  public static Polynomial monomial(Rational coefficient, int power) {
    BigInteger[] ascending = new BigInteger[power + 1];
    Arrays.fill(ascending, BigInteger.ZERO);
    ascending[power] = coefficient.numerator();
    return new Polynomial(ascending, coefficient.denominator());
  }

  /** The monic polynomial with exactly these roots, each as often as it is listed. */
  public static Polynomial withRoots(List<Rational> roots) {
    Polynomial product = ONE;
    for (Rational root : roots) {
      product = product.times(ofAscending(List.of(root.negate(), Rational.ONE)));
    }
    return product;
  }

  /** The highest power with a non-zero coefficient; −1 for the zero polynomial. */
  public int degree() {
    return numerators.length - 1;
  }

  /** Whether this is the zero polynomial. */
  public boolean isZero() {
    return numerators.length == 0;
  }

  /** The coefficient of x^k; zero outside 0..degree. */
  public Rational coefficient(int power) {
    return power < 0 || power >= numerators.length
        ? Rational.ZERO
        : new Rational(numerators[power], denominator);
  }

  /** The coefficient of x^k multiplied by {@link #denominator()}: an integer. */
  public BigInteger numerator(int power) {
    return power < 0 || power >= numerators.length ? BigInteger.ZERO : numerators[power];
  }

  /** The least positive integer that makes every coefficient whole. */
  public BigInteger denominator() {
    return denominator;
  }

  /** All coefficients, constant term first; empty for the zero polynomial. */
  public List<Rational> ascending() {
    List<Rational> coefficients = new ArrayList<>(numerators.length);
    for (BigInteger numerator : numerators) {
      coefficients.add(new Rational(numerator, denominator));
    }
    return List.copyOf(coefficients);
  }

  /** The coefficient of the highest power; zero for the zero polynomial. */
  public Rational lead() {
    return coefficient(degree());
  }

  /** The sum. */
  public Polynomial plus(Polynomial other) {
    return combine(other, denominator, other.denominator);
  }

  /** The difference. */
  public Polynomial minus(Polynomial other) {
    return combine(other, denominator, other.denominator.negate());
  }

  /** {@code this/ownUnder + other/otherUnder} with a sign carried by {@code otherUnder}. */
  private Polynomial combine(Polynomial other, BigInteger ownUnder, BigInteger otherUnder) {
    BigInteger[] sum = new BigInteger[Math.max(numerators.length, other.numerators.length)];
    boolean same = ownUnder.equals(otherUnder.abs());
    BigInteger own = same ? BigInteger.ONE : otherUnder.abs();
    BigInteger foreign = same ? BigInteger.ONE : ownUnder;
    BigInteger signed = otherUnder.signum() < 0 ? foreign.negate() : foreign;
    for (int k = 0; k < sum.length; k++) {
      sum[k] = numerator(k).multiply(own).add(other.numerator(k).multiply(signed));
    }
    return new Polynomial(sum, ownUnder.multiply(own));
  }

  /** The product, by the schoolbook rule: O(n·m) coefficient products. */
  public Polynomial times(Polynomial other) {
    if (isZero() || other.isZero()) {
      return ZERO;
    }
    BigInteger[] product = new BigInteger[numerators.length + other.numerators.length - 1];
    Arrays.fill(product, BigInteger.ZERO);
    for (int i = 0; i < numerators.length; i++) {
      if (numerators[i].signum() != 0) {
        for (int j = 0; j < other.numerators.length; j++) {
          product[i + j] = product[i + j].add(numerators[i].multiply(other.numerators[j]));
        }
      }
    }
    return new Polynomial(product, denominator.multiply(other.denominator));
  }

  /** The product with a number. */
  public Polynomial times(Rational factor) {
    BigInteger[] product = new BigInteger[numerators.length];
    Arrays.setAll(product, k -> numerators[k].multiply(factor.numerator()));
    return new Polynomial(product, denominator.multiply(factor.denominator()));
  }

  /** The polynomial with every sign changed. */
  public Polynomial negate() {
    return times(Rational.MINUS_ONE);
  }

  /**
   * The power with a non-negative exponent, by repeated squaring.
   *
   * @throws IllegalArgumentException if the exponent is negative
   */
  public Polynomial power(int exponent) {
    return RepeatedSquaring.power(this, exponent, ONE, (left, right) -> left.times(right));
  }

  /**
   * Quotient and remainder: dividend = quotient·divisor + remainder, deg remainder < deg divisor.
   */
  public record Division(Polynomial quotient, Polynomial remainder) {}

  /**
   * Divides with remainder.
   *
   * @throws ArithmeticException if the divisor is zero
   */
  public Division divide(Polynomial divisor) {
    if (divisor.isZero()) {
      throw new ArithmeticException("division by the zero polynomial");
    }
    int steps = degree() - divisor.degree();
    if (steps < 0) {
      return new Division(ZERO, this);
    } else if (divisor.degree() == 0) {
      return new Division(times(divisor.lead().reciprocal()), ZERO);
    }
    // Pseudo-division keeps integers throughout: lead^(steps+1)·this = q·divisor + r.
    BigInteger lead = divisor.numerators[divisor.degree()];
    BigInteger[] rest = numerators.clone();
    BigInteger[] quotient = new BigInteger[steps + 1];
    for (int shift = steps; shift >= 0; shift--) {
      BigInteger top = rest[shift + divisor.degree()];
      for (int k = shift + 1; k <= steps; k++) {
        quotient[k] = quotient[k].multiply(lead);
      }
      quotient[shift] = top;
      for (int k = 0; k < shift + divisor.degree(); k++) {
        rest[k] = rest[k].multiply(lead);
      }
      for (int k = 0; k < divisor.degree(); k++) {
        rest[shift + k] = rest[shift + k].subtract(top.multiply(divisor.numerators[k]));
      }
      rest[shift + divisor.degree()] = BigInteger.ZERO;
    }
    BigInteger scale = lead.pow(steps + 1);
    BigInteger[] scaled = new BigInteger[steps + 1];
    Arrays.setAll(scaled, k -> quotient[k].multiply(divisor.denominator));
    return new Division(
        ofAscending(scaled, scale.multiply(denominator)),
        ofAscending(
            Arrays.copyOf(rest, Math.max(divisor.degree(), 0)), scale.multiply(denominator)));
  }

  /**
   * The remainder on division.
   *
   * @throws ArithmeticException if the divisor is zero
   */
  public Polynomial remainder(Polynomial divisor) {
    return degree() < divisor.degree() ? this : divide(divisor).remainder();
  }

  /** The monic greatest common divisor; zero if both are zero. */
  public Polynomial gcd(Polynomial other) {
    Polynomial a = primitive();
    Polynomial b = other.primitive();
    if (Coprimality.isProven(a, b)) {
      return ONE;
    }
    if (CommonDivisor.isLarge(a, b)) {
      Optional<Polynomial> common = CommonDivisor.of(a, b);
      if (common.isPresent()) {
        return common.get().monic();
      }
    }
    while (!b.isZero()) {
      Stop.ifUnwanted();
      Polynomial next = a.remainder(b).primitive();
      a = b;
      b = next;
    }
    return a.isZero() ? ZERO : a.monic();
  }

  /** The derivative. */
  public Polynomial derivative() {
    if (degree() < 1) {
      return ZERO;
    }
    BigInteger[] derived = new BigInteger[degree()];
    Arrays.setAll(derived, k -> numerators[k + 1].multiply(BigInteger.valueOf(k + 1L)));
    return new Polynomial(derived, denominator);
  }

  /** The value at a number, by Horner's rule. */
  public Rational at(Rational point) {
    Rational value = Rational.ZERO;
    for (int k = degree(); k >= 0; k--) {
      value = value.times(point).plus(Rational.of(numerators[k]));
    }
    return value.over(Rational.of(denominator));
  }

  /** The polynomial this(inner(x)), by Horner's rule. */
  public Polynomial compose(Polynomial inner) {
    Polynomial value = ZERO;
    for (int k = degree(); k >= 0; k--) {
      value = value.times(inner).plus(constant(coefficient(k)));
    }
    return value;
  }

  /** The coefficients in the opposite order: x^n·this(1/x), whose roots are the reciprocals. */
  public Polynomial reversed() {
    BigInteger[] reversed = new BigInteger[numerators.length];
    Arrays.setAll(reversed, k -> numerators[numerators.length - 1 - k]);
    return new Polynomial(reversed, denominator);
  }

  /** Divided by its lead; the zero polynomial stays as it is. */
  public Polynomial monic() {
    return isZero() ? this : times(lead().reciprocal());
  }

  /**
   * The multiple with integer coefficients without common divisor and with positive lead; the zero
   * polynomial stays as it is.
   */
  public Polynomial primitive() {
    if (isZero()) {
      return this;
    }
    BigInteger content = BigInteger.ZERO;
    for (BigInteger numerator : numerators) {
      content = content.gcd(numerator);
    }
    BigInteger divisor = numerators[degree()].signum() < 0 ? content.negate() : content;
    BigInteger[] primitive = new BigInteger[numerators.length];
    Arrays.setAll(primitive, k -> numerators[k].divide(divisor));
    return new Polynomial(primitive, BigInteger.ONE);
  }

  /** The monic product of the distinct irreducible factors; 1 for a non-zero constant. */
  public Polynomial squarefreePart() {
    return degree() < 1 ? gcd(ZERO) : divide(gcd(derivative())).quotient().monic();
  }

  /** Whether no root is repeated: gcd(P, P′) is constant. */
  public boolean isSquarefree() {
    return degree() < 1 ? !isZero() : gcd(derivative()).degree() == 0;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Polynomial that
        && denominator.equals(that.denominator)
        && Arrays.equals(numerators, that.numerators);
  }

  @Override
  public int hashCode() {
    return 31 * Arrays.hashCode(numerators) + denominator.hashCode();
  }

  /** Descending, for a programmer's eye: {@code 3*x^2 - 1/2*x + 7}. */
  @Override
  public String toString() {
    if (isZero()) {
      return "0";
    }
    StringBuilder text = new StringBuilder();
    for (int k = degree(); k >= 0; k--) {
      Rational coefficient = coefficient(k);
      if (!coefficient.isZero()) {
        String sign = coefficient.signum() < 0 ? "-" : "+";
        text.append(text.isEmpty() ? (sign.equals("-") ? "-" : "") : " " + sign + " ");
        Rational size = coefficient.absolute();
        String power = k == 0 ? "" : k == 1 ? "x" : "x^" + k;
        text.append(power.isEmpty() ? size : size.isOne() ? power : size + "*" + power);
      }
    }
    return text.toString();
  }
}
