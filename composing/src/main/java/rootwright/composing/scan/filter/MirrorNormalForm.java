package rootwright.composing.scan.filter;

import rootwright.composing.scan.candidate.CoefficientBox;
import rootwright.composing.scan.candidate.CompiledExpression;
import rootwright.composing.scan.candidate.Parity;
import rootwright.composing.scan.candidate.Workspace;

/**
 * Of a polynomial and its mirror image P(−x), whose roots have the opposite signs, only one is let
 * through: the one in which the first non-zero coefficient among a_{n−1}, a_{n−3}, … has the sign
 * opposite to the lead's, so that a non-zero sum of the roots is positive.
 *
 * <p>The other one is rejected only if its image is in the box too. For an expression that changes
 * its sign under the mirror the images have opposite answers; then the filter belongs beside wishes
 * that ask the same of a number and of its opposite.
 */
public final class MirrorNormalForm implements CandidateFilter {

  private final CoefficientBox box;
  private final CompiledExpression expression;

  /**
   * The normal form among the polynomials of a box.
   *
   * @throws IllegalArgumentException if the mirror changes the expression into another one, as with
   *     Σ (r² + r): then the image is another problem
   */
  public MirrorNormalForm(CoefficientBox box, CompiledExpression expression) {
    if (expression.parity() == Parity.NEITHER) {
      throw new IllegalArgumentException(
          "the mirror x -> -x changes the expression into another one: " + expression);
    }
    this.box = box;
    this.expression = expression;
  }

  @Override
  public String name() {
    return "mirror-normal-form";
  }

  @Override
  public String explanation() {
    return "Of a polynomial and its mirror image only the one with the positive sum of roots.";
  }

  @Override
  public Stage stage() {
    return Stage.SIGN;
  }

  @Override
  public boolean passes(long[] ascending) {
    int degree = ascending.length - 1;
    for (int power = degree - 1; power >= 0; power -= 2) {
      if (ascending[power] != 0) {
        return ascending[power] > 0 != ascending[degree] > 0 || !box.contains(mirrored(ascending));
      }
    }
    return true;
  }

  @Override
  public CandidateFilter within(CoefficientBox other) {
    return other.equals(box) ? this : new MirrorNormalForm(other, expression);
  }

  /** Most rows are settled by a coefficient that all their candidates share. */
  @Override
  public RowTest rowTest(Workspace workspace) {
    RowTest each = CandidateFilter.super.rowTest(workspace);
    boolean symmetric = isSymmetric();
    return (row, alive) -> {
      int power = row.degree() - 1;
      while (power > 0 && row.coefficient(power) == 0) {
        power -= 2;
      }
      if (power <= 0) {
        each.screen(row, alive);
      } else if (row.coefficient(power) > 0 == row.lead() > 0) {
        if (symmetric) {
          alive.removeAll();
        } else {
          each.screen(row, alive);
        }
      }
    };
  }

  /** Whether the mirror image of every candidate is in the box. */
  private boolean isSymmetric() {
    for (int power = box.degree() - 1; power >= 0; power -= 2) {
      if (box.range(power).low() != -box.range(power).high()) {
        return false;
      }
    }
    return true;
  }

  /** ±P(−x) with the lead of P. */
  private static long[] mirrored(long[] ascending) {
    long[] image = ascending.clone();
    for (int power = ascending.length - 2; power >= 0; power -= 2) {
      image[power] = -image[power];
    }
    return image;
  }
}
