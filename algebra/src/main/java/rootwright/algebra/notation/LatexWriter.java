package rootwright.algebra.notation;

import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import rootwright.algebra.number.Rational;

/**
 * Writes a formula in LaTeX: {@code \frac{3 \pm \sqrt{229}}{2}}, {@code \sum r^{2} s}. The text
 * belongs into mathematics mode and needs no package. What is written is read back by {@link
 * FormulaReader} as the {@link NormalForm} of the formula, with the exceptions of {@link
 * PlainWriter}.
 */
public final class LatexWriter extends BuiltUpWriter {

  private static final LatexWriter WRITER = new LatexWriter();

  /** Functions that have a command of their own. */
  private static final Map<String, String> COMMANDS =
      Map.of(
          "log",
          "\\log",
          "ln",
          "\\ln",
          "sin",
          "\\sin",
          "cos",
          "\\cos",
          "tan",
          "\\tan",
          "cot",
          "\\cot",
          "csc",
          "\\csc",
          "gcd",
          "\\operatorname{gcd}",
          "max",
          "\\operatorname{max}",
          "min",
          "\\operatorname{min}");

  private static final Pattern TALL = Pattern.compile("\\\\(frac|sum|prod|sqrt|left)\\b");

  private LatexWriter() {}

  /** The formula in LaTeX. */
  public static String write(Formula formula) {
    return NormalForm.of(formula).choose(WRITER);
  }

  /** One formula or another: commas between them, and the word “or” before the last. */
  public static String writeAlternatives(List<Formula> formulas) {
    int last = formulas.size() - 1;
    String before =
        formulas.stream().limit(last).map(LatexWriter::write).collect(Collectors.joining(", "));
    return before + (last == 0 ? "" : " \\text{ or } ") + write(formulas.get(last));
  }

  /** Brackets grow only round what is taller than a line. */
  @Override
  String bracketed(String text) {
    return TALL.matcher(text).find() ? "\\left(" + text + "\\right)" : "(" + text + ")";
  }

  @Override
  String number(Rational value) {
    return value.isInteger()
        ? value.toString()
        : fraction(value.numerator().toString(), value.denominator().toString());
  }

  @Override
  String prefixMinus() {
    return "-";
  }

  @Override
  String infixMinus() {
    return " - ";
  }

  @Override
  String infixPlus() {
    return " + ";
  }

  @Override
  String prefixPlusMinus() {
    return "\\pm ";
  }

  @Override
  String infixPlusMinus() {
    return " \\pm ";
  }

  @Override
  String infixComparison(Formula.Comparison comparison) {
    return switch (comparison) {
      case EQUAL -> " = ";
      case NOT_EQUAL -> " \\ne ";
      case LESS -> " < ";
      case AT_MOST -> " \\le ";
      case GREATER -> " > ";
      case AT_LEAST -> " \\ge ";
      case CONGRUENT -> " \\equiv ";
    };
  }

  @Override
  String infixModulo() {
    return " \\bmod ";
  }

  @Override
  String comma() {
    return ", ";
  }

  @Override
  String fraction(String over, String under) {
    return "\\frac{" + over + "}{" + under + "}";
  }

  @Override
  String raised(String base, String exponent) {
    return base + "^{" + exponent + "}";
  }

  @Override
  String aggregated(Formula.Aggregate.Operation operation, String body) {
    return (operation == Formula.Aggregate.Operation.SUM ? "\\sum " : "\\prod ") + body;
  }

  @Override
  String besides() {
    return " ";
  }

  @Override
  String dot() {
    return " \\cdot ";
  }

  @Override
  public String name(Formula.Name name) {
    String bare = name.letter().replace("'", "");
    String greek = GreekLetters.nameOf(bare);
    String letter =
        greek.isEmpty() ? name.letter() : "\\" + greek + name.letter().substring(bare.length());
    return name.index().isEmpty() ? letter : letter + "_{" + name.index() + "}";
  }

  @Override
  public String imaginaryUnit(Formula.ImaginaryUnit imaginaryUnit) {
    return "i";
  }

  @Override
  public String radical(Formula.Radical radical) {
    String index = radical.index() == 2 ? "" : "[" + radical.index() + "]";
    return "\\sqrt" + index + "{" + radical.radicand().choose(this) + "}";
  }

  @Override
  public String family(Formula.Family family) {
    return family.letter() + "_{" + family.index().choose(this) + "}";
  }

  @Override
  public String application(Formula.Application application) {
    if (isAbsolute(application)) {
      return "\\left|" + at(Tightness.SUM, application.arguments().get(0)) + "\\right|";
    }
    if (application.arguments().size() == 1) {
      String inside = at(Tightness.MODULO, application.arguments().get(0));
      if (application.function().equals("floor")) {
        return "\\left\\lfloor " + inside + "\\right\\rfloor ";
      } else if (application.function().equals("ceil")) {
        return "\\left\\lceil " + inside + "\\right\\rceil ";
      }
    }
    if (isLogarithmToBase(application)) {
      return "\\log_{"
          + application.arguments().get(1).choose(this)
          + "}"
          + bracketed(at(Tightness.MODULO, application.arguments().get(0)));
    }
    String function = function(application.function());
    return application.arguments().isEmpty()
        ? function
        : function + bracketed(separated(application.arguments()));
  }

  private static String function(String function) {
    boolean letter = FunctionLetters.contains(function.replace("'", ""));
    String word =
        function.indexOf(' ') >= 0
            ? "\\text{" + function + "}"
            : "\\operatorname{" + function + "}";
    return letter ? function : COMMANDS.getOrDefault(function, word);
  }

  @Override
  public String words(Formula.Words words) {
    StringBuilder text = new StringBuilder("\\text{");
    words.text().codePoints().forEach(point -> text.append(LatexText.escaped(point)));
    return text.append("}").toString();
  }
}
