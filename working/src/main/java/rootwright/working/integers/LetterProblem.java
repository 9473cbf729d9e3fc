package rootwright.working.integers;

import java.math.BigInteger;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.factor.RationalRoot;
import rootwright.algebra.factor.RationalRoots;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.step.NumberDomain;

/**
 * A polynomial with one letter k in its coefficients, whose roots are to be integers.
 *
 * @param base the coefficients for k = 0, integers
 * @param slope what one more k adds: P = base + k·slope; not zero
 * @param unknown the letter of the polynomial
 * @param letter the other letter
 * @param stated the polynomial as it was typed
 * @param wish what is to hold of the roots
 * @param domain what is said of the letter
 * @param counting whether only the number of values is asked
 * @param conditions the conditions as typed
 */
record LetterProblem(
    Polynomial base,
    Polynomial slope,
    String unknown,
    String letter,
    Formula stated,
    RootWish wish,
    Optional<NumberDomain> domain,
    boolean counting,
    List<String> conditions) {

  /** What is asked of the integer roots. */
  record RootWish(boolean distinct, boolean positive, boolean oneIsEnough) {

    /** The same without “distinct”. */
    RootWish withoutDistinct() {
      return new RootWish(false, positive, oneIsEnough);
    }

    /** “distinct positive integer roots”. */
    String inWords() {
      return (oneIsEnough ? "an " : "")
          + (distinct ? "distinct " : "")
          + (positive ? "positive " : "")
          + (oneIsEnough ? "integer root" : "integer roots");
    }
  }

  LetterProblem {
    conditions = List.copyOf(conditions);
  }

  /** The degree, the same for every k. */
  int degree() {
    return Math.max(base.degree(), slope.degree());
  }

  /** The polynomial for one value of the letter. */
  Polynomial at(Rational k) {
    return base.plus(slope.times(k));
  }

  /** The integer roots for one value of the letter, with multiplicity, ascending. */
  List<BigInteger> integerRoots(Rational k) {
    return RationalRoots.of(at(k)).stream()
        .filter(root -> root.value().isInteger())
        .flatMap(
            root ->
                Collections.nCopies(root.multiplicity(), root).stream().map(RationalRoot::value))
        .map(Rational::numerator)
        .sorted()
        .toList();
  }

  /** Whether a value of the letter does what is wished, by factoring. */
  boolean fits(Rational k) {
    return !at(k).isZero() && at(k).degree() == degree() && fits(integerRoots(k));
  }

  /** Whether these integer roots are what is wished. */
  boolean fits(List<BigInteger> roots) {
    boolean many = wish.oneIsEnough() ? !roots.isEmpty() : roots.size() == degree();
    boolean signs =
        !wish.positive()
            || (wish.oneIsEnough()
                ? roots.stream().anyMatch(r -> r.signum() > 0)
                : roots.stream().allMatch(r -> r.signum() > 0));
    boolean apart = !wish.distinct() || roots.stream().distinct().count() == roots.size();
    return many && signs && apart;
  }

  /** The same with another wish. */
  LetterProblem wishing(RootWish other) {
    return new LetterProblem(
        base, slope, unknown, letter, stated, other, domain, counting, conditions);
  }

  /** The stated polynomial at a point, as a formula in the letter. */
  Formula statedAt(BigInteger point) {
    Formula number = Formula.number(point);
    Formula left =
        stated instanceof Formula.Relation relation
            ? relation.sides().get(0).minus(relation.sides().get(1))
            : stated;
    return left.rewrite(part -> part.equals(Formula.name(unknown)) ? number : part);
  }
}
