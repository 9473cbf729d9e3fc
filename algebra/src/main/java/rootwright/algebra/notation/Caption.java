package rootwright.algebra.notation;

/** What stands below and above a Σ or Π. */
final class Caption {

  private Caption() {}

  /** Passes over a caption, if there is one, and says so. */
  static void skip(Parser parser, Token sign) throws UnreadableException {
    int end = sign.to();
    boolean found = false;
    while (parser.peek().isSign("_") || parser.peek().isSign("^")) {
      parser.next();
      end = one(parser, sign);
      found = true;
    }
    if (found) {
      parser.note(
          parser.written(sign.from(), end), "over all distinct images under renaming the roots");
    }
  }

  private static int one(Parser parser, Token sign) throws UnreadableException {
    Token begin = parser.next();
    if (begin.kind() == Token.Kind.LETTER || begin.isWhole()) {
      return begin.to();
    }
    Token token = begin;
    int open = 0;
    do {
      if (token.kind() == Token.Kind.END) {
        throw parser.refused(
            "bracket", "What stands at the Σ or Π does not end.", sign, "a bracket", "");
      }
      open += token.kind() == Token.Kind.OPEN ? 1 : token.kind() == Token.Kind.CLOSE ? -1 : 0;
      if (open > 0) {
        token = parser.next();
      }
    } while (open > 0);
    return token.to();
  }
}
