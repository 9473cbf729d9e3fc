package rootwright.bank.shelf;

import rootwright.working.solve.Given;

/**
 * A problem on the shelf.
 *
 * @param line the number of its line in the file
 * @param text the line: {@code polynomial ; ask}
 * @param given the line read
 * @param fingerprint by which twins are found
 */
public record ShelfEntry(int line, String text, Given given, String fingerprint) {}
