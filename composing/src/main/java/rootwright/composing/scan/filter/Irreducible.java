package rootwright.composing.scan.filter;

import java.util.List;
import rootwright.composing.scan.candidate.CoefficientBox;
import rootwright.composing.scan.candidate.Workspace;

/**
 * The polynomial is no product of two of lower degree over Q. To degree 3 that is the same as
 * having no rational root; above, linear factors are sieved out first, then residues, then a search
 * for a quadratic factor in degrees 4 and 5 with small coefficients, and otherwise the exact test.
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
    int degree = ascending.length - 1;
    return degree == 1
        || (noRationalRoot.passes(ascending)
            && (degree <= 3
                || ResidueTables.of(degree).proveNoDivisor(ascending, higherDegrees(degree))
                || isIrreducibleWithoutRoot(ascending)));
  }

  /** The degrees from 2 to n/2, as bits: one of any two factors has one of them. */
  private static int higherDegrees(int degree) {
    int bits = 0;
    for (int part = 2; 2 * part <= degree; part++) {
      bits |= 1 << part;
    }
    return bits;
  }

  /** The question for a polynomial that is known to have no rational root, without residues. */
  private boolean isIrreducibleWithoutRoot(long[] ascending) {
    return (ascending.length <= 6 && QuadraticFactorSearch.suits(ascending))
        ? !QuadraticFactorSearch.hasFactor(ascending)
        : exact.isIrreducible(CoefficientBox.polynomial(ascending));
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
    ResidueProof residues = new ResidueProof(degree, workspace.box().rowLength());
    int higher = higherDegrees(degree);
    RowTest factors =
        new ProvedOrTested(
            workspace.box(),
            row -> residues.withoutDivisor(row, higher),
            this::isIrreducibleWithoutRoot);
    return (row, alive) -> {
      roots.screen(row, alive);
      factors.screen(row, alive);
    };
  }

  @Override
  public List<CandidateFilter> weaker() {
    return List.of(noRationalRoot);
  }
}
