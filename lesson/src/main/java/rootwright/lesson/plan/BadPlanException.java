package rootwright.lesson.plan;

import java.util.List;

/** Thrown where a plan cannot be used; says what is wrong at which line. */
public final class BadPlanException extends Exception {

  private static final long serialVersionUID = 1L;

  private final transient List<Complaint> complaints;

  /** With everything that is wrong. */
  public BadPlanException(List<Complaint> complaints) {
    super(complaints.isEmpty() ? "" : complaints.get(0).forReader());
    this.complaints = List.copyOf(complaints);
  }

  /** What is wrong, in the order of the file. */
  public List<Complaint> complaints() {
    return complaints;
  }
}
