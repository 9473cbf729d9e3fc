package rootwright.working.review;

import java.util.List;
import java.util.Optional;
import rootwright.working.solve.Given;

/**
 * Somebody's working of a problem, every line judged.
 *
 * @param given what was to be worked
 * @param lines what was found of each line that is not blank
 * @param end whether the working arrives
 */
public record Review(Given given, List<LineFinding> lines, End end) {

  /** Whether a working arrives at what was asked for. */
  public enum End {
    /** A true line gives what was asked for. */
    ARRIVES("arrives", "The working arrives at the answer."),
    /** A line gives a value for what was asked for, and it is wrong. */
    ELSEWHERE("elsewhere", "The working ends in a wrong answer."),
    /** No line gives what was asked for. */
    OPEN("open", "No line gives what was asked for.");

    private final String code;
    private final String words;

    End(String code, String words) {
      this.code = code;
      this.words = words;
    }

    /** Stable short name for scripts. */
    public String code() {
      return code;
    }

    /** One sentence for a person. */
    public String words() {
      return words;
    }
  }

  public Review {
    lines = List.copyOf(lines);
  }

  /** The first line that is not true, if there is one. */
  public Optional<LineFinding> firstWrong() {
    return lines.stream().filter(line -> line.verdict() == LineVerdict.WRONG).findFirst();
  }
}
