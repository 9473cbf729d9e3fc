package rootwright.composing.scan.filter;

import java.util.Optional;
import rootwright.composing.scan.candidate.CoefficientBox;
import rootwright.composing.scan.candidate.IntegerForm;
import rootwright.composing.scan.candidate.Row;
import rootwright.composing.scan.candidate.RowForm;
import rootwright.composing.scan.candidate.Survivors;
import rootwright.composing.scan.candidate.Workspace;

/**
 * No root is repeated: the discriminant is not zero. To degree 4 by its closed form; above, or
 * where that leaves 64 bits, by residues and then exactly.
 */
public final class DistinctRoots implements CandidateFilter {

  private final ExactTests exact;

  /** The filter with the tests that settle what residues leave open. */
  public DistinctRoots(ExactTests exact) {
    this.exact = exact;
  }

  @Override
  public String name() {
    return "distinct-roots";
  }

  @Override
  public String explanation() {
    return "No root is repeated.";
  }

  @Override
  public Stage stage() {
    return Stage.DISCRIMINANT;
  }

  @Override
  public boolean passes(long[] ascending) {
    return ResidueTables.of(ascending.length - 1).proveSquarefree(ascending)
        || exact.isSquarefree(CoefficientBox.polynomial(ascending));
  }

  @Override
  public RowTest rowTest(Workspace workspace) {
    int degree = workspace.box().degree();
    if (degree == 1) {
      return (row, alive) -> {};
    }
    ResidueProof residues = new ResidueProof(degree, workspace.box().rowLength());
    RowTest otherwise =
        new ProvedOrTested(
            workspace.box(),
            residues::squarefree,
            ascending -> exact.isSquarefree(CoefficientBox.polynomial(ascending)));
    Optional<IntegerForm> form = Discriminant.of(degree);
    if (form.isEmpty()) {
      return otherwise;
    }
    RowForm discriminant = workspace.along(form.get());
    return (row, alive) -> {
      if (discriminant.fits(row)) {
        removeZeros(discriminant, row, alive);
      } else {
        otherwise.screen(row, alive);
      }
    };
  }

  private static void removeZeros(RowForm discriminant, Row row, Survivors alive) {
    long[] values = discriminant.values(row);
    for (int place = 0; place < row.length(); place++) {
      if (values[place] == 0) {
        alive.remove(place);
      }
    }
  }
}
