package rootwright.working.check.exact;

import java.math.BigInteger;
import rootwright.algebra.notation.Formula;
import rootwright.working.step.Claim;
import rootwright.working.step.Setting;

/**
 * An upper bound for the degree, numerator and denominator apart, of a formula as a rational
 * function of a free letter.
 *
 * @param over bound for the numerator
 * @param under bound for the denominator
 */
record DegreeInLetter(int over, int under) {

  private static final DegreeInLetter CONSTANT = new DegreeInLetter(0, 0);

  /** A number of points at which two neighbouring sides must agree to agree identically, less 1. */
  static int ofDifferences(Claim.Equal claim, String letter) {
    int largest = 0;
    DegreeInLetter left = of(claim.sides().get(0), letter, claim.setting());
    for (Formula side : claim.sides().subList(1, claim.sides().size())) {
      DegreeInLetter right = of(side, letter, claim.setting());
      largest = Math.max(largest, Math.max(left.over + right.under, right.over + left.under));
      left = right;
    }
    return largest;
  }

  private static DegreeInLetter of(Formula formula, String letter, Setting setting) {
    if (formula instanceof Formula.Name name) {
      if (name.spelling().equals(letter)) {
        return new DegreeInLetter(1, 0);
      }
      Formula meaning = setting.definitions().get(name.spelling());
      return meaning == null ? CONSTANT : of(meaning, letter, setting);
    } else if (formula instanceof Formula.Negative negative) {
      return of(negative.of(), letter, setting);
    } else if (formula instanceof Formula.Sum sum) {
      return sum.terms().stream()
          .map(term -> of(term, letter, setting))
          .reduce(CONSTANT, DegreeInLetter::plus);
    } else if (formula instanceof Formula.Product product) {
      return product.factors().stream()
          .map(factor -> of(factor, letter, setting))
          .reduce(CONSTANT, DegreeInLetter::times);
    } else if (formula instanceof Formula.Quotient quotient) {
      DegreeInLetter divisor = of(quotient.under(), letter, setting);
      return of(quotient.over(), letter, setting).times(divisor.upsideDown());
    } else if (formula instanceof Formula.Power power) {
      return of(power.base(), letter, setting).power(power.exponent());
    } else if (formula instanceof Formula.Aggregate aggregate) {
      return of(aggregate.body(), letter, setting)
          .overAllImages(mostImages(aggregate.body(), setting), aggregate.operation());
    } else if (formula instanceof Formula.Application application
        && !application.arguments().isEmpty()) {
      String name = application.function().replace("'", "");
      DegreeInLetter point = of(application.arguments().get(0), letter, setting);
      int degree =
          setting.functions().containsKey(name) ? setting.functions().get(name).degree() : 0;
      return new DegreeInLetter(
          Math.max(0, degree) * Math.max(point.over, point.under),
          Math.max(0, degree) * point.under);
    }
    return CONSTANT;
  }

  private DegreeInLetter scaled(int factor) {
    return new DegreeInLetter(over * factor, under * factor);
  }

  private DegreeInLetter upsideDown() {
    return new DegreeInLetter(/* over= */ under, /* under= */ over);
  }

  private DegreeInLetter plus(DegreeInLetter other) {
    return new DegreeInLetter(
        Math.max(over + other.under, other.over + under), under + other.under);
  }

  private DegreeInLetter times(DegreeInLetter other) {
    return new DegreeInLetter(over + other.over, under + other.under);
  }

  private DegreeInLetter power(Formula exponent) {
    if (equals(CONSTANT)) {
      return this;
    }
    boolean negative = exponent instanceof Formula.Negative;
    Formula size = negative ? ((Formula.Negative) exponent).of() : exponent;
    if (!(size instanceof Formula.Numeral numeral)
        || !numeral.value().isInteger()
        || numeral.value().numerator().abs().compareTo(BigInteger.valueOf(1000)) > 0) {
      throw Unevaluable.form("an exponent that is no small whole number over a free letter");
    }
    int e = numeral.value().numerator().abs().intValue();
    return negative || numeral.value().signum() < 0 ? upsideDown().scaled(e) : scaled(e);
  }

  private DegreeInLetter overAllImages(int images, Formula.Aggregate.Operation operation) {
    return operation == Formula.Aggregate.Operation.PRODUCT
        ? new DegreeInLetter(images * over, images * under)
        : new DegreeInLetter(over + (images - 1) * under, images * under);
  }

  /** The number of ways to choose roots for the names in the body, in order. */
  private static int mostImages(Formula body, Setting setting) {
    long names =
        setting.roots().stream()
            .filter(
                root ->
                    body.contains(
                        part -> part instanceof Formula.Name name && name.spelling().equals(root)))
            .count();
    int images = 1;
    for (int k = 0; k < names; k++) {
      images = Math.multiplyExact(images, setting.polynomial().degree() - k);
    }
    return images;
  }
}
