package rootwright.working.described;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rootwright.algebra.factor.CyclotomicFactors;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.NormalForm;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.step.Idea;
import rootwright.working.step.Setting;
import rootwright.working.step.Step;

/**
 * The n-th roots of unity, or some of them, as they are called in a sentence.
 *
 * @param order n
 * @param which which of them
 */
record UnityRoots(int order, Which which) {

  /** Which roots of unity are meant. */
  enum Which {
    ALL("roots of unity"),
    NOT_ONE("roots of unity other than 1"),
    NOT_REAL("roots of unity that are not real"),
    PRIMITIVE("primitive roots of unity");

    private final String words;

    Which(String words) {
      this.words = words;
    }
  }

  private static final Map<String, Integer> ORDINALS =
      Map.ofEntries(
          Map.entry("square", 2),
          Map.entry("cube", 3),
          Map.entry("third", 3),
          Map.entry("fourth", 4),
          Map.entry("fifth", 5),
          Map.entry("sixth", 6),
          Map.entry("seventh", 7),
          Map.entry("eighth", 8),
          Map.entry("ninth", 9),
          Map.entry("tenth", 10),
          Map.entry("eleventh", 11),
          Map.entry("twelfth", 12));

  private static final Pattern PHRASE =
      Pattern.compile(
          "(?:all )?(?:the )?(?<which>primitive |non-?real |imaginary )?(?:(?<ordinal>[a-z]+)|"
              + "(?<number>\\d{1,4})(?:st|nd|rd|th|-th)) roots of (?:unity|1)(?<rest>.*)");

  private static final Pattern NOT_ONE =
      Pattern.compile(
          "[ ,]*(?:(?:that|which) (?:is|are) )?(?:other than|except|apart from|different from|"
              + "without|not equal to|but not|not|≠|!=) ?1");

  private static final Pattern NOT_REAL =
      Pattern.compile("[ ,]*(?:that|which) (?:is|are) (?:not real|non-?real)");

  /** The description, if the text is one. */
  static Optional<UnityRoots> of(String text) {
    String simple = text.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
    Matcher matcher = PHRASE.matcher(simple);
    if (!matcher.matches()) {
      return Optional.empty();
    }
    Optional<Integer> order =
        Optional.ofNullable(matcher.group("number"))
            .map(Integer::parseInt)
            .or(
                () ->
                    Optional.ofNullable(matcher.group("ordinal"))
                        .flatMap(word -> Optional.ofNullable(ORDINALS.get(word))));
    String kind = Optional.ofNullable(matcher.group("which")).orElse("").strip();
    String rest = Optional.ofNullable(matcher.group("rest")).orElse("");
    if (order.isEmpty() || order.get() < 1) {
      return Optional.empty();
    }
    if (rest.isBlank()) {
      return Optional.of(
          new UnityRoots(
              order.get(),
              kind.equals("primitive")
                  ? Which.PRIMITIVE
                  : kind.isEmpty() ? Which.ALL : Which.NOT_REAL));
    } else if (!kind.isEmpty()) {
      return Optional.empty();
    }
    return NOT_ONE.matcher(rest).matches()
        ? Optional.of(new UnityRoots(order.get(), Which.NOT_ONE))
        : NOT_REAL.matcher(rest).matches()
            ? Optional.of(new UnityRoots(order.get(), Which.NOT_REAL))
            : Optional.empty();
  }

  /** As a sheet would say it: the 9th roots of unity other than 1. */
  String words() {
    String ordinal =
        order
            + switch (order % 100 / 10 == 1 ? 0 : order % 10) {
              case 1 -> "st";
              case 2 -> "nd";
              case 3 -> "rd";
              default -> "th";
            };
    return which == Which.PRIMITIVE
        ? "the primitive %s roots of unity".formatted(ordinal)
        : "the %s %s".formatted(ordinal, which.words);
  }

  /** The polynomial with these roots, each once; 1 if there are none. */
  Polynomial polynomial() {
    return switch (which) {
      case ALL -> unity();
      case NOT_ONE -> quotient(Polynomial.ofDescending(1, -1));
      case NOT_REAL ->
          quotient(
              order % 2 == 0 ? Polynomial.ofDescending(1, 0, -1) : Polynomial.ofDescending(1, -1));
      case PRIMITIVE -> CyclotomicFactors.cyclotomic(order);
    };
  }

  private Polynomial unity() {
    return Polynomial.monomial(Rational.ONE, order).minus(Polynomial.ONE);
  }

  private Polynomial quotient(Polynomial divisor) {
    return unity().divide(divisor).quotient();
  }

  /** The line that leads to the polynomial; none for all roots, x^n = 1 being their definition. */
  List<Step> lines(String unknown) {
    Polynomial wanted = polynomial();
    Polynomial others = unity().divide(wanted).quotient();
    if (others.degree() == 0) {
      return List.of();
    }
    Formula product =
        PolynomialFormula.of(others, unknown).times(PolynomialFormula.of(wanted, unknown));
    String reason =
        switch (which) {
          case PRIMITIVE -> "the first factor belongs to roots of unity of lower order";
          case NOT_REAL -> "the first factor belongs to the real roots";
          default -> "the first factor belongs to the root 1";
        };
    return List.of(
        Step.equation(
            Setting.ofLetters(List.of(unknown)),
            Idea.RATIONAL_ROOT,
            reason,
            PolynomialFormula.of(unity(), unknown),
            NormalForm.of(product)));
  }
}
