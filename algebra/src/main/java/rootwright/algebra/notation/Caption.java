package rootwright.algebra.notation;

import java.util.ArrayList;
import java.util.List;

/**
 * What stands below and above a Σ or Π. Only captions are read that say which roots are meant: one
 * letter, {@code i=1} to n, {@code i<j}, {@code i≠j}.
 *
 * @param order how the indices are related
 * @param indices the letters that stand for the numbers of roots
 * @param end the code point after the caption
 */
record Caption(Order order, List<String> indices, int end) {

  /** How the indices of a caption are related. */
  enum Order {
    /** There is no caption, or it says nothing more than that the roots are meant. */
    FREE,
    /** Each set of indices counts once. */
    INCREASING,
    /** Each ordered pair of different indices counts. */
    DIFFERENT,
    /** One term for each turn of the roots round: r to s, s to t, t to r. */
    CYCLIC,
    /** One term for each renaming of the roots, equal terms again and again. */
    RENAMED
  }

  Caption {
    indices = List.copyOf(indices);
  }

  /** The caption at the next place, passed over; one that says something else is refused. */
  static Caption read(Parser parser, Token sign) throws UnreadableException {
    List<Token> below = new ArrayList<>();
    List<Token> above = new ArrayList<>();
    int end = sign.to();
    while (parser.peek().isSign("_") || parser.peek().isSign("^")) {
      List<Token> tokens = parser.next().isSign("_") ? below : above;
      end = collect(parser, sign, tokens);
    }
    if (below.isEmpty() && above.isEmpty()) {
      return new Caption(Order.FREE, List.of(), end);
    }
    Caption caption = meaning(parser, sign, spelled(below), spelled(above), end);
    if (caption.order() != Order.CYCLIC && caption.order() != Order.RENAMED) {
      parser.note(parser.written(sign.from(), end), "over the roots");
    }
    return caption;
  }

  private static Caption meaning(Parser parser, Token sign, String below, String above, int end)
      throws UnreadableException {
    boolean toTheLast = above.isEmpty() || above.matches("[a-zA-Z]|[0-9]{1,3}");
    if (toTheLast && below.matches("[a-zA-Z](=1)?")) {
      return new Caption(
          Order.FREE, below.length() > 1 ? List.of(below.substring(0, 1)) : List.of(), end);
    }
    if (above.isEmpty() && below.matches("cyc(lic)?")) {
      return new Caption(Order.CYCLIC, List.of(), end);
    }
    if (above.isEmpty() && below.matches("sym(metric)?")) {
      return new Caption(Order.RENAMED, List.of(), end);
    }
    String bare = below.replaceFirst("^1(<=|<)", "").replaceFirst("(<=|<)([a-zA-Z]|[0-9]+)$", "");
    for (String chain : new String[] {below, bare}) {
      boolean bounded = !chain.equals(below);
      if (above.isEmpty()
          && chain.matches("[a-zA-Z](<[a-zA-Z]){1,5}")
          && (bounded || !below.startsWith("1"))) {
        return new Caption(Order.INCREASING, List.of(chain.split("<")), end);
      }
    }
    if (above.isEmpty() && below.matches("[a-zA-Z]!=[a-zA-Z]")) {
      return new Caption(Order.DIFFERENT, List.of(below.split("!=")), end);
    }
    throw parser.refused(
        "caption",
        "What stands at this sign is not understood; a sum or product here runs over the roots."
            + " Write the terms out, or leave the caption away.",
        sign,
        "no caption",
        "");
  }

  private static String spelled(List<Token> tokens) {
    StringBuilder text = new StringBuilder();
    for (Token token : tokens) {
      text.append(token.text());
    }
    return text.toString();
  }

  private static int collect(Parser parser, Token sign, List<Token> tokens)
      throws UnreadableException {
    Token begin = parser.next();
    if (begin.kind() != Token.Kind.OPEN) {
      tokens.add(begin);
      return begin.to();
    }
    int open = 1;
    Token token = begin;
    while (open > 0) {
      token = parser.next();
      if (token.kind() == Token.Kind.END) {
        throw parser.refused(
            "bracket", "What stands at this sign does not end.", sign, "a closing bracket", "");
      }
      open += token.kind() == Token.Kind.OPEN ? 1 : token.kind() == Token.Kind.CLOSE ? -1 : 0;
      if (open > 0) {
        tokens.add(token);
      }
    }
    return token.to();
  }
}
