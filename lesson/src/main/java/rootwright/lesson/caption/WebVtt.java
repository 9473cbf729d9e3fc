package rootwright.lesson.caption;

import java.util.List;

/** Writes captions and chapters as WebVTT (W3C Candidate Recommendation, 2019). */
public final class WebVtt {

  private WebVtt() {}

  /** The text of the file. */
  public static String write(List<Cue> cues) {
    StringBuilder text = new StringBuilder("WEBVTT\n");
    int number = 1;
    for (Cue cue : cues) {
      text.append('\n').append(number++).append('\n');
      text.append(time(cue.from())).append(" --> ").append(time(cue.to())).append('\n');
      cue.lines().forEach(line -> text.append(escaped(line)).append('\n'));
    }
    return text.toString();
  }

  /** Hours, minutes, seconds and milliseconds with a point. */
  static String time(long millis) {
    return "%02d:%02d:%02d.%03d"
        .formatted(millis / 3_600_000, millis / 60_000 % 60, millis / 1000 % 60, millis % 1000);
  }

  /** The characters that would begin a tag or an entity; an arrow cannot stand then either. */
  private static String escaped(String line) {
    return line.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }
}
