package rootwright.working.pasted;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The parts that problem sentences are made of, as regular expressions. */
final class SentenceParts {

  /** A word that asks. */
  static final String IMPERATIVE =
      "(?:find|compute|determine|evaluate|calculate|work\\s+out|express|give|what\\s+is|what\\s+are|what’s|what's)\\b";

  private static final String NAME =
      "(?:[a-zA-Z](?![a-zA-Z(])|[α-ωΑ-Ω]|\\\\[a-z]+)(?:_?\\{?\\d{1,2}\\}?|[₀-₉]{1,2})?";

  private static final String ELLIPSIS = "(?:\\.\\.\\.|…|\\\\[lc]?dots)";

  private static final String NEXT = "(?:\\s*,\\s*(?:and\\s+)?|\\s+and\\s+)";

  /** Letters with commas or "and" between them. */
  static final String NAMES = NAME + "(?:" + NEXT + NAME + "|" + NEXT + ELLIPSIS + ")*";

  private static final String MANNER =
      "(?:(?:the|an?|one|all|its|two|three|four|five|six|\\d+|distinct|different|unequal|complex|not\\s+necessarily\\s+distinct)\\s+)*";

  /** The roots with what is said of their number; words that promise more are no part of it. */
  static final String ROOTS = MANNER + "(?:roots?|zeros?|zeroes|solutions?)";

  /** What kind of thing has the roots. */
  static final String OWNER =
      "(?:(?:the\\s+|this\\s+|a\\s+|an\\s+)?(?:(?:following|monic|real|cubic|quadratic|quartic|quintic"
          + "|polynomial|equation|function)\\s+)+|the\\s+)?";

  /** What stands between the setting and the ask. */
  static final String THEN =
      "(?:\\s*[.;:,]*\\s+(?:then\\s+)?" + IMPERATIVE + "|\\s*[.;:]\\s+(?:then\\s+)?)\\s*";

  /** A word that opens a setting. */
  static final String OPENING =
      "^(?:let|suppose(?:\\s+that)?|given(?:\\s+that)?|if|assume(?:\\s+that)?|consider|for)?\\s*";

  private static final Pattern ONE = Pattern.compile(NAME);

  private SentenceParts() {}

  /** Case does not matter, and a sentence may run over lines. */
  static Pattern pattern(String expression) {
    return Pattern.compile(
        expression, Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE | Pattern.DOTALL);
  }

  /** The single names; none if the list has dots in it, since the ask then says what is meant. */
  static List<String> names(String list) {
    List<String> names = new ArrayList<>();
    if (!Pattern.compile(ELLIPSIS).matcher(list).find()) {
      Matcher matcher = ONE.matcher(list.replaceAll("\\band\\b", " "));
      while (matcher.find()) {
        names.add(matcher.group());
      }
    }
    return List.copyOf(names);
  }
}
