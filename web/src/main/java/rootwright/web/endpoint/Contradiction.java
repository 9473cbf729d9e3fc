package rootwright.web.endpoint;

import rootwright.composing.blueprint.ContradictoryBlueprintException;
import rootwright.web.reply.FaultException;

/** An order that contradicts itself. */
final class Contradiction {

  private Contradiction() {}

  /** In a sentence. */
  static String inWords(ContradictoryBlueprintException contradictory) {
    return "This order contradicts itself: " + contradictory.getMessage() + ".";
  }

  /** As a refusal. */
  static FaultException asFault(ContradictoryBlueprintException contradictory) {
    return new FaultException(422, "contradictory", inWords(contradictory));
  }
}
