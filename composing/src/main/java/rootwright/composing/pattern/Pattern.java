package rootwright.composing.pattern;

import java.util.List;
import java.util.Optional;
import rootwright.working.problem.Statement;

/**
 * How statements of one kind are made.
 *
 * @param name stable short name, lower case with hyphens: {@code letter-double-root}
 * @param words what its statements ask, a few words for a coach
 * @param kind the name of the kind that such a statement is worked as
 * @param degrees the degrees its polynomials can have, the usual one first; empty if it has none of
 *     its own choosing
 * @param answers what sort of thing the answers are
 * @param recipe how one statement is drawn
 */
public record Pattern(
    String name,
    String words,
    String kind,
    List<Integer> degrees,
    AnswerSort answers,
    Recipe recipe) {

  /** Keeps its own copy. */
  public Pattern {
    degrees = List.copyOf(degrees);
  }

  /** How one statement is drawn. */
  @FunctionalInterface
  public interface Recipe {

    /** One statement, or empty if the numbers drawn do not make a good one. */
    Optional<Statement> draw(Chance chance, Scale scale);
  }

  /** The statement that a seed draws, if it makes a good one. */
  public Optional<Statement> at(long seed, Scale scale) {
    return recipe.draw(new Chance(seed), scale);
  }

  /** The degree that is meant where an order leaves it open. */
  public int usualDegree() {
    return degrees.isEmpty() ? 0 : degrees.get(0);
  }
}
