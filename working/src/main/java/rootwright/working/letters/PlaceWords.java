package rootwright.working.letters;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.working.step.RootPlace;

/**
 * Reads where roots lie: “at least one root is real”, “roots of opposite sign”, “2 lies between the
 * roots”.
 */
final class PlaceWords {

  private static final String NUMBER = "-?\\d+(?:/\\d+|\\.\\d+)?|zero|one|two|three|four|five";
  private static final String PLACE =
      "positive(?: and real)?|real and positive|real positive|positive real|negative(?: and real)?"
          + "|real and negative|real negative|negative real|real"
          + "|(?:greater|larger|bigger|more|higher) than (?:"
          + NUMBER
          + ")|(?:less|smaller|lower) than (?:"
          + NUMBER
          + ")|(?:exceeds?|exceeding|above|>) ?(?:"
          + NUMBER
          + ")|(?:below|under|<) ?(?:"
          + NUMBER
          + ")|between (?:"
          + NUMBER
          + ") and (?:"
          + NUMBER
          + ")|(?:in|inside) (?:open )?(?:interval )?\\(? ?(?:"
          + NUMBER
          + ") ?[,;] ?(?:"
          + NUMBER
          + ") ?\\)";
  private static final String COUNT = "no|none|one|single|unique|some|two|three|four|five|six|\\d+";

  private static final Pattern BETWEEN =
      Pattern.compile(
          "(?:between |in |inside )(?:open )?(?:interval )?\\(? ?(?<low>"
              + NUMBER
              + ") ?(?:and|,|;) ?(?<high>"
              + NUMBER
              + ") ?\\)?");
  private static final Pattern LIMIT = Pattern.compile("(?<way>.*?) ?(?<end>" + NUMBER + ")");
  private static final Pattern ALL =
      Pattern.compile("roots (?<after>" + PLACE + ")|(?<before>" + PLACE + ") roots");
  private static final Pattern COUNTED =
      Pattern.compile(
          "(?<amount>exactly |only |at least |at most )?(?<count>"
              + COUNT
              + ") (?<distinct>distinct )?(?:(?<before>"
              + PLACE
              + ")(?<late> distinct)? roots?|roots? (?<after>"
              + PLACE
              + "))");
  private static final Pattern SOME =
      Pattern.compile("(?<before>" + PLACE + ") root|root (?<after>" + PLACE + ")");
  private static final Pattern NOT_REAL =
      Pattern.compile(
          "roots (?:not real|non-?real|imaginary)|(?:non-?real|imaginary|not real) roots"
              + "|no roots real|none roots real|no root real|neither root real");
  private static final Pattern COMPLEX = Pattern.compile("complex roots|roots complex");
  private static final Pattern TWO_PLACES =
      Pattern.compile(
          "(?:exactly )?one (?:root )?(?<first>"
              + PLACE
              + ")(?: root)?,? (?:and|but) (?:one|other) (?:root )?(?<second>"
              + PLACE
              + ")(?: root)?");
  private static final Pattern OPPOSITE =
      Pattern.compile(
          "(?:two )?roots (?:in |differ in )?(?:opposite|distinct|unlike|contrary)? ?(?:in )?sign"
              + "|roots opposite in sign|roots differ in sign");
  private static final Pattern LARGER =
      Pattern.compile(
          "(?<way>larger|greater|bigger|smaller|lesser|largest|greatest|smallest|least) root =? ?(?<value>"
              + NUMBER
              + ")");
  private static final Pattern SAME_SIGN =
      Pattern.compile("roots (?:real )?(?:and )?(?:same|like|equal) sign");
  private static final Pattern SEPARATED =
      Pattern.compile(
          "(?<before>"
              + NUMBER
              + ") (?:between|separates) (?:two )?roots"
              + "|roots (?:on )?(?:either|opposite|distinct) sides? (?<after>"
              + NUMBER
              + ")");

  private final int degree;

  /**
   * @param degree of the polynomial
   */
  PlaceWords(int degree) {
    this.degree = degree;
  }

  /** What bare words ({@link ConditionText#bare}) say of places, if they say it. */
  Optional<List<Condition>> read(String words) {
    Matcher matcher = ALL.matcher(words);
    if (matcher.matches()) {
      return place(either(matcher)).map(place -> List.of(one(RootsPlaced.all(place))));
    }
    matcher = COUNTED.matcher(words);
    if (matcher.matches()) {
      return counted(matcher).map(List::of);
    }
    matcher = SOME.matcher(words);
    if (matcher.matches()) {
      return place(either(matcher))
          .map(place -> List.of(one(new RootsPlaced(place, RootsPlaced.Amount.AT_LEAST, 1))));
    }
    if (NOT_REAL.matcher(words).matches() || (degree == 2 && COMPLEX.matcher(words).matches())) {
      return Optional.of(
          List.of(one(new RootsPlaced(RootPlace.REAL, RootsPlaced.Amount.EXACTLY, 0))));
    }
    matcher = TWO_PLACES.matcher(words);
    if (matcher.matches()) {
      Optional<RootPlace> first = place(matcher.group("first"));
      Optional<RootPlace> second = place(matcher.group("second"));
      return first.isPresent() && second.isPresent() && !first.equals(second)
          ? Optional.of(
              List.of(all("%s and %s", exactlyOne(first.get()), exactlyOne(second.get()))))
          : Optional.empty();
    }
    Matcher larger = LARGER.matcher(words);
    if (larger.matches()) {
      return extreme(larger);
    }
    return signs(words).map(List::of);
  }

