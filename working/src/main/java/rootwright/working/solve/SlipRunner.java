package rootwright.working.solve;

import java.util.ArrayList;
import java.util.List;
import rootwright.algebra.stop.Stop;
import rootwright.working.answer.Answer;
import rootwright.working.slip.SlipOn;

/** Takes every wrong turning on an ask and sorts those that show from those that are silent. */
public final class SlipRunner {

  private SlipRunner() {}

  /** The wrong turnings that show, and the silent ones. */
  public record Slipped(List<Solution.WrongTurning> showing, List<Solution.SilentSlip> silent) {
    public Slipped {
      showing = List.copyOf(showing);
      silent = List.copyOf(silent);
    }
  }

  /** Runs the slips; a slip is silent if none of the values it leads to is wrong. */
  public static <Q> Slipped run(List<? extends SlipOn<Q>> slips, Q asked, Answer answer) {
    List<Solution.WrongTurning> showing = new ArrayList<>();
    List<Solution.SilentSlip> silent = new ArrayList<>();
    for (SlipOn<Q> slip : slips) {
      Stop.ifUnwanted();
      List<Answer> values =
          slip.answers(asked).stream().<Answer>map(value -> value).distinct().toList();
      List<Answer> wrong = values.stream().filter(value -> !value.equals(answer)).toList();
      for (Answer value : wrong) {
        showing.add(
            new Solution.WrongTurning(slip.name(), slip.text(), value, slip.spot(), slip.weight()));
      }
      if (wrong.isEmpty() && !values.isEmpty()) {
        silent.add(
            new Solution.SilentSlip(slip.name(), "the right answer comes out here all the same"));
      }
    }
    return new Slipped(showing, silent);
  }
}
