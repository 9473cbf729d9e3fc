package rootwright.lesson;

import java.util.List;
import rootwright.lesson.caption.Wording;
import rootwright.lesson.narration.Script;
import rootwright.lesson.plan.Lesson;
import rootwright.lesson.plan.Pace;
import rootwright.lesson.plan.Plan;
import rootwright.lesson.plan.PlanCheck;
import rootwright.lesson.plan.PlanMaker;
import rootwright.lesson.plan.PlanReader;
import rootwright.lesson.plan.PlanWriter;
import rootwright.lesson.slide.DeckMaker;
import rootwright.working.kind.Kinds;
import rootwright.working.proof.Letters;
import rootwright.working.proof.Proof;
import rootwright.working.route.ClassProfile;
import rootwright.working.topic.Topic;
import rootwright.working.topic.Topics;

/** Lessons to test with. */
public final class Lessons {

  private static final Kinds KINDS = new Kinds();

  public static final PlanCheck.Solver SOLVER =
      problem -> KINDS.solve(problem, ClassProfile.EVERYTHING);

  private Lessons() {}

  public static Topic topic(String name) {
    return Topics.named(name).orElseThrow();
  }

  public static Plan plan(String topic) throws Exception {
    return new PlanMaker(SOLVER)
        .plan(
            new PlanMaker.Order(
                topic(topic), Letters.usual(3), 30, Pace.MIDDLE, Proof.Length.BOARD, List.of()));
  }

  /** The lesson of a plan that has been written to its file and read back. */
  public static Lesson lesson(Plan plan) throws Exception {
    return new PlanCheck(SOLVER).lesson(PlanReader.read(PlanWriter.write(plan)));
  }

  public static Script script(String topic) throws Exception {
    return Script.of(DeckMaker.deck(lesson(plan(topic))), Wording.SPOKEN);
  }
}
