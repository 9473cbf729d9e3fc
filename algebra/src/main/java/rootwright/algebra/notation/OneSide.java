package rootwright.algebra.notation;

import java.util.ArrayList;
import java.util.List;

/**
 * What is left of an equation when everything is moved to its left side.
 *
 * @param formula the one side
 * @param readings those of the text, and what was dropped
 */
record OneSide(Formula formula, List<Reading> readings) {

  static OneSide of(PlacedFormula placed) throws UnreadableException {
    List<Reading> readings = new ArrayList<>(placed.read().readings());
    if (!(placed.formula() instanceof Formula.Relation relation)) {
      return new OneSide(placed.formula(), readings);
    }
    for (int k = 0; k < relation.comparisons().size(); k++) {
      if (relation.comparisons().get(k) != Formula.Comparison.EQUAL) {
        throw placed.refused(
            "not-an-equation",
            "A polynomial or an equation is needed here, not the sign %s."
                .formatted(Comparisons.typeset(relation.comparisons().get(k))),
            relation.sides().get(k + 1),
            "=");
      }
    }
    List<Formula> sides = new ArrayList<>(relation.sides());
    if (sides.get(0) instanceof Formula.Application named
        && FunctionLetters.contains(named.function())
        && named.arguments().size() == 1
        && named.arguments().get(0) instanceof Formula.Name) {
      sides.remove(0);
      readings.add(Reading.readAs(PlainWriter.write(named) + " =", "the name of the polynomial"));
    }
    if (sides.size() > 2) {
      throw placed.refused(
          "not-an-equation",
          "An equation of two sides is needed here; this one has %d.".formatted(sides.size()),
          sides.get(2),
          "one sign =");
    }
    if (sides.size() == 1) {
      return new OneSide(sides.get(0), readings);
    }
    boolean zero = sides.get(1).equals(Formula.number(0));
    return new OneSide(
        zero
            ? sides.get(0)
            : new Formula.Sum(List.of(sides.get(0), new Formula.Negative(sides.get(1)))),
        readings);
  }
}
