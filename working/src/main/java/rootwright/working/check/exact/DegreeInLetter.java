package rootwright.working.check.exact;

import java.math.BigInteger;
import java.util.List;
import rootwright.algebra.notation.Formula;

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
  static int ofDifferences(List<Formula> sides, DegreeScope scope) {
    int largest = 0;
    DegreeInLetter left = of(sides.get(0), scope);
    for (Formula side : sides.subList(1, sides.size())) {
      DegreeInLetter right = of(side, scope);
      largest = Math.max(largest, Math.max(left.over + right.under, right.over + left.under));
      left = right;
    }
    return largest;
  }

  private static DegreeInLetter of(Formula formula, DegreeScope scope) {
    if (formula instanceof Formula.Name name) {
      if (scope.counted().contains(name.spelling())) {
        return new DegreeInLetter(1, 0);
      } else if (scope.roots().contains(name.spelling())) {
        return new DegreeInLetter(scope.reach(), 0);
      }
      Formula meaning = scope.definitions().get(name.spelling());
      return meaning == null ? CONSTANT : of(meaning, scope);
    } else if (formula instanceof Formula.Negative negative) {
      return of(negative.of(), scope);
    } else if (formula instanceof Formula.Sum sum) {
      return sum.terms().stream()
          .map(term -> of(term, scope))
          .reduce(CONSTANT, DegreeInLetter::plus);
    } else if (formula instanceof Formula.Product product) {
      return product.factors().stream()
          .map(factor -> of(factor, scope))
          .reduce(CONSTANT, DegreeInLetter::times);
    } else if (formula instanceof Formula.Quotient quotient) {
      DegreeInLetter divisor = of(quotient.under(), scope);
      return of(quotient.over(), scope).times(divisor.upsideDown());
    } else if (formula instanceof Formula.Power power) {
      return of(power.base(), scope).power(power.exponent());
    } else if (formula instanceof Formula.Aggregate aggregate) {
      return of(aggregate.body(), scope)
          .overAllImages(scope.mostImages(aggregate.body()), aggregate.operation());
    } else if (formula instanceof Formula.Family family) {
      return family(family, scope);
    } else if (formula instanceof Formula.Application application
        && !application.arguments().isEmpty()) {
      DegreeScope.Reach function =
          scope
              .functions()
              .getOrDefault(application.function().replace("'", ""), new DegreeScope.Reach(0, 0));
      DegreeInLetter point = of(application.arguments().get(0), scope);
      return new DegreeInLetter(
          function.inLetter() + function.inArgument() * Math.max(point.over, point.under),
          function.inArgument() * point.under);
    }
    return CONSTANT;
  }

  /** e_k, h_k and S_k have degree |k| in the roots; 1/r^k stands over all roots in turn. */
  private static DegreeInLetter family(Formula.Family family, DegreeScope scope) {
    if (scope.reach() == 0) {
      return CONSTANT;
    }
    DegreeInLetter power = new DegreeInLetter(scope.reach(), 0).power(family.index());
    return power.under == 0
        ? power
        : power.overAllImages(scope.count(), Formula.Aggregate.Operation.SUM);
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
}
