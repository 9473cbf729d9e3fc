package rootwright.working.proof;

import rootwright.algebra.number.Rational;

/**
 * u + v·√d with one d for a whole calculation.
 *
 * @param under d; does not matter while v is 0
 */
record Surd(Rational u, Rational v, Rational under) {

  static Surd of(Rational value) {
    return new Surd(value, Rational.ZERO, Rational.ZERO);
  }

  static Surd root(Rational under) {
    return new Surd(Rational.ZERO, Rational.ONE, under);
  }

  Surd plus(Surd other) {
    if (v.isZero() && other.v.isZero()) {
      return of(u.plus(other.u));
    }
    return new Surd(u.plus(other.u), v.plus(other.v), common(other));
  }

  Surd times(Surd other) {
    // Most numbers have no root in them; that is worth a way of its own.
    if (v.isZero() && other.v.isZero()) {
      return of(u.times(other.u));
    }
    Rational d = common(other);
    return new Surd(
        u.times(other.u).plus(v.times(other.v).times(d)),
        u.times(other.v).plus(v.times(other.u)),
        d);
  }

  Surd over(Surd other) {
    if (v.isZero() && other.v.isZero() && !other.u.isZero()) {
      return of(u.over(other.u));
    }
    Rational norm = other.u.times(other.u).minus(other.v.times(other.v).times(other.under));
    if (norm.isZero()) {
      throw new UnsayableException("a denominator is zero");
    }
    Surd conjugate = new Surd(other.u, other.v.negate(), other.under);
    Surd product = times(conjugate);
    return new Surd(product.u.over(norm), product.v.over(norm), product.under);
  }

  /** The value where there is no root in it. */
  Rational rational() {
    if (!v.isZero()) {
      throw new UnsayableException("a root stands below a root sign");
    }
    return u;
  }

  boolean same(Surd other) {
    return u.equals(other.u) && v.equals(other.v);
  }

  private Rational common(Surd other) {
    if (v.isZero()) {
      return other.under;
    }
    if (!other.v.isZero() && !under.equals(other.under)) {
      throw new UnsayableException("two different roots stand in it");
    }
    return under;
  }
}
