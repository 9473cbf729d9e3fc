package rootwright.algebra.notation;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import rootwright.algebra.number.Rational;

/**
 * The form of a formula that the reader makes and every writer writes. It says which of two trees
 * that look the same on paper is meant:
 *
 * <ul>
 *   <li>a minus before a number is part of the number ({@code -3}), unless that number already has
 *       one;
 *   <li>a minus at the front of a product or a fraction stands before the whole ({@code -3*x} is
 *       the negative of {@code 3*x});
 *   <li>a fraction of two whole numbers in lowest terms is one number; {@code 76/44} stays a
 *       fraction, so that a working can show it;
 *   <li>a reserved letter with an index is a family ({@code e_1});
 *   <li>a list of one is its item.
 * </ul>
 *
 * Nothing is computed, sorted or shortened.
 */
public final class NormalForm extends SomeFormulaCases<Formula> {

  private static final NormalForm STEP = new NormalForm();

  private NormalForm() {}

  /** The normal form; doing it twice changes nothing. */
  public static Formula of(Formula formula) {
    return formula.rewrite(part -> part.choose(STEP));
  }

  @Override
  protected Formula otherwise(Formula formula) {
    return formula;
  }

  @Override
  public Formula negative(Formula.Negative negative) {
    return negativeOf(negative.of());
  }

  @Override
  public Formula product(Formula.Product product) {
    return productOf(product.factors());
  }

  @Override
  public Formula quotient(Formula.Quotient quotient) {
    return quotientOf(quotient.over(), quotient.under());
  }

  @Override
  public Formula listing(Formula.Listing listing) {
    return listing.items().size() == 1 ? listing.items().get(0) : listing;
  }

  @Override
  public Formula name(Formula.Name name) {
    boolean whole = name.index().chars().allMatch(digit -> digit >= '0' && digit <= '9');
    if (!Families.isReserved(name.letter())
        || name.index().isEmpty()
        || !(whole || name.index().length() == 1)) {
      return name;
    }
    return new Formula.Family(
        name.letter(),
        whole ? Formula.number(new BigInteger(name.index())) : new Formula.Name(name.index()));
  }

  /** The negative of a formula in normal form. */
  static Formula negativeOf(Formula of) {
    return of instanceof Formula.Numeral number && number.value().signum() >= 0
        ? Formula.number(number.value().negate())
        : new Formula.Negative(of);
  }

  /** The product of two or more formulas in normal form. */
  static Formula productOf(List<Formula> factors) {
    if (factors.get(0) instanceof Formula.Numeral number && number.value().signum() < 0) {
      List<Formula> positive = new ArrayList<>(factors);
      positive.set(0, Formula.number(number.value().negate()));
      return new Formula.Negative(new Formula.Product(positive));
    }
    return new Formula.Product(factors);
  }

  /** The quotient of two formulas in normal form. */
  static Formula quotientOf(Formula over, Formula under) {
    if (over instanceof Formula.Numeral top) {
      if (top.value().signum() < 0) {
        return negativeOf(quotientOf(Formula.number(top.value().negate()), under));
      }
      if (under instanceof Formula.Numeral bottom && isOneNumber(top.value(), bottom.value())) {
        return Formula.number(top.value().over(bottom.value()));
      }
    }
    return new Formula.Quotient(over, under);
  }

  private static boolean isOneNumber(Rational top, Rational bottom) {
    return top.isInteger()
        && bottom.isInteger()
        && bottom.compareTo(Rational.ONE) > 0
        && top.numerator().gcd(bottom.numerator()).equals(BigInteger.ONE);
  }
}
