package rootwright.press.paper;

import java.util.List;
import java.util.stream.Collectors;

/**
 * Thrown where a paper cannot be checked, frozen or printed; says everything that is in the way.
 */
public final class BlockedException extends Exception {

  private static final long serialVersionUID = 1L;

  private final transient List<Complaint> complaints;

  /** With everything that is in the way. */
  public BlockedException(List<Complaint> complaints) {
    super(complaints.stream().map(Complaint::sentence).collect(Collectors.joining("\n")));
    this.complaints = List.copyOf(complaints);
  }

  /** What is in the way. */
  public List<Complaint> complaints() {
    return complaints;
  }
}
