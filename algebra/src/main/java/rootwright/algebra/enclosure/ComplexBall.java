package rootwright.algebra.enclosure;

import java.util.Optional;
import rootwright.algebra.enclosure.Dyadic.Rounding;
import rootwright.algebra.number.Rational;
import rootwright.algebra.number.RepeatedSquaring;

/**
 * A closed disc of the complex plane: some number is known to lie within {@code radius} of {@code
 * realCentre + imaginaryCentre·i}.
 *
 * <p>Sums and products of exact balls are exact. Otherwise the centre is kept about as long as the
 * radius makes meaningful and the radius grows by what was cut off.
 *
 * @param realCentre the real part of the centre
 * @param imaginaryCentre the imaginary part of the centre
 * @param radius the radius, not negative
 */
public record ComplexBall(Dyadic realCentre, Dyadic imaginaryCentre, Dyadic radius) {

  public static final ComplexBall ZERO = exact(Dyadic.ZERO);
  public static final ComplexBall ONE = exact(Dyadic.ONE);
  public static final ComplexBall I = new ComplexBall(Dyadic.ZERO, Dyadic.ONE, Dyadic.ZERO);

  /**
   * Checks the radius.
   *
   * @throws IllegalArgumentException if the radius is negative
   */
  public ComplexBall {
    if (radius.signum() < 0) {
      throw new IllegalArgumentException("radius of a ball is negative: " + radius);
    }
  }

  /** The number itself. */
  public static ComplexBall exact(Dyadic number) {
    return new ComplexBall(number, Dyadic.ZERO, Dyadic.ZERO);
  }

  /** The number itself. */
  public static ComplexBall exact(long number) {
    return exact(Dyadic.of(number));
  }

  /**
   * A ball round a rational number with this many significant bits; exact if it fits.
   *
   * @throws IllegalArgumentException if {@code bits} is not positive
   */
  public static ComplexBall of(Rational number, int bits) {
    return of(RealBall.of(number, bits));
  }

  /** The disc over a real ball; it also holds numbers that are not real. */
  public static ComplexBall of(RealBall ball) {
    return new ComplexBall(ball.centre(), Dyadic.ZERO, ball.radius());
  }

  /** A disc that holds x + y·i for all x and y of the two balls. */
  public static ComplexBall of(RealBall real, RealBall imaginary) {
    return trimmed(
        real.centre(),
        imaginary.centre(),
        Magnitude.up(real.radius()).plusUp(Magnitude.up(imaginary.radius())));
  }

  /** The disc with its radius as a few bits and its centre as long as that makes meaningful. */
  static ComplexBall trimmed(Dyadic real, Dyadic imaginary, Magnitude radius) {
    if (radius.isZero()) {
      return new ComplexBall(real, imaginary, Dyadic.ZERO);
    }
    int last = radius.top() - RealBall.SPARE_BITS;
    if (real.exponent() >= last && imaginary.exponent() >= last) {
      return new ComplexBall(real, imaginary, radius.toDyadic());
    }
    // Each part moves by less than one last place, the centre by less than two.
    return new ComplexBall(
        real.roundedTo(last, Rounding.FLOOR),
        imaginary.roundedTo(last, Rounding.FLOOR),
        radius.plusUp(Magnitude.powerOfTwo(last + 1)).toDyadic());
  }

  /** The real parts of all numbers of the disc. */
  public RealBall real() {
    return new RealBall(realCentre, radius);
  }

  /** The imaginary parts of all numbers of the disc. */
  public RealBall imaginary() {
    return new RealBall(imaginaryCentre, radius);
  }

  /** Whether the disc is one number. */
  public boolean isExact() {
    return radius.isZero();
  }

  /** All sums. */
  public ComplexBall plus(ComplexBall other) {
    return trimmed(
        realCentre.plus(other.realCentre),
        imaginaryCentre.plus(other.imaginaryCentre),
        Magnitude.up(radius).plusUp(Magnitude.up(other.radius)));
  }

