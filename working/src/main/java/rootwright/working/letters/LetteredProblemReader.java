package rootwright.working.letters;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rootwright.algebra.notation.AskReader;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaNames;
import rootwright.algebra.notation.PolynomialReader;
import rootwright.algebra.notation.ReadAsk;
import rootwright.algebra.notation.Reading;
import rootwright.algebra.notation.Refusal;
import rootwright.algebra.notation.RootNames;
import rootwright.algebra.notation.StatedWithLetters;
import rootwright.algebra.notation.UnreadableException;
import rootwright.working.step.NumberDomain;
import rootwright.working.subject.Inquiry;

/** Reads an inquiry about a polynomial with letters in its coefficients. */
final class LetteredProblemReader {

  private static final int HIGHEST_DEGREE = 12;
  private static final int MOST_LETTERS = 5;

  private static final Pattern EXTREME =
      Pattern.compile(
          "\\s*(?:the\\s+)?(?<side>least|smallest|minimum|minimal|lowest|greatest|largest|maximum"
              + "|maximal|highest)\\s+(?:possible\\s+)?(?:value\\s+)?(?:of\\s+)?(?<rest>.*)",
          Pattern.CASE_INSENSITIVE | Pattern.DOTALL);

  private static final Set<String> GREATEST =
      Set.of("greatest", "largest", "maximum", "maximal", "highest");

  private static final Pattern ALL =
      Pattern.compile(
          "\\s*(?:all|the)?\\s*(?:possible\\s+)?(?:values?\\s+of\\s+)(?<rest>\\p{L}(?:_?\\w)?)\\s*",
          Pattern.CASE_INSENSITIVE);

  private static final Pattern WHOLE =
      Pattern.compile(
          "(?<count>(?:the )?(?:number|count) of |how many )?(?:all )?(?:the )?(?<positive>positive )?"
              + "(?<whole>integers?|integral|integer|whole numbers?|whole)?(?: numbers?)?(?: ?values?)?(?: of)?"
              + " ?(?<letter>\\p{L}(?:_?\\w)?)",
          Pattern.CASE_INSENSITIVE);

  private LetteredProblemReader() {}

  /** The polynomial of an inquiry, if it is one with letters. */
  static Optional<StatedWithLetters> polynomial(Inquiry inquiry) {
    try {
      Optional<String> unknown = inquiry.statement().unknown();
      StatedWithLetters stated =
          unknown.isPresent()
              ? PolynomialReader.readWithLetters(inquiry.polynomial(), unknown.get())
              : PolynomialReader.readWithLetters(inquiry.polynomial());
      boolean lettered = !stated.letters().isEmpty() && stated.polynomial().degreeIn(0) > 0;
      return lettered ? Optional.of(stated) : Optional.empty();
    } catch (UnreadableException other) {
      return Optional.empty();
    }
  }

