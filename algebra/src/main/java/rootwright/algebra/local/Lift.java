package rootwright.algebra.local;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import rootwright.algebra.polynomial.Polynomial;

/** Lifts simple roots modulo p to roots modulo a power of p by Newton's iteration. */
final class Lift {

  private final Polynomial squarefree;
  private final ExtensionField field;
  private final List<LocalRing> rings;

  private Lift(Polynomial squarefree, ExtensionField field, List<LocalRing> rings) {
    this.squarefree = squarefree;
    this.field = field;
    this.rings = rings;
  }

  /** Lifting the roots of a primitive polynomial to the first power of p above a bound. */
  static Lift of(Polynomial squarefree, ExtensionField field, BigInteger above) {
    BigInteger prime = BigInteger.valueOf(field.prime().modulus());
    int exponent = 1;
    for (BigInteger power = prime; power.compareTo(above) <= 0; power = power.multiply(prime)) {
      exponent++;
    }
    BigInteger[] tail = new BigInteger[field.degree()];
    Arrays.setAll(tail, k -> BigInteger.valueOf(field.prime().residue(field.modulus()[k])));
    LocalRing first = new LocalRing(prime, tail);
    // The exponents that lead to the last one by doubling at most, from the top down.
    List<LocalRing> rings = new ArrayList<>();
    for (int now = exponent; now > 1; now = (now + 1) / 2) {
      rings.add(0, first.cutAt(prime.pow(now)));
    }
    rings.add(0, first);
    return new Lift(squarefree, field, rings);
  }

  /** Where the lifted roots lie. */
  LocalRing ring() {
    return rings.get(rings.size() - 1);
  }

  BigInteger[] root(long[] modulo) {
    BigInteger[] root = numbers(modulo);
    Polynomial derivative = squarefree.derivative();
    LocalRing first = rings.get(0);
    BigInteger[] slope = at(derivative, root, first);
    long[] representatives = new long[slope.length];
    Arrays.setAll(representatives, k -> field.prime().represent(slope[k]));
    BigInteger[] inverse = numbers(field.inverse(representatives));
    for (LocalRing ring : rings.subList(1, rings.size())) {
      BigInteger[] two = ring.constant(BigInteger.TWO);
      root = ring.minus(root, ring.times(at(squarefree, root, ring), inverse));
      BigInteger[] error = ring.times(at(derivative, root, ring), inverse);
      inverse = ring.times(inverse, ring.minus(two, error));
    }
    return root;
  }

  /** How many of the polynomials have this root modulo p. */
  int occurrences(List<Polynomial> layers, long[] modulo) {
    BigInteger[] root = numbers(modulo);
    int occurrences = 0;
    for (Polynomial layer : layers) {
      occurrences += isZero(at(layer, root, rings.get(0))) ? 1 : 0;
    }
    return occurrences;
  }

  private BigInteger[] numbers(long[] element) {
    BigInteger[] numbers = new BigInteger[element.length];
    Arrays.setAll(numbers, k -> BigInteger.valueOf(field.prime().residue(element[k])));
    return numbers;
  }

  private static boolean isZero(BigInteger[] element) {
    for (BigInteger part : element) {
      if (part.signum() != 0) {
        return false;
      }
    }
    return true;
  }

  private static BigInteger[] at(Polynomial whole, BigInteger[] point, LocalRing ring) {
    BigInteger[] value = ring.constant(BigInteger.ZERO);
    for (int k = whole.degree(); k >= 0; k--) {
      value = ring.plus(ring.times(value, point), ring.constant(whole.numerator(k)));
    }
    return value;
  }
}
