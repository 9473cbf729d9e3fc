package rootwright.working.interpolation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaExpansion;
import rootwright.algebra.notation.FormulaReader;
import rootwright.algebra.notation.Refusal;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.subject.Inquiry;

/** Reads {@code P(6) if P has degree 4, P(k) = 1/k for k = 1..5}. */
final class ValueDataReader {

  private static final int HIGHEST_DEGREE = 20;
  private static final int MOST_POINTS = 40;
  private static final int LONGEST = 600;

  private static final Pattern ASK =
      Pattern.compile("(?i:find |what is |the value of )*(?<f>[PQfg])\\((?<at>[^()]+)\\)[.?]?");
  private static final Pattern BARE = Pattern.compile("-?\\d+(?:/\\d+)?|…|\\.{2,3}");
  private static final Pattern RULE =
      Pattern.compile(
          "(?<values>.+?)\\s+for\\s+(?:all\\s+)?(?<k>[a-z])\\s*(?:=|from|in)\\s*(?<places>.+)");
  private static final Pattern RANGE =
      Pattern.compile("(-?\\d{1,6})\\s*,?\\s*(?:\\.{2,3}|…|to)\\s*,?\\s*(-?\\d{1,6})");
  private static final Map<String, Integer> DEGREES =
      Map.of("linear", 1, "quadratic", 2, "cubic", 3, "quartic", 4, "quintic", 5, "sextic", 6);
  private static final Set<String> SMALL =
      Set.of(
          "is",
          "a",
          "an",
          "the",
          "polynomial",
          "of",
          "has",
          "have",
          "with",
          "real",
          "rational",
          "integer",
          "coefficients",
          "degree",
          "lead",
          "leading",
          "coefficient");

  private final Inquiry inquiry;
  private final String function;
  private final Map<Rational, Rational> values = new LinkedHashMap<>();
  private Optional<Integer> degree = Optional.empty();
  private Optional<Rational> lead = Optional.empty();
  private Optional<ValueData.Rule> rule = Optional.empty();
  private int rules;
  private Optional<String> conflict = Optional.empty();

  private ValueDataReader(Inquiry inquiry, String function) {
    this.inquiry = inquiry;
    this.function = function;
  }

  /** What was read; the conflict says why no polynomial takes the values. */
  record Read(ValueData data, Optional<String> conflict) {}

  /** Whether an inquiry has this form. */
  static boolean isLike(Inquiry inquiry) {
    if (!inquiry.polynomial().isEmpty()
        || inquiry.conditions().isEmpty()
        || inquiry.statement().find().length() > LONGEST) {
      return false;
    }
    Matcher ask = ASK.matcher(inquiry.ask().strip());
    return ask.matches()
        && inquiry.conditions().stream()
            .anyMatch(text -> text.strip().startsWith(ask.group("f") + "("));
  }

  static Read read(Inquiry inquiry) throws UnreadableException {
    Matcher ask = ASK.matcher(inquiry.ask().strip());
    if (!ask.matches()) {
      throw new IllegalStateException(inquiry.ask());
    }
    return new ValueDataReader(inquiry, ask.group("f")).all(ask.group("at"));
  }

  private Read all(String place) throws UnreadableException {
    for (String condition : joined(inquiry.conditions())) {
      if (condition.contains("=")) {
        readValues(condition);
      } else {
        readWords(condition);
      }
    }
    Rational at = number(FormulaReader.formula(place), place);
    int n =
        degree.orElseThrow(
            () -> refused(inquiry.conditions().get(0), "The degree of the polynomial is missing."));
    if (n < 1 || n > HIGHEST_DEGREE) {
      throw refused(
          inquiry.conditions().get(0),
          "The degree is %d; degrees 1 to %d are worked.".formatted(n, HIGHEST_DEGREE));
    } else if (lead.filter(Rational::isZero).isPresent()) {
      throw refused(inquiry.conditions().get(0), "The lead coefficient cannot be zero.");
    } else if (values.containsKey(at)) {
      throw refused(inquiry.ask(), "That value is given already; ask for another one.");
    }
    List<ValueData.Point> points = new ArrayList<>();
    values.forEach((x, y) -> points.add(new ValueData.Point(x, y)));
    Optional<ValueData.Rule> only = rules == 1 ? rule : Optional.empty();
    return new Read(new ValueData(function, n, lead, points, only, at), conflict);
  }

  /** The conditions, a list of places that commas took apart put together again. */
  private static List<String> joined(List<String> conditions) {
    List<String> joined = new ArrayList<>();
    for (String condition : conditions) {
      int last = joined.size() - 1;
      if (last >= 0 && BARE.matcher(condition).matches() && joined.get(last).contains(" for ")) {
        joined.set(last, joined.get(last) + ", " + condition);
      } else {
        joined.add(condition);
      }
    }
    return joined;
  }

