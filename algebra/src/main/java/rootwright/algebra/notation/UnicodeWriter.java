package rootwright.algebra.notation;

import java.util.ArrayList;
import java.util.List;

/**
 * Writes a formula on one line with typeset signs, for a terminal: {@code x³ − 17x + 25}, {@code (3
 * ± √229)/2}, {@code Σr²s}. Factors stand side by side wherever that cannot be misread. The reader
 * reads it back, except for {@link Formula.Words} and root signs of index above 4.
 */
public final class UnicodeWriter extends LineWriter {

  private static final UnicodeWriter WRITER = new UnicodeWriter();

  private UnicodeWriter() {}

  /** The formula with typeset signs. */
  public static String write(Formula formula) {
    return NormalForm.of(formula).choose(WRITER);
  }

  @Override
  String minus() {
    return "−";
  }

  @Override
  String plusMinusSign() {
    return "±";
  }

  @Override
  String comparison(Formula.Comparison comparison) {
    return Comparisons.typeset(comparison);
  }

  @Override
  public String product(Formula.Product product) {
    List<Formula> factors = product.factors();
    List<String> written = new ArrayList<>(factors(product));
    boolean fractionBeforeNumber =
        isFractionNumber(factors.get(0))
            && factors.size() > 1
            && factors.get(1) instanceof Formula.Numeral;
    if (fractionBeforeNumber) {
      written.set(0, bracketed(written.get(0)));
    }
    StringBuilder text = new StringBuilder(written.get(0));
    for (int k = 1; k < written.size(); k++) {
      boolean apart =
          needsSignAfter(factors.get(k - 1), written.get(k - 1))
              || needsSignBefore(written.get(k))
              || makesWord(text, written.get(k))
              || (FunctionLetters.contains(written.get(k - 1)) && written.get(k).startsWith("("));
      text.append(apart ? "·" : "").append(written.get(k));
    }
    return text.toString();
  }

  /** A root sign without a bracket, a number with a stroke, a word: they would swallow the next. */
  private static boolean needsSignAfter(Formula factor, String written) {
    boolean letters = factor instanceof Formula.Application && !written.endsWith(")");
    boolean raisedPlainly = factor instanceof Formula.Power && written.indexOf('^') >= 0;
    boolean stroke = isFractionNumber(factor) && !written.endsWith(")");
    return factor instanceof Formula.Radical
        || isAggregate(factor)
        || letters
        || raisedPlainly
        || stroke;
  }

  private static boolean needsSignBefore(String written) {
    // A piece of a broken formula may have nothing at one side.
    char first = written.isEmpty() ? ' ' : written.charAt(0);
    return (first >= '0' && first <= '9') || first == '|';
  }

  /** Whether the letters that meet would be read as a word. */
  private static boolean makesWord(CharSequence before, String after) {
    int from = before.length();
    while (from > 0 && isLatin(before.charAt(from - 1))) {
      from--;
    }
    int to = 0;
    while (to < after.length() && isLatin(after.charAt(to))) {
      to++;
    }
    String run = before.subSequence(from, before.length()) + after.substring(0, to);
    return run.length() > 1 && !Vocabulary.isProductOfLetters(run);
  }

  private static boolean isLatin(char letter) {
    return (letter >= 'a' && letter <= 'z') || (letter >= 'A' && letter <= 'Z');
  }

  @Override
  public String name(Formula.Name name) {
    String letter = name.letter().replace('\'', '′');
    return name.index().isEmpty() ? letter : letter + below(name.index());
  }

  private static String below(String index) {
    String lowered = Scripts.lower(index);
    return lowered.isEmpty() ? "_(" + index + ")" : lowered;
  }

  @Override
  public String power(Formula.Power power) {
    String exponent = power.exponent().choose(this);
    String written = at(Tightness.ATOM, power.base());
    boolean bareRoot = power.base() instanceof Formula.Radical && !written.endsWith(")");
    String base = bareRoot ? "(" + written + ")" : written;
    String raised = Scripts.raise(exponent.replace('−', '-'));
    return base + (raised.isEmpty() ? "^(" + exponent + ")" : raised);
  }

  @Override
  public String radical(Formula.Radical radical) {
    Formula below = radical.radicand();
    boolean bare = isWhole(below) || (below instanceof Formula.Name name && name.index().isEmpty());
    String text = below.choose(this);
    return sign(radical.index()) + (bare ? text : "(" + text + ")");
  }

  private static String sign(int index) {
    return switch (index) {
      case 2 -> "√";
      case 3 -> "∛";
      case 4 -> "∜";
      default -> Scripts.raise(Integer.toString(index)) + "√";
    };
  }

  @Override
  public String aggregate(Formula.Aggregate aggregate) {
    String sign = aggregate.operation() == Formula.Aggregate.Operation.SUM ? "Σ" : "Π";
    Formula body = aggregate.body();
    return sign + (isAggregate(body) ? "(" + body.choose(this) + ")" : at(Tightness.PRODUCT, body));
  }

  @Override
  public String family(Formula.Family family) {
    String index = family.index().choose(this);
    String lowered = Scripts.lower(index.replace('−', '-'));
    return family.letter() + (lowered.isEmpty() ? "_(" + index + ")" : lowered);
  }

  @Override
  public String application(Formula.Application application) {
    if (application.function().equals("abs") && application.arguments().size() == 1) {
      return "|" + at(Tightness.SUM, application.arguments().get(0)) + "|";
    }
    if (application.arguments().size() == 1) {
      String inside = at(Tightness.MODULO, application.arguments().get(0));
      if (application.function().equals("floor")) {
        return "⌊" + inside + "⌋";
      } else if (application.function().equals("ceil")) {
        return "⌈" + inside + "⌉";
      }
    }
    if (BuiltUpWriter.isLogarithmToBase(application)) {
      String base = below(application.arguments().get(1).choose(this).replace('−', '-'));
      return "log" + base + "(" + at(Tightness.MODULO, application.arguments().get(0)) + ")";
    }
    return super.application(application).replace('\'', '′');
  }
}
