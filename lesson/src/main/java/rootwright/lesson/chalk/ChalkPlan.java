package rootwright.lesson.chalk;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.lesson.narration.Script;
import rootwright.lesson.plan.LessonLine;
import rootwright.lesson.plan.LessonStep;
import rootwright.lesson.plan.StepKind;

/**
 * What is written where on a board of three panels, and what is wiped when: the left panel has what
 * is given, the middle one the work, the right one what is kept to the end.
 */
public final class ChalkPlan {

  /** How many lines a panel holds. */
  public static final int PANEL_LINES = 8;

  private ChalkPlan() {}

  /** A panel of the board. */
  public enum Panel {
    GIVEN("given"),
    WORK("work"),
    KEEP("keep");

    private final String word;

    Panel(String word) {
      this.word = word;
    }

    /** Its heading. */
    public String word() {
      return word;
    }
  }

  /** Something that is done at the board. */
  public sealed interface Move {

    /** A line is written. */
    record Written(int step, Panel panel, String line) implements Move {}

    /** A panel is wiped. */
    record Wiped(int step, Panel panel, String why) implements Move {}
  }

  /** Everything that is done, in order. */
  public static List<Move> moves(List<LessonStep> steps) {
    Chalk chalk = new Chalk();
    for (int k = 0; k < steps.size(); k++) {
      chalk.step(k, steps.get(k));
    }
    return List.copyOf(chalk.moves);
  }

  /** The plan as text. */
  public static String write(Script script) {
    List<LessonStep> steps = script.deck().lesson().steps();
    StringBuilder text = new StringBuilder();
    text.append("Board plan: ").append(script.deck().lesson().plan().title()).append('\n');
    text.append("Three panels: given (left) | work (middle) | keep (right)\n");
    int now = -1;
    for (Move move : moves(steps)) {
      int step = move instanceof Move.Written written ? written.step() : ((Move.Wiped) move).step();
      if (step != now) {
        now = step;
        text.append('\n').append(now + 1).append(". ").append(steps.get(now).title()).append('\n');
      }
      if (move instanceof Move.Written written) {
        text.append("   %-5s | %s%n".formatted(written.panel().word(), written.line()));
      } else if (move instanceof Move.Wiped wiped) {
        text.append("   wipe “%s”: %s%n".formatted(wiped.panel().word(), wiped.why()));
      }
    }
    return text.toString().replace("\r", "");
  }

  /** The board while it fills. */
  private static final class Chalk {
    private final List<Move> moves = new ArrayList<>();
    private String given = "";
    private final Map<Panel, Integer> filled = new EnumMap<>(Panel.class);

    private int filled(Panel panel) {
      return filled.getOrDefault(panel, 0);
    }

    void step(int number, LessonStep step) {
      if (step.kind() == StepKind.AIM) {
        return;
      }
      if (filled(Panel.WORK) > 0 && begins(step)) {
        wipe(number, Panel.WORK, "the next thing begins");
      }
      if (!step.statement().isEmpty()) {
        given(number, step.statement().plain());
      }
      for (int k = 0; k < step.lines().size(); k++) {
        LessonLine line = step.lines().get(k);
        if (step.kind() == StepKind.FACT || step.kind() == StepKind.TRICK) {
          // A fact stays for the whole lesson; of its conditions the coach speaks.
          if (k == 0 || line.shown().isPresent()) {
            write(number, Panel.KEEP, written(line));
          }
        } else if (line.shown().isPresent() || step.kind() == StepKind.WARNING) {
          write(number, Panel.WORK, written(line));
        }
      }
    }

    /** A problem that stands there already stays. */
    private void given(int number, String problem) {
      if (problem.equals(given)) {
        return;
      }
      if (filled(Panel.GIVEN) > 0) {
        wipe(number, Panel.GIVEN, "a new problem");
      }
      write(number, Panel.GIVEN, problem);
      given = problem;
    }

    /** A warning and a boundary belong to what stands there already. */
    private static boolean begins(LessonStep step) {
      return step.kind() != StepKind.BOUNDARY;
    }

    private void write(int number, Panel panel, String line) {
      if (filled(panel) == PANEL_LINES) {
        wipe(number, panel, "it is full");
      }
      filled.merge(panel, 1, Integer::sum);
      moves.add(new Move.Written(number, panel, line));
    }

    private void wipe(int number, Panel panel, String why) {
      filled.put(panel, 0);
      moves.add(new Move.Wiped(number, panel, why));
    }

    private static String written(LessonLine line) {
      return line.shown().map(UnicodeWriter::write).orElseGet(() -> line.words().plain());
    }
  }
}
