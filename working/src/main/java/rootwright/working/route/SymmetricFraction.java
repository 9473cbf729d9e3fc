package rootwright.working.route;

import java.math.BigInteger;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.IntFunction;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.algebra.symmetric.Partition;
import rootwright.algebra.symmetric.QuotientRecognition;
import rootwright.algebra.symmetric.SymmetricPolynomial;
import rootwright.algebra.symmetric.SymmetricQuotient;
import rootwright.working.ask.Asked;

/**
 * A symmetric function of some roots as one fraction without a common factor, with its forms in
 * their elementary polynomials.
 *
 * @param quotient the fraction
 * @param over the form of the numerator
 * @param under the form of the denominator
 */
record SymmetricFraction(SymmetricQuotient quotient, NamedForm over, NamedForm under) {

  /** Most terms of a fraction for which common factors are looked for. */
  private static final int MOST_TERMS = 400;

  /** Most products of e₁, e₂, … of which a numerator or denominator may be made. */
  private static final BigInteger MOST_PRODUCTS = BigInteger.valueOf(600);

  /** The ask over one stroke; empty if it is not symmetric or too long to be written so. */
  static Optional<SymmetricFraction> of(Asked asked) {
    return asked.quotient().isEmpty()
        ? Optional.empty()
        : asked
            .expression()
            .flatMap(written -> of(written, asked.problem().degree(), NamedForm::elementary));
  }

  /**
   * A function of the first n roots.
   *
   * @param name how the elementary polynomial with an index is called
   */
  static Optional<SymmetricFraction> of(
      RationalFunction function, int n, IntFunction<Formula> name) {
    int size = function.numerator().terms().size() + function.denominator().terms().size();
    return size <= MOST_TERMS
            && SymmetricQuotient.recognise(function.lowestTerms(), n)
                instanceof QuotientRecognition.Symmetric symmetric
            && isShort(symmetric.quotient().numerator())
            && isShort(symmetric.quotient().denominator())
        ? Optional.of(of(symmetric.quotient(), name))
        : Optional.empty();
  }

  /** Of weight w there are as many products as partitions of w into at most n parts. */
  private static boolean isShort(SymmetricPolynomial polynomial) {
    int weight = polynomial.terms().keySet().stream().mapToInt(Partition::weight).max().orElse(0);
    return Partition.count(weight, polynomial.variables()).compareTo(MOST_PRODUCTS) <= 0;
  }

  private static SymmetricFraction of(SymmetricQuotient quotient, IntFunction<Formula> name) {
    return new SymmetricFraction(
        quotient, form(quotient.numerator(), name), form(quotient.denominator(), name));
  }

  private static NamedForm form(SymmetricPolynomial polynomial, IntFunction<Formula> name) {
    return new NamedForm(polynomial.toElementary().polynomial(), name);
  }

  /** The indices of the elementary polynomials that occur. */
  SortedSet<Integer> indices() {
    SortedSet<Integer> indices = new TreeSet<>(over.indices());
    indices.addAll(under.indices());
    return indices;
  }

  /** The number of terms above and below the stroke. */
  int size() {
    return over.form().terms().size() + under.form().terms().size();
  }

  /** Over the stroke and under it in orbit sums. */
  Formula inOrbits(OrbitSums orbits) {
    return fraction(orbits.written(quotient.numerator()), orbits.written(quotient.denominator()));
  }

  /** With the names of the elementary polynomials. */
  Formula written() {
    return fraction(over.written(), under.written());
  }

  /** With their values, indexed from 0. */
  Formula worked(List<Rational> values) {
    return fraction(over.worked(values), under.worked(values));
  }

  /** The value; empty if the denominator is zero. */
  Optional<Rational> value(List<Rational> values) {
    Rational divisor = under.value(values);
    return divisor.isZero() ? Optional.empty() : Optional.of(over.value(values).over(divisor));
  }

  private static Formula fraction(Formula over, Formula under) {
    return under.equals(Formula.number(1)) ? over : over.over(under);
  }
}
