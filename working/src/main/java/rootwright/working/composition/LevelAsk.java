package rootwright.working.composition;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaExpansion;
import rootwright.algebra.notation.FormulaReader;
import rootwright.algebra.notation.Refusal;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;

/**
 * An ask such as {@code sum of the roots of P(P(x)) = 2}.
 *
 * @param total sum or product
 * @param function the letter of the polynomial, P or f
 * @param level what P(P(x)) is to be
 */
record LevelAsk(Total total, String function, Rational level) {

  /** What is made of the roots. */
  enum Total {
    SUM("sum"),
    PRODUCT("product");

    private final String word;

    Total(String word) {
      this.word = word;
    }

    String word() {
      return word;
    }
  }

  private static final int LONGEST = 300;

  private static final Pattern FORM =
      Pattern.compile(
          "(?i:(?:find |what is )?(?:the )?(?<total>sum|product) of (?:all )?(?:the )?(?:complex )?"
              + "(?:roots|solutions|zeros) (?:of|to) (?:the equation )?)"
              + "(?<function>[PQfg])\\(\\s*\\k<function>\\(\\s*[A-Za-z]\\s*\\)\\s*\\)"
              + "(?:\\s*=\\s*(?<level>[^.?]+))?[.?]?");

  private static Optional<Matcher> match(String ask) {
    String text = ask.strip();
    if (text.length() > LONGEST) {
      return Optional.empty();
    }
    Matcher matcher = FORM.matcher(text);
    return matcher.matches() ? Optional.of(matcher) : Optional.empty();
  }

  /** Whether a text is such an ask, judged by its form. */
  static boolean isLike(String ask) {
    return match(ask).isPresent();
  }

  /**
   * Reads an ask of this form.
   *
   * @throws UnreadableException if what stands on the right is not a number
   */
  static LevelAsk of(String ask, String unknown) throws UnreadableException {
    Matcher matcher = match(ask).orElseThrow();
    Total total = matcher.group("total").equalsIgnoreCase("sum") ? Total.SUM : Total.PRODUCT;
    Optional<String> right = Optional.ofNullable(matcher.group("level"));
    Polynomial level = Polynomial.ZERO;
    if (right.isPresent()) {
      level = FormulaExpansion.polynomial(FormulaReader.formula(right.get()), unknown);
    }
    if (level.degree() > 0) {
      throw new UnreadableException(
          new Refusal(
              "unsupported",
              "On the right of P(P(x)) = c a number is expected; with the unknown there the levels"
                  + " do not all have the same sum.",
              ask,
              ask.codePointCount(0, matcher.start("level")),
              "a number",
              "%s of the roots of P(P(x)) = 0".formatted(total.word())));
    }
    return new LevelAsk(total, matcher.group("function"), level.coefficient(0));
  }

  /** P applied to something. */
  Formula applied(Formula to) {
    return new Formula.Application(function, List.of(to));
  }

  /** P(P(x)) = c. */
  Formula equation(String unknown) {
    return Formula.equation(applied(applied(Formula.name(unknown))), Formula.number(level));
  }

  /** The ask in words: {@code sum of the roots of P(P(x)) = 2}. */
  String words(String unknown) {
    return "%s of the roots of %s".formatted(total.word(), UnicodeWriter.write(equation(unknown)));
  }
}
