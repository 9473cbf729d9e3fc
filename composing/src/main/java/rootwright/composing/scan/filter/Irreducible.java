package rootwright.composing.scan.filter;

import java.util.List;
import rootwright.composing.scan.candidate.CoefficientBox;
import rootwright.composing.scan.candidate.Workspace;

/**
 * The polynomial is no product of two of lower degree over Q. To degree 3 that is the same as
 * having no rational root; above, linear factors are sieved out first, then residues, then the
 * exact test.
 */
public final class Irreducible implements CandidateFilter {

  private final ExactTests exact;
  private final NoRationalRoot noRationalRoot;

  /** The filter with the tests that settle what residues leave open. */
  public Irreducible(ExactTests exact) {
    this.exact = exact;
    noRationalRoot = new NoRationalRoot(exact);
  }

  @Override
  public String name() {
    return "irreducible";
  }

  @Override
  public String explanation() {
    return "The polynomial has no factor of lower degree with rational coefficients.";
  }

  @Override
  public Stage stage() {
    return Stage.FACTOR;
  }

  @Override
  public boolean passes(long[] ascending) {
    return ascending.length == 2 || (noRationalRoot.passes(ascending) && withoutRoot(ascending));
  }

  /** The question for a polynomial that is known to have no rational root. */
  private boolean withoutRoot(long[] ascending) {
    int degree = ascending.length - 1;
    int open = 0;
    for (int part = 2; 2 * part <= degree; part++) {
      open |= 1 << part;
    }
    return open == 0
        || ResidueTables.of(degree).proveNoDivisor(ascending, open)
        || exact.isIrreducible(CoefficientBox.polynomial(ascending));
  }

  @Override
  public RowTest rowTest(Workspace workspace) {
    int degree = workspace.box().degree();
    if (degree == 1) {
      return (row, alive) -> {};
    }
    RowTest roots = noRationalRoot.rowTest(workspace);
    if (degree <= 3) {
      return roots;
    }
    RowTest each = new EachCandidate(degree, this::withoutRoot);
    return (row, alive) -> {
      roots.screen(row, alive);
      each.screen(row, alive);
    };
  }

  @Override
  public List<CandidateFilter> weaker() {
    return List.of(noRationalRoot);
  }
}
