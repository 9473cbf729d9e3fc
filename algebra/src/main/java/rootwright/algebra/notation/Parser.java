package rootwright.algebra.notation;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;

/**
 * Reads tokens by binding strength (Pratt, "Top down operator precedence", 1973): a prefix begins a
 * piece, and infixes that bind at least as strongly as asked lengthen it.
 */
final class Parser {

  private final SourceText source;
  private final List<Token> tokens;
  private final List<Reading> readings;
  private final IdentityHashMap<Formula, Integer> places = new IdentityHashMap<>();
  private int position;
  private int depth;
  private int openBars;
  private boolean endsAtAggregate;

  Parser(SourceText source, List<Token> tokens, List<Reading> readings) {
    this.source = source;
    this.tokens = tokens;
    this.readings = readings;
  }

  /** The whole text as one piece. */
  Piece whole() throws UnreadableException {
    Piece piece = parse(Binding.LISTING);
    Token rest = peek();
    if (rest.kind() == Token.Kind.CLOSE) {
      throw refused(
          "bracket",
          "A bracket is closed that was never opened.",
          rest,
          "the end of the formula",
          source.replaced(rest.from(), rest.to(), ""));
    }
    if (rest.kind() != Token.Kind.END) {
      throw refused(
          "unexpected",
          "The formula could end here, but “%s” follows.".formatted(written(rest)),
          rest,
          "an operator or the end of the formula",
          "");
    }
    return piece;
  }

  /** A piece held together by infixes of at least this strength. */
  Piece parse(int least) throws UnreadableException {
    Token first = next();
    deeper(first);
    Piece left = Prefixes.of(first).orElse(Prefixes::nothing).read(this, first, least);
    boolean more = true;
    while (more) {
      Token sign = peek();
      Optional<Infix> infix = Infixes.of(sign, openBars > 0);
      more = infix.isPresent() && infix.get().binding() >= least && !endsScope();
      if (more) {
        left = infix.get().read(this, left);
      }
    }
    depth--;
    return left;
  }

  /** What stands inside a bracket just opened, up to and with the closing one. */
  Piece inside(Token opening) throws UnreadableException {
    boolean outer = endsAtAggregate;
    int bars = openBars;
    endsAtAggregate = false;
    openBars = 0;
    Piece inner = parse(Binding.LISTING);
    openBars = bars;
    endsAtAggregate = outer;
    Token closing = peek();
    String wanted = Brackets.closing(opening.text());
    if (!closing.is(Token.Kind.CLOSE, wanted)) {
      boolean end = closing.kind() == Token.Kind.END;
      boolean other = closing.kind() == Token.Kind.CLOSE;
      throw refused(
          "bracket",
          end
              ? "The bracket opened at character %d is not closed.".formatted(opening.from() + 1)
              : "“%s” does not fit in this bracket.".formatted(written(closing)),
          closing,
          "“" + wanted + "”",
          end || other
              ? source.replaced(closing.from(), other ? closing.to() : closing.from(), wanted)
              : "");
    }
    next();
    return new Piece(inner.formula(), inner.height(), opening.from(), closing.to(), inner.shape());
  }

  /** What stands between two bars, the first of which was just read. */
  Piece insideBars(Token opening) throws UnreadableException {
    boolean outer = endsAtAggregate;
    endsAtAggregate = false;
    openBars++;
    Piece inner = parse(Binding.SUM);
    openBars--;
    endsAtAggregate = outer;
    Token closing = peek();
    if (closing.kind() != Token.Kind.BAR) {
      throw refused(
          "bracket",
          "The bar opened at character %d is not closed.".formatted(opening.from() + 1),
          closing,
          "“|”",
          source.replaced(closing.from(), closing.from(), "|"));
    }
    next();
    return inner;
  }

  /** The product that follows a Σ or Π: it ends before a further Σ or Π. */
  Piece scope() throws UnreadableException {
    boolean outer = endsAtAggregate;
    endsAtAggregate = true;
    Piece body = parse(Binding.SIGNED);
    endsAtAggregate = outer;
    return body;
  }

