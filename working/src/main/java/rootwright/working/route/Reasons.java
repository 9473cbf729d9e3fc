package rootwright.working.route;

import rootwright.working.ask.Asked;

/** Reasons for declining that several routes have in common. */
final class Reasons {

  private static final Attempt NOT_SYMMETRIC =
      new Attempt.Declined(
          "the ask changes when two roots are exchanged, so the coefficients alone do not give it");

  static final Attempt READ_OFF =
      new Attempt.Declined("nothing has to be worked out: the coefficients give it at once");

  static final Attempt ROOT_IN_DENOMINATOR = new Attempt.Declined("a root stands in a denominator");

  static final Attempt ZERO_DENOMINATOR = new Attempt.Declined("a denominator is zero");

  static final Attempt TOO_LONG = new Attempt.Declined("written out, the ask has too many terms");

  static final Attempt OPPOSITES =
      new Attempt.Declined(
          "the new roots come in opposite pairs, so their squares have fewer values than they");

  /** Why an ask that is not known to be symmetric cannot be worked as one that is. */
  static Attempt notSymmetric(Asked asked) {
    return asked.expression().isPresent() ? NOT_SYMMETRIC : TOO_LONG;
  }

  private Reasons() {}
}
