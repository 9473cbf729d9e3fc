package rootwright.composing.blueprint;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import rootwright.composing.scan.candidate.CoefficientBox;
import rootwright.composing.scan.candidate.CoefficientRange;

/**
 * What the polynomials are to be like.
 *
 * @param degree the degree
 * @param size the largest coefficient by size
 * @param leastLead the least lead; the lead is positive
 * @param largestLead the largest lead; with the least one 1 too, the polynomials are monic
 * @param roots what the roots are to be like
 * @param real how many of them are to be real
 */
public record PolynomialWish(
    int degree, int size, int leastLead, int largestLead, RootsWish roots, RealWish real) {

  /** Lowest degree that can be ordered. */
  public static final int LOWEST_DEGREE = 2;

  /** Highest degree that can be ordered. */
  public static final int HIGHEST_DEGREE = 8;

  /** Largest coefficient that can be ordered. */
  public static final int LARGEST_SIZE = 10_000;

  /** Cubics with coefficients up to 12 and a lead up to 3, no root rational. */
  public static final PolynomialWish USUAL =
      new PolynomialWish(3, 12, 1, 3, RootsWish.NO_RATIONAL_ROOT, new RealWish.Open());

  /** Whether only polynomials with lead 1 are wanted. */
  public boolean isMonic() {
    return leastLead == 1 && largestLead == 1;
  }

  /** Why there can be no such polynomial, or none that is screened, one sentence each. */
  List<String> contradictions() {
    List<String> found = new ArrayList<>();
    if (degree < LOWEST_DEGREE || degree > HIGHEST_DEGREE) {
      found.add(
          "the degree must be from %d to %d: %d".formatted(LOWEST_DEGREE, HIGHEST_DEGREE, degree));
      return found;
    }
    if (size < 1 || size > LARGEST_SIZE) {
      found.add("the size must be from 1 to %d: %d".formatted(LARGEST_SIZE, size));
      return found;
    }
    if (leastLead < 1 || leastLead > largestLead) {
      found.add(
          "the lead must go from a positive number to one that is no less: %d..%d"
              .formatted(leastLead, largestLead));
    } else if (largestLead > size) {
      found.add(
          "the largest lead %d is larger than the size %d of any coefficient"
              .formatted(largestLead, size));
    } else if (candidates().bitLength() >= Long.SIZE) {
      found.add(
          "of degree %d with coefficients up to %d there are %s polynomials, more than can be"
                  .formatted(degree, size, inWords(candidates()))
              + " numbered; take a smaller size or degree");
    }
    found.addAll(real.contradictions(degree));
    return found;
  }

  /** How many polynomials there are before any other wish. */
  public BigInteger candidates() {
    return BigInteger.valueOf(2L * size + 1)
        .pow(degree)
        .multiply(BigInteger.valueOf(largestLead - leastLead + 1L));
  }

  private static String inWords(BigInteger number) {
    return "about 10^" + (number.toString().length() - 1);
  }

  /** The polynomials, before any other wish. */
  CoefficientBox box() {
    List<CoefficientRange> ascending =
        new ArrayList<>(Collections.nCopies(degree, CoefficientRange.upTo(size)));
    ascending.add(new CoefficientRange(leastLead, largestLead));
    return new CoefficientBox(ascending);
  }

  /** The same wish for another degree. */
  public PolynomialWish withDegree(int other) {
    return new PolynomialWish(other, size, leastLead, largestLead, roots, real);
  }

  /** The same wish with another largest coefficient. */
  public PolynomialWish withSize(int other) {
    return new PolynomialWish(degree, other, leastLead, largestLead, roots, real);
  }

  /** The same wish with other leads. */
  public PolynomialWish withLead(int least, int largest) {
    return new PolynomialWish(degree, size, least, largest, roots, real);
  }

  /** The same wish for other roots. */
  public PolynomialWish withRoots(RootsWish other) {
    return new PolynomialWish(degree, size, leastLead, largestLead, other, real);
  }

  /** The same wish for other numbers of real roots. */
  public PolynomialWish withReal(RealWish other) {
    return new PolynomialWish(degree, size, leastLead, largestLead, roots, other);
  }
}
