package rootwright.composing.blueprint;

import java.util.List;

/** Thrown where an order contradicts itself; says every contradiction. */
public final class ContradictoryBlueprintException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final transient List<String> contradictions;

  /** With the contradictions, one sentence each. */
  public ContradictoryBlueprintException(List<String> contradictions) {
    super(String.join("; ", contradictions));
    this.contradictions = List.copyOf(contradictions);
  }

  /** The contradictions, one sentence each. */
  public List<String> contradictions() {
    return contradictions;
  }
}
