package rootwright.composing.option;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rootwright.algebra.number.Rational;
import rootwright.working.slip.Slips;
import rootwright.working.solve.Solution;

/** Everything wrong that known wrong turnings lead to on one problem, equal values merged. */
final class WrongValues {

  /** The kind of ask whose wrong turnings can be taken one after the other. */
  private static final String VALUE = "value";

  private WrongValues() {}

  /** The wrong answers, likeliest first; none equals the answer under exact equality. */
  static List<WrongValue> of(Solution solution) {
    List<WrongValue> all = new ArrayList<>();
    for (Solution.WrongTurning slip : solution.slips()) {
      all.add(
          new WrongValue(
              slip.value(),
              List.of(
                  new WayThere(
                      slip.name(), Rational.of(slip.weight(), 100), Set.of(slip.spot())))));
    }
    if (solution.kind().equals(VALUE)) {
      all.addAll(new SlipPairs(Slips.ALL).on(solution));
    }
    Object key = Numbers.identity(solution.answer());
    Map<Object, WrongValue> merged = new LinkedHashMap<>();
    for (WrongValue wrong : all) {
      Object identity = Numbers.identity(wrong.value());
      if (!identity.equals(key)) {
        merged.merge(identity, wrong, WrongValue::mergedWith);
      }
    }
    return merged.values().stream()
        .sorted(
            Comparator.comparing(WrongValue::weight)
                .reversed()
                .thenComparing(WrongValue::value, Numbers.ASCENDING))
        .toList();
  }
}
