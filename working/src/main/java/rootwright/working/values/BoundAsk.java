package rootwright.working.values;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rootwright.algebra.notation.AskReader;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.UnreadableException;
import rootwright.working.subject.Inquiry;

/**
 * “Greatest x”, “least value of x y z”, “range of x”.
 *
 * @param side which end is asked for
 * @param target the expression that is bounded
 */
record BoundAsk(Side side, Formula target) {

  private static final Pattern WORDS =
      Pattern.compile(
          "\\s*(the\\s+)?(?<side>greatest|largest|maximum|maximal|max|biggest|least|smallest|minimum"
              + "|minimal|min|range|bounds)\\b(\\s+possible)?(\\s+values?)?(\\s+(of|on|for))?"
              + "\\s*(?<target>.+)",
          Pattern.CASE_INSENSITIVE | Pattern.DOTALL);
  private static final Set<String> LEAST = Set.of("least", "smallest", "minimum", "minimal", "min");

  /** Which end of the range is asked for. */
  enum Side {
    GREATEST,
    LEAST,
    BOTH
  }

  /** Whether an ask begins like one for a bound. */
  static boolean isBound(String ask) {
    return WORDS.matcher(ask).matches();
  }

  /**
   * Reads the ask.
   *
   * @throws UnreadableException if the expression cannot be read or is about other numbers
   */
  static BoundAsk read(Inquiry inquiry, SymmetricData data) throws UnreadableException {
    Matcher matcher = WORDS.matcher(inquiry.ask());
    boolean matches = matcher.matches();
    String word = matches ? matcher.group("side").toLowerCase(Locale.ROOT) : "range";
    String target = matches ? matcher.group("target") : inquiry.ask();
    Side side =
        LEAST.contains(word)
            ? Side.LEAST
            : Set.of("range", "bounds").contains(word) ? Side.BOTH : Side.GREATEST;
    return new BoundAsk(side, AskReader.read(target, data.names(), Set.of()).formula());
  }

  /** The name, if one of the numbers itself is bounded. */
  Optional<String> number() {
    return target instanceof Formula.Name name ? Optional.of(name.spelling()) : Optional.empty();
  }

  /** “the greatest possible value of”. */
  String inWords() {
    return switch (side) {
      case GREATEST -> "the greatest possible value of";
      case LEAST -> "the least possible value of";
      case BOTH -> "all possible values of";
    };
  }
}
