package rootwright.desk.figure;

/**
 * One root as a point of the plane.
 *
 * @param real its real part, decimal
 * @param imaginary its imaginary part, decimal, 0 for a real root
 * @param radius how far from this point the root may at most be, decimal, rounded up
 * @param multiplicity how often it occurs
 * @param isReal whether it is real
 */
public record PicturedRoot(
    String real, String imaginary, String radius, int multiplicity, boolean isReal) {}
