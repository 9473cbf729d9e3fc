package rootwright.lesson.plan;

import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** Writes a plan as YAML 1.2, one thing a line, so that it can be edited by hand. */
public final class PlanWriter {

  /** Texts that mean nothing else in YAML. */
  private static final Pattern PLAIN =
      Pattern.compile("[A-Za-zα-ωΣΠ(][A-Za-zα-ωΣΠ0-9 .…,;/^*()_+=<>′²³−·’-]*");

  private static final List<String> RESERVED =
      List.of("true", "false", "yes", "no", "on", "off", "null", "y", "n");

  private PlanWriter() {}

  /** The text of the file. */
  public static String write(Plan plan) {
    StringBuilder text = new StringBuilder();
    text.append("# The plan of a lesson. Everything may be edited; formulas stand between ` `.\n");
    text.append("# write: a formula that is checked again · think: an argument · say: the words\n");
    field(text, "", "title", plan.title());
    field(text, "", "topic", plan.topic());
    field(text, "", "roots", String.join(", ", plan.letters().roots()));
    text.append("minutes: ").append(plan.minutes()).append('\n');
    text.append("words-a-minute:\n");
    text.append("  new: ").append(plan.pace().fresh()).append('\n');
    text.append("  recap: ").append(plan.pace().recap()).append('\n');
    text.append("  captions: ").append(plan.pace().captions()).append('\n');
    field(text, "", "aim", plan.aim());
    text.append("known:\n");
    plan.known().forEach(thing -> text.append("  - ").append(scalar(thing)).append('\n'));
    text.append("steps:\n");
    plan.steps().forEach(step -> step(text, step));
    return text.toString();
  }

  private static void step(StringBuilder text, PlanStep step) {
    text.append("\n  - step: ").append(step.kind().word()).append('\n');
    field(text, "    ", "title", step.title());
    field(text, "    ", "fact", step.fact());
    field(text, "    ", "polynomial", step.polynomial());
    field(text, "    ", "find", step.find());
    field(text, "    ", "route", step.route());
    field(text, "    ", "slip", step.slip());
    field(text, "    ", "figure", step.figure());
    if (step.seconds() > 0) {
      text.append("    seconds: ").append(step.seconds()).append('\n');
    }
    if (!step.lines().isEmpty()) {
      text.append("    lines:\n");
      step.lines().forEach(line -> line(text, line));
    }
  }

  private static void line(StringBuilder text, PlanLine line) {
    String before = "      - ";
    before = field(text, before, "words", line.words());
    before = field(text, before, "write", line.write());
    before = field(text, before, "think", line.think());
    before = field(text, before, "because", line.because());
    field(text, before, "say", line.say());
  }

  /** Writes the field unless it is empty; the indentation of what follows. */
  private static String field(StringBuilder text, String before, String key, String value) {
    if (value.isEmpty()) {
      return before;
    }
    text.append(before).append(key).append(": ").append(scalar(value)).append('\n');
    return before.replace('-', ' ');
  }

  private static String scalar(String value) {
    boolean plain =
        PLAIN.matcher(value).matches()
            && !value.endsWith(" ")
            && !value.contains(" #")
            && !RESERVED.contains(value.toLowerCase(Locale.ROOT));
    return plain ? value : "\"" + value.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
  }
}
