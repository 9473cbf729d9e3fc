package rootwright.composing.scan.filter;

import rootwright.composing.scan.candidate.CoefficientBox;
import rootwright.composing.scan.candidate.Workspace;

/**
 * No root is rational, so none can be guessed. By a sieve through the possible roots where that is
 * short, otherwise by residues and then exactly.
 */
public final class NoRationalRoot implements CandidateFilter {

  private static final int LINEAR = 1 << 1;

  private final ExactTests exact;

  /** The filter with the tests that settle what residues leave open. */
  public NoRationalRoot(ExactTests exact) {
    this.exact = exact;
  }

  @Override
  public String name() {
    return "no-rational-root";
  }

  @Override
  public String explanation() {
    return "No root is a rational number.";
  }

  @Override
  public Stage stage() {
    return Stage.ROOT;
  }

  @Override
  public boolean passes(long[] ascending) {
    int degree = ascending.length - 1;
    return degree > 1
        && ascending[0] != 0
        && (ResidueTables.of(degree).proveNoDivisor(ascending, LINEAR)
            || !exact.hasRationalRoot(CoefficientBox.polynomial(ascending)));
  }

  @Override
  public RowTest rowTest(Workspace workspace) {
    CoefficientBox box = workspace.box();
    if (box.degree() == 1) {
      return (row, alive) -> alive.removeAll();
    }
    ResidueProof residues = new ResidueProof(box.degree(), box.rowLength());
    RowTest otherwise =
        new ProvedOrTested(
            box,
            row -> residues.withoutDivisor(row, LINEAR),
            ascending -> !exact.hasRationalRoot(CoefficientBox.polynomial(ascending)));
    RationalRootSieve sieve = new RationalRootSieve();
    return (row, alive) -> {
      if (sieve.suits(row)) {
        sieve.screen(row, alive);
      } else {
        otherwise.screen(row, alive);
      }
    };
  }
}
