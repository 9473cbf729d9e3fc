package rootwright.algebra.local;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import rootwright.algebra.modular.FieldPolynomials;
import rootwright.algebra.modular.OddModulus;
import rootwright.algebra.modular.WordPrimes;
import rootwright.algebra.polynomial.Polynomial;

/**
 * All roots of a polynomial, with multiplicity, in a ring Z/p^e[y]/(g) where it splits.
 *
 * <p>Every prime that divides neither the lead nor the discriminant of the squarefree part will do;
 * the degree m of g is the least common multiple of the degrees of the factors modulo p, so some
 * primes are tried and the one with the smallest m is taken. Roots modulo p are lifted by Newton's
 * iteration (Hensel). Guesses come from a fixed seed; they decide how long it takes, not the
 * result.
 *
 * @param ring where the roots lie
 * @param roots as many as the degree of the polynomial, in no meaningful order
 */
public record LocalRoots(LocalRing ring, List<BigInteger[]> roots) {

  private static final int PRIMES_TRIED = 24;

  /** A prime with the factors of the squarefree part modulo it, by degree. */
  private record Place(FieldPolynomials polynomials, List<long[]> byDegree, int extension) {}

  /**
   * The roots, known modulo a power of p above a bound.
   *
   * @param polynomial of positive degree
   * @param above p^e will be greater than this
   * @throws IllegalArgumentException if the polynomial is constant
   */
  public static LocalRoots of(Polynomial polynomial, BigInteger above) {
    if (polynomial.degree() < 1) {
      throw new IllegalArgumentException("a constant has no roots: " + polynomial);
    }
    Polynomial squarefree = polynomial.squarefreePart().primitive();
    Place place = place(squarefree);
    SplittableRandom random = new SplittableRandom(place.extension());
    ExtensionField field = field(place, random);
    List<long[]> found = rootsModuloPrime(place, field, random);
    Lift lift = Lift.of(squarefree, field, above);
    List<Polynomial> layers = layers(polynomial);
    List<BigInteger[]> roots = new ArrayList<>();
    for (long[] root : found) {
      BigInteger[] lifted = lift.root(root);
      int multiplicity = layers.size() == 1 ? 1 : lift.occurrences(layers, root);
      for (int k = 0; k < multiplicity; k++) {
        roots.add(lifted);
      }
    }
    return new LocalRoots(lift.ring(), List.copyOf(roots));
  }

  /** The distinct roots, then those that occur at least twice, at least three times, … */
  private static List<Polynomial> layers(Polynomial polynomial) {
    List<Polynomial> layers = new ArrayList<>();
    Polynomial rest = polynomial;
    while (rest.degree() > 0) {
      Polynomial layer = rest.squarefreePart().primitive();
      layers.add(layer);
      rest = rest.divide(layer).quotient();
    }
    return layers;
  }

  private static Place place(Polynomial squarefree) {
    List<Place> places = new ArrayList<>();
    for (int number = 0; places.size() < PRIMES_TRIED; number++) {
      OddModulus prime = WordPrimes.get(number);
      FieldPolynomials polynomials = new FieldPolynomials(prime);
      long[] reduced = reduce(squarefree, prime);
      if (reduced.length == squarefree.degree() + 1
          && polynomials.gcd(reduced, polynomials.derivative(reduced)).length == 1) {
        List<long[]> parts = Factors.byDegree(polynomials, reduced);
        int extension = 1;
        for (int degree = 1; degree <= parts.size(); degree++) {
          if (parts.get(degree - 1).length > 1) {
            extension = leastCommonMultiple(extension, degree);
          }
        }
        Place place = new Place(polynomials, parts, extension);
        // One prime in n! may split completely: the longer the search, the more is accepted.
        if (extension <= 1 + places.size() / 4) {
          return place;
        }
        places.add(place);
      }
    }
    Place best = places.get(0);
    for (Place place : places) {
      best = place.extension() < best.extension() ? place : best;
    }
    return best;
  }

  private static long[] reduce(Polynomial polynomial, OddModulus prime) {
    long[] reduced = new long[polynomial.degree() + 1];
    Arrays.setAll(reduced, k -> prime.represent(polynomial.numerator(k)));
    return FieldPolynomials.trim(reduced);
  }

  private static int leastCommonMultiple(int a, int b) {
    int left = a;
    int right = b;
    while (right != 0) {
      int next = left % right;
      left = right;
      right = next;
    }
    return a / left * b;
  }

  /** If some factor has the full degree it serves as the modulus of the field. */
  private static ExtensionField field(Place place, SplittableRandom random) {
    FieldPolynomials polynomials = place.polynomials();
    int degree = place.extension();
    if (degree == 1) {
      return new ExtensionField(polynomials, polynomials.unknown());
    }
    long[] modulus =
        degree <= place.byDegree().size() && place.byDegree().get(degree - 1).length > 1
            ? Factors.ofEqualDegree(polynomials, place.byDegree().get(degree - 1), degree, random)
                .get(0)
            : Factors.irreducible(polynomials, degree, random);
    return new ExtensionField(polynomials, modulus);
  }

  private static List<long[]> rootsModuloPrime(
      Place place, ExtensionField field, SplittableRandom random) {
    List<long[]> roots = new ArrayList<>();
    for (int degree = 1; degree <= place.byDegree().size(); degree++) {
      for (long[] factor :
          Factors.ofEqualDegree(
              place.polynomials(), place.byDegree().get(degree - 1), degree, random)) {
        long[] root = root(factor, field, random);
        for (int k = 0; k < degree; k++) {
          roots.add(root);
          root = k + 1 < degree ? field.conjugate(root) : root;
        }
      }
    }
    return roots;
  }

  private static long[] root(long[] factor, ExtensionField field, SplittableRandom random) {
    if (factor.length == 2) {
      return field.constant(field.prime().negate(factor[0]));
    }
    if (Arrays.equals(factor, field.modulus())) {
      return field.generator();
    }
    long[][] split = new long[factor.length][];
    Arrays.setAll(split, k -> field.constant(factor[k]));
    return new ExtensionPolynomials(field).root(split, random);
  }
}
