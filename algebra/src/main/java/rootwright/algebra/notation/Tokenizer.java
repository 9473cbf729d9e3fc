package rootwright.algebra.notation;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Cuts a text into tokens. Raised digits become a power in brackets and lowered ones an index in
 * brackets, so that whoever reads the tokens need not know how they were typed.
 */
final class Tokenizer {

  private final SourceText source;
  private final List<Token> tokens = new ArrayList<>();
  private final List<Reading> readings;

  /** Closing braces whose opening brace was dropped. */
  private final Set<Integer> dropped = new HashSet<>();

  private int place;
  private boolean blank = true;

  private Tokenizer(SourceText source, List<Reading> readings) {
    this.source = source;
    this.readings = readings;
  }

  /** The tokens of a text, the last being the end; surprising readings are added to the list. */
  static List<Token> tokens(SourceText source, List<Reading> readings) throws UnreadableException {
    Tokenizer tokenizer = new Tokenizer(source, readings);
    while (tokenizer.place < source.length()) {
      tokenizer.step();
    }
    tokenizer.add(Token.Kind.END, "", source.length(), source.length());
    return tokenizer.tokens;
  }

  private void add(Token.Kind kind, String text, int from, int to) {
    tokens.add(new Token(kind, text, from, to, blank));
    blank = false;
    place = to;
  }

  private void step() throws UnreadableException {
    int point = source.at(place);
    if (SourceText.isBlank(point) || dropped.contains(place)) {
      blank = true;
      place++;
    } else if (isDigit(point) || (point == '.' && isDigit(source.at(place + 1)))) {
      number();
    } else if (point == '\\') {
      command();
    } else if (isLatin(point)) {
      letters();
    } else if (!Scripts.raised(point).isEmpty()) {
      script("^", true);
    } else if (!Scripts.lowered(point).isEmpty()) {
      script("_", false);
    } else {
      character();
    }
  }

  private void number() throws UnreadableException {
    int from = place;
    int to = from;
    while (isDigit(source.at(to))) {
      to++;
    }
    if (source.at(to) == '.') {
      if (!isDigit(source.at(to + 1))) {
        throw source.refused(
            "number",
            "A digit should follow the point.",
            to + 1,
            "a digit",
            source.replaced(to, to + 1, ""));
      }
      to++;
      while (isDigit(source.at(to))) {
        to++;
      }
    }
    if (to - from > Limits.DIGITS) {
      throw source.refused(
          "too-many-digits",
          "A number of %d digits stands here; at most %d are read."
              .formatted(to - from, Limits.DIGITS),
          from,
          "a shorter number",
          "");
    }
    add(Token.Kind.NUMBER, source.between(from, to), from, to);
  }

  private void letters() throws UnreadableException {
    int from = place;
    int to = from;
    while (isLatin(source.at(to))) {
      to++;
    }
    String run = source.between(from, to);
    Optional<LatexCommands.Meaning> word = Vocabulary.meaning(run);
    String greek = GreekLetters.named(run);
    if (word.isPresent()) {
      add(word.get().kind(), word.get().text(), from, to);
    } else if (!greek.isEmpty()) {
      if (run.length() == 2) {
        readings.add(
            Reading.readAs(
                run,
                "the Greek letter %s, not as the product %s*%s"
                    .formatted(greek, run.charAt(0), run.charAt(1))));
      }
      add(Token.Kind.LETTER, greek, from, to);
    } else {
      refuseWords(run, from, to);
      for (int at = from; at < to; at++) {
        add(Token.Kind.LETTER, source.between(at, at + 1), at, at + 1);
      }
    }
  }

  private void refuseWords(String run, int from, int to) throws UnreadableException {
    if (!Vocabulary.isProductOfLetters(run)) {
      String near = Vocabulary.near(run);
      String shown = run.length() > 40 ? run.substring(0, 40) + "…" : run;
      throw source.refused(
          "unknown-word",
          "“" + shown + "” is not a word that can be read in a formula.",
          from,
          Vocabulary.isSentence(run)
              ? "a formula, or a phrase like “sum of the squares of the roots”"
              : "letters, numbers and signs",
          near.isEmpty() ? "" : source.replaced(from, to, near));
    }
  }

