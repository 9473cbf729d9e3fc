package rootwright.working.pasted;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rootwright.working.problem.Statement;

/**
 * Sentences that speak of no roots: {@code If x + y = 3 and xy = 1, find x^5 + y^5} gives values of
 * numbers, {@code Let P(x) = x^3 - 2x + 5. Compute S_4} a polynomial.
 */
final class GivenValues {

  private static final Pattern NUMBERS =
      SentenceParts.pattern(
          "^(?:let|suppose|if|given|for)?\\s*(?:that\\s+)?(?:the\\s+|two\\s+|three\\s+|four\\s+)?(?<kind>(?:real|complex|positive|distinct)\\s+)*"
              + "numbers?\\s+(?<names>"
              + SentenceParts.NAMES
              + ")\\s+(?:satisfy(?:ing)?|are\\s+such\\s+that|such\\s+that|with|have)\\s+"
              + "(?<given>.*?=.+?)"
              + SentenceParts.THEN
              + "(?<ask>.+)$");

  private static final Pattern PLAIN =
      SentenceParts.pattern(
          SentenceParts.OPENING
              + SentenceParts.OWNER
              + "(?<given>.+?)"
              + "(?:\\s*[.;:,]*\\s+(?:then\\s+)?"
              + SentenceParts.IMPERATIVE
              + ")\\s*(?<ask>.+)$");

  private static final Pattern NAMED_FUNCTION =
      Pattern.compile("^\\s*[A-Za-z]\\s*\\(\\s*[a-z]\\s*\\)\\s*=");
  private static final Pattern SINGLE =
      Pattern.compile("(?<![\\\\A-Za-z])[A-Za-z](?![A-Za-z(])|[α-ω]");
  private static final Pattern WORD = Pattern.compile("(?<![\\\\A-Za-z])[A-Za-z]{4,}");

  private GivenValues() {}

  /** The statement, if the sentence has one of these forms. */
  static Optional<Statement> read(String sentence, Optional<String> unknown) {
    Matcher numbers = NUMBERS.matcher(sentence);
    if (numbers.find()) {
      String kind = numbers.group("kind");
      String domain =
          kind == null || kind.isBlank() || kind.strip().equalsIgnoreCase("complex")
              ? ""
              : ", " + numbers.group("names") + " " + kind.strip().toLowerCase(Locale.ROOT);
      return Optional.of(
          conditioned(numbers.group("ask"), numbers.group("given") + domain, unknown));
    }
    Matcher plain = PLAIN.matcher(sentence);
    if (!plain.find() || WORD.matcher(plain.group("given")).find()) {
      return Optional.empty();
    }
    String given = plain.group("given").strip();
    String ask = AskText.plain(plain.group("ask"), false);
    return Optional.of(
        isPolynomial(given, ask)
            ? new Statement(given, ask, List.of(), unknown)
            : conditioned(ask, given, unknown));
  }

  /** One letter in at most one equation, about which nothing is asked. */
  private static boolean isPolynomial(String given, String ask) {
    if (NAMED_FUNCTION.matcher(given).find()) {
      return true;
    }
    Set<String> letters = letters(given);
    boolean asked = letters.stream().anyMatch(letters(ask)::contains);
    return !asked && letters.size() == 1 && given.indexOf('=') == given.lastIndexOf('=');
  }

  private static Statement conditioned(String ask, String given, Optional<String> unknown) {
    return new Statement(
        "", AskText.plain(ask, false) + " if " + given.strip(), List.of(), unknown);
  }

  private static Set<String> letters(String text) {
    Set<String> letters = new TreeSet<>();
    Matcher matcher = SINGLE.matcher(text);
    while (matcher.find()) {
      letters.add(matcher.group());
    }
    return letters;
  }
}
