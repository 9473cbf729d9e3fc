package rootwright.working.recurrence;

import java.math.BigInteger;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rootwright.algebra.notation.FormulaReader;
import rootwright.algebra.notation.UnreadableException;
import rootwright.working.problem.WholeNumber;

/** What is asked of a sequence. */
sealed interface RecurrenceAsk {

  /** One member. */
  record Member(BigInteger index) implements RecurrenceAsk {}

  /** The remainder of one member. */
  record Residue(BigInteger index, BigInteger modulus) implements RecurrenceAsk {}

  /** The member as a formula in its index. */
  record ClosedForm() implements RecurrenceAsk {}

  /** The polynomial whose roots' powers satisfy the recurrence. */
  record Characteristic() implements RecurrenceAsk {}

  /** After how many places the remainders return. */
  record Period(BigInteger modulus) implements RecurrenceAsk {}

  /** Words for small numbers. */
  Map<String, Integer> COUNTS = Map.of("one", 1, "two", 2, "three", 3, "four", 4);

  /** Last digits of something. */
  Pattern LAST =
      Pattern.compile(
          "(?:the )?(?:last|final|units?)(?: (?<count>one|two|three|four|\\d))? digits? (?:of|in) (?<of>.*)",
          Pattern.CASE_INSENSITIVE);

  /** A remainder. */
  Pattern MOD =
      Pattern.compile(
          "(?<of>.*?)\\s*\\(?\\s*(?:mod|modulo)\\.?\\s*(?<m>\\d{1,30})\\s*\\)?"
              + "|(?:the )?remainder (?:of|when) (?<what>.*?) (?:is )?(?:divided by|mod(?:ulo)?|on division by) (?<by>\\d{1,30})",
          Pattern.CASE_INSENSITIVE);

  /**
   * Reads an ask about the sequence with this letter and index.
   *
   * @return empty if it is none
   */
  static Optional<RecurrenceAsk> read(String typed, String letter, String index) {
    String text = typed.strip().replaceAll("[.?]$", "").replaceAll("\\s+", " ");
    String lower = text.toLowerCase(Locale.ROOT);
    Matcher last = LAST.matcher(text);
    if (last.matches()) {
      int digits =
          Optional.ofNullable(last.group("count"))
              .map(word -> word.toLowerCase(Locale.ROOT))
              .map(word -> COUNTS.containsKey(word) ? COUNTS.get(word) : Integer.parseInt(word))
              .orElse(1);
      return member(last.group("of"), letter)
          .map(at -> new Residue(at, BigInteger.TEN.pow(digits)));
    }
    Matcher mod = MOD.matcher(text);
    if (mod.matches()) {
      BigInteger modulus =
          new BigInteger(mod.group("m") != null ? mod.group("m") : mod.group("by"));
      String of = mod.group("m") != null ? mod.group("of") : mod.group("what");
      if (of.toLowerCase(Locale.ROOT).startsWith("period")
          || of.toLowerCase(Locale.ROOT).startsWith("the period")) {
        return Optional.of(new Period(modulus));
      }
      return member(of, letter).map(at -> new Residue(at, modulus));
    }
    if (lower.matches(
            "(?:the |a |an )?(?:closed form|general term|explicit formula|formula|explicit form)(?: (?:of|for) .*)?")
        || isTerm(text, letter, index)) {
      return Optional.of(new ClosedForm());
    } else if (lower.matches(
        "(?:the )?characteristic (?:polynomial|equation)(?: (?:of|for) .*)?")) {
      return Optional.of(new Characteristic());
    }
    return member(text, letter).map(Member::new);
  }

  private static boolean isTerm(String text, String letter, String index) {
    String bare = text.replaceAll("[{}() _]", "");
    return bare.equals(letter + index) || bare.equals(letter + "n") || bare.equals(letter + "k");
  }

  private static Optional<BigInteger> member(String text, String letter) {
    Matcher matcher =
        Pattern.compile(
                Pattern.quote(letter)
                    + "\\s*(?:_\\s*\\{(?<braced>[^{}]+)\\}|_?\\s*\\((?<bracketed>.+)\\)|_\\s*(?<plain>\\d+))")
            .matcher(RecurrenceReader.plain(text).strip());
    if (!matcher.matches()) {
      return Optional.empty();
    }
    String inside =
        matcher.group("braced") != null
            ? matcher.group("braced")
            : matcher.group("bracketed") != null
                ? matcher.group("bracketed")
                : matcher.group("plain");
    try {
      return WholeNumber.of(FormulaReader.formula(inside));
    } catch (UnreadableException words) {
      return Optional.empty();
    }
  }
}
