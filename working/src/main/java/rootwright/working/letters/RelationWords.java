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
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.notation.UnreadableException;

/**
 * Reads what is said of roots among themselves: “the roots differ by 5”, “one root exceeds the
 * other by 3”, “the roots are consecutive integers”, “the sum of the squares of the roots is 20”.
 */
final class RelationWords {

  private static final Pattern DIFFERENCE =
      Pattern.compile(
          "(?:absolute |positive )?(?:difference|distance) (?:between )?(?<two>two )?roots ?=? ?(?<by>.+)"
              + "|(?:two )?roots (?:differ by|difference) (?<after>.+)");
  private static final Pattern EXCEEDS = Pattern.compile("one root exceeds other by (?<by>.+)");
  private static final Pattern RELATED = Pattern.compile("one root =? ?(?<how>.+) other");
  private static final Pattern CONSECUTIVE =
      Pattern.compile(
          "(?:two |three )?roots (?:two |three )?(?:positive |negative )?consecutive"
              + " (?<kind>positive |negative |even |odd )*(?:integers|numbers)");
  private static final Pattern RATIO =
      Pattern.compile(
          "(?:two )?roots (?:in )?ratio (?<after>.+)|ratio (?:between )?(?:two )?roots ?=? ?(?<before>.+)");
  private static final Pattern OPPOSITE =
      Pattern.compile(
          "(?:two )?roots (?:numerically )?(?:equal|same)(?: in)?(?: size)?,? (?:and|but) (?:opposite|distinct)"
              + "(?: (?:in )?sign)?|(?:two )?roots (?:opposites?|opposite numbers|negatives|additive inverses)"
              + "(?: other)?|(?:two )?roots differ only in sign");
  private static final Pattern RECIPROCAL =
      Pattern.compile(
          "(?:two )?roots (?:mutually )?(?:reciprocals?|multiplicative inverses|inverses?)(?: other)?"
              + "|reciprocal roots");
  private static final Pattern EQUAL =
      Pattern.compile(
          "roots (?:real and )?(?:equal|coincide|coincident)(?: and real)?|perfect square");
  private static final Pattern TWO_EQUAL =
      Pattern.compile(
          "two (?:real )?(?:and )?(?:equal|coincident) (?:real )?roots|two roots (?:equal|coincide)"
              + "|real (?:and )?equal roots|equal and real roots");
  private static final Pattern THREE_EQUAL =
      Pattern.compile("three equal roots|three roots equal|triple root");
  private static final Pattern REAL_DISTINCT =
      Pattern.compile(
          "roots real(?:,|,? and)? distinct|roots distinct(?:,|,? and)? real"
              + "|(?:real(?:,| and)? distinct|distinct(?:,| and)? real) roots");
  private static final Pattern OF_TWO =
      Pattern.compile(
          "(?<what>sum|product) two roots ?=? ?(?<value>.+)"
              + "|two roots (?<other>sum|product) ?=? ?(?<after>.+)"
              + "|two roots (?:add up to|sum to) (?<total>.+)");
  private static final Pattern RIGHT_TRIANGLE =
      Pattern.compile("roots (?:lengths )?sides?(?: lengths)? right(?:-angled)? triangle");
  private static final Pattern NAMED =
      Pattern.compile("(?<names>[^ ]+(?: and [^ ]+)+) (?<sort>.+)");
  private static final Pattern LISTED =
      Pattern.compile("(?:two |two of )?roots (?<after>.+ and .+)|(?<before>.+ and .+) roots");
  private static final Pattern MORE =
      Pattern.compile(
          "(?<by>.+) (?<way>more|larger|greater|bigger|higher|less|smaller|lower) than ?(?<rest>.*)");
  private static final Pattern TIMES =
      Pattern.compile("(?<factor>.+?)(?: times| as)?(?: (?:as )?(?:large|big|great)(?: as)?)?");

  private final LetteredPolynomial polynomial;
  private final List<String> roots;

  RelationWords(LetteredPolynomial polynomial, List<String> roots) {
    this.polynomial = polynomial;
    this.roots = roots;
  }

