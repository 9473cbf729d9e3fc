package rootwright.working.letters;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaNames;
import rootwright.algebra.notation.FormulaReader;
import rootwright.algebra.notation.PolynomialReader;
import rootwright.algebra.notation.Reading;
import rootwright.algebra.notation.Refusal;
import rootwright.algebra.notation.StatedWithLetters;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.working.subject.Inquiry;

/** Reads an inquiry about two polynomials: "x^2 + kx + 10 and x^2 + 5x + 2k". */
final class PairReader {

  /** Highest degree of each of them. */
  private static final int HIGHEST_DEGREE = 8;

  private static final Pattern AND = Pattern.compile("\\s+and\\s+", Pattern.CASE_INSENSITIVE);

  private static final Pattern COMMON =
      Pattern.compile(
          "(?:they |these |the polynomials |the two )*(?:have |share |there is |with )?"
              + "(?<exact>exactly |only |just )?(?<count>a|one|two|three|\\d+)?\\s*"
              + "(?:common |shared )?(?:roots?|zeros?|solutions?)(?: in common)?");

  private static final Map<String, Integer> NUMBERS = Map.of("one", 1, "two", 2, "three", 3);

  private PairReader() {}

  /** The two texts, if there are two and each may be a polynomial. */
  static Optional<List<String>> parts(Inquiry inquiry) {
    String[] parts = AND.split(inquiry.polynomial());
    return parts.length == 2 && !parts[0].isBlank() && !parts[1].isBlank()
        ? Optional.of(List.of(parts[0].strip(), parts[1].strip()))
        : Optional.empty();
  }

  /**
   * Reads the problem.
   *
   * @throws UnreadableException if a polynomial, the ask or a condition cannot be read
   */
  static PairProblem read(Inquiry inquiry) throws UnreadableException {
    List<String> parts =
        parts(inquiry)
            .orElseThrow(() -> new IllegalArgumentException("not two: " + inquiry.polynomial()));
    Optional<String> unknown = inquiry.statement().unknown();
    StatedWithLetters one =
        unknown.isPresent()
            ? PolynomialReader.readWithLetters(parts.get(0), unknown.get())
            : PolynomialReader.readWithLetters(parts.get(0));
    StatedWithLetters two = PolynomialReader.readWithLetters(parts.get(1), one.unknown());
    Set<String> letters = new LinkedHashSet<>(one.letters());
    letters.addAll(two.letters());
    List<String> all = List.copyOf(letters);
    LetteredPolynomial first = polynomial(one, all);
    LetteredPolynomial second = polynomial(two, all);
    requireDegree(first, parts.get(0));
    requireDegree(second, parts.get(1));
    List<String> reading = new ArrayList<>();
    one.readings().stream().map(Reading::text).forEach(reading::add);
    two.readings().stream().map(Reading::text).forEach(reading::add);
    List<String> names = names(inquiry, all, one.unknown());
    PairProblem.Ask ask = ask(inquiry.ask(), names, all);
    Optional<PairProblem.CommonRoots> common = Optional.empty();
    List<Condition> conditions = new ArrayList<>();
    List<Formula> shown = new ArrayList<>();
    for (String text : inquiry.conditions()) {
      Matcher matcher = COMMON.matcher(text.strip().toLowerCase(Locale.ROOT));
      if (matcher.matches()) {
        common = Optional.of(common(matcher));
        shown.add(new Formula.Words(common.get().words()));
      } else {
        List<Condition> read =
            new ConditionReader(first, List.of(), inquiry.statement().find()).read(text);
        for (Condition condition : read) {
          if (!(condition instanceof Condition.LetterIn)
              && !(condition instanceof Condition.LetterBound)) {
            throw refused(
                "With two polynomials a condition is about common roots or about the letter.",
                inquiry.statement().find(),
                "such as “exactly one common root” or k > 0");
          }
          conditions.add(condition);
          shown.add(condition.shown());
        }
      }
    }
    if (ask instanceof PairProblem.Ask.OfPairs) {
      reading.add(
          "%s is a root of the first polynomial, %s of the second; all %d pairs are taken"
              .formatted(names.get(0), names.get(1), first.degree() * second.degree()));
    }
    return new PairProblem(
        first,
        second,
        new Formula.Listing(List.of(one.stated(), two.stated())),
        names,
        ask,
        common,
        conditions,
        shown,
        reading);
  }

