package rootwright.algebra.notation;

import java.util.List;

/**
 * A formula that was read, with every reading that might surprise.
 *
 * @param formula what was read, in the normal form of {@link NormalForm}
 * @param readings in the order of the text; empty if nothing could be taken otherwise
 */
public record ReadFormula(Formula formula, List<Reading> readings) {
  public ReadFormula {
    readings = List.copyOf(readings);
  }
}
