package rootwright.algebra.notation;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The table of what may begin a piece. A new construct is a new row. */
final class Prefixes {

  private static final Map<String, Prefix> TABLE = new HashMap<>();

  static {
    TABLE.put("-", SignPrefix::minus);
    TABLE.put("+", SignPrefix::plus);
    TABLE.put("+-", SignPrefix::plusMinus);
    TABLE.put("√", new RadicalPrefix(2));
    TABLE.put("∛", new RadicalPrefix(3));
    TABLE.put("∜", new RadicalPrefix(4));
    TABLE.put("\\sqrt", LatexPrefix::root);
    TABLE.put("\\frac", LatexPrefix::fraction);
    TABLE.put("root", WordPrefix::root);
    TABLE.put("Σ", new AggregatePrefix(Formula.Aggregate.Operation.SUM));
    TABLE.put("Π", new AggregatePrefix(Formula.Aggregate.Operation.PRODUCT));
    TABLE.put("real", WordPrefix::realRoots);
    TABLE.put("polynomial", WordPrefix::polynomialWithRoots);
    for (String word : new String[] {"discriminant", "roots"}) {
      TABLE.put(word, WordPrefix::alone);
    }
    FunctionWords.ALL.forEach(word -> TABLE.put(word, WordPrefix::function));
  }

  private Prefixes() {}

  /** What a token begins, if it can begin something. */
  static Optional<Prefix> of(Token token) {
    return switch (token.kind()) {
      case NUMBER -> Optional.of(NumberPrefix::number);
      case VULGAR -> Optional.of(NumberPrefix::vulgar);
      case LETTER -> Optional.of(LetterPrefix::letter);
      case OPEN -> Optional.of(Prefixes::bracket);
      case BAR -> Optional.of(Prefixes::bars);
      case SIGN, WORD -> Optional.ofNullable(TABLE.get(token.text()));
      case CLOSE, END -> Optional.empty();
    };
  }

  /** Where nothing can begin. */
  static Piece nothing(Parser parser, Token first, int least) throws UnreadableException {
    String found =
        first.kind() == Token.Kind.END
            ? "The formula ends where"
            : "“%s” stands where".formatted(parser.written(first));
    throw parser.refused(
        "unexpected",
        found + " a number, a letter or a bracket is needed.",
        first,
        "a number, a letter or a bracket",
        parser.withoutSignBefore(first));
  }

  private static Piece bracket(Parser parser, Token first, int least) throws UnreadableException {
    Piece inner = parser.inside(first);
    Formula formula =
        switch (first.text()) {
          case "⌊" -> new Formula.Application("floor", List.of(inner.formula()));
          case "⌈" -> new Formula.Application("ceil", List.of(inner.formula()));
          default -> inner.formula();
        };
    return new Piece(formula, inner.height() + 1, inner.from(), inner.to(), Piece.Shape.ATOM);
  }

  private static Piece bars(Parser parser, Token first, int least) throws UnreadableException {
    Piece inner = parser.insideBars(first);
    return parser.over(
        new Formula.Application("abs", List.of(inner.formula())),
        Piece.Shape.ATOM,
        first.from(),
        List.of(inner));
  }
}
