package rootwright.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import rootwright.desk.lesson.LessonOrder;
import rootwright.lesson.caption.Wording;
import rootwright.lesson.plan.Pace;
import rootwright.working.proof.Proof;
import rootwright.working.topic.Exercise;

/** The order of a lesson as options of a command. */
final class LessonOptions {

  @Option(
      names = "--topic",
      paramLabel = "NAME",
      description = "What it is about (${DEFAULT-VALUE}); “board topics” lists them.",
      defaultValue = "newton-identities")
  String topic = "";

  @Option(
      names = "--roots",
      split = ",",
      paramLabel = "NAMES",
      description = "The roots with which facts are written out: r,s,t.")
  List<String> roots = List.of();

  @Option(
      names = "--minutes",
      description = "How long it may take (${DEFAULT-VALUE}).",
      defaultValue = "45")
  int minutes;

  @Option(
      names = "--level",
      description = "middle (120 words a minute) or upper (130) (${DEFAULT-VALUE}).",
      defaultValue = "middle")
  String level = "middle";

  @Option(names = "--words", paramLabel = "N", description = "Words a minute for what is new.")
  @Nullable Integer words;

  @Option(
      names = "--proof",
      paramLabel = "LENGTH",
      description = "How long proofs are: said, board or full (${DEFAULT-VALUE}).",
      defaultValue = "board")
  String proof = "board";

  @Option(
      names = "--problems",
      paramLabel = "FILE",
      description =
          "Problems: polynomial ; ask [; route] on each line, the worked example first and the one"
              + " to try last; those of the topic without.")
  @Nullable Path problems;

  @Option(
      names = "--formulas",
      description = "In captions: spoken or written (${DEFAULT-VALUE}).",
      defaultValue = "spoken")
  String formulas = "spoken";

  LessonOrder order() throws IOException {
    return new LessonOrder(topic, roots, minutes, pace(), length(), exercises());
  }

  Wording wording() {
    return switch (formulas) {
      case "spoken" -> Wording.SPOKEN;
      case "written" -> Wording.WRITTEN;
      default ->
          throw new IllegalArgumentException(
              "formulas in captions are spoken or written: " + formulas);
    };
  }

  private Pace pace() {
    Pace pace =
        switch (level) {
          case "middle" -> Pace.MIDDLE;
          case "upper" -> Pace.UPPER;
          default -> throw new IllegalArgumentException("a level is middle or upper: " + level);
        };
    return words == null ? pace : new Pace(words, pace.recap(), pace.captions());
  }

  private Proof.Length length() {
    for (Proof.Length length : Proof.Length.values()) {
      if (length.name().toLowerCase(Locale.ROOT).equals(proof)) {
        return length;
      }
    }
    throw new IllegalArgumentException("the length of a proof is said, board or full: " + proof);
  }

  private List<Exercise> exercises() throws IOException {
    if (problems == null) {
      return List.of();
    }
    if (!Files.isRegularFile(problems)) {
      throw new IllegalArgumentException("no file can be read at " + problems);
    }
    List<Exercise> exercises = new ArrayList<>();
    int number = 0;
    for (String line : Files.readAllLines(problems, StandardCharsets.UTF_8)) {
      number++;
      if (!line.isBlank() && !line.strip().startsWith("#")) {
        String[] parts = line.split(";", -1);
        if (parts.length < 2) {
          throw new IllegalArgumentException(
              "line %d has no ask: write the polynomial, a semicolon and the ask"
                  .formatted(number));
        }
        exercises.add(
            new Exercise(
                parts[0].strip(), parts[1].strip(), parts.length > 2 ? parts[2].strip() : ""));
      }
    }
    return exercises;
  }
}
