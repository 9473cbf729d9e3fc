package rootwright.composing.scan.filter;

import rootwright.composing.scan.candidate.Row;
import rootwright.composing.scan.candidate.Survivors;

/**
 * Marks the candidates of a row for which some prime proves a property. Modulo p the property has
 * period p in the constant term, so p look-ups settle a row for that prime. Belongs to one thread.
 */
final class ResidueProof {

  private final ResidueTables tables;
  private final Survivors proved;
  private final Survivors one;

  /** A proof for rows up to this length. */
  ResidueProof(int degree, int longestRow) {
    tables = ResidueTables.of(degree);
    proved = new Survivors(longestRow);
    one = new Survivors(longestRow);
  }

  /** The places where it is proved that no root is repeated; valid until the next call. */
  Survivors squarefree(Row row) {
    proved.clear(row.length());
    for (ResidueTable table : tables.all()) {
      table.mark(row, ResidueTable::isSquarefree, proved);
    }
    return proved;
  }

  /**
   * The places where it is proved that there is no factor of any of these degrees (bits); valid
   * until the next call.
   */
  Survivors withoutDivisor(Row row, int degrees) {
    proved.fill(row.length());
    for (int rest = degrees; rest != 0; rest &= rest - 1) {
      int degree = Integer.lowestOneBit(rest);
      one.clear(row.length());
      for (ResidueTable table : tables.all()) {
        table.mark(row, entry -> (ResidueTable.divisorDegrees(entry) & degree) == 0, one);
      }
      proved.retain(one);
    }
    return proved;
  }
}
