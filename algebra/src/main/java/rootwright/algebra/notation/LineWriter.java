package rootwright.algebra.notation;

import java.util.ArrayList;
import java.util.List;
import rootwright.algebra.number.Rational;

/**
 * Writes a formula in normal form on one line, with the brackets that the reader needs to give the
 * same formula back. A subclass says how the signs look.
 */
abstract class LineWriter implements FormulaCases<String> {

  /** The formula, in brackets if it is looser than this. */
  final String at(int least, Formula formula) {
    String text = formula.choose(this);
    return Tightness.of(formula) < least ? "(" + text + ")" : text;
  }

  abstract String minus();

  abstract String plusMinusSign();

  abstract String comparison(Formula.Comparison comparison);

  /** A product, given which factors it has and how each was written. */
  abstract String joined(List<Formula> factors, List<String> written);

  @Override
  public String numeral(Formula.Numeral numeral) {
    Rational value = numeral.value();
    return value.signum() < 0 ? minus() + fraction(value.negate()) : fraction(value);
  }

  private static String fraction(Rational value) {
    return value.toString();
  }

  @Override
  public String imaginaryUnit(Formula.ImaginaryUnit imaginaryUnit) {
    return "i";
  }

  @Override
  public String negative(Formula.Negative negative) {
    return minus() + at(Tightness.PRODUCT, negative.of());
  }

  @Override
  public String sum(Formula.Sum sum) {
    StringBuilder text = new StringBuilder(begin(sum.terms().get(0)));
    for (Formula term : sum.terms().subList(1, sum.terms().size())) {
      if (term instanceof Formula.Negative negative) {
        text.append(' ').append(minus()).append(' ');
        text.append(at(Tightness.PRODUCT, negative.of()));
      } else if (term instanceof Formula.Numeral number && number.value().signum() < 0) {
        text.append(' ').append(minus()).append(' ');
        text.append(fraction(number.value().negate()));
      } else {
        text.append(" + ").append(at(Tightness.PRODUCT, term));
      }
    }
    return text.toString();
  }

  /** The first term of a sum or what stands before ±. */
  private String begin(Formula first) {
    return first instanceof Formula.PlusMinus ? first.choose(this) : at(Tightness.SIGNED, first);
  }

  @Override
  public String plusMinus(Formula.PlusMinus plusMinus) {
    String after = at(Tightness.PRODUCT, plusMinus.after());
    if (plusMinus.before().equals(Formula.number(0))) {
      return plusMinusSign() + after;
    }
    String before =
        plusMinus.before() instanceof Formula.Sum
            ? plusMinus.before().choose(this)
            : begin(plusMinus.before());
    return before + " " + plusMinusSign() + " " + after;
  }

  @Override
  public String product(Formula.Product product) {
    List<Formula> factors = product.factors();
    List<String> written = new ArrayList<>();
    for (int k = 0; k < factors.size(); k++) {
      Formula factor = factors.get(k);
      boolean bare =
          (k == 0 && isFractionNumber(factor))
              || onlyAggregates(factors.subList(k, factors.size()));
      written.add(bare ? factor.choose(this) : at(Tightness.POWER, factor));
    }
    return joined(factors, written);
  }

  @Override
  public String quotient(Formula.Quotient quotient) {
    boolean sums = isAggregate(quotient.over()) && isAggregate(quotient.under());
    String over =
        sums || holdsTogetherAbove(quotient.over(), quotient.under())
            ? quotient.over().choose(this)
            : at(Tightness.POWER, quotient.over());
    String under =
        isAggregate(quotient.under())
            ? quotient.under().choose(this)
            : at(Tightness.POWER, quotient.under());
    return over + "/" + under;
  }

  /** Whether a product can stand above a stroke without a bracket. */
  private static boolean holdsTogetherAbove(Formula over, Formula under) {
    if (!(over instanceof Formula.Product product)) {
      return false;
    }
    Formula last = product.factors().get(product.factors().size() - 1);
    return !isAggregate(last)
        && !(last instanceof Formula.Numeral && under instanceof Formula.Numeral);
  }

  @Override
  public String modulo(Formula.Modulo modulo) {
    return at(Tightness.RELATION, modulo.of()) + " mod " + at(Tightness.SUM, modulo.modulus());
  }

  @Override
  public String relation(Formula.Relation relation) {
    StringBuilder text = new StringBuilder(at(Tightness.SUM, relation.sides().get(0)));
    for (int k = 0; k < relation.comparisons().size(); k++) {
      text.append(' ').append(comparison(relation.comparisons().get(k))).append(' ');
      text.append(at(Tightness.SUM, relation.sides().get(k + 1)));
    }
    return text.toString();
  }

  @Override
  public String listing(Formula.Listing listing) {
    return arguments(listing.items());
  }

  /** Formulas with commas between them. */
  final String arguments(List<Formula> items) {
    List<String> written = new ArrayList<>();
    for (Formula item : items) {
      written.add(at(Tightness.MODULO, item));
    }
    return String.join(", ", written);
  }

  @Override
  public String application(Formula.Application application) {
    return application.arguments().isEmpty()
        ? application.function()
        : application.function() + "(" + arguments(application.arguments()) + ")";
  }

  @Override
  public String words(Formula.Words words) {
    return words.text();
  }

  static boolean isAggregate(Formula formula) {
    return formula instanceof Formula.Aggregate;
  }

  /** A Σ takes all that follows, up to a further Σ: only before such may it stand bare. */
  private static boolean onlyAggregates(List<Formula> factors) {
    return factors.stream().allMatch(LineWriter::isAggregate);
  }

  static boolean isWhole(Formula formula) {
    return formula instanceof Formula.Numeral number
        && number.value().signum() >= 0
        && number.value().isInteger();
  }

  private static boolean isFractionNumber(Formula formula) {
    return formula instanceof Formula.Numeral number
        && number.value().signum() > 0
        && !number.value().isInteger();
  }
}
