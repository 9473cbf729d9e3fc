package rootwright.composing.scan.filter;

import java.util.function.Predicate;
import rootwright.composing.scan.candidate.Row;
import rootwright.composing.scan.candidate.Survivors;

/** The row test that asks candidate by candidate. */
final class EachCandidate implements RowTest {

  private final long[] coefficients;
  private final Predicate<long[]> passes;

  EachCandidate(int degree, Predicate<long[]> passes) {
    coefficients = new long[degree + 1];
    this.passes = passes;
  }

  @Override
  public void screen(Row row, Survivors alive) {
    for (int place = alive.next(0); place >= 0; place = alive.next(place + 1)) {
      if (!passes(row, place)) {
        alive.remove(place);
      }
    }
  }

  /** Asks for one candidate of a row. */
  boolean passes(Row row, int place) {
    row.copyTo(place, coefficients);
    return passes.test(coefficients);
  }
}
