package rootwright.algebra.notation;

/**
 * Writes a formula in ASCII: {@code x^3 - 17*x + 25}, {@code (3 + sqrt(229))/2}, {@code alpha},
 * {@code sum(r^2*s)}. Every multiplication has its sign and blanks stand round a plus or minus
 * between two terms.
 *
 * <p>What is written is read back by {@link FormulaReader} as the {@link NormalForm} of the
 * formula, except that {@link Formula.Words} and functions outside the reader's vocabulary are only
 * written.
 */
public final class PlainWriter extends LineWriter {

  private static final PlainWriter WRITER = new PlainWriter();

  private PlainWriter() {}

  /** The formula in ASCII. */
  public static String write(Formula formula) {
    return NormalForm.of(formula).choose(WRITER);
  }

  @Override
  String minus() {
    return "-";
  }

  @Override
  String plusMinusSign() {
    return "+-";
  }

  @Override
  String comparison(Formula.Comparison comparison) {
    return Comparisons.ascii(comparison);
  }

  @Override
  public String product(Formula.Product product) {
    return String.join("*", factors(product));
  }

  @Override
  public String name(Formula.Name name) {
    String bare = name.letter().replace("'", "");
    String greek = GreekLetters.nameOf(bare);
    String letter =
        greek.isEmpty() ? name.letter() : greek + name.letter().substring(bare.length());
    return name.index().isEmpty() ? letter : letter + "_" + below(name.index());
  }

  private static String below(String index) {
    boolean simple =
        index.length() == 1 || index.chars().allMatch(digit -> digit >= '0' && digit <= '9');
    return simple ? index : "(" + index + ")";
  }

  @Override
  public String power(Formula.Power power) {
    Formula exponent = power.exponent();
    boolean bare =
        isWhole(exponent) || (exponent instanceof Formula.Name name && name.index().isEmpty());
    String raised = exponent.choose(this);
    return at(Tightness.ATOM, power.base()) + "^" + (bare ? raised : "(" + raised + ")");
  }

  @Override
  public String radical(Formula.Radical radical) {
    return switch (radical.index()) {
      case 2 -> "sqrt(" + radical.radicand().choose(this) + ")";
      case 3 -> "cbrt(" + radical.radicand().choose(this) + ")";
      default -> "root(" + radical.index() + ", " + at(Tightness.MODULO, radical.radicand()) + ")";
    };
  }

  /** Words with the signs of typeset mathematics put into ASCII. */
  @Override
  public String words(Formula.Words words) {
    return words.text().replace('−', '-').replace('′', '\'').replace("≠", "!=");
  }

  @Override
  public String aggregate(Formula.Aggregate aggregate) {
    String sign = aggregate.operation() == Formula.Aggregate.Operation.SUM ? "sum" : "product";
    return sign + "(" + aggregate.body().choose(this) + ")";
  }

  @Override
  public String family(Formula.Family family) {
    Formula index = family.index();
    boolean bare = isWhole(index) || (index instanceof Formula.Name name && isPlainLetter(name));
    String below = index.choose(this);
    return family.letter() + "_" + (bare ? below : "(" + below + ")");
  }

  private static boolean isPlainLetter(Formula.Name name) {
    return name.index().isEmpty() && name.letter().length() == 1;
  }
}