  /** All differences. */
  public ComplexBall minus(ComplexBall other) {
    return plus(other.negate());
  }

  /** The disc turned by half a turn round zero. */
  public ComplexBall negate() {
    return new ComplexBall(realCentre.negate(), imaginaryCentre.negate(), radius);
  }

  /** The disc mirrored at the real axis. */
  public ComplexBall conjugate() {
    return new ComplexBall(realCentre, imaginaryCentre.negate(), radius);
  }

  /** All products. */
  public ComplexBall times(ComplexBall other) {
    Magnitude own = Magnitude.up(radius);
    Magnitude foreign = Magnitude.up(other.radius);
    Magnitude spread =
        isExact() && other.isExact()
            ? Magnitude.ZERO
            : centreUp()
                .timesUp(foreign)
                .plusUp(own.timesUp(other.centreUp()))
                .plusUp(own.timesUp(foreign));
    return trimmed(
        realCentre.times(other.realCentre).minus(imaginaryCentre.times(other.imaginaryCentre)),
        realCentre.times(other.imaginaryCentre).plus(imaginaryCentre.times(other.realCentre)),
        spread);
  }

  /**
   * All quotients, to this many significant bits where the operands allow it.
   *
   * @throws BallContainsZeroException if the divisor contains zero
   * @throws IllegalArgumentException if {@code bits} is not positive
   */
  public ComplexBall over(ComplexBall divisor, int bits) {
    return times(divisor.reciprocal(bits));
  }

  /**
   * One over all numbers of the disc.
   *
   * @throws BallContainsZeroException if the disc contains zero
   * @throws IllegalArgumentException if {@code bits} is not positive
   */
  public ComplexBall reciprocal(int bits) {
    Magnitude least = leastDistanceFromZero();
    if (least.isZero()) {
      throw new BallContainsZeroException(toString());
    }
    Dyadic norm = centreNorm();
    RealBall re = RealBall.exact(realCentre).over(RealBall.exact(norm), bits);
    RealBall im = RealBall.exact(imaginaryCentre).over(RealBall.exact(norm), bits);
    // |1/z − 1/c| = |z − c| / (|z|·|c|) ≤ radius / (least·|c|), and |c| ≥ least.
    Magnitude spread =
        Magnitude.up(radius).overUp(least.timesDown(Magnitude.down(norm).rootDown()));
    return trimmed(
        re.centre(),
        im.centre().negate(),
        spread.plusUp(Magnitude.up(re.radius())).plusUp(Magnitude.up(im.radius())));
  }

  /**
   * All powers with this exponent, by repeated squaring; z⁰ = 1.
   *
   * @throws IllegalArgumentException if the exponent is negative
   */
  public ComplexBall power(int exponent) {
    return RepeatedSquaring.power(this, exponent, ONE, (left, right) -> left.times(right));
  }

  /**
   * The principal k-th roots of all numbers of the disc: those with an angle between −π/k and π/k.
   *
   * @throws BranchCutException if the disc meets the negative real axis or zero, where the root
   *     jumps
   * @throws IllegalArgumentException if {@code k} or {@code bits} is not positive
   */
  public ComplexBall root(int k, int bits) {
    return PrincipalRoot.of(this, k, bits);
  }

  /** The principal square roots of all numbers of the disc: {@link #root} with k = 2. */
  public ComplexBall squareRoot(int bits) {
    return root(2, bits);
  }

  /** The distances from zero of all numbers of the disc. */
  public RealBall absolute(int bits) {
    Dyadic norm = centreNorm();
    RealBall centre = RealBall.exact(norm).squareRoot(bits);
    return RealBall.trimmed(
        centre.centre(), Magnitude.up(centre.radius()).plusUp(Magnitude.up(radius)));
  }

  /** Whether the rational number lies in the disc. */
  public boolean contains(Rational number) {
    return contains(number, Rational.ZERO);
  }

