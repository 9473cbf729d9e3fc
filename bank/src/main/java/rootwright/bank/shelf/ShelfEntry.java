package rootwright.bank.shelf;

import rootwright.working.problem.Problem;

/**
 * A problem on the shelf.
 *
 * @param line the number of its line in the file
 * @param text the line: {@code polynomial ; ask}
 * @param problem the line read
 * @param fingerprint by which twins are found
 */
public record ShelfEntry(int line, String text, Problem problem, String fingerprint) {}
