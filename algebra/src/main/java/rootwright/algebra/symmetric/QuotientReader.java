package rootwright.algebra.symmetric;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.Set;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.RationalFunction;

/** Reads rational functions of n variables as symmetric ones. */
final class QuotientReader {

  /** Products of terms that one multiplication may take. */
  private static final long MOST_TERMS = 1_000_000;

  /** Images of the denominator that are multiplied together. */
  private static final int MOST_IMAGES = 120;

  private final int variables;

  QuotientReader(int variables) {
    this.variables = variables;
  }

  QuotientRecognition read(RationalFunction function) {
    MultivariatePolynomial over = function.numerator();
    MultivariatePolynomial under = function.denominator();
    SymmetricRecognition above = SymmetricRecognition.of(over, variables);
    SymmetricRecognition below = SymmetricRecognition.of(under, variables);
    if (above instanceof SymmetricRecognition.Symmetric numerator
        && below instanceof SymmetricRecognition.Symmetric denominator) {
      return new QuotientRecognition.Symmetric(
          new SymmetricQuotient(numerator.polynomial(), denominator.polynomial()));
    }
    if (below instanceof SymmetricRecognition.Symmetric
        && above instanceof SymmetricRecognition.NotSymmetric witness) {
      return new QuotientRecognition.NotSymmetric(witness.first(), witness.second());
    }
    return size(over, under) > MOST_TERMS
        ? tooManyTerms(size(over, under))
        : crossMultiplied(over, under);
  }

  private QuotientRecognition crossMultiplied(
      MultivariatePolynomial over, MultivariatePolynomial under) {
    for (int k = 0; k + 1 < variables; k++) {
      int[] exchange = exchange(k);
      if (!over.rename(exchange).times(under).equals(under.rename(exchange).times(over))) {
        return new QuotientRecognition.NotSymmetric(k, k + 1);
      }
    }
    // Every image of the denominator, up to a factor, makes a product that renaming leaves alone up
    // to sign; its square is symmetric.
    MultivariatePolynomial numerator = over;
    MultivariatePolynomial denominator = under;
    Set<MultivariatePolynomial> images = images(under);
    if (images.size() > MOST_IMAGES) {
      return new QuotientRecognition.TooLarge(
          "the denominator has more than %d images under renaming".formatted(MOST_IMAGES));
    }
    for (MultivariatePolynomial image : images) {
      if (!image.equals(monic(under))) {
        long terms = Math.max(size(numerator, image), size(denominator, image));
        if (terms > MOST_TERMS) {
          return tooManyTerms(terms);
        }
        numerator = numerator.times(image);
        denominator = denominator.times(image);
      }
    }
    if (SymmetricRecognition.of(denominator, variables)
        instanceof SymmetricRecognition.NotSymmetric) {
      long terms = Math.max(size(numerator, denominator), size(denominator, denominator));
      if (terms > MOST_TERMS) {
        return tooManyTerms(terms);
      }
      numerator = numerator.times(denominator);
      denominator = denominator.times(denominator);
    }
    if (SymmetricRecognition.of(numerator, variables)
            instanceof SymmetricRecognition.Symmetric above
        && SymmetricRecognition.of(denominator, variables)
            instanceof SymmetricRecognition.Symmetric below) {
      return new QuotientRecognition.Symmetric(
          new SymmetricQuotient(above.polynomial(), below.polynomial()));
    }
    throw new IllegalStateException("a symmetric quotient without symmetric parts");
  }

  private Set<MultivariatePolynomial> images(MultivariatePolynomial polynomial) {
    Set<MultivariatePolynomial> images = new LinkedHashSet<>();
    Deque<MultivariatePolynomial> fresh = new ArrayDeque<>();
    images.add(monic(polynomial));
    fresh.add(monic(polynomial));
    while (!fresh.isEmpty() && images.size() <= MOST_IMAGES) {
      MultivariatePolynomial next = fresh.remove();
      for (int k = 0; k + 1 < variables; k++) {
        MultivariatePolynomial image = monic(next.rename(exchange(k)));
        if (images.add(image)) {
          fresh.add(image);
        }
      }
    }
    return images;
  }

  private static MultivariatePolynomial monic(MultivariatePolynomial polynomial) {
    return polynomial.times(polynomial.terms().lastEntry().getValue().reciprocal());
  }

  private int[] exchange(int k) {
    int[] images = new int[variables];
    for (int place = 0; place < variables; place++) {
      images[place] = place;
    }
    images[k] = k + 1;
    images[k + 1] = k;
    return images;
  }

  private static QuotientRecognition tooManyTerms(long terms) {
    return new QuotientRecognition.TooLarge(
        "multiplying out takes %d products of terms, above the limit of %d"
            .formatted(terms, MOST_TERMS));
  }

  private static long size(MultivariatePolynomial left, MultivariatePolynomial right) {
    return (long) left.terms().size() * right.terms().size();
  }
}
