package rootwright.working.sequence;

import java.math.BigInteger;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What is asked of the power sums as a sequence. */
sealed interface SequenceAsk {

  /** By what recurrence they follow. */
  record Recurrence() implements SequenceAsk {}

  /** Σ S_k·x^k as a fraction. */
  record GeneratingFunction() implements SequenceAsk {}

  /** After how many places their remainders return. */
  record Period(BigInteger modulus) implements SequenceAsk {}

  /** Whether S_1, S_2, … are all divisible by a number; 1 asks whether they are whole. */
  record Divisible(BigInteger by) implements SequenceAsk {}

  /**
   * The last digits of one of them.
   *
   * @param of what the digits are of, as typed
   */
  record LastDigits(BigInteger modulus, String of) implements SequenceAsk {}

  /** More digits of a modulus than this are not read. */
  String MODULUS = "(?<m>\\d{1,12})";

  /** How the power sums are called. */
  String SUMS = "(?:(?:all )?(?:the )?(?:power sums?|s_k|p_k)(?: of the roots)?)";

  /** A recurrence. */
  Pattern RECURRENCE =
      Pattern.compile("(?:linear )?recurrence(?: relation)?(?: (?:of|for|between) " + SUMS + ")?");

  /** A generating function. */
  Pattern GENERATING = Pattern.compile("generating function(?: (?:of|for) " + SUMS + ")?");

  /** A period. */
  Pattern PERIOD =
      Pattern.compile(
          "period(?: (?:of|for) " + SUMS + ")? \\(?(?:mod|modulo)\\.? " + MODULUS + "\\)?");

  /** A question of divisibility. */
  Pattern DIVISIBLE =
      Pattern.compile(
          "(?:are|is) (?:every )?"
              + SUMS
              + " (?:always )?(?:(?<whole>whole|integers?|an integer|whole numbers)|(?<even>even)"
              + "|divisible by "
              + MODULUS
              + ")(?: for (?:all|every) k)?");

  /** Last digits. */
  Pattern LAST =
      Pattern.compile(
          "(?:last|final|units?)(?: (?<count>one|two|three|four|\\d))? digits? (?:of|in) (?<of>.*)",
          Pattern.DOTALL);

  /** A longer text is a story, and none of these asks. */
  int LONGEST = 200;

  /** Words for small numbers. */
  Map<String, Integer> COUNTS = Map.of("one", 1, "two", 2, "three", 3, "four", 4);

  /** The ask, if a text is one; judged by its form. */
  static Optional<SequenceAsk> of(String text) {
    if (text.length() > LONGEST) {
      return Optional.empty();
    }
    String bare =
        text.strip()
            .replaceAll("[.?]$", "")
            .replaceFirst("(?i)^(?:find|what is|what are|determine)\\s+", "")
            .replaceFirst("(?i)^(?:the|a)\\s+", "");
    String simple = bare.toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
    if (RECURRENCE.matcher(simple).matches()) {
      return Optional.of(new Recurrence());
    } else if (GENERATING.matcher(simple).matches()) {
      return Optional.of(new GeneratingFunction());
    }
    Matcher period = PERIOD.matcher(simple);
    if (period.matches()) {
      return Optional.of(new Period(new BigInteger(period.group("m"))));
    }
    Matcher divisible = DIVISIBLE.matcher(simple);
    if (divisible.matches()) {
      return Optional.of(new Divisible(divisor(divisible)));
    }
    Matcher last = LAST.matcher(bare);
    return last.matches()
        ? Optional.of(new LastDigits(BigInteger.TEN.pow(count(last)), last.group("of")))
        : Optional.empty();
  }

  private static BigInteger divisor(Matcher divisible) {
    if (divisible.group("whole") != null) {
      return BigInteger.ONE;
    }
    return divisible.group("even") != null ? BigInteger.TWO : new BigInteger(divisible.group("m"));
  }

  private static int count(Matcher last) {
    return Optional.ofNullable(last.group("count"))
        .map(word -> COUNTS.containsKey(word) ? COUNTS.get(word) : Integer.parseInt(word))
        .orElse(1);
  }
}
