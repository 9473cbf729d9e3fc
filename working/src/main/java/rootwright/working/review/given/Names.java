package rootwright.working.review.given;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.RationalFunction;

/**
 * The unknowns of a working, numbered as they are met: the roots, the letters, and whatever a root
 * sign stands for. What a line gives a name to is written out and is no unknown.
 */
final class Names {

  private final List<String> unknowns = new ArrayList<>();
  private final Map<String, RationalFunction> meanings = new HashMap<>();
  private final List<MultivariatePolynomial> signs = new ArrayList<>();

  /** How many unknowns there are so far. */
  int size() {
    return unknowns.size();
  }

  /** Makes this an unknown, if it is none yet, and says its number. */
  int number(String name) {
    int known = unknowns.indexOf(name);
    if (known >= 0) {
      return known;
    }
    unknowns.add(name);
    return unknowns.size() - 1;
  }

  /** Whether it is an unknown. */
  boolean isUnknown(String name) {
    return unknowns.contains(name);
  }

  /** Whether anything says what this is. */
  boolean isKnown(String name) {
    return unknowns.contains(name) || meanings.containsKey(name);
  }

  /** The spelling of an unknown. */
  String spelling(int number) {
    return unknowns.get(number);
  }

  /** What a name stands for, as a function of the unknowns. */
  Optional<RationalFunction> meaning(String name) {
    return unknowns.contains(name)
        ? Optional.of(RationalFunction.of(MultivariatePolynomial.unknown(unknowns.indexOf(name))))
        : Optional.ofNullable(meanings.get(name));
  }

  /** Gives a name to something. */
  void define(String name, RationalFunction meaning) {
    meanings.put(name, meaning);
  }

  /** Equations that say what the root signs stand for, each a polynomial that is zero. */
  List<MultivariatePolynomial> signs() {
    return List.copyOf(signs);
  }

  /**
   * The k-th root of something, an unknown of its own whose k-th power is known; of a rational
   * number a rational multiple of one.
   */
  RationalFunction root(RationalFunction of, int k) {
    if (of.isPolynomial() && of.numerator().isConstant()) {
      Rational number = of.numerator().coefficient(Monomial.ONE);
      if (number.isZero()) {
        return RationalFunction.ZERO;
      } else if (k == 2) {
        NumberUnderRoot split = NumberUnderRoot.of(number);
        RationalFunction product = RationalFunction.of(split.outside());
        for (Rational inside : split.inside()) {
          product = product.times(signed(RationalFunction.of(inside), 2));
        }
        return product;
      }
    }
    return signed(of, k);
  }

  private RationalFunction signed(RationalFunction of, int k) {
    String name = "root " + k + " of " + of.numerator() + " over " + of.denominator();
    boolean known = unknowns.contains(name);
    MultivariatePolynomial root = MultivariatePolynomial.unknown(number(name));
    if (!known) {
      signs.add(root.power(k).times(of.denominator()).minus(of.numerator()));
    }
    return RationalFunction.of(root);
  }
}
