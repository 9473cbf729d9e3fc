package rootwright.composing.twin;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;
import java.util.stream.Stream;
import rootwright.working.problem.Problem;
import rootwright.working.solve.Given;

/**
 * A short stable text that a problem shares with the problems that are the same in other clothes:
 * scaled, renamed, mirrored (x → −x), reversed (x → 1/x), the ask transformed with the polynomial.
 *
 * @param text the coefficients, highest first, and the ask in e_1, e_2, …, of the first of those
 *     problems in the alphabet; a long text is cut and ends in a digest of all of it
 */
public record Fingerprint(String text) {

  /** Longest text that is kept as it is. */
  private static final int LONGEST = 80;

  private static final int DIGEST_BYTES = 16;

  /**
   * The fingerprint of a problem. An ask that is not a function of the roots alone (a discriminant,
   * a residue, a polynomial asked for) is known by its words and its very polynomial.
   */
  public static Fingerprint of(Problem problem) {
    Pair pair = Pair.of(problem);
    Optional<Pair> reversed = pair.reversed();
    String first =
        Stream.of(Optional.of(pair), pair.mirrored(), reversed, reversed.flatMap(Pair::mirrored))
            .flatMap(Optional::stream)
            .map(Pair::text)
            .min(String::compareTo)
            .orElseThrow();
    return new Fingerprint(first.length() <= LONGEST ? first : shortened(first));
  }

  /**
   * The fingerprint of any statement. One that is not about the roots of one polynomial with
   * numbers alone is known up to scaling, renaming its letters and roots, and mirroring where all
   * of it can be mirrored.
   */
  public static Fingerprint of(Given given) {
    Optional<Problem> problem = given.problem();
    if (problem.isPresent()) {
      return of(problem.get());
    }
    StatementForm form = new StatementForm(given);
    String first =
        Stream.of(Optional.of(form.text()), form.mirrored())
            .flatMap(Optional::stream)
            .min(String::compareTo)
            .orElseThrow();
    return new Fingerprint(first.length() <= LONGEST ? first : shortened(first));
  }

  /** The coefficients' beginning and a digest of it all. */
  private static String shortened(String text) {
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
      return text.substring(0, LONGEST / 2)
          + "… #"
          + HexFormat.of().formatHex(digest, 0, DIGEST_BYTES);
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException("every Java platform has SHA-256", impossible);
    }
  }

  @Override
  public String toString() {
    return text;
  }
}
