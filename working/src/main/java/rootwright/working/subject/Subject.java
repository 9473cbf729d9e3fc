package rootwright.working.subject;

import java.util.Optional;
import rootwright.algebra.notation.UnreadableException;
import rootwright.working.problem.Problem;
import rootwright.working.route.ClassProfile;
import rootwright.working.solve.Given;
import rootwright.working.solve.Solution;

/** What a problem may be about: how it is recognised, read and worked. */
public interface Subject {

  /**
   * Whether the inquiry is about this, judged by its form alone. Costs little and throws nothing;
   * an inquiry that is recognised may still turn out to be unreadable.
   */
  boolean recognises(Inquiry inquiry);

  /**
   * Reads the inquiry without working it.
   *
   * @throws UnreadableException if it cannot be read; names the place and the mend
   */
  Given read(Inquiry inquiry) throws UnreadableException;

  /**
   * The problem about the roots of one polynomial with numbers for coefficients that the inquiry
   * comes down to, so that a working of it can lean on its roots; empty if it comes down to none.
   *
   * @throws UnreadableException as {@link #read}
   */
  default Optional<Problem> aboutRoots(Inquiry inquiry) throws UnreadableException {
    return Optional.empty();
  }

  /**
   * Finds everything that can be said of the inquiry.
   *
   * @throws UnreadableException if it cannot be read, or is beyond a limit of ours
   * @throws rootwright.working.solve.CheckFailedException if a check refutes something of ours
   */
  Solution work(Inquiry inquiry, ClassProfile profile) throws UnreadableException;
}
