package rootwright.algebra.roots;

import rootwright.algebra.modular.OddModulus;
import rootwright.algebra.polynomial.Polynomial;

/** The first power sums of the roots modulo a word, by Newton's identities and the recurrence. */
final class ModularPowerSums {

  private ModularPowerSums() {}

  /** S_0, …, S_last modulo a number that the lead of the primitive polynomial is prime to. */
  static long[] upTo(int last, Polynomial primitive, OddModulus field) {
    int degree = primitive.degree();
    long lead = field.represent(primitive.numerator(degree));
    long inverse = lead == field.one() ? lead : field.inverse(lead);
    long[] negated = new long[degree + 1];
    for (int i = 1; i <= degree; i++) {
      negated[i] =
          field.negate(field.times(inverse, field.represent(primitive.numerator(degree - i))));
    }
    long[] sums = new long[last + 1];
    sums[0] = field.represent(degree);
    for (int k = 1; k <= last; k++) {
      int known = Math.min(k - 1, degree);
      sums[k] = field.convolution(negated, 1, sums, k - 1, known);
      if (k <= degree) {
        sums[k] = field.plus(sums[k], field.times(field.represent(k), negated[k]));
      }
    }
    return sums;
  }
}
