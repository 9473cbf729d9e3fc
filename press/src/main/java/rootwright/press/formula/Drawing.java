package rootwright.press.formula;

/**
 * A formula as one outline to be filled. The origin is the upper left corner, y grows downwards,
 * and the baseline lies at {@code height - depth}.
 *
 * @param path in the syntax of an SVG path
 * @param width in points
 * @param height in points, from the highest to the lowest point, so it contains the depth
 * @param depth in points below the baseline; negative if everything lies above it
 */
public record Drawing(String path, double width, double height, double depth) {}
