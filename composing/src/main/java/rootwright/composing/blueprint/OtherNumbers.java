package rootwright.composing.blueprint;

import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rootwright.composing.pattern.Chance;
import rootwright.working.problem.Statement;

/**
 * A statement with other numbers of about the same size in it: what is raised to a power, exponents
 * and indices stay, and a 1 is not changed, which often means no number at all.
 */
final class OtherNumbers implements StatementSource {

  private static final Pattern NUMBER =
      Pattern.compile(
          "(?<![\\^_0-9.\\p{L}])(?<!\\^-)([2-9]|[1-9][0-9]{1,5})(?![0-9.]*\\^)(?![0-9.])");

  private final Statement original;

  OtherNumbers(Statement original) {
    this.original = original;
  }

  @Override
  public Optional<Statement> at(long seed) {
    Chance chance = new Chance(seed);
    Statement drawn =
        new Statement(
            changed(original.polynomial(), chance),
            changed(original.find(), chance),
            original.roots(),
            original.unknown());
    return drawn.equals(original) ? Optional.empty() : Optional.of(drawn);
  }

  private static String changed(String text, Chance chance) {
    Matcher numbers = NUMBER.matcher(text);
    return numbers.replaceAll(number -> changed(number, chance));
  }

  private static String changed(MatchResult number, Chance chance) {
    int old = Integer.parseInt(number.group());
    if (chance.between(1, 3) == 3) {
      return number.group();
    }
    int reach = Math.max(3, old / 2);
    return Integer.toString(chance.between(Math.max(2, old - reach), old + reach));
  }
}
