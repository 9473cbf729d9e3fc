package rootwright.composing.option;

import java.util.Set;
import rootwright.algebra.number.Rational;
import rootwright.working.step.Idea;

/**
 * One way to a wrong answer: a slip, or two taken together.
 *
 * @param name the name of the slip, or of both, joined by {@code " + "}
 * @param weight how often it is expected, from 0 to 1
 * @param spots the ideas on whose lines it happens; all of them must come up
 */
record WayThere(String name, Rational weight, Set<Idea> spots) {
  WayThere {
    spots = Set.copyOf(spots);
  }
}