  private static PairProblem.CommonRoots common(Matcher matcher) {
    String count = matcher.group("count");
    boolean counted =
        matcher.group("exact") != null
            || (count != null && !count.equals("a") && !count.equals("one"));
    if (!counted || count == null) {
      return new PairProblem.CommonRoots(Optional.empty());
    }
    int number =
        count.equals("a")
            ? 1
            : NUMBERS.containsKey(count)
                ? NUMBERS.getOrDefault(count, 1)
                : new BigInteger(count).min(BigInteger.valueOf(99)).intValueExact();
    return new PairProblem.CommonRoots(Optional.of(number));
  }

  private static LetteredPolynomial polynomial(StatedWithLetters stated, List<String> all) {
    int[] images = new int[stated.names().size()];
    for (int k = 1; k < images.length; k++) {
      images[k] = all.indexOf(stated.names().get(k)) + 1;
    }
    MultivariatePolynomial renamed = stated.polynomial().rename(images);
    return new LetteredPolynomial(renamed, stated.unknown(), all);
  }

  private static List<String> names(Inquiry inquiry, List<String> letters, String unknown)
      throws UnreadableException {
    List<String> given = inquiry.statement().roots();
    if (given.size() == 2) {
      return given;
    } else if (!given.isEmpty()) {
      throw refused(
          "Two names are needed, one for a root of each polynomial.",
          String.join(",", given),
          "such as r,s");
    }
    Set<String> taken = new HashSet<>(letters);
    taken.add(unknown);
    List<String> free =
        List.of("r", "s", "t", "u", "v").stream().filter(name -> !taken.contains(name)).toList();
    return free.subList(0, 2);
  }

  private static PairProblem.Ask ask(String text, List<String> names, List<String> letters)
      throws UnreadableException {
    String words = text.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
    if (words.equals("resultant") || words.equals("the resultant")) {
      return new PairProblem.Ask.OfResultant();
    } else if (words.matches("(?:the |all )*(?:common|shared) (?:roots?|zeros?|solutions?)")) {
      return new PairProblem.Ask.OfCommonRoots();
    }
    Formula formula = FormulaReader.formula(text);
    if (formula instanceof Formula.Name name && letters.contains(name.spelling())) {
      return new PairProblem.Ask.OfLetter(name.spelling());
    }
    if (formula instanceof Formula.Aggregate aggregate
        && FormulaNames.in(aggregate.body()).equals(new HashSet<>(names))) {
      return new PairProblem.Ask.OfPairs(aggregate);
    }
    throw refused(
        "Of two polynomials one may ask: resultant, common roots, a letter, and Σ or Π of an expression in %s, a root of the first, and %s, a root of the second."
            .formatted(names.get(0), names.get(1)),
        text,
        "such as Π (%s - %s)".formatted(names.get(0), names.get(1)));
  }

  private static void requireDegree(LetteredPolynomial polynomial, String text)
      throws UnreadableException {
    if (polynomial.degree() < 1 || polynomial.degree() > HIGHEST_DEGREE) {
      throw refused(
          "The degree is %d; two polynomials are worked where both have degree 1 to %d."
              .formatted(polynomial.degree(), HIGHEST_DEGREE),
          text,
          "a polynomial of degree 1 to " + HIGHEST_DEGREE);
    }
  }

  static UnreadableException refused(String sentence, String text, String expected) {
    return new UnreadableException(new Refusal("pair-unread", sentence, text, 0, expected, ""));
  }
}
