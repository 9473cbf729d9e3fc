package rootwright.composing.scan.filter;

import java.util.function.Function;
import java.util.function.Predicate;
import rootwright.composing.scan.candidate.CoefficientBox;
import rootwright.composing.scan.candidate.Row;
import rootwright.composing.scan.candidate.Survivors;

/**
 * The row test that lets pass what is proved for the row at once and asks about each of the rest.
 */
final class ProvedOrTested implements RowTest {

  private final Function<Row, Survivors> proof;
  private final EachCandidate test;
  private final Survivors open;

  ProvedOrTested(CoefficientBox box, Function<Row, Survivors> proof, Predicate<long[]> passes) {
    this.proof = proof;
    test = new EachCandidate(box.degree(), passes);
    open = new Survivors(box.rowLength());
  }

  @Override
  public void screen(Row row, Survivors alive) {
    Survivors proved = proof.apply(row);
    open.set(alive);
    open.remove(proved);
    test.screen(row, open);
    proved.add(open);
    alive.retain(proved);
  }
}
