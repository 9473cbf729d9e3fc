package rootwright.algebra.enclosure;

import java.util.Optional;

/**
 * Newton's step with proof: if a disc Z with centre z holds the root w, then w = z − P(z)/D for
 * some D in the convex disc that holds P′(Z). Each step about squares the radius, and only the last
 * one is reckoned at full length.
 */
final class Contraction {

  /** Spare bits in every quantity of a step. */
  private static final int GUARD = 8;

  /** Up to this length a value in machine words may do: the guard bits are seldom all needed. */
  private static final int WORTH_WORDS = 66;

  private final WholeCoefficients polynomial;
  private final WholeCoefficients derived;
  private final WholeCoefficients curved;

  Contraction(WholeCoefficients polynomial) {
    this.polynomial = polynomial;
    derived = polynomial.derivative();
    curved = derived.derivative();
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
    Magnitude bend = curved.boundAt(distance.plusUp(disc.radius()));
    Magnitude weight = polynomial.boundAt(distance);
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
    Evaluation slope = derived.at(near, WholeCoefficients.WORD_BITS);
    int missing = slope.error().top() - swing.top() + 4;
    if (missing > 0) {
      slope = derived.at(near, WholeCoefficients.WORD_BITS + missing);
    }
    Magnitude spread = slope.error().plusUp(swing);
    Magnitude least = slope.value().absoluteDown().minusDown(spread);
    int steepness = slope.value().top();
    int quality = bend.top() - steepness + 2;
    if (least.isZero() || disc.radius().top() + quality > -2) {
      return Optional.empty();
    }
    int goal = goal(disc, quality, bits);
    int length = Math.max(32, weight.top() - steepness - goal + GUARD);
    if (length <= WORTH_WORDS) {
      Evaluation value = polynomial.at(disc.centre(), WholeCoefficients.WORD_BITS);
      IsolatingDisc next = moved(disc, value, slope.value(), spread, least, goal);
      if (next.radius().top() <= goal + 1) {
        return Optional.of(next);
      }
    }
    Evaluation value = polynomial.at(disc.centre(), length);
    IsolatingDisc next = moved(disc, value, slope.value(), spread, least, goal);
    return next.radius().timesUp(2).compareTo(disc.radius()) > 0
        ? Optional.empty()
        : Optional.of(next);
  }

  /**
   * The disc round z − s, for a short s near P(z)/P′(z), that holds z − p/d for every p within the
   * error of the value and every d within the spread of the slope: |p/d − s| ≤ (|p − s·slope| +
   * |s|·spread)/|d|.
   */
  private static IsolatingDisc moved(
      IsolatingDisc disc,
      Evaluation value,
      Point slope,
      Magnitude spread,
      Magnitude least,
      int goal) {
    int bits = Math.max(8, disc.radius().top() - goal + GUARD);
    Point step = value.value().over(slope, bits).trimmedTo(goal - 4);
    Magnitude left = value.value().minus(step.times(slope)).absoluteUp().plusUp(value.error());
    Magnitude radius = left.plusUp(step.absoluteUp().timesUp(spread)).overUp(least);
    return new IsolatingDisc(disc.centre().minus(step), radius);
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
