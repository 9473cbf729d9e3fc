package rootwright.composing.scan;

import cc.redberry.rings.bigint.BigInteger;
import cc.redberry.rings.poly.PolynomialFactorDecomposition;
import cc.redberry.rings.poly.univar.UnivariateFactorization;
import cc.redberry.rings.poly.univar.UnivariatePolynomial;
import cc.redberry.rings.poly.univar.UnivariatePolynomialZ64;
import cc.redberry.rings.poly.univar.UnivariateSquareFreeFactorization;
import java.util.ArrayList;
import java.util.List;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.composing.scan.filter.ExactTests;
import rootwright.composing.scan.filter.PolynomialTests;

/** Slow answers by other ways than the filters': Rings, and Hermite's quadratic form. */
public final class BruteForce {

  /** What the filters fall back on, with Rings for factorisation. */
  public static final ExactTests EXACT = new PolynomialTests(BruteForce::isIrreducible);

  private BruteForce() {}

  private static UnivariatePolynomial<BigInteger> rings(Polynomial polynomial) {
    long[] ascending = new long[polynomial.degree() + 1];
    for (int k = 0; k < ascending.length; k++) {
      ascending[k] = polynomial.coefficient(k).numerator().longValueExact();
    }
    return UnivariatePolynomialZ64.create(ascending).toBigPoly();
  }

  /** An irreducible factor and how often it occurs. */
  private record Factor(Polynomial polynomial, int exponent) {}

  /** The factors over Q. Powers of x are split off first: Rings 2.5.8 leaves x² unfactored. */
  private static List<Factor> factors(Polynomial polynomial) {
    List<Factor> found = new ArrayList<>();
    Polynomial rest = polynomial.primitive();
    int power = 0;
    for (; rest.coefficient(0).isZero(); power++) {
      rest = rest.divide(Polynomial.X).quotient();
    }
    if (power > 0) {
      found.add(new Factor(Polynomial.X, power));
    }
    if (rest.degree() > 0) {
      PolynomialFactorDecomposition<UnivariatePolynomial<BigInteger>> factors =
          UnivariateFactorization.Factor(rings(rest));
      for (int k = 0; k < factors.size(); k++) {
        UnivariatePolynomial<BigInteger> factor = factors.get(k);
        long[] descending = new long[factor.degree() + 1];
        for (int j = 0; j < descending.length; j++) {
          descending[j] = factor.get(factor.degree() - j).longValueExact();
        }
        found.add(new Factor(Polynomial.ofDescending(descending), factors.getExponent(k)));
      }
    }
    return found;
  }

  public static boolean isIrreducible(Polynomial polynomial) {
    List<Factor> factors = factors(polynomial);
    return factors.size() == 1 && factors.get(0).exponent() == 1;
  }

  public static boolean isSquarefree(Polynomial polynomial) {
    return UnivariateSquareFreeFactorization.isSquareFree(rings(polynomial.primitive()));
  }

  public static boolean hasRationalRoot(Polynomial polynomial) {
    return factors(polynomial).stream().anyMatch(factor -> factor.polynomial().degree() == 1);
  }

  /**
   * The signature of Hermite's form, the matrix of power sums S_{i+j}, is the number of distinct
   * real roots. All its eigenvalues are real, so Descartes' rule counts the positive and negative
   * ones exactly from the characteristic polynomial.
   */
  public static int distinctRealRoots(Polynomial polynomial) {
    int n = polynomial.degree();
    List<Rational> sums = powerSums(polynomial.monic(), 2 * n);
    Rational[][] hermite = new Rational[n][n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        hermite[i][j] = sums.get(i + j);
      }
    }
    List<Rational> characteristic = characteristic(hermite);
    int positive = 0;
    int negative = 0;
    int last = 0;
    int mirrored = 0;
    for (int k = 0; k <= n; k++) {
      int sign = characteristic.get(k).signum();
      if (sign != 0) {
        int mirror = k % 2 == 0 ? sign : -sign;
        positive += last * sign < 0 ? 1 : 0;
        negative += mirrored * mirror < 0 ? 1 : 0;
        last = sign;
        mirrored = mirror;
      }
    }
    return positive - negative;
  }

  /** With multiplicity, from the factors. */
  public static int realRoots(Polynomial polynomial) {
    return factors(polynomial).stream()
        .mapToInt(factor -> factor.exponent() * distinctRealRoots(factor.polynomial()))
        .sum();
  }

  private static List<Rational> powerSums(Polynomial monic, int count) {
    int n = monic.degree();
    List<Rational> sums = new ArrayList<>();
    sums.add(Rational.of(n));
    for (int k = 1; k < count; k++) {
      Rational sum = k <= n ? monic.coefficient(n - k).times(-k) : Rational.ZERO;
      for (int j = 1; j <= Math.min(k - 1, n); j++) {
        sum = sum.minus(monic.coefficient(n - j).times(sums.get(k - j)));
      }
      sums.add(sum);
    }
    return sums;
  }

  /** Faddeev and LeVerrier: the coefficients of det(tI − A), highest power first. */
  private static List<Rational> characteristic(Rational[][] matrix) {
    int n = matrix.length;
    List<Rational> coefficients = new ArrayList<>(List.of(Rational.ONE));
    Rational[][] current = matrix;
    for (int k = 1; k <= n; k++) {
      Rational trace = Rational.ZERO;
      for (int i = 0; i < n; i++) {
        trace = trace.plus(current[i][i]);
      }
      Rational coefficient = trace.negate().over(Rational.of(k));
      coefficients.add(coefficient);
      Rational[][] shifted = new Rational[n][n];
      for (int i = 0; i < n; i++) {
        for (int j = 0; j < n; j++) {
          shifted[i][j] = i == j ? current[i][j].plus(coefficient) : current[i][j];
        }
      }
      Rational[][] next = new Rational[n][n];
      for (int i = 0; i < n; i++) {
        for (int j = 0; j < n; j++) {
          Rational sum = Rational.ZERO;
          for (int m = 0; m < n; m++) {
            sum = sum.plus(matrix[i][m].times(shifted[m][j]));
          }
          next[i][j] = sum;
        }
      }
      current = next;
    }
    return coefficients;
  }
}
