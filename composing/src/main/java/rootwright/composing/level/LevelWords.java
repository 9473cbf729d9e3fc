package rootwright.composing.level;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import rootwright.working.route.Working;

/** A level in a sentence for a coach. */
final class LevelWords {

  private static final List<String> SMALL =
      List.of(
          "no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten",
          "eleven", "twelve");

  /** Features that are said by their own words when the problem has them. */
  private static final Set<String> SAID =
      Set.of("lead", "power", "domain", "disguise", "parameters", "fraction", "several");

  private LevelWords() {}

  static String of(int level, List<Feature> features, Working shortest) {
    List<String> parts = new ArrayList<>();
    int ideas = shortest.cost().ideas();
    parts.add("%s idea%s beyond reading off".formatted(number(ideas), ideas == 1 ? "" : "s"));
    int lines = shortest.cost().lines();
    parts.add("%s step%s".formatted(number(lines), lines == 1 ? "" : "s"));
    parts.add("numbers under " + bound(shortest));
    features.stream()
        .filter(feature -> SAID.contains(feature.name()) && !feature.amount().isZero())
        .map(Feature::words)
        .forEach(parts::add);
    return "level %d, estimated: %s".formatted(level, String.join(", ", parts));
  }

  private static String number(int count) {
    return count < SMALL.size() ? SMALL.get(count) : Integer.toString(count);
  }

  /** The power of ten, from 10, above every number in the working. */
  private static String bound(Working shortest) {
    BigInteger largest = NumbersWritten.largest(shortest);
    int digits = largest.toString().length();
    return digits > 7 ? "10^" + digits : BigInteger.TEN.pow(digits).toString();
  }
}