  /** Whether the product after a Σ or Π ends here because a further one follows. */
  boolean endsScope() {
    boolean afterSign = peek().isSign("*") || peek().isSign("/");
    return endsAtAggregate && isAggregate(afterSign ? peek(1) : peek());
  }

  /** Whether a factor may begin at the next place without a sign before it. */
  boolean standsBeside() {
    return Infixes.of(peek(), openBars > 0)
        .filter(infix -> infix instanceof JuxtapositionInfix)
        .isPresent();
  }

  static boolean isAggregate(Token token) {
    return token.isSign("Σ") || token.isSign("Π");
  }

  Token peek() {
    return peek(0);
  }

  /** The token some places ahead; the end beyond the end. */
  Token peek(int ahead) {
    return tokens.get(Math.min(position + ahead, tokens.size() - 1));
  }

  Token next() {
    Token token = peek();
    position = Math.min(position + 1, tokens.size());
    return token;
  }

  /** Passes over some tokens. */
  void skip(int count) {
    position = Math.min(position + count, tokens.size());
  }

  /** Passes over the next token if it is this sign. */
  boolean accept(String sign) {
    boolean there = peek().isSign(sign);
    if (there) {
      next();
    }
    return there;
  }

  /** Puts another token in the place of the next one: a command takes only its first digit. */
  void replaceNext(Token token) {
    tokens.set(position, token);
  }

  /** The text without the sign that stands before a token where nothing can begin. */
  String withoutSignBefore(Token token) {
    int before = tokens.indexOf(token) - 1;
    if (before < 0 || tokens.get(before).kind() != Token.Kind.SIGN) {
      return token.kind() == Token.Kind.SIGN ? source.replaced(token.from(), token.to(), "") : "";
    }
    return source.replaced(tokens.get(before).from(), tokens.get(before).to(), "");
  }

  private void deeper(Token at) throws UnreadableException {
    depth++;
    if (depth > Limits.NESTING) {
      throw tooDeep(at);
    }
  }

  private UnreadableException tooDeep(Token at) {
    return refused(
        "too-deep",
        "More than %d brackets, powers, fractions or roots stand within each other."
            .formatted(Limits.NESTING),
        at,
        "a flatter formula",
        "");
  }

  /** A piece over these pieces; refused if it stands too deep. */
  Piece over(Formula formula, Piece.Shape shape, int from, List<Piece> parts)
      throws UnreadableException {
    int height = 0;
    for (Piece part : parts) {
      height = Math.max(height, part.height());
    }
    if (height >= Limits.NESTING) {
      throw tooDeep(peek());
    }
    places.putIfAbsent(formula, from);
    return new Piece(formula, height + 1, from, lastEnd(), shape);
  }

  /** A piece without parts. */
  Piece leaf(Formula formula, int from) {
    places.putIfAbsent(formula, from);
    return new Piece(formula, 1, from, lastEnd(), Piece.Shape.ATOM);
  }

  /** Where each part was read, by the very object. */
  IdentityHashMap<Formula, Integer> places() {
    return places;
  }

  private int lastEnd() {
    return tokens.get(Math.max(0, Math.min(position, tokens.size()) - 1)).to();
  }

  /** The text that a token was made of. */
  String written(Token token) {
    String shown = source.between(token.from(), token.to());
    return shown.isEmpty() ? token.text() : shown;
  }

  /** The text that a piece was made of, shortened if it is long. */
  String written(int from, int to) {
    String shown = source.between(from, to).strip();
    return shown.length() > 60 ? shown.substring(0, 59) + "…" : shown;
  }

  SourceText source() {
    return source;
  }

  void note(String written, String taken) {
    Reading reading = Reading.readAs(written, taken);
    if (!readings.contains(reading) && readings.size() < 20) {
      readings.add(reading);
    }
  }

  UnreadableException refused(
      String code, String sentence, Token at, String expected, String mend) {
    return source.refused(code, sentence, at.from(), expected, mend);
  }
}
