package rootwright.desk.figure;

/**
 * A point of a drawing.
 *
 * @param x to the right
 * @param y upwards
 */
public record Place(double x, double y) {}
