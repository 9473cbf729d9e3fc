package rootwright.desk.table;

import java.util.List;
import java.util.Optional;
import rootwright.composing.blueprint.Composed;
import rootwright.composing.hint.HintLadder;
import rootwright.composing.hint.Rung;
import rootwright.composing.level.Level;

/**
 * What a coach wants to see beside a composed problem, worked out from its shortest working.
 *
 * @param level how hard it is likely to be; empty if it has no working
 * @param hints from a nudge to the last step but one; empty if it has no working
 */
public record Margin(Optional<Level> level, List<Rung> hints) {

  /** Keeps its own copy. */
  public Margin {
    hints = List.copyOf(hints);
  }

  /** The margin of one problem. */
  public static Margin of(Composed composed) {
    return new Margin(
        Level.of(composed.solution()),
        HintLadder.of(composed.solution()).map(HintLadder::rungs).orElse(List.of()));
  }
}
