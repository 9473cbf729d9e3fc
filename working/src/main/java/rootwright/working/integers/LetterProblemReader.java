package rootwright.working.integers;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rootwright.algebra.notation.PolynomialReader;
import rootwright.algebra.notation.Refusal;
import rootwright.algebra.notation.StatedWithLetters;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.step.NumberDomain;
import rootwright.working.subject.Inquiry;
import rootwright.working.subject.Quality;

/** Reads “x² + bx + 36; number of b if distinct integer roots”. */
final class LetterProblemReader {

  private static final Pattern WISH =
      Pattern.compile(
          "(?<front>.*?)\\b(integer|integral|whole)\\b(?<middle>.*?)\\b(roots?|solutions?)\\b(?<back>.*)"
              + "|(?<other>.*?)\\b(roots?|solutions?)\\b(?<rest>.*?)\\b(integers?|integral|whole)\\b.*",
          Pattern.CASE_INSENSITIVE);
  private static final Pattern OTHER =
      Pattern.compile(
          ".*\\b(consecutive|ratio|differ|difference|exceeds?|prime|even|odd|sum|product|twice|times|square|progression)\\b.*"
              + "|(?!\\s*\\p{L}\\s*[<>]\\s*0\\s*$).*[=<>≤≥≠].*",
          Pattern.CASE_INSENSITIVE);
  private static final Pattern COUNT =
      Pattern.compile("(the )?number of.*|how many.*|count.*", Pattern.CASE_INSENSITIVE);

  /** Longer texts are not held against the patterns. */
  private static final int LONGEST = 200;

  private LetterProblemReader() {}

  /** Whether a condition asks for integer roots, and for nothing else of them. */
  static boolean isWish(String condition) {
    return condition.length() < LONGEST && WISH.matcher(condition).matches() && !isOther(condition);
  }

  /** Whether a condition is one of those that are not read beside integer roots. */
  static boolean isOther(String condition) {
    return OTHER.matcher(condition).matches();
  }

  /**
   * The problem.
   *
   * @throws UnreadableException if the polynomial has not exactly one letter, linear, or a
   *     condition is not understood
   */
  static LetterProblem read(Inquiry inquiry) throws UnreadableException {
    String text = inquiry.polynomial();
    StatedWithLetters stated =
        inquiry.statement().unknown().isPresent()
            ? PolynomialReader.readWithLetters(text, inquiry.statement().unknown().get())
            : PolynomialReader.readWithLetters(text);
    if (stated.letters().size() != 1) {
      throw new UnreadableException(
          new Refusal(
              "letters",
              "Integer roots are sought for polynomials with one letter besides %s; here are %d."
                  .formatted(stated.unknown(), stated.letters().size()),
              text,
              0,
              "one letter among the coefficients",
              ""));
    }
    List<MultivariatePolynomial> byLetter = stated.polynomial().coefficientsIn(1);
    if (byLetter.size() != 2 || byLetter.get(1).isZero()) {
      throw new UnreadableException(
          new Refusal(
              "too-hard",
              "The letter %s occurs in a higher power; integer roots are sought where it is linear."
                  .formatted(stated.letters().get(0)),
              text,
              0,
              "a polynomial that is linear in " + stated.letters().get(0),
              ""));
    }
    Polynomial base = inOne(byLetter.get(0));
    Polynomial slope = inOne(byLetter.get(1));
    Rational common = Rational.of(base.denominator().multiply(slope.denominator()));
    base = base.times(common);
    slope = slope.times(common);
    if (slope.degree() >= base.degree()) {
      throw new UnreadableException(
          new Refusal(
              "lead-letter",
              "The lead coefficient holds the letter; integer roots are sought where it is a number.",
              text,
              0,
              "a lead coefficient without a letter",
              ""));
    }
    return conditions(inquiry, stated, base, slope);
  }

  private static LetterProblem conditions(
      Inquiry inquiry, StatedWithLetters stated, Polynomial base, Polynomial slope)
      throws UnreadableException {
    String letter = stated.letters().get(0);
    Set<Quality> ofRoots = new HashSet<>();
    Set<Quality> ofLetter = new HashSet<>();
    boolean one = false;
    for (String condition : inquiry.conditions()) {
      if (isWish(condition)) {
        words(condition).stream().map(Quality::of).flatMap(Optional::stream).forEach(ofRoots::add);
        one |= asksForOne(condition);
      } else if (condition.matches("\\s*" + Pattern.quote(letter) + "\\s*[<>]\\s*0\\s*")) {
        ofLetter.add(condition.contains(">") ? Quality.POSITIVE : Quality.NEGATIVE);
      } else if (Set.copyOf(words(condition)).contains(letter.toLowerCase(Locale.ROOT))
          && words(condition).stream().anyMatch(word -> Quality.of(word).isPresent())) {
        words(condition).stream().map(Quality::of).flatMap(Optional::stream).forEach(ofLetter::add);
      } else {
        String find = inquiry.statement().find();
        int at = Math.max(0, find.indexOf(condition));
        throw new UnreadableException(
            new Refusal(
                "condition-unread",
                "“%s” is not understood beside integer roots.".formatted(condition),
                find,
                find.codePointCount(0, at),
                "such as “distinct integer roots” or “%s positive”".formatted(letter),
                ""));
      }
    }
    Optional<NumberDomain> domain = Quality.domain(ofLetter);
    return new LetterProblem(
        base,
        slope,
        stated.unknown(),
        letter,
        stated.stated(),
        new LetterProblem.RootWish(
            ofRoots.contains(Quality.DISTINCT), ofRoots.contains(Quality.POSITIVE), one),
        domain,
        COUNT.matcher(inquiry.ask()).matches(),
        inquiry.conditions());
  }

  private static boolean asksForOne(String condition) {
    Matcher matcher = WISH.matcher(condition);
    String words = " " + condition.toLowerCase(Locale.ROOT) + " ";
    return matcher.matches()
        && !words.contains(" roots ")
        && !words.contains(" solutions ")
        && (words.contains(" root ") || words.contains(" solution "));
  }

  private static List<String> words(String condition) {
    return List.of(condition.toLowerCase(Locale.ROOT).split("[^\\p{L}-]+"));
  }

  private static Polynomial inOne(MultivariatePolynomial polynomial) {
    List<Rational> ascending = new ArrayList<>();
    Collection<MultivariatePolynomial> coefficients = polynomial.coefficientsIn(0);
    coefficients.forEach(c -> ascending.add(c.at(List.of(Rational.ZERO, Rational.ZERO))));
    return Polynomial.ofAscending(ascending);
  }
}
