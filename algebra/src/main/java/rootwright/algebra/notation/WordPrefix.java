package rootwright.algebra.notation;

import java.util.ArrayList;
import java.util.List;

/** The words that name what is asked, and the functions written as words. */
final class WordPrefix {

  private WordPrefix() {}

  /** A word that may stand without a bracket: {@code discriminant}. */
  static Piece alone(Parser parser, Token first, int least) throws UnreadableException {
    return parser.peek().kind() == Token.Kind.OPEN
        ? applied(parser, first.text(), first)
        : parser.leaf(new Formula.Application(first.text(), List.of()), first.from());
  }

  /** A word that needs a bracket; {@code log 5} is read as well. */
  static Piece function(Parser parser, Token first, int least) throws UnreadableException {
    if (first.text().equals("log") && parser.accept("_")) {
      return logarithm(parser, first);
    }
    if (parser.accept("^")) {
      return raised(parser, first, least);
    }
    if (parser.peek().kind() == Token.Kind.OPEN) {
      return applied(parser, first.text(), first);
    }
    Piece argument = parser.parse(Binding.POWER);
    Piece piece =
        parser.over(
            new Formula.Application(first.text(), List.of(argument.formula())),
            Piece.Shape.ATOM,
            first.from(),
            List.of(argument));
    parser.note(parser.written(piece.from(), piece.to()), PlainWriter.write(piece.formula()));
    return piece;
  }

  /** {@code cos^2 (x)}: a power of the value. */
  private static Piece raised(Parser parser, Token first, int least) throws UnreadableException {
    Piece exponent = parser.parse(Binding.POWER + 1);
    Piece value = function(parser, first, least);
    return parser.over(
        new Formula.Power(value.formula(), exponent.formula()),
        Piece.Shape.ATOM,
        first.from(),
        List.of(exponent, value));
  }

  /** {@code log_2 7}: the base becomes the second argument. */
  private static Piece logarithm(Parser parser, Token first) throws UnreadableException {
    Piece base = parser.parse(Binding.POWER + 1);
    boolean bracket = parser.peek().kind() == Token.Kind.OPEN;
    Piece argument = parser.parse(bracket ? Binding.POWER + 1 : Binding.POWER);
    return parser.over(
        new Formula.Application("log", List.of(argument.formula(), base.formula())),
        Piece.Shape.ATOM,
        first.from(),
        List.of(argument, base));
  }

  /** {@code real roots}: how many there are. */
  static Piece realRoots(Parser parser, Token first, int least) throws UnreadableException {
    expectWord(parser, "roots");
    return parser.leaf(new Formula.Application("real roots", List.of()), first.from());
  }

  /** {@code polynomial with roots (r^2)}, {@code polynomial with roots r^2, s^2, t^2}. */
  static Piece polynomialWithRoots(Parser parser, Token first, int least)
      throws UnreadableException {
    expectWord(parser, "with");
    expectWord(parser, "roots");
    if (parser.peek().kind() == Token.Kind.OPEN) {
      return applied(parser, "polynomial with roots", first);
    }
    List<Piece> listed = new ArrayList<>();
    do {
      while (!listed.isEmpty() && parser.accept(",")) {
        // “r, s, and t” has two signs between the last two.
      }
      listed.add(parser.parse(Binding.SUM));
    } while (parser.accept(","));
    Piece piece =
        parser.over(
            new Formula.Application(
                "polynomial with roots", listed.stream().map(Piece::formula).toList()),
            Piece.Shape.ATOM,
            first.from(),
            listed);
    return piece;
  }

  /**
   * {@code root(5, x)}: the root sign of any index; {@code root(x^3 - x - 1, 2)}: a root of a
   * polynomial by its place.
   */
  static Piece root(Parser parser, Token first, int least) throws UnreadableException {
    Token open = expectBracket(parser, first);
    Piece inside = parser.inside(open);
    List<Formula> arguments = Arguments.of(inside);
    if (arguments.size() != 2) {
      throw parser.refused(
          "unexpected",
          "The word “root” needs the index and what stands below the sign, root(5, x), or a polynomial and a place, root(x^3 - x - 1, 2).",
          open,
          "two entries with a comma",
          "");
    }
    if (!(arguments.get(0) instanceof Formula.Numeral) && isPlace(arguments.get(1))) {
      return parser.over(
          new Formula.Application(first.text(), arguments),
          Piece.Shape.ATOM,
          first.from(),
          List.of(inside));
    }
    int index =
        RootIndex.of(
            parser,
            new Piece(arguments.get(0), 1, inside.from(), inside.to(), Piece.Shape.ATOM),
            open);
    return parser.over(
        new Formula.Radical(arguments.get(1), index),
        Piece.Shape.ATOM,
        first.from(),
        List.of(inside));
  }

  private static boolean isPlace(Formula formula) {
    return formula instanceof Formula.Numeral place
        && place.value().isInteger()
        && place.value().signum() > 0;
  }

  private static Piece applied(Parser parser, String function, Token first)
      throws UnreadableException {
    Piece inside = parser.inside(expectBracket(parser, first));
    return parser.over(
        new Formula.Application(function, new ArrayList<>(Arguments.of(inside))),
        Piece.Shape.ATOM,
        first.from(),
        List.of(inside));
  }

  private static Token expectBracket(Parser parser, Token word) throws UnreadableException {
    Token open = parser.next();
    if (open.kind() != Token.Kind.OPEN) {
      throw parser.refused(
          "unexpected",
          "A bracket should follow the word “%s”.".formatted(parser.written(word)),
          open,
          "“(”",
          "");
    }
    return open;
  }

  private static void expectWord(Parser parser, String wanted) throws UnreadableException {
    Token word = parser.next();
    if (!word.is(Token.Kind.WORD, wanted)) {
      throw parser.refused(
          "unexpected", "The word “%s” should follow.".formatted(wanted), word, wanted, "");
    }
  }
}
