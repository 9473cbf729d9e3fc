package rootwright.composing.scan.filter;

import rootwright.composing.scan.candidate.Workspace;

/** The lead is positive: of P and −P, which have the same roots, one is enough. */
public final class PositiveLead implements CandidateFilter {

  @Override
  public String name() {
    return "positive-lead";
  }

  @Override
  public String explanation() {
    return "The leading coefficient is positive.";
  }

  @Override
  public Stage stage() {
    return Stage.SIGN;
  }

  @Override
  public boolean passes(long[] ascending) {
    return ascending[ascending.length - 1] > 0;
  }

  @Override
  public RowTest rowTest(Workspace workspace) {
    return (row, alive) -> {
      if (row.lead() < 0) {
        alive.removeAll();
      }
    };
  }
}