  /** What bare words ({@link ConditionText#bare}) say, if they say something of this kind. */
  Optional<List<Condition>> read(String words) {
    int n = roots.size();
    if (n < 2) {
      return Optional.empty();
    }
    Matcher matcher = DIFFERENCE.matcher(words);
    if (matcher.matches()) {
      String by = matcher.group("by") != null ? matcher.group("by") : matcher.group("after");
      return value(by).map(this::difference);
    }
    matcher = EXCEEDS.matcher(words);
    if (matcher.matches()) {
      return value(matcher.group("by"))
          .map(by -> zero("one root exceeds another by " + text(by), name(0), name(1).plus(by)));
    }
    matcher = CONSECUTIVE.matcher(words);
    if (matcher.matches()) {
      return Optional.of(consecutive(words));
    }
    matcher = RATIO.matcher(words);
    if (matcher.matches()) {
      return ratio(
          matcher.group("after") != null ? matcher.group("after") : matcher.group("before"));
    }
    if (OPPOSITE.matcher(words).matches()) {
      return Optional.of(
          zero(
              of(n, "equal in size and opposite in sign"),
              name(0).plus(name(1)),
              Formula.number(0)));
    } else if (RECIPROCAL.matcher(words).matches()) {
      return Optional.of(
          zero(of(n, "reciprocals of each other"), name(0).times(name(1)), Formula.number(1)));
    } else if (THREE_EQUAL.matcher(words).matches() && n >= 3) {
      return Optional.of(List.of(equal(3, "there is a triple root")));
    } else if (TWO_EQUAL.matcher(words).matches()) {
      return Optional.of(List.of(equal(2, "there is a repeated root")));
    } else if (EQUAL.matcher(words).matches() && (n == 2 || !words.contains("square"))) {
      return Optional.of(
          List.of(equal(n, n == 2 ? "there is a repeated root" : "all roots are equal")));
    } else if (REAL_DISTINCT.matcher(words).matches()) {
      return Optional.of(
          List.of(
              new Condition.AllRoots(RootNature.REAL),
              new Condition.AllRoots(RootNature.DISTINCT)));
    } else if (RIGHT_TRIANGLE.matcher(words).matches() && n == 3) {
      return Optional.of(
          List.of(
              zeros(
                  "the roots are the sides of a right triangle",
                  name(0).power(2).plus(name(1).power(2)),
                  name(2).power(2)),
              new Condition.AllRoots(RootNature.POSITIVE)));
    }
    return related(words)
        .or(() -> ofTwo(words))
        .or(() -> named(words))
        .or(() -> discriminant(words))
        .or(() -> listed(words));
  }

  private Optional<List<Condition>> related(String words) {
    Matcher matcher = RELATED.matcher(words);
    if (!matcher.matches()) {
      return Optional.empty();
    }
    return image(matcher.group("how").strip(), name(1))
        .map(
            image -> {
              Formula equation = Formula.equation(name(0), image);
              return zero(text(equation), name(0), image);
            });
  }

  /** What a root becomes: “3 more than twice”, “square”, “negative”. */
  private Optional<Formula> image(String how, Formula root) {
    if (how.isEmpty()) {
      return Optional.of(root);
    }
    Matcher more = MORE.matcher(how);
    if (more.matches()) {
      boolean adds = !more.group("way").matches("less|smaller|lower");
      Optional<Formula> by = value(more.group("by"));
      Optional<Formula> rest = image(more.group("rest").strip(), root);
      return by.isPresent() && rest.isPresent() && !more.group("by").endsWith("times")
          ? Optional.of(adds ? rest.get().plus(by.get()) : rest.get().minus(by.get()))
          : timesMore(more, root);
    }
    return RelatedRoot.of(how, root)
        .or(() -> RelatedRoot.of("the " + how, root))
        .or(
            () -> {
              Matcher times = TIMES.matcher(how);
              return times.matches()
                  ? RelatedRoot.of(times.group("factor"), root)
                      .or(() -> value(times.group("factor")).map(factor -> factor.times(root)))
                  : Optional.empty();
            });
  }

  /** “Three times larger than the other” is taken as three times the other. */
  private Optional<Formula> timesMore(Matcher more, Formula root) {
    return more.group("by").endsWith("times") && more.group("rest").isBlank()
        ? image(more.group("by"), root)
        : Optional.empty();
  }

  private List<Condition> difference(Formula by) {
    if (roots.size() > 2) {
      return zero("two roots differ by " + text(by), name(0), name(1).plus(by));
    }
    Formula square =
        by instanceof Formula.Numeral number
            ? Formula.number(number.value().power(2))
            : by.power(2);
    return zero("the roots differ by " + text(by), name(0).minus(name(1)).power(2), square);
  }

  private List<Condition> consecutive(String words) {
    boolean even = words.contains(" even");
    boolean odd = words.contains(" odd");
    Formula step = Formula.number(even || odd ? 2 : 1);
    List<Formula> zeros = new ArrayList<>();
    List<Formula> equations = new ArrayList<>();
    for (int k = 0; k + 1 < roots.size(); k++) {
      zeros.add(name(k + 1).minus(name(k)).minus(step));
      equations.add(Formula.equation(name(k + 1), name(k).plus(step)));
    }
    String kind = even ? "even " : odd ? "odd " : "";
    List<Condition> all = new ArrayList<>();
    all.add(
        new Condition.Zeros(
            "the roots are consecutive %sintegers".formatted(kind), zeros, equations));
    all.add(
        new Condition.AllRoots(even ? RootNature.EVEN : odd ? RootNature.ODD : RootNature.INTEGER));
    if (words.contains("positive")) {
      all.add(new Condition.AllRoots(RootNature.POSITIVE_INTEGER));
    } else if (words.contains("negative")) {
      all.add(new Condition.AllRoots(RootNature.NEGATIVE));
    }
    return all;
  }

