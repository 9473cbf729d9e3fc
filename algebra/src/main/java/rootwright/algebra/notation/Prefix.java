package rootwright.algebra.notation;

/** A construct that begins a piece. */
@FunctionalInterface
interface Prefix {

  /**
   * The piece that begins with this token, which was just read.
   *
   * @param least how strongly the infixes of the piece must bind
   */
  Piece read(Parser parser, Token first, int least) throws UnreadableException;
}
