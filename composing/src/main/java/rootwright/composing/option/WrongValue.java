package rootwright.composing.option;

import java.util.ArrayList;
import java.util.List;
import rootwright.algebra.number.Rational;
import rootwright.working.answer.Answer;

/**
 * A wrong answer that wrong turnings lead to.
 *
 * @param value the wrong answer
 * @param ways what leads there, the likeliest first; at least one
 */
record WrongValue(Answer value, List<WayThere> ways) {

  /** From this weight on a wrong answer is common enough to be offered whatever its size. */
  private static final Rational COMMON = Rational.of(1, 5);

  WrongValue {
    ways = List.copyOf(ways);
  }

  /** How often it is expected, all ways together. */
  Rational weight() {
    return ways.stream().map(WayThere::weight).reduce(Rational.ZERO, Rational::plus);
  }

  /** The names of what leads there, the likeliest first. */
  List<String> slips() {
    return ways.stream().map(WayThere::name).distinct().toList();
  }

  /** Whether so many are expected to go wrong there that its size does not matter. */
  boolean isCommon() {
    return weight().compareTo(COMMON) >= 0;
  }

  /** The same wrong answer, reached in other ways as well. */
  WrongValue mergedWith(WrongValue other) {
    List<WayThere> all = new ArrayList<>(ways);
    all.addAll(other.ways);
    return new WrongValue(value, all);
  }

  Option option() {
    return new Option(value, slips());
  }
}
