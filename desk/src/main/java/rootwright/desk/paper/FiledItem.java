package rootwright.desk.paper;

import java.util.List;
import rootwright.working.problem.Statement;

/** An item as it stands in the file of a paper, in plain words. */
public sealed interface FiledItem {

  /** What it is worth. */
  int points();

  /** Whether the key, if there is one, was read from another statement than stands there. */
  boolean isStale();

  /**
   * Something is to be found.
   *
   * @param statement as typed
   * @param form how it is answered
   * @param points what it is worth
   * @param options of a multiple-choice item, ascending; empty if they are still to be chosen
   * @param hints from the first to the last, formulas between dollar signs
   * @param key the answer that both checks confirmed, empty before the first check
   * @param readFrom the statement that the key was read from, as one line
   * @param level the estimated level in logits, empty where nobody has estimated it
   */
  record Problem(
      Statement statement,
      AnswerForm form,
      int points,
      List<String> options,
      List<String> hints,
      String key,
      String readFrom,
      String level)
      implements FiledItem {

    public Problem {
      options = List.copyOf(options);
      hints = List.copyOf(hints);
    }

    @Override
    public boolean isStale() {
      return key.isEmpty() || !readFrom.equals(line(statement));
    }

    /**
     * The item with another statement: what was made for the old one, its options and hints, goes;
     * the key stays and is stale.
     */
    public Problem withStatement(Statement other) {
      return other.equals(statement)
          ? this
          : new Problem(other, form, points, List.of(), List.of(), key, readFrom, "");
    }

    /** The item answered in another way. */
    public Problem withForm(AnswerForm other) {
      return new Problem(statement, other, points, List.of(), hints, key, readFrom, level);
    }

    /** The item with other options; none to have them chosen anew. */
    public Problem withOptions(List<String> others) {
      return new Problem(statement, form, points, others, hints, key, readFrom, level);
    }

    /** A statement as one line. */
    static String line(Statement statement) {
      StringBuilder line =
          new StringBuilder(statement.polynomial()).append(" ; ").append(statement.find());
      if (!statement.roots().isEmpty()) {
        line.append(" ; roots ").append(String.join(", ", statement.roots()));
      }
      statement.unknown().ifPresent(letter -> line.append(" ; unknown ").append(letter));
      // As it is read back from a file, where blanks round a text are lost.
      return line.toString().strip();
    }
  }

  /**
   * Something is to be proved.
   *
   * @param claim formulas between dollar signs
   * @param proof lines of a proof, for the solutions
   * @param points what it is worth
   */
  record Proof(String claim, List<String> proof, int points) implements FiledItem {
    public Proof {
      proof = List.copyOf(proof);
    }

    @Override
    public boolean isStale() {
      return false;
    }
  }

  /** The same item worth something else. */
  default FiledItem worth(int other) {
    if (this instanceof Problem problem) {
      return new Problem(
          problem.statement(),
          problem.form(),
          other,
          problem.options(),
          problem.hints(),
          problem.key(),
          problem.readFrom(),
          problem.level());
    }
    Proof proof = (Proof) this;
    return new Proof(proof.claim(), proof.proof(), other);
  }
}