  private void readWords(String condition) throws UnreadableException {
    for (String word : condition.replaceAll("\\.$", "").strip().split("\\s+")) {
      String lower = word.toLowerCase(Locale.ROOT);
      if (lower.equals("monic")) {
        lead = Optional.of(Rational.ONE);
      } else if (DEGREES.containsKey(lower)) {
        degree = Optional.of(DEGREES.get(lower));
      } else if (lower.matches("\\d{1,6}") && !lower.equals("0") && condition.contains("degree")) {
        degree = Optional.of(Integer.parseInt(lower));
      } else if (lower.matches("-?\\d{1,9}") && condition.contains("coefficient")) {
        lead = Optional.of(Rational.parse(lower));
      } else if (!SMALL.contains(lower) && !word.equals(function)) {
        throw refused(condition, "“%s” says nothing of the polynomial here.".formatted(word));
      }
    }
  }

  private void readValues(String condition) throws UnreadableException {
    Matcher matcher = RULE.matcher(condition.replaceAll("\\.$", ""));
    rules++;
    if (!matcher.matches()) {
      String[] sides = condition.split("=", -1);
      Formula last = FormulaReader.formula(sides[sides.length - 1]);
      for (int k = 0; k < sides.length - 1; k++) {
        put(number(argument(sides[k], condition), condition), number(last, condition));
      }
      rules++;
      return;
    }
    String letter = matcher.group("k");
    String[] sides = matcher.group("values").split("=", -1);
    if (sides.length != 2 || !argument(sides[0], condition).equals(Formula.name(letter))) {
      throw refused(
          condition,
          "Before “for” an equation for %s(%s) is expected.".formatted(function, letter));
    }
    Formula expression = FormulaReader.formula(sides[1]);
    for (Rational place : places(matcher.group("places"), condition)) {
      Formula put =
          expression.rewrite(
              part -> part.equals(Formula.name(letter)) ? Formula.number(place) : part);
      put(place, number(put, condition));
    }
    rule = Optional.of(new ValueData.Rule(letter, expression));
  }

  private Formula argument(String side, String condition) throws UnreadableException {
    Formula formula = FormulaReader.formula(side);
    if (formula instanceof Formula.Application application
        && application.function().equals(function)
        && application.arguments().size() == 1) {
      return application.arguments().get(0);
    }
    throw refused(condition, "A value is given as %s(1) = 2.".formatted(function));
  }

  private List<Rational> places(String text, String condition) throws UnreadableException {
    List<Rational> places = new ArrayList<>();
    Matcher range = RANGE.matcher(text.strip());
    if (range.matches()) {
      int from = Integer.parseInt(range.group(1));
      int to = Integer.parseInt(range.group(2));
      if (to < from || to - from >= MOST_POINTS) {
        throw refused(condition, "From 1 to %d places are expected.".formatted(MOST_POINTS));
      }
      for (int k = from; k <= to; k++) {
        places.add(Rational.of(k));
      }
      return places;
    }
    String[] pieces = text.split(",", -1);
    for (int k = 0; k < pieces.length; k++) {
      boolean dots = pieces[k].strip().matches("…|\\.{2,3}");
      if (dots && k > 0 && k + 1 < pieces.length) {
        Rational last = number(FormulaReader.formula(pieces[k + 1]), condition);
        Rational next = places.get(places.size() - 1).plus(Rational.ONE);
        while (next.compareTo(last) < 0 && places.size() <= MOST_POINTS) {
          places.add(next);
          next = next.plus(Rational.ONE);
        }
      } else {
        places.add(number(FormulaReader.formula(pieces[k]), condition));
      }
    }
    return places;
  }

  private void put(Rational at, Rational value) throws UnreadableException {
    Rational before = values.getOrDefault(at, value);
    if (!before.equals(value)) {
      conflict = Optional.of("%s(%s) has two values".formatted(function, at));
    }
    values.put(at, value);
    if (values.size() > MOST_POINTS) {
      throw refused(inquiry.ask(), "Up to %d values are worked.".formatted(MOST_POINTS));
    }
  }

  private Rational number(Formula formula, String text) throws UnreadableException {
    Polynomial value = FormulaExpansion.polynomial(formula, "x");
    if (value.degree() > 0) {
      throw refused(text, "A number is expected where a letter stands.");
    }
    return value.coefficient(0);
  }

  private UnreadableException refused(String part, String sentence) {
    String find = inquiry.statement().find();
    return new UnreadableException(
        new Refusal(
            "condition-unread",
            sentence,
            find,
            find.codePointCount(0, Math.max(0, find.indexOf(part))),
            "the degree, and values such as P(k) = k^2 for k = 1..4",
            "P(6) if P has degree 4, P(k) = 1/k for k = 1..5"));
  }
}
