package rootwright.working.clothing;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** What is asked of an equation in other clothes. */
enum DisguisedAsk {
  SOLUTIONS("the real solutions"),
  SUM("the sum of the real solutions"),
  PRODUCT("the product of the real solutions"),
  NUMBER("the number of real solutions");

  private static final String THINGS =
      "(?:the |all |its )*(?:real )?(?:solutions?|roots?|values of [a-z]|zeros)";

  private static final Pattern SET =
      Pattern.compile("(?:solve(?: for)? ?[a-z]?|[a-z]|" + THINGS + ")");

  private static final Pattern SUMS = Pattern.compile("(?:the )?sum of " + THINGS);

  private static final Pattern PRODUCTS = Pattern.compile("(?:the )?product of " + THINGS);

  private static final Pattern NUMBERS =
      Pattern.compile("(?:how many|(?:the )?number of) " + THINGS + "(?: (?:are there|exist))?");

  private final String words;

  DisguisedAsk(String words) {
    this.words = words;
  }

  /** As a sheet would say it. */
  String words() {
    return words;
  }

  /** The ask, if the text is one. */
  static Optional<DisguisedAsk> of(String text) {
    String simple =
        text.strip()
            .toLowerCase(Locale.ROOT)
            .replaceAll("[.?]$", "")
            .replaceFirst("^(?:find|what is|what are|determine)\\s+", "")
            .replaceAll("\\s+", " ");
    if (SUMS.matcher(simple).matches()) {
      return Optional.of(SUM);
    } else if (PRODUCTS.matcher(simple).matches()) {
      return Optional.of(PRODUCT);
    } else if (NUMBERS.matcher(simple).matches()) {
      return Optional.of(NUMBER);
    }
    return SET.matcher(simple).matches() ? Optional.of(SOLUTIONS) : Optional.empty();
  }
}
