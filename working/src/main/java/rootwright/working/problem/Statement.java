package rootwright.working.problem;

import java.util.List;
import java.util.Optional;

/**
 * A problem as it was typed, before anything is read.
 *
 * @param polynomial the polynomial or equation
 * @param find what is wanted
 * @param roots names for the roots, empty to choose them by the rules
 * @param unknown the letter of the polynomial, absent to find it by the rules
 */
public record Statement(
    String polynomial, String find, List<String> roots, Optional<String> unknown) {

  public Statement {
    roots = List.copyOf(roots);
  }

  /** A polynomial and an ask, names and unknown to be found by the rules. */
  public static Statement of(String polynomial, String find) {
    return new Statement(polynomial, find, List.of(), Optional.empty());
  }
}
