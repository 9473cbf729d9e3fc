package rootwright.working.values;

import java.util.List;
import rootwright.algebra.ideal.Ideal;
import rootwright.algebra.number.Rational;

/** What given symmetric values leave of e_1, …, e_n. */
sealed interface Outcome {

  /** All of them are determined. */
  record Single(List<Rational> elementary) implements Outcome {
    public Single {
      elementary = List.copyOf(elementary);
    }
  }

  /** Finitely many possibilities, all rational. */
  record Several(List<List<Rational>> cases) implements Outcome {
    public Several {
      cases = List.copyOf(cases);
    }
  }

  /**
   * Some are free, or irrational.
   *
   * @param ideal what follows from the data; unknown k − 1 is e_k
   */
  record Open(Ideal ideal) implements Outcome {}

  /**
   * There are no such numbers.
   *
   * @param first the place of the first value that contradicts those before it
   */
  record Contradictory(int first) implements Outcome {}

  /** More work than the bound allows. */
  record TooHard() implements Outcome {}
}
