package rootwright.algebra.notation;

import java.util.List;

/**
 * What is asked, with the names of the roots.
 *
 * @param formula the ask
 * @param roots the spelling of each root's name
 * @param readings what might have been understood otherwise
 */
public record ReadAsk(Formula formula, List<String> roots, List<Reading> readings) {
  public ReadAsk {
    roots = List.copyOf(roots);
    readings = List.copyOf(readings);
  }
}
