package rootwright.algebra.notation;

import java.util.List;

/** Letters: names with and without index, the families, the functions, the imaginary unit. */
final class LetterPrefix {

  private LetterPrefix() {}

  static Piece letter(Parser parser, Token first, int least) throws UnreadableException {
    StringBuilder letter = new StringBuilder(first.text());
    while (parser.accept("'")) {
      letter.append('\'');
    }
    if (FunctionLetters.contains(first.text()) && parser.peek().is(Token.Kind.OPEN, "(")) {
      return applied(parser, letter.toString(), first);
    }
    if (parser.accept("_")) {
      return Families.isReserved(letter.toString())
          ? family(parser, letter.toString(), first)
          : parser.leaf(new Formula.Name(letter.toString(), index(parser)), first.from());
    }
    Token digits = parser.peek();
    if (digits.isWhole() && !digits.blankBefore() && !isDecimalLater(digits)) {
      parser.next();
      Formula name = NormalForm.of(new Formula.Name(letter.toString(), digits.text()));
      Piece piece = parser.leaf(name, first.from());
      parser.note(parser.written(piece.from(), piece.to()), PlainWriter.write(name));
      return piece;
    }
    if (letter.toString().equals("i")) {
      return parser.leaf(new Formula.ImaginaryUnit(), first.from());
    }
    return parser.leaf(new Formula.Name(letter.toString()), first.from());
  }

  /** A number far too long to be an index is a slip of the keyboard. */
  private static boolean isDecimalLater(Token digits) {
    return digits.text().length() > 4;
  }

  private static Piece applied(Parser parser, String function, Token first)
      throws UnreadableException {
    Piece arguments = parser.inside(parser.next());
    return parser.over(
        new Formula.Application(function, Arguments.of(arguments)),
        Piece.Shape.ATOM,
        first.from(),
        List.of(arguments));
  }

  private static Piece family(Parser parser, String letter, Token first)
      throws UnreadableException {
    Token begin = parser.peek();
    if (begin.kind() == Token.Kind.LETTER) {
      parser.next();
      return parser.leaf(new Formula.Family(letter, new Formula.Name(begin.text())), first.from());
    }
    Piece index;
    if (begin.isSign("-")) {
      parser.next();
      Token digits = wholeNumber(parser);
      index =
          parser.leaf(Formula.number(NumberPrefix.decimal(digits.text()).negate()), begin.from());
    } else if (begin.kind() == Token.Kind.OPEN) {
      index = parser.inside(parser.next());
    } else {
      Token digits = wholeNumber(parser);
      index = parser.leaf(Formula.number(NumberPrefix.decimal(digits.text())), digits.from());
    }
    return parser.over(
        new Formula.Family(letter, index.formula()),
        Piece.Shape.ATOM,
        first.from(),
        List.of(index));
  }

  private static Token wholeNumber(Parser parser) throws UnreadableException {
    Token digits = parser.next();
    if (!digits.isWhole()) {
      throw refusedIndex(parser, digits);
    }
    return digits;
  }

  /** What stands below a name: one letter, digits, or both and signs in brackets. */
  private static String index(Parser parser) throws UnreadableException {
    Token begin = parser.next();
    if (begin.isWhole() || begin.kind() == Token.Kind.LETTER) {
      return begin.text();
    }
    if (begin.kind() != Token.Kind.OPEN) {
      throw refusedIndex(parser, begin);
    }
    StringBuilder index = new StringBuilder();
    Token token = parser.next();
    while (!token.is(Token.Kind.CLOSE, Brackets.closing(begin.text()))) {
      boolean fits =
          token.isWhole()
              || token.kind() == Token.Kind.LETTER
              || token.isSign("+")
              || token.isSign("-");
      if (!fits) {
        throw refusedIndex(parser, token);
      }
      index.append(token.text());
      token = parser.next();
    }
    if (index.isEmpty()) {
      throw refusedIndex(parser, token);
    }
    return index.toString();
  }

  private static UnreadableException refusedIndex(Parser parser, Token at) {
    return parser.refused(
        "unexpected",
        at.kind() == Token.Kind.END
            ? "The formula ends where an index is needed."
            : "“%s” cannot be an index.".formatted(parser.written(at)),
        at,
        "a whole number or a letter",
        "");
  }
}
