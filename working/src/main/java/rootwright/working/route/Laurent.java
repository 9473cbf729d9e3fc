package rootwright.working.route;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.problem.RootFunction;

/**
 * A sum of powers with whole exponents, negative ones too.
 *
 * @param terms the coefficient of each power that occurs
 */
record Laurent(NavigableMap<Integer, Rational> terms) {

  Laurent {
    NavigableMap<Integer, Rational> kept = new TreeMap<>(terms);
    kept.values().removeIf(Rational::isZero);
    terms = Collections.unmodifiableNavigableMap(kept);
  }

  /** A function whose denominator is a power, as a sum of powers; empty for any other. */
  static Optional<Laurent> of(RootFunction f) {
    int shift = f.denominator().degree();
    Polynomial power = Polynomial.monomial(f.denominator().lead(), shift);
    if (!f.denominator().equals(power)) {
      return Optional.empty();
    }
    NavigableMap<Integer, Rational> terms = new TreeMap<>();
    for (int k = 0; k <= f.numerator().degree(); k++) {
      terms.put(k - shift, f.numerator().coefficient(k).over(power.lead()));
    }
    return Optional.of(new Laurent(terms));
  }

  /** The same with x^k and x^(−k) exchanged. */
  Laurent reversed() {
    NavigableMap<Integer, Rational> reversed = new TreeMap<>();
    terms.forEach((k, coefficient) -> reversed.put(-k, coefficient));
    return new Laurent(reversed);
  }

  /** The same with −x put for x. */
  Laurent mirrored() {
    NavigableMap<Integer, Rational> mirrored = new TreeMap<>();
    terms.forEach((k, c) -> mirrored.put(k, k % 2 == 0 ? c : c.negate()));
    return new Laurent(mirrored);
  }

  /** The sum. */
  Laurent plus(Laurent other) {
    NavigableMap<Integer, Rational> sum = new TreeMap<>(terms);
    other.terms.forEach((k, coefficient) -> sum.merge(k, coefficient, Rational::plus));
    return new Laurent(sum);
  }

  /** The largest distance of an exponent from 0. */
  int reach() {
    return terms.isEmpty() ? 0 : Math.max(terms.lastKey(), -terms.firstKey());
  }

  /**
   * The exponents in the order in which the powers are written: descending, but the constant last
   * where no power is positive.
   */
  List<Integer> ordered() {
    List<Integer> ordered = new ArrayList<>(terms.descendingKeySet());
    if (!ordered.isEmpty() && ordered.get(0) == 0) {
      ordered.add(ordered.remove(0));
    }
    return ordered;
  }

  /** The coefficient of a power. */
  Rational coefficient(int exponent) {
    return terms.getOrDefault(exponent, Rational.ZERO);
  }

  /** Written in a base. */
  Formula written(Formula base) {
    Combination sum = new Combination();
    for (int k : ordered()) {
      Rational coefficient = coefficient(k);
      if (k == 0) {
        sum.plus(coefficient);
      } else if (k > 0) {
        sum.plus(coefficient, Combination.power(base, k));
      } else {
        sum.plus(
            Rational.of(coefficient.signum()),
            Formula.number(coefficient.absolute()).over(Combination.power(base, -k)));
      }
    }
    return sum.formula();
  }
}