  private void command() throws UnreadableException {
    int from = place;
    int to = from + 1;
    while (isLatin(source.at(to))) {
      to++;
    }
    if (to == from + 1) {
      to = Math.min(from + 2, source.length());
    }
    String name = source.between(from + 1, to);
    Optional<LatexCommands.Meaning> meaning =
        name.isBlank() && !name.isEmpty()
            ? Optional.of(LatexCommands.BLANK)
            : LatexCommands.meaning(name);
    if (meaning.isEmpty()) {
      throw source.refused(
          "unknown-command",
          "The command “\\" + printable(name) + "” is not known.",
          from,
          "a formula",
          "");
    }
    if (meaning.get().equals(LatexCommands.UNWRAPPED)) {
      unwrap(to);
    } else if (meaning.get().equals(LatexCommands.BLANK)) {
      blank = true;
      place = to;
    } else {
      add(meaning.get().kind(), meaning.get().text(), from, to);
    }
  }

  private void unwrap(int after) {
    blank = true;
    place = after;
    if (source.at(after) == '{') {
      int close = source.find('}', after);
      if (close >= 0) {
        dropped.add(close);
        place = after + 1;
      }
    }
  }

  private void script(String sign, boolean raised) {
    int from = place;
    int to = from;
    StringBuilder plain = new StringBuilder();
    String next = raised ? Scripts.raised(source.at(to)) : Scripts.lowered(source.at(to));
    while (!next.isEmpty()) {
      plain.append(next);
      to++;
      next = raised ? Scripts.raised(source.at(to)) : Scripts.lowered(source.at(to));
    }
    add(Token.Kind.SIGN, sign, from, from);
    add(Token.Kind.OPEN, "{", from, from);
    int at = 0;
    while (at < plain.length()) {
      int end = at + 1;
      String text = plain.substring(at, end);
      if (isDigit(text.charAt(0))) {
        while (end < plain.length() && isDigit(plain.charAt(end))) {
          end++;
        }
        add(Token.Kind.NUMBER, plain.substring(at, end), from + at, from + end);
      } else if (isLatin(text.charAt(0))) {
        add(Token.Kind.LETTER, text, from + at, from + end);
      } else if (Brackets.opens(text)) {
        add(Token.Kind.OPEN, text, from + at, from + end);
      } else if (Brackets.closes(text)) {
        add(Token.Kind.CLOSE, text, from + at, from + end);
      } else {
        add(Token.Kind.SIGN, text, from + at, from + end);
      }
      at = end;
    }
    add(Token.Kind.CLOSE, "}", to, to);
  }

  private void character() throws UnreadableException {
    int from = place;
    String one = source.between(from, from + 1);
    String sign = "";
    int length = Math.min(Signs.LONGEST, source.length() - from) + 1;
    while (sign.isEmpty() && length > 1) {
      length--;
      sign = Signs.canonical(source.between(from, from + length));
    }
    String greek = GreekLetters.letter(one);
    String vulgar = Scripts.vulgar(source.at(from));
    if (!sign.isEmpty()) {
      if (sign.equals("''")) {
        add(Token.Kind.SIGN, "'", from, from);
        add(Token.Kind.SIGN, "'", from, from + length);
      } else {
        add(Token.Kind.SIGN, sign, from, from + length);
      }
    } else if (Brackets.opens(one)) {
      add(Token.Kind.OPEN, one, from, from + 1);
    } else if (Brackets.closes(one)) {
      add(Token.Kind.CLOSE, one, from, from + 1);
    } else if (one.equals("|")) {
      add(Token.Kind.BAR, one, from, from + 1);
    } else if (!greek.isEmpty()) {
      add(Token.Kind.LETTER, greek, from, from + 1);
    } else if (!vulgar.isEmpty()) {
      add(Token.Kind.VULGAR, vulgar, from, from + 1);
    } else if (one.equals("°")) {
      throw source.refused(
          "degrees",
          "Degrees are not read: angles are multiples of π, such as cos(π/9) for 20 degrees.",
          from,
          "an angle as a multiple of π",
          "");
    } else {
      throw source.refused(
          "unknown-character",
          "The character “" + printable(one) + "” has no meaning in a formula.",
          from,
          "a number, a letter, a sign or a bracket",
          source.replaced(from, from + 1, ""));
    }
  }

  /** A character that shows nothing is named by its number. */
  private static String printable(String text) {
    StringBuilder shown = new StringBuilder();
    text.codePoints()
        .forEach(
            point -> {
              if (Character.isISOControl(point)
                  || !Character.isDefined(point)
                  || Character.getType(point) == Character.FORMAT
                  || Character.getType(point) == Character.SURROGATE) {
                shown.append(String.format("U+%04X", point));
              } else {
                shown.appendCodePoint(point);
              }
            });
    return shown.toString();
  }

  private static boolean isDigit(int point) {
    return point >= '0' && point <= '9';
  }

  private static boolean isLatin(int point) {
    return (point >= 'a' && point <= 'z') || (point >= 'A' && point <= 'Z');
  }
}
