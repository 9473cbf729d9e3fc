package rootwright.working.proof;

import java.util.List;

/**
 * A statement about the roots of any polynomial, with what it needs and how it is proved.
 *
 * @param name stable short name, lower case with hyphens
 * @param title a few words
 * @param statement for general n, formulas between backquotes
 * @param conditions what it needs, one phrase each
 * @param shown the statement as an identity, written out for a chosen n
 * @param proof at three lengths
 * @param boundary what breaks without a condition
 */
public record Fact(
    String name,
    String title,
    String statement,
    List<String> conditions,
    General shown,
    Proof proof,
    Boundary boundary) {

  public Fact {
    conditions = List.copyOf(conditions);
  }
}
