package rootwright.composing.pattern;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Every pattern; a new one registers itself in one of these lists. */
public final class Patterns {

  /** From letters in the coefficients to other clothes. */
  public static final List<Pattern> ALL =
      Stream.of(
              LetterPatterns.ALL,
              RegionPatterns.ALL,
              ValuePatterns.ALL,
              PairPatterns.ALL,
              IntegerPatterns.ALL,
              BoundPatterns.ALL,
              SequencePatterns.ALL,
              ConstructionPatterns.ALL,
              ClothingPatterns.ALL)
          .flatMap(List::stream)
          .toList();

  private Patterns() {}

  /** The pattern with a name. */
  public static Optional<Pattern> named(String name) {
    return ALL.stream().filter(pattern -> pattern.name().equals(name)).findFirst();
  }
}
