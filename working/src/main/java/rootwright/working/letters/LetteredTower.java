package rootwright.working.letters;

import java.util.ArrayList;
import java.util.List;
import rootwright.algebra.polynomial.MultivariatePolynomial;

/**
 * The algebra of all roots of a monic polynomial whose coefficients are polynomials in letters.
 *
 * <p>Root k is unknown k; the letters are the unknowns from the degree on. Powers are brought down
 * by the divided differences of the polynomial (Cauchy's modules), which are monic, so that nothing
 * is divided; a symmetric polynomial of the roots comes out without a root in it.
 */
final class LetteredTower {

  /** Longest sum that is worked with. */
  static final int MOST_TERMS = 12_000;

  private final int degree;
  private final List<MultivariatePolynomial> replacements = new ArrayList<>();

  /**
   * The algebra of this polynomial.
   *
   * @param monic its coefficients by ascending power, the last being 1, with the letters as
   *     unknowns from the degree on
   */
  LetteredTower(List<MultivariatePolynomial> monic) {
    degree = monic.size() - 1;
    for (int k = 0; k < degree; k++) {
      MultivariatePolynomial module = MultivariatePolynomial.ZERO;
      List<MultivariatePolynomial> complete = complete(k, degree - k);
      for (int j = k; j <= degree; j++) {
        module = module.plus(monic.get(j).times(complete.get(j - k)));
      }
      replacements.add(MultivariatePolynomial.unknown(k).power(degree - k).minus(module));
    }
  }

  /** h_0, …, h_m of the roots 0 to k. */
  private static List<MultivariatePolynomial> complete(int k, int m) {
    List<MultivariatePolynomial> h = new ArrayList<>(List.of(MultivariatePolynomial.ONE));
    for (int j = 1; j <= m; j++) {
      h.add(MultivariatePolynomial.ZERO);
    }
    for (int root = 0; root <= k; root++) {
      MultivariatePolynomial x = MultivariatePolynomial.unknown(root);
      for (int j = 1; j <= m; j++) {
        h.set(j, h.get(j).plus(x.times(h.get(j - 1))));
      }
    }
    return h;
  }

  /** The product in normal form. */
  MultivariatePolynomial times(MultivariatePolynomial left, MultivariatePolynomial right) {
    require((long) left.terms().size() * right.terms().size() / 50);
    return normalForm(left.times(right));
  }

  /** The normal form: every power of root k is below n − k. */
  MultivariatePolynomial normalForm(MultivariatePolynomial element) {
    MultivariatePolynomial reduced = element;
    for (int k = degree - 1; k >= 0; k--) {
      int bound = degree - k;
      while (reduced.degreeIn(k) >= bound) {
        List<MultivariatePolynomial> parts = reduced.coefficientsIn(k);
        MultivariatePolynomial low = MultivariatePolynomial.ZERO;
        MultivariatePolynomial high = MultivariatePolynomial.ZERO;
        MultivariatePolynomial x = MultivariatePolynomial.unknown(k);
        for (int power = 0; power < parts.size(); power++) {
          if (power < bound) {
            low = low.plus(parts.get(power).times(x.power(power)));
          } else {
            high = high.plus(parts.get(power).times(x.power(power - bound)));
          }
        }
        require((long) high.terms().size() * replacements.get(k).terms().size() / 50);
        reduced = low.plus(high.times(replacements.get(k)));
      }
    }
    require(reduced.terms().size());
    return reduced;
  }

  /** Whether no root occurs. */
  boolean isFreeOfRoots(MultivariatePolynomial element) {
    for (int k = 0; k < degree; k++) {
      if (element.degreeIn(k) > 0) {
        return false;
      }
    }
    return true;
  }

  private static void require(long terms) {
    if (terms > MOST_TERMS) {
      throw new BeyondLettersException(
          "with letters in the coefficients it has too many terms to be worked out");
    }
  }
}
