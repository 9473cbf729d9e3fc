package rootwright.algebra.notation;

import java.util.List;

/** The LaTeX commands that take arguments in braces. */
final class LatexPrefix {

  private LatexPrefix() {}

  static Piece fraction(Parser parser, Token first, int least) throws UnreadableException {
    Piece over = argument(parser);
    Piece under = argument(parser);
    return parser.over(
        NormalForm.quotientOf(over.formula(), under.formula()),
        Piece.Shape.ATOM,
        first.from(),
        List.of(over, under));
  }

  static Piece root(Parser parser, Token first, int least) throws UnreadableException {
    Token begin = parser.peek();
    int index = 2;
    if (begin.is(Token.Kind.OPEN, "[")) {
      parser.next();
      index = RootIndex.of(parser, parser.inside(begin), begin);
    }
    Piece below = argument(parser);
    return parser.over(
        new Formula.Radical(below.formula(), index),
        Piece.Shape.ATOM,
        first.from(),
        List.of(below));
  }

  /** An argument: what stands in braces, or else the next digit, letter or command. */
  private static Piece argument(Parser parser) throws UnreadableException {
    Token begin = parser.peek();
    if (begin.kind() == Token.Kind.OPEN) {
      parser.next();
      return parser.inside(begin);
    }
    if (begin.isWhole() && begin.text().length() > 1) {
      parser.replaceNext(
          new Token(
              Token.Kind.NUMBER, begin.text().substring(1), begin.from() + 1, begin.to(), false));
      return new Piece(
          Formula.number(NumberPrefix.decimal(begin.text().substring(0, 1))),
          1,
          begin.from(),
          begin.from() + 1,
          Piece.Shape.ATOM);
    }
    return parser.parse(Binding.POWER + 1);
  }
}
