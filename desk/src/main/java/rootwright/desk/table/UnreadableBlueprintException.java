package rootwright.desk.table;

import java.util.List;

/** Thrown where an order cannot be read; says every fault with its line and the mend. */
public final class UnreadableBlueprintException extends Exception {

  private static final long serialVersionUID = 1L;

  private final transient List<Fault> faults;

  /** With the faults, at least one. */
  public UnreadableBlueprintException(List<Fault> faults) {
    super(String.join("; ", faults.stream().map(Fault::sentence).toList()));
    this.faults = List.copyOf(faults);
  }

  /** The faults in the order of their lines. */
  public List<Fault> faults() {
    return faults;
  }

  /**
   * One thing that cannot be read.
   *
   * @param line the line of the text, from 1
   * @param text what is wrong
   * @param mend what would do
   */
  public record Fault(int line, String text, String mend) {
    /** The fault as one sentence: "line 3: the degree is “three”; write a whole number". */
    public String sentence() {
      return "line %d: %s; %s".formatted(line, text, mend);
    }
  }
}
