package rootwright.composing.blueprint;

import java.util.ArrayList;
import java.util.List;
import rootwright.algebra.notation.PlainWriter;
import rootwright.working.solve.Given;

/**
 * What a statement asks and what it gives besides, without its numbers: statements with the same
 * skeleton differ in numbers and signs.
 *
 * @param text what is asked and the conditions, a hash for each number, without signs
 */
record Skeleton(String text) {

  /** The skeleton of a statement. */
  static Skeleton of(Given given) {
    List<String> parts = new ArrayList<>(List.of(PlainWriter.write(given.find())));
    given.conditions().forEach(condition -> parts.add(PlainWriter.write(condition)));
    return new Skeleton(
        String.join(";", parts).replaceAll("[0-9]+(/[0-9]+)?", "#").replaceAll("[-+\\s]", ""));
  }
}
