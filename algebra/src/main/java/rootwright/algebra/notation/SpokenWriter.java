package rootwright.algebra.notation;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import rootwright.algebra.number.Rational;

/**
 * Writes a formula as it is read aloud, for narration and alternative texts: {@code alpha squared
 * plus beta squared}, {@code minus nineteen elevenths}, {@code P prime of three}. A bracket is “the
 * quantity …,”; the comma is a pause that ends it. There are no signs in the text but commas and
 * the hyphens of numbers, except in digits of very large numbers.
 */
public final class SpokenWriter extends FormulaWriter {

  private static final SpokenWriter WRITER = new SpokenWriter();

  private SpokenWriter() {}

  /** The formula in words. */
  public static String write(Formula formula) {
    String words = NormalForm.of(formula).choose(WRITER);
    return Pauses.tidied(words);
  }

  /** “The square root of three squared” would be taken otherwise, so what has an “of” is looser. */
  @Override
  int tightness(Formula formula) {
    boolean of =
        formula instanceof Formula.Radical
            || (formula instanceof Formula.Application word && !word.arguments().isEmpty());
    return of ? Tightness.POWER : Tightness.of(formula);
  }

  @Override
  String bracketed(String text) {
    return "the quantity " + text + ",";
  }

  @Override
  String number(Rational value) {
    String over = NumberWords.cardinal(value.numerator());
    return value.isInteger()
        ? over
        : over + " " + NumberWords.part(value.denominator(), value.numerator().bitLength() == 1);
  }

  @Override
  String prefixMinus() {
    return "minus ";
  }

  @Override
  String infixMinus() {
    return " minus ";
  }

  @Override
  String infixPlus() {
    return " plus ";
  }

  @Override
  String prefixPlusMinus() {
    return "plus or minus ";
  }

  @Override
  String infixPlusMinus() {
    return " plus or minus ";
  }

  @Override
  String infixComparison(Formula.Comparison comparison) {
    return switch (comparison) {
      case EQUAL -> " equals ";
      case NOT_EQUAL -> " is not equal to ";
      case LESS -> " is less than ";
      case AT_MOST -> " is at most ";
      case GREATER -> " is greater than ";
      case AT_LEAST -> " is at least ";
      case CONGRUENT -> " is congruent to ";
    };
  }

  @Override
  String infixModulo() {
    return " modulo ";
  }

  @Override
  String comma() {
    return ", ";
  }

  @Override
  public String name(Formula.Name name) {
    String bare = name.letter().replace("'", "");
    String greek = GreekLetters.nameOf(bare);
    String letter =
        SpokenFunctions.spokenPrimes(
            greek.isEmpty() ? name.letter() : greek + name.letter().substring(bare.length()));
    return name.index().isEmpty() ? letter : letter + " " + spokenIndex(name.index());
  }

  private static String spokenIndex(String index) {
    boolean digits =
        index.length() < 10 && index.chars().allMatch(digit -> digit >= '0' && digit <= '9');
    return digits
        ? NumberWords.cardinal(new BigInteger(index))
        : index.replace("-", " minus ").replace("+", " plus ");
  }

  @Override
  public String imaginaryUnit(Formula.ImaginaryUnit imaginaryUnit) {
    return "i";
  }

  @Override
  public String product(Formula.Product product) {
    List<Formula> factors = product.factors();
    List<String> written = factors(product);
    StringBuilder text = new StringBuilder(written.get(0));
    for (int k = 1; k < factors.size(); k++) {
      boolean besides =
          isShort(factors.get(k - 1)) && isShort(factors.get(k)) && !isWhole(factors.get(k));
      text.append(besides ? " " : " times ").append(written.get(k));
    }
    return text.toString();
  }

