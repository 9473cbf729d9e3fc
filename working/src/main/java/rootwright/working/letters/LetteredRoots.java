package rootwright.working.letters;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.RationalFunction;

/**
 * The roots of a polynomial with letters, and functions of them.
 *
 * <p>Inside, root k is unknown k and letter j (counted from 1) is unknown n + j − 1. What is
 * adjoined are the roots times the lead coefficient where that holds letters, so that the algebra
 * is over the polynomials in the letters.
 */
final class LetteredRoots {

  /** Most images that are gone through. */
  private static final int MOST_IMAGES = 120;

  /** Highest degree in which several roots are worked with at once. */
  private static final int HIGHEST_DEGREE = 6;

  private final int degree;
  private final int letters;
  private final RationalFunction scale;
  private final List<MultivariatePolynomial> monic = new ArrayList<>();
  private final LetteredTower tower;

  LetteredRoots(LetteredPolynomial polynomial) {
    degree = polynomial.degree();
    letters = polynomial.letters().size();
    MultivariatePolynomial lead = inner(polynomial.lead());
    boolean number = lead.isConstant();
    scale = number ? RationalFunction.ONE : RationalFunction.of(lead);
    for (int k = 0; k <= degree; k++) {
      MultivariatePolynomial coefficient = inner(polynomial.coefficient(k));
      monic.add(
          k == degree
              ? MultivariatePolynomial.ONE
              : number
                  ? coefficient.times(lead.coefficient(Monomial.ONE).reciprocal())
                  : coefficient.times(lead.power(degree - 1 - k)));
    }
    tower = new LetteredTower(degree <= HIGHEST_DEGREE ? monic : linear());
  }

  private static List<MultivariatePolynomial> linear() {
    return List.of(MultivariatePolynomial.ZERO, MultivariatePolynomial.ONE);
  }

  /** A root as it is in the statement. */
  RationalFunction root(int k) {
    return RationalFunction.of(MultivariatePolynomial.unknown(k)).over(scale);
  }

  /** A letter, counted from 1. */
  RationalFunction letter(int number) {
    return RationalFunction.of(MultivariatePolynomial.unknown(degree + number - 1));
  }

  /** A function of the letters, numbered from 1, as a function in here. */
  MultivariatePolynomial inner(MultivariatePolynomial ofLetters) {
    int[] images = new int[letters + 1];
    for (int k = 1; k <= letters; k++) {
      images[k] = degree + k - 1;
    }
    return ofLetters.isConstant() ? ofLetters : ofLetters.rename(images);
  }

  /** A function in here without roots as a function of the letters, numbered from 1. */
  RationalFunction outer(RationalFunction free) {
    int[] images = new int[degree + letters];
    for (int k = 0; k < letters; k++) {
      images[degree + k] = k + 1;
    }
    return InLetters.cleared(free.rename(images));
  }

  /** e_k of the roots. */
  RationalFunction elementary(int k) {
    if (k < 0 || k > degree) {
      return RationalFunction.ZERO;
    }
    RationalFunction size = RationalFunction.of(monic.get(degree - k)).over(scale.power(k));
    return (k % 2 == 0 ? size : size.negate()).lowestTerms();
  }

  /** S_k by Newton's identities, for k ≥ 0. */
  RationalFunction powerSum(int k) {
    return RationalFunction.of(powerSums(k).get(k)).over(scale.power(k)).lowestTerms();
  }

  /** h_k by h_k = e_1·h_(k−1) − e_2·h_(k−2) + …. */
  RationalFunction complete(int k) {
    if (k < 0) {
      return RationalFunction.ZERO;
    }
    List<MultivariatePolynomial> h = new ArrayList<>(List.of(MultivariatePolynomial.ONE));
    for (int m = 1; m <= k; m++) {
      MultivariatePolynomial sum = MultivariatePolynomial.ZERO;
      for (int j = 1; j <= Math.min(m, degree); j++) {
        sum = sum.minus(monic.get(degree - j).times(h.get(m - j)));
      }
      requireShort(sum);
      h.add(sum);
    }
    return RationalFunction.of(h.get(k)).over(scale.power(k)).lowestTerms();
  }

  /** The power sums of the adjoined roots up to k. */
  private List<MultivariatePolynomial> powerSums(int k) {
    List<MultivariatePolynomial> sums = new ArrayList<>();
    sums.add(MultivariatePolynomial.constant(Rational.of(degree)));
    for (int m = 1; m <= k; m++) {
      MultivariatePolynomial sum = MultivariatePolynomial.ZERO;
      for (int j = 1; j <= Math.min(m, degree); j++) {
        MultivariatePolynomial before =
            j == m ? MultivariatePolynomial.constant(Rational.of(m)) : sums.get(m - j);
        sum = sum.minus(monic.get(degree - j).times(before));
      }
      requireShort(sum);
      sums.add(sum);
    }
    return sums;
  }

  /** The sum over all distinct images of a function when the roots are renamed. */
  RationalFunction sumOfImages(RationalFunction body) {
    RationalFunction lowest = body.lowestTerms();
    List<Integer> occurring = rootsIn(lowest);
    if (occurring.size() == 1 && isFree(lowest.denominator())) {
      return sumOfPowers(lowest, occurring.get(0));
    }
    List<RationalFunction> images = images(lowest);
    requireTower();
    Map<MultivariatePolynomial, MultivariatePolynomial> byDenominator = new LinkedHashMap<>();
    for (RationalFunction image : images) {
      byDenominator.merge(image.denominator(), image.numerator(), MultivariatePolynomial::plus);
    }
    MultivariatePolynomial over = MultivariatePolynomial.ZERO;
    MultivariatePolynomial under = MultivariatePolynomial.ONE;
    for (Map.Entry<MultivariatePolynomial, MultivariatePolynomial> part :
        byDenominator.entrySet()) {
      over = tower.times(over, part.getKey()).plus(tower.times(part.getValue(), under));
      under = tower.times(under, part.getKey());
    }
    return quotient(tower.normalForm(over), under);
  }

