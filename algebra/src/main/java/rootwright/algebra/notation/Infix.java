package rootwright.algebra.notation;

/** A construct that continues a piece already read. */
interface Infix {

  /** How strongly it binds. */
  int binding();

  /** The longer piece; its sign, if it has one, is the next token. */
  Piece read(Parser parser, Piece left) throws UnreadableException;
}
