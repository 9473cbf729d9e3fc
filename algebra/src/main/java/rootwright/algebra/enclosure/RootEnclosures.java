package rootwright.algebra.enclosure;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import rootwright.algebra.enclosure.Dyadic.Rounding;
import rootwright.algebra.factor.SquarefreeDecomposition;
import rootwright.algebra.factor.SquarefreeFactor;
import rootwright.algebra.polynomial.Polynomial;

/**
 * All complex roots of a polynomial with rational coefficients, each in a disc of its own, proved
 * to hold it.
 *
 * <p>Guesses come from simultaneous iteration; the proof is an a-posteriori radius for each guess
 * (Smith 1970), followed by Newton steps over discs until the radii are as small as asked. Points
 * too close to be told apart are reckoned again at twice the length.
 */
public final class RootEnclosures {

  /** The highest degree that is accepted. */
  public static final int HIGHEST_DEGREE = 200;

  /** The most digits that may be asked for. */
  public static final int MOST_DIGITS = 20_000;

  private RootEnclosures() {}

  /**
   * Encloses every root in a disc with radius at most 10^−digits times the distance of its centre
   * from zero; a rational root that is a whole number over a power of two is exact. The discs are
   * disjoint.
   *
   * <p>Real roots come first, ascending; the others follow by real part, then by distance from the
   * real axis, each with positive imaginary part directly before its conjugate.
   *
   * @param digits significant digits wanted, at least 1 and at most {@link #MOST_DIGITS}
   * @return the distinct roots with their multiplicities, which add up to the degree
   * @throws IllegalArgumentException if the polynomial is constant, its degree is above {@link
   *     #HIGHEST_DEGREE} or {@code digits} is out of range
   */
  public static List<EnclosedRoot> of(Polynomial polynomial, int digits) {
    if (polynomial.degree() < 1) {
      throw new IllegalArgumentException("a constant has no roots to enclose: " + polynomial);
    }
    if (polynomial.degree() > HIGHEST_DEGREE) {
      throw new IllegalArgumentException(
          "degree %d is above %d".formatted(polynomial.degree(), HIGHEST_DEGREE));
    }
    if (digits < 1 || digits > MOST_DIGITS) {
      throw new IllegalArgumentException(
          "digits must be from 1 to %d: %d".formatted(MOST_DIGITS, digits));
    }
    List<SquarefreeFactor> factors = SquarefreeDecomposition.of(polynomial);
    int bits = Precision.bits(digits, 2);
    while (true) {
      List<EnclosedRoot> roots = new ArrayList<>();
      for (SquarefreeFactor factor : factors) {
        roots.addAll(ofSquarefree(factor, bits));
      }
      if (factors.size() == 1 || areDisjoint(roots)) {
        return sorted(roots);
      }
      // Roots of different factors differ, so smaller discs must come apart.
      bits *= 2;
    }
  }

  private static List<EnclosedRoot> ofSquarefree(SquarefreeFactor factor, int bits) {
    BigInteger[] ascending = new BigInteger[factor.polynomial().degree() + 1];
    Arrays.setAll(ascending, factor.polynomial()::numerator);
    List<EnclosedRoot> roots = new ArrayList<>();
    if (ascending[0].signum() == 0) {
      roots.add(new EnclosedRoot(ComplexBall.ZERO, factor.multiplicity(), true));
      ascending = Arrays.copyOfRange(ascending, 1, ascending.length);
    }
    if (ascending.length == 2) {
      roots.add(
          new EnclosedRoot(
              ComplexBall.of(quotient(ascending[0].negate(), ascending[1], bits + 1)),
              factor.multiplicity(),
              true));
    } else if (ascending.length > 2) {
      for (IsolatingDisc disc : Isolation.of(ascending, bits)) {
        roots.add(new EnclosedRoot(disc.ball(), factor.multiplicity(), disc.isReal()));
        if (!disc.isReal()) {
          roots.add(new EnclosedRoot(disc.ball().conjugate(), factor.multiplicity(), false));
        }
      }
    }
    return roots;
  }

  private static RealBall quotient(BigInteger over, BigInteger under, int bits) {
    Dyadic a = Dyadic.of(over);
    Dyadic b = Dyadic.of(under);
    return RealBall.between(
        Dyadic.quotient(a, b, bits, Rounding.FLOOR), Dyadic.quotient(a, b, bits, Rounding.CEILING));
  }

  private static boolean areDisjoint(List<EnclosedRoot> roots) {
    for (int i = 0; i < roots.size(); i++) {
      for (int j = 0; j < i; j++) {
        if (roots.get(i).disc().overlaps(roots.get(j).disc())) {
          return false;
        }
      }
    }
    return true;
  }

  private static List<EnclosedRoot> sorted(List<EnclosedRoot> roots) {
    List<EnclosedRoot> ordered = new ArrayList<>();
    roots.stream().filter(EnclosedRoot::real).sorted(byRealPart()).forEach(ordered::add);
    List<EnclosedRoot> upper =
        roots.stream()
            .filter(root -> root.disc().imaginaryCentre().signum() > 0)
            .sorted(byRealPart())
            .toList();
    int from = 0;
    while (from < upper.size()) {
      int to = from + 1;
      while (to < upper.size() && sameRealPart(upper.get(to - 1), upper.get(to))) {
        to++;
      }
      upper.subList(from, to).stream()
          .sorted(Comparator.comparing(root -> root.disc().imaginaryCentre()))
          .forEach(
              root -> {
                ordered.add(root);
                ordered.add(new EnclosedRoot(root.disc().conjugate(), root.multiplicity(), false));
              });
      from = to;
    }
    return List.copyOf(ordered);
  }

  private static Comparator<EnclosedRoot> byRealPart() {
    return Comparator.comparing(root -> root.disc().realCentre());
  }

  /** Whether the discs cannot tell the real parts apart. */
  private static boolean sameRealPart(EnclosedRoot one, EnclosedRoot other) {
    return one.disc().real().overlaps(other.disc().real());
  }
}
