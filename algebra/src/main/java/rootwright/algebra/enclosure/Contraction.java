package rootwright.algebra.enclosure;

import java.math.BigInteger;
import java.util.Optional;

/**
 * Newton's step with proof: if a disc Z with centre z holds the root w, then w = z − P(z)/D for
 * some D in the convex disc that holds P′(Z). Each step about squares the radius, and only the last
 * one is reckoned at full length.
 */
final class Contraction {

  /** Spare bits in every quantity of a step. */
  private static final int GUARD = 8;

  private final BigInteger[] ascending;
  private final BigInteger[] derived;
  private final BigInteger[] curved;

  Contraction(BigInteger[] ascending) {
    this.ascending = ascending;
    derived = Evaluation.derivative(ascending);
    curved = Evaluation.derivative(derived);
  }

  /**
   * A disc with radius at most 2^−bits·|centre| that holds the same root.
   *
   * @return empty if the disc is too large for the steps to contract
   */
  Optional<IsolatingDisc> shrunk(IsolatingDisc disc, int bits) {
    if (disc.isSmall(bits) || disc.radius().isZero()) {
      return Optional.of(disc);
    }
    Magnitude distance = disc.centre().absoluteUp();
    Magnitude bend = Evaluation.bound(curved, distance.plusUp(disc.radius()));
    Magnitude weight = Evaluation.bound(ascending, distance);
    IsolatingDisc current = disc;
    while (!current.isSmall(bits) && !current.radius().isZero()) {
      Optional<IsolatingDisc> next = step(current, bend, weight, bits);
      if (next.isEmpty()) {
        return Optional.empty();
      }
      current = next.get();
    }
    return Optional.of(current);
  }

  private Optional<IsolatingDisc> step(
      IsolatingDisc disc, Magnitude bend, Magnitude weight, int bits) {
    // The slope over the whole disc: its value at a centre no longer than the radius deserves.
    int last = disc.radius().top() - 2;
    Point near = disc.centre().trimmedTo(last);
    Magnitude reach = disc.radius().plusUp(Magnitude.powerOfTwo(last + 1));
    Magnitude swing = reach.timesUp(bend);
    Evaluation rough = Evaluation.of(derived, near, 64);
    int wanted = 64 + Math.max(0, rough.error().top() - swing.top() + 4);
    Evaluation slope = wanted > 64 ? Evaluation.of(derived, near, wanted) : rough;
    Magnitude spread = slope.error().plusUp(swing);
    Magnitude least = slope.value().absoluteDown().minusDown(spread);
    int steepness = slope.value().top();
    int quality = bend.top() - steepness + 2;
    if (least.isZero() || disc.radius().top() + quality > -2) {
      return Optional.empty();
    }
    int goal = goal(disc, quality, bits);
    int length = Math.max(32, weight.top() - steepness - goal + GUARD);
    Evaluation value = Evaluation.of(ascending, disc.centre(), length);
    int stepBits = Math.max(8, disc.radius().top() - goal + GUARD);
    Point step = value.value().over(slope.value(), stepBits).trimmedTo(goal - 4);
    Magnitude left =
        value.value().minus(step.times(slope.value())).absoluteUp().plusUp(value.error());
    Magnitude radius = left.plusUp(step.absoluteUp().timesUp(spread)).overUp(least);
    if (radius.timesUp(2).compareTo(disc.radius()) > 0) {
      return Optional.empty();
    }
    return Optional.of(new IsolatingDisc(disc.centre().minus(step), radius));
  }

  /**
   * The binary order of the radius this step should reach: as far as squaring carries, but no
   * further than the next steps need in order to meet the last one exactly.
   */
  private static int goal(IsolatingDisc disc, int quality, int bits) {
    int goal = disc.centre().top() - bits - 3;
    int radius = disc.radius().top();
    while (2 * radius + quality > goal) {
      goal = Math.floorDiv(goal - quality, 2) - 1;
    }
    return goal;
  }
}
