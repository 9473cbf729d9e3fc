package rootwright.composing.level;

import java.math.BigInteger;
import java.util.List;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.working.route.Working;

/** The numbers that stand in formulas, as they burden whoever writes them. */
public final class NumbersWritten {

  private NumbersWritten() {}

  /** What a line ends in: its last side, or all of it. */
  static Formula end(Formula line) {
    return line instanceof Formula.Relation relation
        ? relation.sides().get(relation.sides().size() - 1)
        : line;
  }

  /** The bits of all numbers written out in a formula. */
  static int bits(Formula formula) {
    int own = formula instanceof Formula.Numeral numeral ? bits(numeral.value()) : 0;
    return own + formula.parts().stream().mapToInt(NumbersWritten::bits).sum();
  }

  private static int bits(Rational value) {
    return value.numerator().bitLength()
        + (value.isInteger() ? 0 : value.denominator().bitLength());
  }

  /** The largest numerator or denominator written out in a formula, without its sign; 0 if none. */
  public static BigInteger largest(Formula formula) {
    BigInteger own =
        formula instanceof Formula.Numeral numeral
            ? numeral.value().numerator().abs().max(numeral.value().denominator())
            : BigInteger.ZERO;
    return formula.parts().stream().map(NumbersWritten::largest).reduce(own, BigInteger::max);
  }

  /** The largest numerator or denominator written out in a working, without its sign; 0 if none. */
  public static BigInteger largest(Working working) {
    return working.steps().stream()
        .map(step -> largest(step.shown()))
        .reduce(BigInteger.ZERO, BigInteger::max);
  }

  /** Whether a number that is not whole is written out. */
  static boolean hasFraction(Formula formula) {
    return formula.contains(
        part -> part instanceof Formula.Numeral numeral && !numeral.value().isInteger());
  }

  /**
   * The highest whole exponent, without its sign, or index of a family, that stands in a formula; 1
   * if there is none. Exponents beyond the range of int count as the largest int.
   */
  static int highestExponent(Formula formula) {
    Formula above =
        formula instanceof Formula.Power power
            ? power.exponent()
            : formula instanceof Formula.Family family ? family.index() : Formula.number(1);
    int own = largest(above).min(BigInteger.valueOf(Integer.MAX_VALUE)).intValueExact();
    return Math.max(
        Math.max(1, own),
        formula.parts().stream().mapToInt(NumbersWritten::highestExponent).max().orElse(1));
  }

  /** Whether the name of a root stands in a denominator or under a negative exponent. */
  static boolean hasRootBelow(Formula formula, List<String> roots) {
    return formula.contains(
        part ->
            (part instanceof Formula.Quotient quotient && hasName(quotient.under(), roots))
                || (part instanceof Formula.Power power
                    && isNegative(power.exponent())
                    && hasName(power.base(), roots)));
  }

  private static boolean isNegative(Formula exponent) {
    return exponent instanceof Formula.Negative
        || (exponent instanceof Formula.Numeral numeral && numeral.value().signum() < 0);
  }

  private static boolean hasName(Formula formula, List<String> names) {
    return formula.contains(
        part -> part instanceof Formula.Name name && names.contains(name.spelling()));
  }
}
