package rootwright.working.topic;

import java.util.List;
import rootwright.working.proof.ProofLine;

/**
 * A shorter way.
 *
 * @param title a few words
 * @param lines as on the board
 */
public record Trick(String title, List<ProofLine> lines) {

  public Trick {
    lines = List.copyOf(lines);
  }
}
