package rootwright.desk.paper;

import java.util.Arrays;
import java.util.Locale;

/** How the versions of a paper differ. The two ways are never mixed. */
public enum Arrangement {
  /** The same items in other orders. */
  REORDERED,
  /** At each place a sibling: the same kind of problem with other numbers and another key. */
  RENUMBERED;

  /** The name for scripts. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /**
   * The one of this name.
   *
   * @throws IllegalArgumentException if there is none
   */
  public static Arrangement named(String word) {
    return Arrays.stream(values())
        .filter(one -> one.word().equals(word))
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "versions are reordered or renumbered, not “%s”".formatted(word)));
  }
}