  private Optional<List<Condition>> ratio(String words) {
    List<Formula> parts = new ArrayList<>();
    for (String part : words.split(" ?: ?| to ", -1)) {
      Optional<Formula> value = value(part);
      if (value.isEmpty()) {
        return Optional.empty();
      }
      parts.add(value.get());
    }
    if (parts.size() == 1) {
      parts.add(Formula.number(1));
    }
    if (parts.size() > roots.size()) {
      return Optional.empty();
    }
    List<Formula> zeros = new ArrayList<>();
    List<Formula> equations = new ArrayList<>();
    for (int k = 0; k + 1 < parts.size(); k++) {
      Formula left = parts.get(k + 1).times(name(k));
      Formula right = parts.get(k).times(name(k + 1));
      zeros.add(left.minus(right));
      equations.add(Formula.equation(left, right));
    }
    String ratio = String.join(" : ", parts.stream().map(RelationWords::text).toList());
    String whose = parts.size() < roots.size() ? "two roots" : "the roots";
    return Optional.of(
        List.of(
            new Condition.Zeros(
                "%s are in the ratio %s".formatted(whose, ratio), zeros, equations)));
  }

  private Optional<List<Condition>> ofTwo(String words) {
    Matcher matcher = OF_TWO.matcher(words);
    if (!matcher.matches() || roots.size() < 3) {
      return Optional.empty();
    }
    boolean product =
        "product".equals(matcher.group("what")) || "product".equals(matcher.group("other"));
    String typed =
        matcher.group("value") != null
            ? matcher.group("value")
            : matcher.group("after") != null ? matcher.group("after") : matcher.group("total");
    Formula made = product ? name(0).times(name(1)) : name(0).plus(name(1));
    return value(typed)
        .map(
            value ->
                zero(
                    "%s of two roots is %s"
                        .formatted(product ? "the product" : "the sum", text(value)),
                    made,
                    value));
  }

  /** “Discriminant positive”, for a quadratic. */
  private Optional<List<Condition>> discriminant(String words) {
    if (roots.size() != 2) {
      return Optional.empty();
    }
    return switch (words) {
      case "discriminant positive" ->
          Optional.of(
              List.of(
                  new Condition.AllRoots(RootNature.REAL),
                  new Condition.AllRoots(RootNature.DISTINCT)));
      case "discriminant negative" -> new PlaceWords(2).read("roots not real");
      case "discriminant zero", "discriminant 0", "discriminant = 0" ->
          Optional.of(List.of(equal(2, "there is a repeated root")));
      default -> Optional.empty();
    };
  }

  /** “Roots a and b”, “1 and 2 roots”, “two roots 1 and 2”. */
  private Optional<List<Condition>> listed(String words) {
    Matcher matcher = LISTED.matcher(words);
    if (!matcher.matches()) {
      return Optional.empty();
    }
    String list = matcher.group("after") != null ? matcher.group("after") : matcher.group("before");
    List<Formula> values = new ArrayList<>();
    for (String item : list.split(" and |, ?", -1)) {
      Optional<Formula> value = value(item);
      if (value.isEmpty()) {
        return Optional.empty();
      }
      values.add(value.get());
    }
    if (values.size() > roots.size() || values.size() != Set.copyOf(values).size()) {
      return Optional.empty();
    }
    String told =
        "%s are %sroots"
            .formatted(
                LetterStatement.joined(values.stream().map(RelationWords::text).toList()),
                values.size() == roots.size() ? "the " : "");
    return Optional.of(
        values.size() < roots.size()
            ? values.stream().<Condition>map(Condition.RootIs::new).toList()
            : List.of(all(values, told)));
  }

  /** These values are all the roots: e₁, e₂, … of both are the same. */
  private Condition all(List<Formula> values, String words) {
    List<Formula> names = roots.stream().map(Formula::name).toList();
    List<Formula> zeros = new ArrayList<>();
    List<Formula> equations = new ArrayList<>();
    for (int k = 1; k <= values.size(); k++) {
      Formula left = elementary(names, k);
      Formula right = elementary(values, k);
      zeros.add(left.minus(right));
      equations.add(Formula.equation(left, right));
    }
    return new Condition.Zeros(words, zeros, equations);
  }

  /** The sum of all products of k of the formulas. */
  private static Formula elementary(List<Formula> of, int k) {
    return Formula.sum(products(of, k));
  }

