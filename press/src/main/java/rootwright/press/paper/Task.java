package rootwright.press.paper;

import java.util.List;
import java.util.Optional;
import rootwright.press.document.Piece;
import rootwright.working.problem.Statement;

/** What an item of a paper asks for. */
public sealed interface Task {

  /** Whether the key, if any, belongs to another statement than the one that stands here. */
  boolean isStale();

  /**
   * A value, a polynomial or the like is to be found.
   *
   * @param statement as it was typed
   * @param form how it is answered
   * @param key what the checks found, empty before the first check
   */
  record Find(Statement statement, Form form, Optional<Checked> key) implements Task {

    @Override
    public boolean isStale() {
      return key.isEmpty() || !key.get().read().equals(statement);
    }

    /** The same with a statement that the checks have not read yet. */
    public Find withStatement(Statement other) {
      return new Find(other, form, key);
    }

    /** The same answered in another way. */
    public Find withForm(Form other) {
      return new Find(statement, other, key);
    }

    /** The same with what the checks found. */
    public Find withKey(Checked found) {
      return new Find(statement, form, Optional.of(found));
    }

    /**
     * What the checks found.
     *
     * @throws IllegalStateException if the key is stale
     */
    public Checked current() {
      if (isStale()) {
        throw new IllegalStateException(
            "the key of '%s' has not been checked".formatted(statement.find()));
      }
      return key.orElseThrow();
    }
  }

  /**
   * A claim is to be proved; a person reads the proofs.
   *
   * @param claim what is to be proved
   * @param proof the lines of a proof, for the solutions
   */
  record Prove(List<Piece> claim, List<List<Piece>> proof) implements Task {
    public Prove {
      claim = List.copyOf(claim);
      proof = proof.stream().map(List::copyOf).toList();
    }

    @Override
    public boolean isStale() {
      return false;
    }
  }
}
