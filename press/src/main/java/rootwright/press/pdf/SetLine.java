package rootwright.press.pdf;

/**
 * Pieces of a line as formatting objects.
 *
 * @param objects the formatting objects
 * @param width that they take on one line, in points
 */
record SetLine(String objects, double width) {}
