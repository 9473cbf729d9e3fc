package rootwright.working.pasted;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** An ask without the words that only make a sentence of it. */
final class AskText {

  private static final int LONGEST = 4000;

  private static final Pattern BIDDING =
      Pattern.compile(
          "\\s*(?:please\\s+)?(?:find|determine|compute|evaluate|calculate|express|work\\s+out|what\\s+(?:is|are)|what[’']s)\\s+(?=\\S)",
          Pattern.CASE_INSENSITIVE);
  private static final Pattern VALUE =
      Pattern.compile(
          "(?:all\\s+|the\\s+|exact\\s+|possible\\s+|numerical\\s+)*values?\\s+of\\s+(?=\\S)",
          Pattern.CASE_INSENSITIVE);

  /**
   * “The set of all real values of k” and the like, with a polynomial in whose place a k stands.
   */
  private static final Pattern LETTER =
      Pattern.compile(
          "(?:all\\s+|the\\s+|every\\s+|each\\s+|possible\\s+|real\\s+|numbers?\\s+|set\\s+of\\s+|range\\s+of\\s+|values?\\s+of\\s+)+"
              + "(?<letter>\\p{L}(?:_\\w)?)(?<rest>\\s*(?:$|[,:]|\\b(?:if|when|such|so|for|given|where|provided)\\b).*)",
          Pattern.CASE_INSENSITIVE | Pattern.DOTALL);

  private static final Pattern QUESTION =
      Pattern.compile(
          "\\s*(?:for\\s+)?(?:which|what)\\s+(?:real\\s+|possible\\s+)*(?:values?\\s+of\\s+|numbers?\\s+)?(?<letter>\\p{L}(?:_\\w)?)\\s+"
              + "(?:are|is|do|does|will|has|have)\\s+(?<rest>[^?]+)\\??\\s*",
          Pattern.CASE_INSENSITIVE | Pattern.DOTALL);

  /** “A monic cubic whose roots are”: a polynomial with new roots. */
  private static final Pattern NEW_ROOTS =
      Pattern.compile(
          "(?:(?:an?|the|monic|new|cubic|quadratic|quartic|quintic|polynomial|equation)\\s+)+"
              + "(?:with\\s+(?:integer|rational|real|whole)(?:-|\\s+)coefficients\\s+)?"
              + "(?:whose\\s+(?:three\\s+|four\\s+|two\\s+)?(?:roots|zeros|zeroes|solutions)\\s+are"
              + "|(?:with|having|that\\s+has|which\\s+has)\\s+(?:the\\s+)?(?:roots|zeros|zeroes|solutions))\\s+(?=\\S)",
          Pattern.CASE_INSENSITIVE);

  /** A remainder of a whole number. */
  private static final Pattern REMAINDER =
      Pattern.compile(
          "(?:the\\s+)?remainder\\s+(?:when|of|that)\\s+(?<of>[^,;]+?)\\s+(?:is\\s+|leaves\\s+)?(?:divided\\s+by|on\\s+division\\s+by|when\\s+divided\\s+by)\\s+(?<by>\\d{1,30})",
          Pattern.CASE_INSENSITIVE);

  /** What ends a question or a sentence, and “in terms of p and q”. */
  private static final Pattern END =
      Pattern.compile(
          "(?:\\s*(?:[.?!:,;=]|\\bequals|\\bis\\s+equal\\s+to|\\b(?:expressed\\s+)?in\\s+terms\\s+of\\s+[^=^]{1,60}))+\\s*$",
          Pattern.CASE_INSENSITIVE);

  private AskText() {}

  /** The ask, plainer; as it stands if nothing can be left out. */
  static String plain(String asked, boolean polynomialGiven) {
    if (asked.length() > LONGEST) {
      return asked;
    }
    String ended = END.matcher(asked).replaceFirst("");
    String typed = ended.isBlank() ? asked : ended;
    Matcher question = QUESTION.matcher(typed);
    if (polynomialGiven && question.matches()) {
      return "%s if %s".formatted(question.group("letter"), question.group("rest").strip());
    }
    Matcher bidding = BIDDING.matcher(typed);
    String text = bidding.lookingAt() ? typed.substring(bidding.end()) : typed;
    Matcher remainder = REMAINDER.matcher(text);
    if (remainder.matches()) {
      return "(%s) mod %s".formatted(remainder.group("of").strip(), remainder.group("by"));
    }
    Matcher roots = NEW_ROOTS.matcher(text);
    if (polynomialGiven && roots.lookingAt()) {
      return "polynomial with roots " + text.substring(roots.end());
    }
    Matcher letter = LETTER.matcher(text);
    if (polynomialGiven && letter.matches()) {
      return letter.group("letter") + letter.group("rest");
    }
    Matcher value = VALUE.matcher(text);
    return value.lookingAt() ? text.substring(value.end()) : text;
  }
}