  /**
   * Reads the problem.
   *
   * @throws UnreadableException if the ask or a condition cannot be read, or a limit is exceeded
   */
  static LetteredProblem read(Inquiry inquiry) throws UnreadableException {
    StatedWithLetters stated =
        polynomial(inquiry)
            .orElseThrow(
                () -> new IllegalArgumentException("no letters in " + inquiry.polynomial()));
    LetteredPolynomial polynomial =
        new LetteredPolynomial(stated.polynomial(), stated.unknown(), stated.letters());
    requireSmall(polynomial, inquiry.polynomial());
    List<String> reading = new ArrayList<>();
    stated.readings().stream().map(Reading::text).forEach(reading::add);
    Set<String> taken = new HashSet<>(polynomial.letters());
    taken.add(polynomial.unknown());

    String text = inquiry.ask();
    Matcher extreme = EXTREME.matcher(text);
    boolean isExtreme = extreme.matches();
    Matcher all = ALL.matcher(text);
    String inner = isExtreme ? extreme.group("rest") : all.matches() ? all.group("rest") : text;
    Matcher whole = WHOLE.matcher(inner.strip().replaceAll("\\s+", " "));
    boolean special =
        whole.matches()
            && polynomial.letters().contains(whole.group("letter"))
            && (whole.group("count") != null || whole.group("whole") != null);
    inner = special ? whole.group("letter") : inner;
    boolean relation = inner.strip().toLowerCase(Locale.ROOT).equals("condition");

    List<String> roots = roots(inquiry, inner, relation, polynomial, taken);
    List<Condition> conditions =
        new ConditionReader(polynomial, roots, inquiry.statement().find())
            .readAll(inquiry.conditions());
    if (special && whole.group("whole") != null) {
      NumberDomain domain =
          whole.group("positive") == null ? NumberDomain.INTEGER : NumberDomain.POSITIVE_INTEGER;
      conditions.add(new Condition.LetterIn(whole.group("letter"), domain));
    }
    LetterAsk ask;
    if (relation) {
      ask = new LetterAsk.Relation();
    } else {
      ReadAsk read = AskReader.read(inner, roots, taken);
      read.readings().stream().map(Reading::text).forEach(reading::add);
      ask = ask(read.formula(), polynomial.letters());
      if (special && whole.group("count") != null) {
        ask = new LetterAsk.NumberOf(whole.group("letter"));
      }
      if (isExtreme) {
        boolean greatest = GREATEST.contains(extreme.group("side").toLowerCase(Locale.ROOT));
        ask =
            new LetterAsk.Extreme(
                greatest ? LetterAsk.Extreme.Side.GREATEST : LetterAsk.Extreme.Side.LEAST,
                read.formula());
      }
    }
    return new LetteredProblem(polynomial, stated.stated(), roots, ask, conditions, reading);
  }

  private static LetterAsk ask(Formula formula, List<String> letters) {
    List<Formula> items =
        formula instanceof Formula.Listing listing ? listing.items() : List.of(formula);
    List<String> wanted = new ArrayList<>();
    for (Formula item : items) {
      if (!(item instanceof Formula.Name name) || !letters.contains(name.spelling())) {
        return new LetterAsk.Value(formula);
      }
      wanted.add(name.spelling());
    }
    return new LetterAsk.Letters(wanted);
  }

  /** Names that were given, else those that the ask or the first condition with names implies. */
  private static List<String> roots(
      Inquiry inquiry,
      String ask,
      boolean relation,
      LetteredPolynomial polynomial,
      Set<String> taken)
      throws UnreadableException {
    int degree = polynomial.degree();
    if (!inquiry.statement().roots().isEmpty()) {
      return RootNames.given(String.join(",", inquiry.statement().roots()), degree, taken);
    }
    List<String> usual = RootNames.usual(degree, taken);
    if (!relation) {
      List<String> implied = AskReader.read(ask, degree, taken).roots();
      if (!implied.equals(usual)) {
        return implied;
      }
    }
    for (String condition : inquiry.conditions()) {
      Optional<Formula> formula = ConditionReader.relation(condition);
      if (formula.isPresent() && !taken.containsAll(FormulaNames.in(formula.get()))) {
        return RootNames.implied(formula.get(), condition, degree, taken);
      }
    }
    return usual;
  }

  private static void requireSmall(LetteredPolynomial polynomial, String text)
      throws UnreadableException {
    if (polynomial.degree() > HIGHEST_DEGREE || polynomial.letters().size() > MOST_LETTERS) {
      throw new UnreadableException(
          new Refusal(
              "too-large",
              "The degree is %d and there are %d letters; with letters, degree %d and %d letters are the most that is worked."
                  .formatted(
                      polynomial.degree(),
                      polynomial.letters().size(),
                      HIGHEST_DEGREE,
                      MOST_LETTERS),
              text,
              0,
              "a smaller polynomial, or numbers for the letters",
              ""));
    }
  }
}
