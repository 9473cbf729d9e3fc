package rootwright.composing.scan.filter;

import java.util.Optional;
import rootwright.composing.scan.candidate.CoefficientBox;
import rootwright.composing.scan.candidate.IntegerForm;
import rootwright.composing.scan.candidate.Row;
import rootwright.composing.scan.candidate.RowForm;
import rootwright.composing.scan.candidate.Workspace;

/**
 * A wanted number of real roots, each taken as often as it occurs.
 *
 * <p>To degree 3 the sign of the discriminant decides. In degree 4 a negative discriminant means
 * two real roots; a positive one four or none, and four exactly if 8ac − 3b² &lt; 0 and 64a³e −
 * 16a²c² + 16ab²c − 16a²bd − 3b⁴ &lt; 0 (E. L. Rees 1922, Graphical discussion of the roots of a
 * quartic equation). A zero discriminant, a higher degree and numbers beyond 64 bits go to the
 * exact count.
 */
public final class RealRootCount implements CandidateFilter {

  private final int wanted;
  private final ExactTests exact;

  /**
   * The filter.
   *
   * @throws IllegalArgumentException if the number is negative
   */
  public RealRootCount(int wanted, ExactTests exact) {
    if (wanted < 0) {
      throw new IllegalArgumentException("negative number of real roots: " + wanted);
    }
    this.wanted = wanted;
    this.exact = exact;
  }

  @Override
  public String name() {
    return "real-roots-" + wanted;
  }

  @Override
  public String explanation() {
    return switch (wanted) {
      case 0 -> "No root is real.";
      case 1 -> "Exactly one root is real.";
      default -> "Exactly " + wanted + " roots are real, counted with multiplicity.";
    };
  }

  @Override
  public Stage stage() {
    return Stage.REAL;
  }

  @Override
  public boolean passes(long[] ascending) {
    return isPossible(ascending.length - 1)
        && exact.realRoots(CoefficientBox.polynomial(ascending)) == wanted;
  }

  /** Roots that are not real come in pairs. */
  private boolean isPossible(int degree) {
    return wanted <= degree && (degree - wanted) % 2 == 0;
  }

  @Override
  public RowTest rowTest(Workspace workspace) {
    int degree = workspace.box().degree();
    if (!isPossible(degree)) {
      return (row, alive) -> alive.removeAll();
    }
    EachCandidate each = new EachCandidate(degree, this::passes);
    Optional<IntegerForm> form = Discriminant.of(degree);
    if (form.isEmpty()) {
      return each;
    }
    RowForm discriminant = workspace.along(form.get());
    QuarticSigns quartic = new QuarticSigns();
    return (row, alive) -> {
      if (!discriminant.fits(row) || (degree == 4 && !quartic.fits(row))) {
        each.screen(row, alive);
        return;
      }
      long[] values = discriminant.values(row);
      for (int place = alive.next(0); place >= 0; place = alive.next(place + 1)) {
        long value = values[place];
        boolean right;
        if (value == 0) {
          right = each.passes(row, place);
        } else if (degree == 4) {
          right = wanted == (value < 0 ? 2 : quartic.allReal(row, place) ? 4 : 0);
        } else {
          right = wanted == (value > 0 ? degree : degree - 2);
        }
        if (!right) {
          alive.remove(place);
        }
      }
    };
  }

  /** The two signs that tell four real roots from none. */
  private static final class QuarticSigns {

    /** With all coefficients at most 2^13 in size, every product below stays under 2^62. */
    private static final long LARGEST = 1 << 13;

    boolean fits(Row row) {
      boolean small = row.largestConstant() <= LARGEST;
      for (int power = 1; power <= 4; power++) {
        small &= Math.abs(row.coefficient(power)) <= LARGEST;
      }
      return small;
    }

    boolean allReal(Row row, int place) {
      long a = row.coefficient(4);
      long b = row.coefficient(3);
      long c = row.coefficient(2);
      long d = row.coefficient(1);
      long e = row.constant(place);
      return 8 * a * c - 3 * b * b < 0
          && 64 * a * a * a * e
                  - 16 * a * a * c * c
                  + 16 * a * b * b * c
                  - 16 * a * a * b * d
                  - 3 * b * b * b * b
              < 0;
    }
  }
}
