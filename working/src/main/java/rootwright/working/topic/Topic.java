package rootwright.working.topic;

import java.util.List;
import rootwright.working.proof.Fact;

/** Something a lesson is about. Texts have formulas between backquotes. */
public interface Topic {

  /** Stable short name, lower case with hyphens: {@code newton-identities}. */
  String name();

  /** The title of the lesson. */
  String title();

  /** What a student can do afterwards, one sentence. */
  String aim();

  /** What must be known before, one phrase each. */
  List<String> known();

  /** What is stated and proved, in the order in which it is taught. */
  List<Fact> facts();

  /** What goes wrong, and how to keep from it. */
  Warning warning();

  /** A shorter way that is worth knowing. */
  Trick trick();

  /** Problems of rising difficulty; the first is the worked example, the last is left to try. */
  List<Exercise> exercises();

  /** The number of roots with which facts are written out where nothing else is said. */
  default int usualDegree() {
    return 3;
  }

  /** What is drawn beside the first fact, as in a plan; empty for nothing. */
  default String figure() {
    return "";
  }
}
