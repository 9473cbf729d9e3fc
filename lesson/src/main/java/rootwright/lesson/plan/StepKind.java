package rootwright.lesson.plan;

import java.util.Arrays;
import java.util.Optional;

/** What a step of a lesson is for. */
public enum StepKind {
  AIM("aim", "What this is about", true),
  FACT("fact", "The fact", false),
  PROOF("proof", "Why it is true", false),
  BOUNDARY("boundary", "What breaks without a condition", false),
  WARNING("warning", "Warning", false),
  EXAMPLE("example", "Worked example", false),
  TRICK("trick", "A shorter way", false),
  HARDER("harder", "A harder one", false),
  TRY("try", "Try it", false);

  private final String word;
  private final String title;
  private final boolean recap;

  StepKind(String word, String title, boolean recap) {
    this.word = word;
    this.title = title;
    this.recap = recap;
  }

  /** The word in a plan. */
  public String word() {
    return word;
  }

  /** The title where a plan gives none. */
  public String title() {
    return title;
  }

  /** Whether it repeats what is known, so that it may be said faster. */
  public boolean recap() {
    return recap;
  }

  /** Whether it is about one problem. */
  public boolean ofProblem() {
    return this == EXAMPLE || this == HARDER || this == TRY || this == WARNING;
  }

  /** The kind with this word. */
  public static Optional<StepKind> named(String word) {
    return Arrays.stream(values()).filter(kind -> kind.word.equals(word)).findFirst();
  }
}
