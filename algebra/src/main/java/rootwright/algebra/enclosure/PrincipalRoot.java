package rootwright.algebra.enclosure;

import java.math.BigInteger;
import java.util.Optional;
import rootwright.algebra.number.RepeatedSquaring;

/**
 * The principal k-th root of a disc. A guess w is improved by Newton's rule; then the distance of
 * w^k from the centre and the derivative of the root over the disc give the radius, and the powers
 * of w prove that it is the principal root and no other.
 */
final class PrincipalRoot {

  private static final int GUESSED_BITS = 40;

  private static final int SPARE_BITS = 16;

  private final int index;

  private PrincipalRoot(int index) {
    this.index = index;
  }

  static ComplexBall of(ComplexBall disc, int k, int bits) {
    if (k < 1 || bits < 1) {
      throw new IllegalArgumentException("root of index %d to %d bits".formatted(k, bits));
    }
    if (k == 1) {
      return disc;
    }
    if (meetsCut(disc)) {
      throw new BranchCutException(disc.toString());
    }
    if (disc.imaginaryCentre().signum() < 0) {
      return of(disc.conjugate(), k, bits).conjugate();
    }
    PrincipalRoot root = new PrincipalRoot(k);
    for (int length = bits + SPARE_BITS; ; length *= 2) {
      Optional<ComplexBall> found = root.enclosed(disc, length);
      if (found.isPresent()) {
        return found.get();
      }
    }
  }

  /** Whether the disc has a point on the real axis from zero leftwards. */
  private static boolean meetsCut(ComplexBall disc) {
    return disc.realCentre().signum() > 0 ? disc.containsZero() : disc.meetsRealAxis();
  }

  /** Empty if this length is too short for a proof. */
  private Optional<ComplexBall> enclosed(ComplexBall disc, int length) {
    Point root = improved(point(disc), length);
    Dyadic x = new Dyadic(root.x(), root.exponent());
    Dyadic y = new Dyadic(root.y(), root.exponent());
    ComplexBall near = new ComplexBall(x, y, Dyadic.powerOfTwo(root.top() - length));
    ComplexBall power = near.power(index);
    ComplexBall centre = new ComplexBall(disc.realCentre(), disc.imaginaryCentre(), Dyadic.ZERO);
    Magnitude reach = Magnitude.up(disc.radius()).plusUp(power.minus(centre).farthest());
    ComplexBall widened =
        new ComplexBall(disc.realCentre(), disc.imaginaryCentre(), reach.toDyadic());
    if (meetsCut(widened) || !isPrincipal(near)) {
      return Optional.empty();
    }
    // Over the widened disc |(z^(1/k))′| = |z|^(1/k)/(k·|z|), largest where |z| is least, and there
    // the root is at most |w| long.
    Magnitude steepest =
        root.absoluteUp()
            .overUp(widened.leastDistanceFromZero())
            .overUp(Magnitude.up(BigInteger.valueOf(index), 0));
    return Optional.of(ComplexBall.trimmed(x, y, reach.timesUp(steepest)));
  }

  private static Point point(ComplexBall disc) {
    Dyadic x = disc.realCentre();
    Dyadic y = disc.imaginaryCentre();
    return new Point(x.mantissa(), BigInteger.ZERO, x.exponent())
        .plus(new Point(BigInteger.ZERO, y.mantissa(), y.exponent()));
  }

  /** Newton's rule w − (w^k − c)/(k·w^(k−1)) from a hardware guess, without a bound. */
  private Point improved(Point centre, int length) {
    Point root = FirstGuesses.root(centre, index);
    if (centre.isReal()) {
      root = new Point(root.x(), BigInteger.ZERO, root.exponent());
    }
    Point factor = new Point(BigInteger.valueOf(index), BigInteger.ZERO, 0);
    for (int correct = GUESSED_BITS; correct < length; correct *= 2) {
      int bits = 2 * correct + SPARE_BITS;
      Point less = power(root, index - 1, bits);
      Point excess = less.times(root).minus(centre);
      root = root.minus(excess.over(less.times(factor), bits)).trimmed(bits);
    }
    return root.trimmed(length + SPARE_BITS);
  }

  private static Point power(Point base, int exponent, int bits) {
    return RepeatedSquaring.power(
        base, exponent, Point.ONE, (left, right) -> left.times(right).trimmed(bits));
  }

  /**
   * Whether the angle θ of a number with a root above the real axis is below π/k: surely if |tan θ|
   * ≤ 3/k; else θ, 2θ, …, kθ must all have a positive sine, because the first multiple beyond π
   * would not reach 2π.
   */
  private boolean isPrincipal(ComplexBall root) {
    Dyadic height = root.imaginaryCentre().absolute().plus(root.radius());
    Dyadic width = root.realCentre().minus(root.radius());
    if (height.times(Dyadic.of(index)).compareTo(width.times(Dyadic.of(3))) <= 0) {
      return true;
    }
    ComplexBall power = ComplexBall.ONE;
    for (int k = 1; k <= index; k++) {
      power = power.times(root);
      if (!power.imaginary().isPositive()) {
        return false;
      }
    }
    return true;
  }
}
