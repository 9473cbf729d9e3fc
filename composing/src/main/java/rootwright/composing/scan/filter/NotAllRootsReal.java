package rootwright.composing.scan.filter;

import rootwright.composing.scan.candidate.Survivors;
import rootwright.composing.scan.candidate.Workspace;

/** At least one pair of roots is not real. */
public final class NotAllRootsReal implements CandidateFilter {

  private final RealRootCount allReal;

  /** The filter for polynomials of one degree. */
  public NotAllRootsReal(int degree, ExactTests exact) {
    allReal = new RealRootCount(degree, exact);
  }

  @Override
  public String name() {
    return "not-all-roots-real";
  }

  @Override
  public String explanation() {
    return "Not all roots are real.";
  }

  @Override
  public Stage stage() {
    return Stage.REAL;
  }

  @Override
  public boolean passes(long[] ascending) {
    return !allReal.passes(ascending);
  }

  @Override
  public RowTest rowTest(Workspace workspace) {
    RowTest all = allReal.rowTest(workspace);
    Survivors real = new Survivors(workspace.box().rowLength());
    return (row, alive) -> {
      real.set(alive);
      all.screen(row, real);
      alive.remove(real);
    };
  }
}
