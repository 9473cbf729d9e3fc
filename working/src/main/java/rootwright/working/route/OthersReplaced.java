package rootwright.working.route;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.algebra.symmetric.ElementaryForm;
import rootwright.algebra.symmetric.ElementaryValues;
import rootwright.algebra.symmetric.SymmetricPolynomial;
import rootwright.algebra.symmetric.SymmetricRecognition;
import rootwright.working.problem.RootFunction;

/**
 * An expression that is symmetric in all roots but one, as a function of that one: the sum of the
 * others is e_1 − r, their product e_n/r.
 *
 * @param root the number of the root that is left
 * @param f the function of it
 * @param used which elementary polynomials of the others were replaced
 * @param productAs how the product of the others was replaced
 */
record OthersReplaced(int root, RootFunction f, SortedSet<Integer> used, ProductAs productAs) {

  /** How the product of the others is written. */
  enum ProductAs {
    /** e_n/r; the same as the other where e_n = 0. */
    QUOTIENT,
    /** e_(n−1) − r·e_(n−2) + …. */
    POLYNOMIAL
  }

  /**
   * The function; empty if the expression is not symmetric in all roots but one, or has only one.
   */
  static Optional<OthersReplaced> of(
      RationalFunction expression, Polynomial polynomial, ProductAs productAs) {
    RationalFunction reduced = expression.lowestTerms();
    for (int root = 0; root < polynomial.degree(); root++) {
      Optional<OthersReplaced> found = new Replacement(polynomial, root, productAs).of(reduced);
      if (found.isPresent()) {
        return found;
      }
    }
    return Optional.empty();
  }

  /**
   * The elementary polynomial of the others with this index as a function of r: e_k − r·e_(k−1) +
   * r²·e_(k−2) − …, or e_n/r for the product.
   */
  static RationalFunction ofOthers(Polynomial polynomial, int k, ProductAs productAs) {
    List<Rational> e = ElementaryValues.of(polynomial);
    int n = polynomial.degree();
    if (productAs == ProductAs.QUOTIENT && k == n - 1 && !e.get(n).isZero()) {
      return RationalFunction.of(e.get(n))
          .over(RationalFunction.of(MultivariatePolynomial.unknown(0)));
    }
    MultivariatePolynomial sum = MultivariatePolynomial.ZERO;
    for (int j = 0; j <= k; j++) {
      Rational coefficient = j % 2 == 0 ? e.get(k - j) : e.get(k - j).negate();
      sum = sum.plus(MultivariatePolynomial.term(coefficient, Monomial.power(0, j)));
    }
    return RationalFunction.of(sum);
  }

  /** The replacing of all roots but one. */
  private static final class Replacement {

    private final Polynomial polynomial;
    private final int root;
    private final ProductAs productAs;
    private final SortedSet<Integer> used = new TreeSet<>();

    Replacement(Polynomial polynomial, int root, ProductAs productAs) {
      this.polynomial = polynomial;
      this.root = root;
      this.productAs = productAs;
    }

    Optional<OthersReplaced> of(RationalFunction expression) {
      Optional<RationalFunction> over = of(expression.numerator());
      Optional<RationalFunction> under = of(expression.denominator());
      if (over.isEmpty() || under.isEmpty() || used.isEmpty() || isZero(under.get())) {
        return Optional.empty();
      }
      RationalFunction f = over.get().over(under.get()).lowestTerms();
      return Optional.of(
          new OthersReplaced(
              root,
              new RootFunction(inOne(f.numerator()), inOne(f.denominator())),
              used,
              productAs));
    }

    private static boolean isZero(RationalFunction function) {
      return function.numerator().isZero();
    }

    private Optional<RationalFunction> of(MultivariatePolynomial expression) {
      int n = polynomial.degree();
      int[] images = new int[n];
      for (int k = 0; k < n; k++) {
        images[k] = k < root ? k : k == root ? n - 1 : k - 1;
      }
      RationalFunction sum = RationalFunction.ZERO;
      int power = 0;
      for (MultivariatePolynomial part : expression.rename(images).coefficientsIn(n - 1)) {
        if (!(SymmetricPolynomial.recognise(part, n - 1)
            instanceof SymmetricRecognition.Symmetric symmetric)) {
          return Optional.empty();
        }
        RationalFunction shift =
            RationalFunction.of(
                MultivariatePolynomial.term(Rational.ONE, Monomial.power(0, power)));
        sum = sum.plus(shift.times(replaced(symmetric.polynomial().toElementary())));
        power++;
      }
      return Optional.of(sum);
    }

    private RationalFunction replaced(ElementaryForm form) {
      RationalFunction sum = RationalFunction.ZERO;
      for (var term : form.polynomial().terms().entrySet()) {
        RationalFunction product = RationalFunction.of(term.getValue());
        for (int k = 0; k < term.getKey().length(); k++) {
          if (term.getKey().exponent(k) > 0) {
            used.add(k + 1);
            product =
                product.times(
                    ofOthers(polynomial, k + 1, productAs).power(term.getKey().exponent(k)));
          }
        }
        sum = sum.plus(product);
      }
      return sum;
    }

    private static Polynomial inOne(MultivariatePolynomial of) {
      List<Rational> ascending = new ArrayList<>();
      for (int k = 0; k <= of.degreeIn(0); k++) {
        ascending.add(of.coefficient(Monomial.power(0, k)));
      }
      return Polynomial.ofAscending(ascending);
    }
  }
}
