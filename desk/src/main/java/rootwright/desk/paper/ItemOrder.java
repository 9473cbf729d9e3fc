package rootwright.desk.paper;

import java.util.List;
import java.util.OptionalInt;
import rootwright.working.problem.Statement;

/** One item that a coach wants on a paper. */
public sealed interface ItemOrder {

  /** What it is worth; the marks of its scheme if nobody says. */
  OptionalInt points();

  /**
   * Something is to be found.
   *
   * @param statement the problem as typed
   * @param form how it is answered
   * @param points what it is worth
   */
  record Problem(Statement statement, AnswerForm form, OptionalInt points) implements ItemOrder {}

  /**
   * Something is to be proved.
   *
   * @param claim the claim, formulas between dollar signs
   * @param proof the lines of a proof for the solutions, written the same way; may be none
   * @param points what it is worth
   */
  record Proof(String claim, List<String> proof, OptionalInt points) implements ItemOrder {
    public Proof {
      proof = List.copyOf(proof);
    }
  }
}