  private static List<Formula> products(List<Formula> of, int k) {
    if (k == 1) {
      return of;
    }
    List<Formula> all = new ArrayList<>();
    for (int first = 0; first + k <= of.size(); first++) {
      for (Formula rest : products(of.subList(first + 1, of.size()), k - 1)) {
        all.add(of.get(first).times(rest));
      }
    }
    return all;
  }

  /** “r and s real”. */
  private Optional<List<Condition>> named(String words) {
    Matcher matcher = NAMED.matcher(words);
    if (!matcher.matches()
        || !Set.of(matcher.group("names").split(" and ")).equals(new HashSet<>(roots))) {
      return Optional.empty();
    }
    return matcher.group("sort").matches(Natures.WORDS)
        ? Optional.of(
            Natures.of(matcher.group("sort")).stream()
                .<Condition>map(Condition.AllRoots::new)
                .toList())
        : new PlaceWords(roots.size()).read("roots " + matcher.group("sort"));
  }

  /**
   * “The sum of the squares of the roots is 20”, as it was typed: an ask in words, and its value,
   * or another ask.
   */
  Optional<List<Condition>> told(String text) {
    String[] sides = text.strip().split("(?i)\\s+(?:is equal to|equals|is|=|are)\\s+", 2);
    if (sides.length < 2 || text.contains(" and ")) {
      return Optional.empty();
    }
    Optional<Formula> left = ask(sides[0]);
    Optional<Formula> right = value(sides[1]).or(() -> multiple(sides[1]));
    if (left.isEmpty() || right.isEmpty() || !left.get().contains(this::isOfRoots)) {
      return Optional.empty();
    }
    Formula equation = Formula.equation(left.get(), right.get());
    return Optional.of(zero(text(equation), left.get(), right.get()));
  }

  /** “Twice their product”. */
  private Optional<Formula> multiple(String typed) {
    String words =
        typed
            .strip()
            .replaceAll("(?i)^(?:equal to )", "")
            .replaceAll("(?i)\\btheir (sum|product)\\b.*", "$1 of the roots")
            .replaceAll("(?i)\\bthe (sum|product)$", "$1 of the roots");
    Matcher matcher =
        Pattern.compile(
                "(?:(?<factor>twice|double|thrice|half|\\S+ times) (?:the )?)?(?<rest>.+)",
                Pattern.CASE_INSENSITIVE)
            .matcher(words);
    if (!matcher.matches()) {
      return Optional.empty();
    }
    Optional<Formula> rest = ask(matcher.group("rest"));
    String factor = matcher.group("factor");
    return factor == null ? rest : rest.flatMap(one -> image(factor.toLowerCase(Locale.ROOT), one));
  }

  private Optional<Formula> ask(String words) {
    try {
      Set<String> letters = new HashSet<>(polynomial.letters());
      letters.add(polynomial.unknown());
      return Optional.of(AskReader.read(words, roots, letters).formula());
    } catch (UnreadableException other) {
      return Optional.empty();
    }
  }

  private boolean isOfRoots(Formula part) {
    return part instanceof Formula.Aggregate
        || part instanceof Formula.Family
        || part instanceof Formula.Application
        || (part instanceof Formula.Name name && roots.contains(name.spelling()));
  }

  /** A number, or a formula in the letters of the polynomial. */
  private Optional<Formula> value(String typed) {
    return ConditionText.number(typed)
        .map(Formula::number)
        .or(
            () ->
                ConditionText.formula(typed)
                    .filter(
                        formula ->
                            !(formula instanceof Formula.Relation)
                                && !(formula instanceof Formula.Listing)
                                && polynomial.letters().containsAll(FormulaNames.in(formula))));
  }

  private Condition equal(int count, String words) {
    List<Formula> zeros = new ArrayList<>();
    List<Formula> equations = new ArrayList<>();
    for (int k = 1; k < count; k++) {
      zeros.add(name(k - 1).minus(name(k)));
      equations.add(Formula.equation(name(k - 1), name(k)));
    }
    return new Condition.Zeros(words, zeros, equations);
  }

  private static List<Condition> zero(String words, Formula left, Formula right) {
    return List.of(zeros(words, left, right));
  }

  private static Condition zeros(String words, Formula left, Formula right) {
    Formula zero = right.equals(Formula.number(0)) ? left : left.minus(right);
    return new Condition.Zeros(words, List.of(zero), List.of(Formula.equation(left, right)));
  }

  private static String of(int degree, String quality) {
    return "%s are %s".formatted(degree == 2 ? "the roots" : "two roots", quality);
  }

  private Formula name(int k) {
    return Formula.name(roots.get(k));
  }

  private static String text(Formula formula) {
    return UnicodeWriter.write(formula);
  }
}