  /** Σ c_j·r^j is Σ c_j·S_j. */
  private RationalFunction sumOfPowers(RationalFunction body, int root) {
    List<MultivariatePolynomial> coefficients = body.numerator().coefficientsIn(root);
    List<MultivariatePolynomial> sums = powerSums(coefficients.size() - 1);
    MultivariatePolynomial sum = MultivariatePolynomial.ZERO;
    for (int j = 0; j < coefficients.size(); j++) {
      sum = sum.plus(coefficients.get(j).times(sums.get(j)));
    }
    return quotient(sum, body.denominator());
  }

  /** The product over all distinct images of a function when the roots are renamed. */
  RationalFunction productOfImages(RationalFunction body) {
    List<RationalFunction> images = images(body.lowestTerms());
    requireTower();
    MultivariatePolynomial over = MultivariatePolynomial.ONE;
    MultivariatePolynomial under = MultivariatePolynomial.ONE;
    for (RationalFunction image : images) {
      over = tower.times(over, image.numerator());
      under = tower.times(under, image.denominator());
    }
    return quotient(over, under);
  }

  /** The number of distinct images of a function when the roots are renamed. */
  int countImages(RationalFunction body) {
    return images(body.lowestTerms()).size();
  }

  /**
   * A function as one of the letters alone, if it is the same for every naming of the roots.
   *
   * @return empty if it is not
   * @throws BeyondLettersException if a denominator is zero for all letters
   */
  Optional<RationalFunction> constant(RationalFunction value) {
    if (rootsIn(value).isEmpty()) {
      return Optional.of(value.lowestTerms());
    }
    requireTower();
    RationalFunction lowest = value.lowestTerms();
    MultivariatePolynomial over = tower.normalForm(lowest.numerator());
    MultivariatePolynomial under = tower.normalForm(lowest.denominator());
    if (!under.isZero() && !tower.isFreeOfRoots(under)) {
      for (RationalFunction image : images(RationalFunction.of(lowest.denominator()))) {
        if (!image.numerator().equals(lowest.denominator())) {
          over = tower.times(over, image.numerator());
          under = tower.times(under, image.numerator());
        }
      }
    }
    return tower.isFreeOfRoots(over) ? Optional.of(quotient(over, under)) : Optional.empty();
  }

  /** The numbers of the roots that occur. */
  List<Integer> rootsIn(RationalFunction function) {
    List<Integer> occurring = new ArrayList<>();
    for (int k = 0; k < degree; k++) {
      if (function.numerator().degreeIn(k) > 0 || function.denominator().degreeIn(k) > 0) {
        occurring.add(k);
      }
    }
    return occurring;
  }

  private boolean isFree(MultivariatePolynomial polynomial) {
    return rootsIn(RationalFunction.of(polynomial)).isEmpty();
  }

  private static RationalFunction quotient(
      MultivariatePolynomial over, MultivariatePolynomial under) {
    if (under.isZero()) {
      throw new BeyondLettersException("a denominator is zero whatever the letters are");
    }
    return new RationalFunction(over, under).lowestTerms();
  }

  private List<RationalFunction> images(RationalFunction lowest) {
    List<Integer> occurring = rootsIn(lowest);
    Set<RationalFunction> images = new LinkedHashSet<>();
    long choices = 1;
    for (int k = 0; k < occurring.size(); k++) {
      choices *= degree - k;
    }
    if (choices > MOST_IMAGES) {
      throw new BeyondLettersException(
          "there are %d ways to choose the roots in it, more than %d"
              .formatted(choices, MOST_IMAGES));
    }
    extend(lowest, occurring, 0, identity(), new HashSet<>(), images);
    return List.copyOf(images);
  }

  private int[] identity() {
    int[] identity = new int[degree + letters];
    for (int k = 0; k < identity.length; k++) {
      identity[k] = k;
    }
    return identity;
  }

  private void extend(
      RationalFunction body,
      List<Integer> occurring,
      int next,
      int[] chosen,
      Set<Integer> used,
      Set<RationalFunction> images) {
    if (next == occurring.size()) {
      images.add(
          new RationalFunction(body.numerator().rename(chosen), body.denominator().rename(chosen))
              .lowestTerms());
      return;
    }
    for (int root = 0; root < degree; root++) {
      if (used.add(root)) {
        int[] longer = chosen.clone();
        longer[occurring.get(next)] = root;
        extend(body, occurring, next + 1, longer, used, images);
        used.remove(root);
      }
    }
  }

  private void requireTower() {
    if (degree > HIGHEST_DEGREE) {
      throw new BeyondLettersException(
          "with letters in the coefficients, several roots at once are worked with up to degree "
              + HIGHEST_DEGREE);
    }
  }

  private static void requireShort(MultivariatePolynomial sum) {
    if (sum.terms().size() > LetteredTower.MOST_TERMS) {
      throw new BeyondLettersException("written out in the letters it has too many terms");
    }
  }
}