  /** Numbers, letters and their squares and cubes are said side by side: two r squared s. */
  private static boolean isShort(Formula formula) {
    return isWhole(formula)
        || formula instanceof Formula.Name
        || formula instanceof Formula.ImaginaryUnit
        || (formula instanceof Formula.Power power
            && power.base() instanceof Formula.Name
            && isWhole(power.exponent()));
  }

  @Override
  public String quotient(Formula.Quotient quotient) {
    boolean simpleOver = isSimple(quotient.over());
    boolean simpleUnder = isSimple(quotient.under());
    return quotient.over().choose(this)
        + (simpleOver ? " over" : ", over")
        + (simpleUnder ? " " : ", ")
        + quotient.under().choose(this)
        + (simpleUnder ? "" : ",");
  }

  /** Whether nothing inside could be taken for something outside. */
  private boolean isSimple(Formula formula) {
    boolean product =
        formula instanceof Formula.Product factors
            && factors.factors().stream().allMatch(SpokenWriter::isShort);
    return product || tightness(formula) >= Tightness.POWER;
  }

  @Override
  public String power(Formula.Power power) {
    return at(Tightness.ATOM, power.base()) + " " + raised(power.exponent());
  }

  private String raised(Formula exponent) {
    if (isWhole(exponent) && exponent instanceof Formula.Numeral number) {
      return switch (number.value().numerator().bitLength() > 4
          ? -1
          : number.value().numerator().intValue()) {
        case 2 -> "squared";
        case 3 -> "cubed";
        case 4, 5, 6, 7, 8, 9, 10, 11, 12 ->
            "to the " + NumberWords.ordinal(number.value().numerator());
        default -> "to the power " + number(number.value());
      };
    }
    return "to the power " + exponent.choose(this) + (isSimple(exponent) ? "" : ",");
  }

  @Override
  public String radical(Formula.Radical radical) {
    String root =
        switch (radical.index()) {
          case 2 -> "the square root of ";
          case 3 -> "the cube root of ";
          default ->
              "the " + NumberWords.ordinal(BigInteger.valueOf(radical.index())) + " root of ";
        };
    return root + at(Tightness.ATOM, radical.radicand());
  }

  @Override
  public String aggregate(Formula.Aggregate aggregate) {
    boolean sum = aggregate.operation() == Formula.Aggregate.Operation.SUM;
    if (aggregate.body() instanceof Formula.Application all
        && all.function().equals("real roots")) {
      return "the " + (sum ? "sum" : "product") + " of the real roots";
    }
    boolean oneRoot = FormulaNames.in(aggregate.body()).size() <= 1;
    String over = oneRoot ? " over the roots of " : " of all different terms like ";
    return "the "
        + (sum ? "sum" : "product")
        + over
        + (isAggregate(aggregate.body())
            ? bracketed(aggregate.body().choose(this))
            : at(Tightness.PRODUCT, aggregate.body()));
  }

  @Override
  public String family(Formula.Family family) {
    Formula index = family.index();
    boolean simple = index instanceof Formula.Numeral || index instanceof Formula.Name;
    return family.letter()
        + (simple ? " " + index.choose(this) : " with index " + index.choose(this) + ",");
  }

  @Override
  public String application(Formula.Application application) {
    List<Formula> arguments = application.arguments();
    if (BuiltUpWriter.isLogarithmToBase(application)) {
      return "the logarithm to base "
          + at(Tightness.ATOM, arguments.get(1))
          + " of "
          + at(Tightness.ATOM, arguments.get(0));
    }
    String before = SpokenFunctions.before(application.function(), !arguments.isEmpty());
    if (arguments.isEmpty()) {
      return before;
    }
    List<String> spoken = new ArrayList<>();
    for (Formula argument : arguments) {
      spoken.add(at(Tightness.MODULO, argument));
    }
    boolean simple = arguments.size() == 1 && isSimple(arguments.get(0));
    return before + " " + String.join(", ", spoken) + (simple ? "" : ",");
  }

  @Override
  public String words(Formula.Words words) {
    return words.text();
  }
}
