package rootwright.press.document;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.text.DecimalFormatSymbols;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Properties;

/**
 * A language by its BCP 47 tag: the few words that an output adds by itself, and the decimal mark.
 * The words of the paper come from whoever made it.
 */
public final class Language {

  /** English, decimal point. */
  public static final Language ENGLISH = of("en");

  private final Locale locale;
  private final Properties words;

  private Language(Locale locale, Properties words) {
    this.locale = locale;
    this.words = words;
  }

  /**
   * The language of a tag such as {@code en}, {@code de-AT}. Where we have no words of a language
   * (we have English, German and French) the English ones are used.
   *
   * @throws IllegalArgumentException if the tag names no language
   */
  public static Language of(String tag) {
    Locale locale = Locale.forLanguageTag(tag);
    if (locale.getLanguage().isEmpty()) {
      throw new IllegalArgumentException("'%s' is not the tag of a language".formatted(tag));
    }
    return new Language(locale, wordsOf(locale.getLanguage()));
  }

  /** The tag, in its usual spelling. */
  public String tag() {
    return locale.toLanguageTag();
  }

  /** The primary part of the tag: {@code de} for {@code de-AT}. */
  public String primary() {
    return locale.getLanguage();
  }

  /** The mark between the whole part and the fraction of a decimal. */
  public char decimalMark() {
    return DecimalFormatSymbols.getInstance(locale).getDecimalSeparator();
  }

  /** A decimal with all its digits, with the true minus sign and the mark of the language. */
  public String decimal(BigDecimal value) {
    return value.toPlainString().replace('-', '−').replace('.', decimalMark());
  }

  /** A day in words and figures: {@code 26 November 2026}. */
  public String date(LocalDate day) {
    return DateTimeFormatter.ofPattern(word("date"), locale).format(day);
  }

  /** What stands between the members of an enumeration: a comma or, if need be, a semicolon. */
  public String separator(Piece.Enumeration enumeration) {
    return decimalMark() == ',' && enumeration.holdsDecimal() ? "; " : ", ";
  }

  /**
   * A word or a pattern of the outputs.
   *
   * @param key its name in the word list
   * @param values what is put in the places of a pattern
   * @throws IllegalArgumentException if the list has no such word
   */
  public String word(String key, Object... values) {
    String pattern = words.getProperty(key);
    if (pattern == null) {
      throw new IllegalArgumentException("no word for '%s'".formatted(key));
    }
    return pattern.formatted(values);
  }

  /** {@code 1 point}, {@code 4 points}. */
  public String points(int count) {
    return word(count == 1 ? "point" : "points", count);
  }

  private static Properties wordsOf(String primary) {
    Properties words = new Properties();
    read("en", words);
    read(primary, words);
    return words;
  }

  private static void read(String primary, Properties into) {
    var stream = Language.class.getResourceAsStream("words-" + primary + ".properties");
    if (stream == null) {
      return;
    }
    try (Reader reader = new InputStreamReader(stream, StandardCharsets.UTF_8)) {
      into.load(reader);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Language language && locale.equals(language.locale);
  }

  @Override
  public int hashCode() {
    return locale.hashCode();
  }

  @Override
  public String toString() {
    return tag();
  }
}
