package rootwright.algebra.enclosure;

/** Aberth's iteration on doubles, for roots of moderate size. */
final class HardwareIteration {

  private static final double LAST_PLACE = 0x1p-52;

  private final double[] a;
  private final double[] x;
  private final double[] y;
  private final boolean[] done;

  HardwareIteration(double[] ascending, double[] x, double[] y) {
    a = ascending;
    this.x = x;
    this.y = y;
    done = new boolean[x.length];
  }

  void run(int rounds) {
    for (int round = 0; round < rounds; round++) {
      boolean moving = false;
      for (int i = 0; i < x.length; i++) {
        if (!done[i]) {
          improve(i);
          moving = true;
        }
      }
      if (!moving) {
        return;
      }
    }
  }

  private void improve(int i) {
    boolean outside = x[i] * x[i] + y[i] * y[i] > 1;
    // Outside the unit circle the reversed polynomial is evaluated at 1/z: nothing overflows.
    double norm = x[i] * x[i] + y[i] * y[i];
    double ux = outside ? x[i] / norm : x[i];
    double uy = outside ? -y[i] / norm : y[i];
    int n = a.length - 1;
    double px = outside ? a[0] : a[n];
    double py = 0;
    double dx = 0;
    double dy = 0;
    double distance = Math.sqrt(ux * ux + uy * uy);
    double bound = Math.abs(px);
    for (int k = 1; k <= n; k++) {
      double tx = dx * ux - dy * uy + px;
      dy = dx * uy + dy * ux + py;
      dx = tx;
      double coefficient = outside ? a[k] : a[n - k];
      tx = px * ux - py * uy + coefficient;
      py = px * uy + py * ux;
      px = tx;
      bound = bound * distance + Math.abs(coefficient);
    }
    if (Math.abs(px) + Math.abs(py) <= 2 * LAST_PLACE * bound) {
      done[i] = true;
    }
    double vx = px;
    double vy = py;
    if (outside) {
      // P/P' at z equals R / (u·(n·R − u·R')) at u = 1/z for the reversed polynomial R.
      double ex = n * px - (ux * dx - uy * dy);
      double ey = n * py - (ux * dy + uy * dx);
      dx = ux * ex - uy * ey;
      dy = ux * ey + uy * ex;
    }
    double sx = 0;
    double sy = 0;
    for (int j = 0; j < x.length; j++) {
      double gx = x[i] - x[j];
      double gy = y[i] - y[j];
      double square = gx * gx + gy * gy;
      if (square > 0) {
        sx += gx / square;
        sy -= gy / square;
      }
    }
    // The step v/(d − v·s) is Newton's v/d with the other roots taken into account.
    double ex = dx - (vx * sx - vy * sy);
    double ey = dy - (vx * sy + vy * sx);
    double square = ex * ex + ey * ey;
    if (!(square > 0)) {
      return;
    }
    double stepX = (vx * ex + vy * ey) / square;
    double stepY = (vy * ex - vx * ey) / square;
    x[i] -= stepX;
    y[i] -= stepY;
    if (Math.abs(stepX) + Math.abs(stepY) <= LAST_PLACE * (Math.abs(x[i]) + Math.abs(y[i]))) {
      done[i] = true;
    }
  }
}
