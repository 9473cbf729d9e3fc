package rootwright.algebra.notation;

import java.util.ArrayList;
import java.util.List;
import rootwright.algebra.number.Rational;

/**
 * Writes a formula in normal form: where brackets stand, and what sums, chains and lists look like.
 * A subclass says how the signs look and how fractions and powers are built.
 */
abstract class FormulaWriter implements FormulaCases<String> {

  /** How tightly a formula holds together in this way of writing. */
  int tightness(Formula formula) {
    return Tightness.of(formula);
  }

  /** The formula, in brackets if it is looser than this. */
  final String at(int least, Formula formula) {
    String text = formula.choose(this);
    return tightness(formula) < least ? bracketed(text) : text;
  }

  abstract String bracketed(String text);

  /** A number that is not negative. */
  abstract String number(Rational value);

  abstract String prefixMinus();

  abstract String infixMinus();

  abstract String infixPlus();

  abstract String prefixPlusMinus();

  abstract String infixPlusMinus();

  abstract String infixComparison(Formula.Comparison comparison);

  abstract String infixModulo();

  abstract String comma();

  /** Several things in a row, held together where the notation asks for it. */
  String row(String text) {
    return text;
  }

  @Override
  public String numeral(Formula.Numeral numeral) {
    Rational value = numeral.value();
    return value.signum() < 0 ? row(prefixMinus() + number(value.negate())) : number(value);
  }

  @Override
  public String negative(Formula.Negative negative) {
    return row(prefixMinus() + at(Tightness.PRODUCT, negative.of()));
  }

  @Override
  public String sum(Formula.Sum sum) {
    StringBuilder text = new StringBuilder(begin(sum.terms().get(0)));
    for (Formula term : sum.terms().subList(1, sum.terms().size())) {
      if (term instanceof Formula.Negative negative) {
        text.append(infixMinus()).append(at(Tightness.PRODUCT, negative.of()));
      } else if (term instanceof Formula.Numeral numeral && numeral.value().signum() < 0) {
        text.append(infixMinus()).append(number(numeral.value().negate()));
      } else {
        text.append(infixPlus()).append(at(Tightness.PRODUCT, term));
      }
    }
    return row(text.toString());
  }

  /** The first term of a sum or what stands before ±. */
  private String begin(Formula first) {
    return first instanceof Formula.PlusMinus ? first.choose(this) : at(Tightness.SIGNED, first);
  }

  @Override
  public String plusMinus(Formula.PlusMinus plusMinus) {
    String after = at(Tightness.PRODUCT, plusMinus.after());
    if (plusMinus.before().equals(Formula.number(0))) {
      return row(prefixPlusMinus() + after);
    }
    String before =
        plusMinus.before() instanceof Formula.Sum
            ? plusMinus.before().choose(this)
            : begin(plusMinus.before());
    return row(before + infixPlusMinus() + after);
  }

  @Override
  public String modulo(Formula.Modulo modulo) {
    return row(
        at(Tightness.RELATION, modulo.of()) + infixModulo() + at(Tightness.SUM, modulo.modulus()));
  }

  @Override
  public String relation(Formula.Relation relation) {
    StringBuilder text = new StringBuilder(at(Tightness.SUM, relation.sides().get(0)));
    for (int k = 0; k < relation.comparisons().size(); k++) {
      text.append(infixComparison(relation.comparisons().get(k)));
      text.append(at(Tightness.SUM, relation.sides().get(k + 1)));
    }
    return row(text.toString());
  }

  @Override
  public String listing(Formula.Listing listing) {
    return row(separated(listing.items()));
  }

  /** Formulas with commas between them. */
  final String separated(List<Formula> items) {
    List<String> written = new ArrayList<>();
    for (Formula item : items) {
      written.add(at(Tightness.MODULO, item));
    }
    return String.join(comma(), written);
  }

  /** The factors of a product, each in brackets where it needs them. */
  final List<String> factors(Formula.Product product) {
    List<Formula> factors = product.factors();
    List<String> written = new ArrayList<>();
    for (int k = 0; k < factors.size(); k++) {
      Formula factor = factors.get(k);
      boolean bare =
          (k == 0 && isFractionNumber(factor))
              || onlyAggregates(factors.subList(k, factors.size()));
      written.add(bare ? factor.choose(this) : at(Tightness.POWER, factor));
    }
    return written;
  }

  /** A Σ takes all that follows, up to a further Σ: only before such may it stand bare. */
  private static boolean onlyAggregates(List<Formula> factors) {
    return factors.stream().allMatch(FormulaWriter::isAggregate);
  }

  static boolean isAggregate(Formula formula) {
    return formula instanceof Formula.Aggregate;
  }

  /** Whether this is a whole number without a sign. */
  static boolean isWhole(Formula formula) {
    return formula instanceof Formula.Numeral number
        && number.value().signum() >= 0
        && number.value().isInteger();
  }

  static boolean isNegativeNumber(Formula formula) {
    return formula instanceof Formula.Numeral number && number.value().signum() < 0;
  }

  static boolean isFractionNumber(Formula formula) {
    return formula instanceof Formula.Numeral number
        && number.value().signum() > 0
        && !number.value().isInteger();
  }
}
