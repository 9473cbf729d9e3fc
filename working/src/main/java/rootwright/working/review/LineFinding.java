package rootwright.working.review;

import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.Formula;

/**
 * What was found of one line.
 *
 * @param number of the line, from 1; blank lines count
 * @param text as it was written
 * @param shown the line as it was read; absent for words
 * @param verdict what can be said of it
 * @param reason why, one phrase: "lines 1 and 2 put in"
 * @param slips the wrong turnings that give this wrong value, the likeliest first
 */
public record LineFinding(
    int number,
    String text,
    Optional<Formula> shown,
    LineVerdict verdict,
    String reason,
    List<SlipMatch> slips) {

  public LineFinding {
    slips = List.copyOf(slips);
  }
}