  /** “The larger root is 4”: 4 is a root, and no root is greater. */
  private Optional<List<Condition>> extreme(Matcher matcher) {
    boolean above = matcher.group("way").matches("larger|greater|bigger|largest|greatest");
    return ConditionText.number(matcher.group("value"))
        .map(
            end ->
                List.of(
                    new Condition.RootIs(Formula.number(end)),
                    new Condition.Placed(
                        "it is the %s root".formatted(matcher.group("way")),
                        List.of(
                            List.of(
                                new RootsPlaced(
                                    above ? RootPlace.above(end) : RootPlace.below(end),
                                    RootsPlaced.Amount.EXACTLY,
                                    0))))));
  }

  private Optional<Condition> signs(String words) {
    if (degree == 2 && OPPOSITE.matcher(words).matches()) {
      return Optional.of(
          new Condition.Placed(
              "the roots are real and of opposite sign",
              List.of(List.of(exactlyOne(RootPlace.POSITIVE), exactlyOne(RootPlace.NEGATIVE)))));
    }
    if (SAME_SIGN.matcher(words).matches()) {
      return Optional.of(
          new Condition.Placed(
              "the roots are real and of the same sign",
              List.of(
                  List.of(RootsPlaced.all(RootPlace.POSITIVE)),
                  List.of(RootsPlaced.all(RootPlace.NEGATIVE)))));
    }
    Matcher matcher = SEPARATED.matcher(words);
    if (degree == 2 && matcher.matches()) {
      return ConditionText.number(either(matcher))
          .map(
              end ->
                  all(
                      "%s and %s",
                      exactlyOne(RootPlace.below(end)), exactlyOne(RootPlace.above(end))));
    }
    return Optional.empty();
  }

  private Optional<Condition> counted(Matcher matcher) {
    Optional<RootPlace> place = place(either(matcher));
    Optional<Integer> count = ConditionText.count(matcher.group("count"));
    if (place.isEmpty() || count.isEmpty()) {
      return Optional.empty();
    }
    String how = matcher.group("amount") == null ? "" : matcher.group("amount").strip();
    RootsPlaced.Amount amount =
        how.equals("at least") || matcher.group("count").equals("some")
            ? RootsPlaced.Amount.AT_LEAST
            : how.equals("at most") ? RootsPlaced.Amount.AT_MOST : RootsPlaced.Amount.EXACTLY;
    return Optional.of(one(new RootsPlaced(place.get(), amount, count.get())));
  }

  private static RootsPlaced exactlyOne(RootPlace place) {
    return new RootsPlaced(place, RootsPlaced.Amount.EXACTLY, 1);
  }

  private Condition one(RootsPlaced placed) {
    return all("%s", placed);
  }

  private Condition all(String sentence, RootsPlaced... placed) {
    Object[] words = List.of(placed).stream().map(each -> each.words(degree)).toArray();
    return new Condition.Placed(sentence.formatted(words), List.of(List.of(placed)));
  }

  private static String either(Matcher matcher) {
    return matcher.group("before") != null ? matcher.group("before") : matcher.group("after");
  }

  private static Optional<RootPlace> place(String words) {
    if (words.contains("positive")) {
      return Optional.of(RootPlace.POSITIVE);
    } else if (words.contains("negative")) {
      return Optional.of(RootPlace.NEGATIVE);
    } else if (words.equals("real")) {
      return Optional.of(RootPlace.REAL);
    }
    Matcher between = BETWEEN.matcher(words);
    if (between.matches()) {
      Optional<Rational> low = ConditionText.number(between.group("low"));
      Optional<Rational> high = ConditionText.number(between.group("high"));
      return low.isPresent() && high.isPresent() && low.get().compareTo(high.get()) < 0
          ? Optional.of(RootPlace.between(low.get(), high.get()))
          : Optional.empty();
    }
    Matcher limit = LIMIT.matcher(words);
    if (!limit.matches()) {
      return Optional.empty();
    }
    boolean below = limit.group("way").matches("(?:less|smaller|lower) than|below|under|<");
    return ConditionText.number(limit.group("end"))
        .map(end -> below ? RootPlace.below(end) : RootPlace.above(end));
  }
}
