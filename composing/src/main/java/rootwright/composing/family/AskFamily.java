package rootwright.composing.family;

import java.util.List;
import java.util.function.IntFunction;

/**
 * A shape of expression, with asks of that shape for each degree.
 *
 * @param name stable short name, lower case with hyphens: {@code power-sum}
 * @param words what its asks look like, a few words for a coach
 * @param kind the kind of ask its members are
 * @param members the asks for a degree as they would be typed, the simplest first; empty if the
 *     degree has none
 */
public record AskFamily(String name, String words, String kind, IntFunction<List<String>> members) {

  /** The asks for a degree, the simplest first. */
  public List<String> asks(int degree) {
    return members.apply(degree);
  }
}
