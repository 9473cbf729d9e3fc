package rootwright.composing.twin;

import java.util.Optional;
import java.util.stream.Stream;
import rootwright.working.problem.Problem;

/**
 * A short stable text that a problem shares with the problems that are the same in other clothes:
 * scaled, renamed, mirrored (x → −x), reversed (x → 1/x), the ask transformed with the polynomial.
 *
 * @param text the coefficients, highest first, and the ask in e_1, e_2, …, of the first of those
 *     problems in the alphabet
 */
public record Fingerprint(String text) {

  /**
   * The fingerprint of a problem. An ask that is not a function of the roots alone (a discriminant,
   * a residue, a polynomial asked for) is known by its words and its very polynomial.
   */
  public static Fingerprint of(Problem problem) {
    Pair pair = Pair.of(problem);
    Optional<Pair> reversed = pair.reversed();
    return new Fingerprint(
        Stream.of(Optional.of(pair), pair.mirrored(), reversed, reversed.flatMap(Pair::mirrored))
            .flatMap(Optional::stream)
            .map(Pair::text)
            .min(String::compareTo)
            .orElseThrow());
  }

  @Override
  public String toString() {
    return text;
  }
}
