package rootwright.algebra.notation;

import java.util.List;
import java.util.Set;
import rootwright.algebra.number.Rational;

/**
 * Writes a formula in MathML Core: no {@code mfenced}, the minus is U+2212, factors side by side
 * have the invisible times U+2062 between them and a function the invisible application U+2061.
 *
 * <p>The names of the roots carry the attribute {@code data-name} with their spelling, so that a
 * page can light every place where one root stands. Every part is one element.
 */
public final class MathmlWriter extends BuiltUpWriter {

  private static final String NAMESPACE = "http://www.w3.org/1998/Math/MathML";

  private final Set<String> roots;

  private MathmlWriter(Set<String> roots) {
    this.roots = roots;
  }

  /** A writer that marks these names of roots. */
  public static MathmlWriter marking(List<String> roots) {
    return new MathmlWriter(Set.copyOf(roots));
  }

  /** The formula as a {@code math} element in a line of text, no name being marked. */
  public static String write(Formula formula) {
    return new MathmlWriter(Set.of()).inline(formula);
  }

  /** The formula as a {@code math} element in a line of text. */
  public String inline(Formula formula) {
    return "<math xmlns=\"" + NAMESPACE + "\">" + element(formula) + "</math>";
  }

  /** The formula as a {@code math} element on a line of its own. */
  public String block(Formula formula) {
    return "<math xmlns=\"" + NAMESPACE + "\" display=\"block\">" + element(formula) + "</math>";
  }

  /** The formula as one element to stand inside a {@code math} element. */
  public String element(Formula formula) {
    return NormalForm.of(formula).choose(this);
  }

  private static String sign(String sign) {
    return "<mo>" + sign + "</mo>";
  }

  private static String fence(String sign) {
    return "<mo fence=\"true\" form=\""
        + (sign.equals("(") ? "prefix" : "postfix")
        + "\">"
        + sign
        + "</mo>";
  }

  @Override
  String row(String text) {
    return "<mrow>" + text + "</mrow>";
  }

  @Override
  String bracketed(String text) {
    return row(fence("(") + text + fence(")"));
  }

  @Override
  String number(Rational value) {
    String over = "<mn>" + value.numerator() + "</mn>";
    return value.isInteger() ? over : fraction(over, "<mn>" + value.denominator() + "</mn>");
  }

  @Override
  String prefixMinus() {
    return "<mo form=\"prefix\">−</mo>";
  }

  @Override
  String infixMinus() {
    return sign("−");
  }

  @Override
  String infixPlus() {
    return sign("+");
  }

  @Override
  String prefixPlusMinus() {
    return "<mo form=\"prefix\">±</mo>";
  }

  @Override
  String infixPlusMinus() {
    return sign("±");
  }

  @Override
  String infixComparison(Formula.Comparison comparison) {
    return sign(MarkupText.escaped(Comparisons.typeset(comparison)));
  }

  @Override
  String infixModulo() {
    return "<mo lspace=\"0.3em\" rspace=\"0.3em\">mod</mo>";
  }

  @Override
  String comma() {
    return "<mo separator=\"true\">,</mo>";
  }

  @Override
  String fraction(String over, String under) {
    return "<mfrac>" + over + under + "</mfrac>";
  }

  @Override
  String raised(String base, String exponent) {
    return "<msup>" + base + exponent + "</msup>";
  }

  @Override
  String aggregated(Formula.Aggregate.Operation operation, String body) {
    return row(sign(operation == Formula.Aggregate.Operation.SUM ? "∑" : "∏") + body);
  }

  @Override
  String besides() {
    return sign("\u2062");
  }

  @Override
  String dot() {
    return sign("⋅");
  }

  @Override
  public String name(Formula.Name name) {
    String spelling = name.spelling();
    String mark =
        roots.contains(spelling) ? " data-name=\"" + MarkupText.escaped(spelling) + "\"" : "";
    if (name.index().isEmpty()) {
      return letter(name.letter(), mark);
    }
    return "<msub" + mark + ">" + letter(name.letter(), "") + index(name.index()) + "</msub>";
  }

  private static String letter(String letter, String mark) {
    String bare = letter.replace("'", "");
    String one =
        "<mi" + (bare.equals(letter) ? mark : "") + ">" + MarkupText.escaped(bare) + "</mi>";
    String primes = "′".repeat(letter.length() - bare.length());
    return primes.isEmpty() ? one : "<msup" + mark + ">" + one + sign(primes) + "</msup>";
  }

  private String index(String index) {
    boolean digits = index.chars().allMatch(digit -> digit >= '0' && digit <= '9');
    String tag = digits ? "mn" : index.length() == 1 ? "mi" : "mtext";
    return "<" + tag + ">" + MarkupText.escaped(index.replace('-', '−')) + "</" + tag + ">";
  }

  @Override
  public String imaginaryUnit(Formula.ImaginaryUnit imaginaryUnit) {
    return "<mi>i</mi>";
  }

  @Override
  public String radical(Formula.Radical radical) {
    String below = radical.radicand().choose(this);
    return radical.index() == 2
        ? "<msqrt>" + below + "</msqrt>"
        : "<mroot>" + below + "<mn>" + radical.index() + "</mn></mroot>";
  }

  @Override
  public String family(Formula.Family family) {
    return "<msub><mi>" + family.letter() + "</mi>" + family.index().choose(this) + "</msub>";
  }

  @Override
  public String application(Formula.Application application) {
    if (isAbsolute(application)) {
      Formula inner = application.arguments().get(0);
      return row(
          "<mo fence=\"true\" form=\"prefix\">|</mo>"
              + at(Tightness.SUM, inner)
              + "<mo fence=\"true\" form=\"postfix\">|</mo>");
    }
    if (isLogarithmToBase(application)) {
      return row(
          "<msub><mi>log</mi>"
              + application.arguments().get(1).choose(this)
              + "</msub>"
              + sign("\u2061")
              + bracketed(at(Tightness.MODULO, application.arguments().get(0))));
    }
    String function = application.function();
    boolean letter = FunctionLetters.contains(function.replace("'", ""));
    String name =
        letter
            ? letter(function, "")
            : function.indexOf(' ') >= 0
                ? "<mtext>" + MarkupText.escaped(function) + "</mtext>"
                : "<mi>" + MarkupText.escaped(function) + "</mi>";
    return application.arguments().isEmpty()
        ? name
        : row(name + sign("\u2061") + bracketed(separated(application.arguments())));
  }

  @Override
  public String words(Formula.Words words) {
    return "<mtext>" + MarkupText.escaped(words.text()) + "</mtext>";
  }
}
