package rootwright.working.proof;

import java.util.List;

/**
 * A proof at three lengths.
 *
 * @param said two sentences
 * @param board at most eight lines
 * @param full everything
 */
public record Proof(List<ProofLine> said, List<ProofLine> board, List<ProofLine> full) {

  /** How many lines fit on a board. */
  public static final int BOARD_LINES = 8;

  /** The three lengths. */
  public enum Length {
    /** Two sentences. */
    SAID,
    /** At most eight lines. */
    BOARD,
    /** Everything. */
    FULL
  }

  /**
   * @throws IllegalArgumentException if it is not said in two sentences, or the board has more than
   *     eight lines
   */
  public Proof {
    said = List.copyOf(said);
    board = List.copyOf(board);
    full = List.copyOf(full);
    if (said.size() != 2) {
      throw new IllegalArgumentException("said in %d sentences, not in two".formatted(said.size()));
    }
    if (board.isEmpty() || board.size() > BOARD_LINES || full.isEmpty()) {
      throw new IllegalArgumentException(
          "a board of %d lines and a full proof of %d".formatted(board.size(), full.size()));
    }
  }

  /** The lines of one length. */
  public List<ProofLine> lines(Length length) {
    return switch (length) {
      case SAID -> said;
      case BOARD -> board;
      case FULL -> full;
    };
  }
}
