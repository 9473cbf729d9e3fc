package rootwright.lesson.text;

import java.util.List;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaNames;
import rootwright.algebra.notation.SpokenWriter;

/** How formulas and phrases are said. */
public final class Speech {

  private static final Formula X = new Formula.Name("x");

  private Speech() {}

  /**
   * A formula in words.
   *
   * @param roots the names of the roots: a sum in one of them runs “over the roots”
   */
  public static String of(Formula formula, List<String> roots) {
    return SpokenWriter.write(formula.rewrite(part -> spoken(part, roots)));
  }

  private static Formula spoken(Formula part, List<String> roots) {
    if (part instanceof Formula.Words words && words.text().equals("…")) {
      return new Formula.Words("and so on");
    }
    if (part instanceof Formula.Power power && isFraction(power.base())) {
      String raised = SpokenWriter.write(new Formula.Power(X, power.exponent()));
      return new Formula.Words(
          SpokenWriter.write(power.base()) + ", all of it" + raised.substring(1) + ",");
    }
    if (part instanceof Formula.Aggregate aggregate) {
      long named = FormulaNames.in(aggregate.body()).stream().filter(roots::contains).count();
      boolean others = FormulaNames.in(aggregate.body()).size() > named;
      if (named == 1 && others) {
        String sign = aggregate.operation() == Formula.Aggregate.Operation.SUM ? "sum" : "product";
        String body = SpokenWriter.write(aggregate.body());
        boolean loose = aggregate.body() instanceof Formula.Sum;
        return new Formula.Words(
            "the " + sign + " over the roots of " + (loose ? "the quantity " + body + "," : body));
      }
    }
    return part;
  }

  private static boolean isFraction(Formula base) {
    return base instanceof Formula.Quotient
        || (base instanceof Formula.Numeral number
            && number.value().signum() > 0
            && !number.value().isInteger());
  }

  /** A phrase in words. */
  public static String of(Phrase phrase, List<String> roots) {
    StringBuilder text = new StringBuilder();
    boolean open = false;
    for (Part part : phrase.parts()) {
      if (part instanceof Part.Words words) {
        text.append(open && goesOn(words.text()) ? "," : "").append(words(words.text()));
        open = false;
      } else {
        String spoken = of(((Part.Mathematics) part).formula(), roots);
        text.append(spoken);
        open = isOpen(spoken);
      }
    }
    return text.toString().strip();
  }

  /** Whether a formula has pauses inside, so that it needs one at its end if words follow. */
  public static boolean isOpen(String spoken) {
    return spoken.indexOf(',') >= 0;
  }

  /** Whether words go on without a sign. */
  public static boolean goesOn(String words) {
    return words.length() > 1 && words.charAt(0) == ' ' && Character.isLetter(words.charAt(1));
  }

  /** Words as they are said: signs that people write between words are read out. */
  public static String words(String text) {
    return text.replace("…", "and so on").replace("′", " prime");
  }
}
