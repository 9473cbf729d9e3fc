package rootwright.web.keep;

/**
 * A problem the coach worked on.
 *
 * @param query the address of its page after the question mark
 * @param statement the problem in words
 * @param answer the answer in plain notation
 */
public record Visit(String query, String statement, String answer) {}