  /** Whether {@code real + imaginary·i} lies in the disc. */
  public boolean contains(Rational real, Rational imaginary) {
    Rational x = real.minus(realCentre.toRational());
    Rational y = imaginary.minus(imaginaryCentre.toRational());
    Rational r = radius.toRational();
    return x.times(x).plus(y.times(y)).compareTo(r.times(r)) <= 0;
  }

  /** Whether zero lies in the disc. */
  public boolean containsZero() {
    return centreNorm().compareTo(radius.times(radius)) <= 0;
  }

  /** Whether the disc has a number in common with the real axis. */
  public boolean meetsRealAxis() {
    return imaginaryCentre.absolute().compareTo(radius) <= 0;
  }

  /** Whether the two discs have a number in common. */
  public boolean overlaps(ComplexBall other) {
    Dyadic reach = radius.plus(other.radius);
    return squaredDistance(other).compareTo(reach.times(reach)) <= 0;
  }

  /** Whether every number of the other disc lies in this one. */
  public boolean contains(ComplexBall other) {
    Dyadic slack = radius.minus(other.radius);
    return slack.signum() >= 0 && squaredDistance(other).compareTo(slack.times(slack)) <= 0;
  }

  private Dyadic squaredDistance(ComplexBall other) {
    Dyadic x = realCentre.minus(other.realCentre);
    Dyadic y = imaginaryCentre.minus(other.imaginaryCentre);
    return x.times(x).plus(y.times(y));
  }

  private Dyadic centreNorm() {
    return realCentre.times(realCentre).plus(imaginaryCentre.times(imaginaryCentre));
  }

  private Magnitude centreUp() {
    Magnitude x = Magnitude.up(realCentre);
    Magnitude y = Magnitude.up(imaginaryCentre);
    if (y.isZero()) {
      return x;
    }
    return x.isZero() ? y : x.timesUp(x).plusUp(y.timesUp(y)).rootUp();
  }

  /** An upper bound for the distance of the numbers of the disc from zero. */
  Magnitude farthest() {
    return centreUp().plusUp(Magnitude.up(radius));
  }

  /** A lower bound for the distance from zero; zero exactly if the disc contains zero. */
  Magnitude leastDistanceFromZero() {
    Magnitude surely =
        Magnitude.squaredDown(realCentre, imaginaryCentre)
            .rootDown()
            .minusDown(Magnitude.up(radius));
    // Where the radius is small beside the distance, a few bits say it well enough.
    if (surely.compareTo(Magnitude.up(radius)) > 0) {
      return surely;
    }
    if (containsZero()) {
      return Magnitude.ZERO;
    }
    Dyadic norm = centreNorm();
    for (int bits = 64; ; bits *= 2) {
      Dyadic least = norm.squareRoot(bits, Rounding.FLOOR).minus(radius);
      if (least.signum() > 0) {
        return Magnitude.down(least);
      }
    }
  }

  /**
   * The number as a decimal, both parts with at most this many significant digits, all of them
   * certain: {@code -1.047275741 + 1.135939890*i}. A disc with a real centre is written as a real
   * number. Empty if a part has no certain digit.
   *
   * @throws IllegalArgumentException if {@code digits} is not positive
   */
  public Optional<String> decimal(int digits) {
    Optional<String> re = real().decimal(digits);
    if (imaginaryCentre.isZero()) {
      return re;
    }
    Optional<String> im = new RealBall(imaginaryCentre.absolute(), radius).decimal(digits);
    String sign = imaginaryCentre.signum() < 0 ? " - " : " + ";
    return re.flatMap(x -> im.map(y -> x + sign + y + "*i"));
  }

  /** {@code (x, y) ± radius}: for a programmer's eye. */
  @Override
  public String toString() {
    return "(" + realCentre + ", " + imaginaryCentre + ") ± " + radius;
  }
}
