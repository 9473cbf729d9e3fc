package rootwright.algebra.notation;

import java.util.ArrayList;
import java.util.List;

/** The modulus as it stands in books, {@code (mod 7)} at the end: its bracket is dropped. */
final class BracketedModulo {

  private BracketedModulo() {}

  /** The tokens without the bracket round a final modulus. */
  static List<Token> opened(List<Token> tokens) {
    int last = tokens.size() - 2;
    if (last < 3 || tokens.get(last).kind() != Token.Kind.CLOSE) {
      return tokens;
    }
    int open = 0;
    int place = last;
    do {
      Token token = tokens.get(place);
      open += token.kind() == Token.Kind.CLOSE ? 1 : token.kind() == Token.Kind.OPEN ? -1 : 0;
      place--;
    } while (open > 0 && place >= 0);
    boolean modulo = open == 0 && place >= 0 && tokens.get(place + 2).is(Token.Kind.WORD, "mod");
    if (!modulo || !tokens.get(place + 1).is(Token.Kind.OPEN, "(")) {
      return tokens;
    }
    List<Token> kept = new ArrayList<>(tokens);
    kept.remove(last);
    kept.remove(place + 1);
    return kept;
  }
}
