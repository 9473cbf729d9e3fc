package rootwright.algebra.enclosure;

import java.util.List;

/**
 * Lower bounds for the squared distances between points, and between points and mirror images at
 * the real axis. The points are put on one grid of machine words; where two come so close that the
 * grid says little, the exact coordinates are asked.
 */
final class Gaps {

  private static final int GRID_BITS = 61;

  /** Distances of at least this many grid steps are good to 20 bits or more. */
  private static final long FAR = 1L << 22;

  private final List<Point> points;
  private final long[] x;
  private final long[] y;
  private final int grid;
  private final Magnitude[] squared;
  private final Magnitude[] mirrored;

  Gaps(List<Point> points) {
    this.points = points;
    int n = points.size();
    int top = Integer.MIN_VALUE;
    for (Point point : points) {
      top = Math.max(top, point.isZero() ? top : point.top());
    }
    grid = top == Integer.MIN_VALUE ? 0 : top - GRID_BITS;
    x = new long[n];
    y = new long[n];
    squared = new Magnitude[n * n];
    mirrored = new Magnitude[n * n];
    for (int i = 0; i < n; i++) {
      Point onGrid = points.get(i).trimmedTo(grid);
      x[i] = onGrid.x().longValue() << (onGrid.exponent() - grid);
      y[i] = onGrid.y().longValue() << (onGrid.exponent() - grid);
      for (int j = 0; j <= i; j++) {
        squared[i * n + j] = bound(i, j);
        squared[j * n + i] = squared[i * n + j];
        mirrored[i * n + j] = mirroredBound(i, j);
        mirrored[j * n + i] = mirrored[i * n + j];
      }
    }
  }

  /** A lower bound for |z_i − z_j|². */
  Magnitude squared(int i, int j) {
    return squared[i * points.size() + j];
  }

  /** A lower bound for |z_i − z̄_j|². */
  Magnitude squaredToMirror(int i, int j) {
    return mirrored[i * points.size() + j];
  }

  /**
   * A lower bound for the squared product of the distances of z_i from all other points, the mirror
   * images of those off the real axis included.
   */
  Magnitude squaredProduct(int i) {
    Magnitude product = Magnitude.ONE;
    for (int j = 0; j < points.size(); j++) {
      if (j != i) {
        product = product.timesDown(squared(i, j));
      }
      if (!points.get(j).isReal()) {
        product = product.timesDown(squaredToMirror(i, j));
      }
    }
    return product;
  }

  private Magnitude bound(int i, int j) {
    long width = Math.abs(x[i] - x[j]);
    long rise = Math.abs(y[i] - y[j]);
    if (width < FAR && rise < FAR) {
      return points.get(i).minus(points.get(j)).squaredDown();
    }
    return far(width, rise);
  }

  private Magnitude mirroredBound(int i, int j) {
    long width = Math.abs(x[i] - x[j]);
    long rise = Math.abs(y[i] + y[j]);
    if (width < FAR && rise < FAR) {
      return points.get(i).minus(points.get(j).conjugate()).squaredDown();
    }
    return far(width, rise);
  }

  /** Both coordinates of both points may be off by one grid step. */
  private Magnitude far(long width, long rise) {
    Magnitude a = Magnitude.down(Math.max(0, width - 2), grid);
    Magnitude b = Magnitude.down(Math.max(0, rise - 2), grid);
    return a.timesDown(a).plusDown(b.timesDown(b));
  }
}
