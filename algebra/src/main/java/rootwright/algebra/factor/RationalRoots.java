package rootwright.algebra.factor;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;

/**
 * The rational roots of a polynomial, found without splitting any coefficient into primes.
 *
 * <p>A root of a squarefree primitive polynomial is a root modulo every prime p; where p divides
 * neither the lead nor the discriminant it is the only one above its residue and is lifted to p^k
 * by Newton's rule. The lead times a rational root is a whole number of known size, so for p^k
 * large enough its residue names it (Loos 1983, in Buchberger, Collins and Loos (eds), Computer
 * Algebra, pp 251–265).
 */
public final class RationalRoots {

  private static final BigInteger FIRST_PRIME = BigInteger.valueOf(101);

  private RationalRoots() {}

  /**
   * All rational roots, ascending, with their multiplicities. Empty for a constant.
   *
   * @throws IllegalArgumentException for the zero polynomial
   */
  public static List<RationalRoot> of(Polynomial polynomial) {
    List<RationalRoot> roots = new ArrayList<>();
    for (SquarefreeFactor factor : SquarefreeDecomposition.of(polynomial)) {
      for (Rational root : ofSquarefree(factor.polynomial())) {
        roots.add(new RationalRoot(root, factor.multiplicity()));
      }
    }
    roots.sort(Comparator.comparing(RationalRoot::value));
    return List.copyOf(roots);
  }

  /** The rational roots of a squarefree primitive polynomial, in no order. */
  static List<Rational> ofSquarefree(Polynomial polynomial) {
    List<Rational> roots = new ArrayList<>();
    Polynomial rest = polynomial;
    if (rest.numerator(0).signum() == 0) {
      roots.add(Rational.ZERO);
      rest = rest.divide(Polynomial.X).quotient().primitive();
    }
    if (rest.degree() == 1) {
      roots.add(new Rational(rest.numerator(0).negate(), rest.numerator(1)));
    } else if (rest.degree() > 1) {
      roots.addAll(lifted(rest));
    }
    return roots;
  }

  private static List<Rational> lifted(Polynomial polynomial) {
    ResiduePolynomial residues = residuesForGoodPrime(polynomial);
    List<Long> starts = residues.roots();
    if (starts.isEmpty()) {
      return List.of();
    }
    BigInteger lead = polynomial.numerator(polynomial.degree());
    // Cauchy: |root| ≤ 1 + max|a_k|/|lead|, so |lead·root| ≤ |lead| + max|a_k|.
    BigInteger largest = lead;
    for (int k = 0; k < polynomial.degree(); k++) {
      largest = largest.max(polynomial.numerator(k).abs());
    }
    BigInteger bound = lead.add(largest);
    BigInteger[] ascending = new BigInteger[polynomial.degree() + 1];
    Arrays.setAll(ascending, polynomial::numerator);
    List<Rational> roots = new ArrayList<>();
    for (long start : starts) {
      BigInteger modulus = BigInteger.valueOf(residues.prime());
      BigInteger root = BigInteger.valueOf(start);
      while (modulus.compareTo(bound.shiftLeft(1)) <= 0) {
        modulus = modulus.multiply(modulus);
        root = newtonStep(ascending, root, modulus);
      }
      BigInteger multiple = lead.multiply(root).mod(modulus);
      if (multiple.shiftLeft(1).compareTo(modulus) > 0) {
        multiple = multiple.subtract(modulus);
      }
      if (multiple.abs().compareTo(bound) <= 0) {
        Rational candidate = new Rational(multiple, lead);
        if (polynomial.at(candidate).isZero()) {
          roots.add(candidate);
        }
      }
    }
    return roots;
  }

  private static ResiduePolynomial residuesForGoodPrime(Polynomial polynomial) {
    for (BigInteger prime = FIRST_PRIME; ; prime = prime.nextProbablePrime()) {
      ResiduePolynomial residues = ResiduePolynomial.of(polynomial, prime.longValueExact());
      if (residues.degree() == polynomial.degree() && residues.isSquarefree()) {
        return residues;
      }
    }
  }

  private static BigInteger newtonStep(BigInteger[] ascending, BigInteger at, BigInteger modulus) {
    BigInteger value = BigInteger.ZERO;
    BigInteger slope = BigInteger.ZERO;
    for (int k = ascending.length - 1; k >= 0; k--) {
      slope = slope.multiply(at).add(value).mod(modulus);
      value = value.multiply(at).add(ascending[k]).mod(modulus);
    }
    return at.subtract(value.multiply(slope.modInverse(modulus))).mod(modulus);
  }
}
