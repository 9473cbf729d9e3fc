package rootwright.working.subject;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rootwright.working.step.NumberDomain;

/** What a condition in words says of numbers: “x, y, z are distinct positive integers”. */
public enum Quality {
  COMPLEX("complex"),
  REAL("real", "reals"),
  POSITIVE("positive"),
  NEGATIVE("negative"),
  RATIONAL("rational", "rationals"),
  INTEGER("integer", "integers", "whole"),
  NATURAL("natural", "naturals"),
  DISTINCT("distinct", "different", "unequal"),
  NONZERO("nonzero", "non-zero");

  private static final Map<Quality, NumberDomain> DOMAINS =
      new EnumMap<>(
          Map.of(
              COMPLEX, NumberDomain.COMPLEX,
              REAL, NumberDomain.REAL,
              POSITIVE, NumberDomain.POSITIVE,
              NEGATIVE, NumberDomain.NEGATIVE,
              RATIONAL, NumberDomain.RATIONAL,
              INTEGER, NumberDomain.INTEGER,
              NATURAL, NumberDomain.POSITIVE_INTEGER));

  private final Set<String> words;

  Quality(String... words) {
    this.words = Set.of(words);
  }

  /** The quality that a word names, if it names one; case does not matter. */
  public static Optional<Quality> of(String word) {
    String lower = word.toLowerCase(Locale.ROOT);
    for (Quality quality : values()) {
      if (quality.words.contains(lower)) {
        return Optional.of(quality);
      }
    }
    return Optional.empty();
  }

  /** The narrowest numbers that all these qualities leave; empty if none of them names any. */
  public static Optional<NumberDomain> domain(Set<Quality> qualities) {
    if (qualities.contains(INTEGER) && qualities.contains(POSITIVE)) {
      return Optional.of(NumberDomain.POSITIVE_INTEGER);
    }
    return DOMAINS.entrySet().stream()
        .filter(entry -> qualities.contains(entry.getKey()))
        .map(Map.Entry::getValue)
        .max(NumberDomain::compareTo);
  }
}
