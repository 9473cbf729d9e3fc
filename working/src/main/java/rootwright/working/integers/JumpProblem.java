package rootwright.working.integers;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaExpansion;
import rootwright.algebra.notation.FormulaNames;
import rootwright.algebra.notation.FormulaReader;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.working.step.NumberDomain;
import rootwright.working.subject.Conditions;
import rootwright.working.subject.Inquiry;

/**
 * Positive integers with a² + b² + c = k·(ab + d), the quotient k being asked for.
 *
 * @param first the name of a
 * @param second the name of b
 * @param quotient the name of k
 * @param constant c, not negative
 * @param offset d, 0 or 1; c and d are not both 0
 * @param shown the condition as typed
 */
record JumpProblem(
    String first, String second, String quotient, BigInteger constant, int offset, Formula shown) {

  private static final Pattern DIVIDES =
      Pattern.compile("(?<under>.+?)\\s*(\\bdivides\\b|\\|)\\s*(?<over>.+)");

  /** Larger numbers beside the squares are no problem for a descent by hand. */
  private static final Rational LARGEST_NUMBER = Rational.of(10_000);

  private static final Monomial A2 = Monomial.of(2);
  private static final Monomial B2 = Monomial.of(0, 2);
  private static final Monomial AB = Monomial.of(1, 1);

  /** Reads an inquiry, if it has this form. */
  static Optional<JumpProblem> of(Inquiry inquiry) {
    Conditions conditions = Conditions.of(inquiry);
    if (!inquiry.polynomial().isEmpty()
        || conditions.formulas().size() != 1
        || !conditions.domain().equals(Optional.of(NumberDomain.POSITIVE_INTEGER))) {
      return Optional.empty();
    }
    try {
      Matcher divides = DIVIDES.matcher(conditions.formulas().get(0));
      return divides.matches()
          ? ofDivisor(divides.group("under"), divides.group("over"), inquiry)
          : ofEquation(conditions.formulas().get(0), inquiry);
    } catch (UnreadableException other) {
      return Optional.empty();
    }
  }

  /** “ab divides a² + b² + 1”. */
  private static Optional<JumpProblem> ofDivisor(String under, String over, Inquiry inquiry)
      throws UnreadableException {
    Formula below = FormulaReader.formula(under);
    Formula above = FormulaReader.formula(over);
    Set<String> names = new LinkedHashSet<>(FormulaNames.in(above));
    names.addAll(FormulaNames.in(below));
    if (names.size() != 2) {
      return Optional.empty();
    }
    List<String> two = List.copyOf(names);
    String k = two.contains("k") ? "q" : "k";
    boolean asksQuotient =
        inquiry.ask().strip().matches("(?i)(the |all )*(possible )?(values? of )?(the )?quotients?")
            || inquiry.ask().strip().equals(k)
            || asksFor(inquiry.ask(), above.over(below));
    return asksQuotient
        ? matched(above, below, two, k, Formula.equation(above, Formula.name(k).times(below)))
        : Optional.empty();
  }

  private static boolean asksFor(String ask, Formula quotient) throws UnreadableException {
    try {
      return FormulaReader.formula(ask.replaceFirst("(?i)^(all )?(possible )?values? of ", ""))
          .equals(quotient);
    } catch (UnreadableException words) {
      return false;
    }
  }

  /** a² + b² + 1 = k·ab. */
  private static Optional<JumpProblem> ofEquation(String text, Inquiry inquiry)
      throws UnreadableException {
    if (!(FormulaReader.formula(text) instanceof Formula.Relation relation)
        || !relation.comparisons().equals(List.of(Formula.Comparison.EQUAL))
        || !(FormulaReader.formula(inquiry.ask()) instanceof Formula.Name k)) {
      return Optional.empty();
    }
    List<String> names = new ArrayList<>(FormulaNames.in(relation));
    if (names.size() != 3 || !names.remove(k.spelling())) {
      return Optional.empty();
    }
    MultivariatePolynomial difference =
        FormulaExpansion.expand(
                relation.sides().get(0).minus(relation.sides().get(1)),
                Map.of(names.get(0), 0, names.get(1), 1, k.spelling(), 2))
            .lowestTerms()
            .numerator();
    List<MultivariatePolynomial> byQuotient = difference.coefficientsIn(2);
    if (byQuotient.size() != 2) {
      return Optional.empty();
    }
    Rational lead = byQuotient.get(0).coefficient(A2);
    if (lead.isZero()) {
      return Optional.empty();
    }
    return matched(
        byQuotient.get(0).times(lead.reciprocal()),
        byQuotient.get(1).times(lead.reciprocal().negate()),
        names,
        k.spelling(),
        relation);
  }

  private static Optional<JumpProblem> matched(
      Formula above, Formula below, List<String> names, String k, Formula shown)
      throws UnreadableException {
    Map<String, Integer> numbers = Map.of(names.get(0), 0, names.get(1), 1);
    return matched(
        FormulaExpansion.expand(above, numbers).numerator(),
        FormulaExpansion.expand(below, numbers).numerator(),
        names,
        k,
        shown);
  }

  private static Optional<JumpProblem> matched(
      MultivariatePolynomial above,
      MultivariatePolynomial below,
      List<String> names,
      String k,
      Formula shown) {
    Rational c = above.coefficient(Monomial.ONE);
    Rational d = below.coefficient(Monomial.ONE);
    boolean form =
        above.equals(
                MultivariatePolynomial.of(
                    Map.of(A2, Rational.ONE, B2, Rational.ONE, Monomial.ONE, c)))
            && below.equals(MultivariatePolynomial.of(Map.of(AB, Rational.ONE, Monomial.ONE, d)));
    boolean sizes =
        c.isInteger()
            && c.signum() >= 0
            && c.compareTo(LARGEST_NUMBER) <= 0
            && ((d.isZero() && !c.isZero()) || (d.isOne() && c.isZero()));
    return form && sizes
        ? Optional.of(
            new JumpProblem(
                names.get(0), names.get(1), k, c.numerator(), d.isZero() ? 0 : 1, shown))
        : Optional.empty();
  }

  /** The quotient for two positive integers, if it is whole. */
  Optional<BigInteger> quotient(long a, long b) {
    BigInteger x = BigInteger.valueOf(a);
    BigInteger y = BigInteger.valueOf(b);
    BigInteger above = x.multiply(x).add(y.multiply(y)).add(constant);
    BigInteger below = x.multiply(y).add(BigInteger.valueOf(offset));
    return above.mod(below).signum() == 0 ? Optional.of(above.divide(below)) : Optional.empty();
  }
}
