package rootwright.lesson.caption;

import java.util.List;

/** Writes captions in the SubRip form (.srt), which has no published standard. */
public final class SubRip {

  private SubRip() {}

  /** The text of the file. */
  public static String write(List<Cue> cues) {
    StringBuilder text = new StringBuilder();
    int number = 1;
    for (Cue cue : cues) {
      text.append(number++).append('\n');
      text.append(time(cue.from())).append(" --> ").append(time(cue.to())).append('\n');
      cue.lines().forEach(line -> text.append(line).append('\n'));
      text.append('\n');
    }
    return text.toString();
  }

  private static String time(long millis) {
    return WebVtt.time(millis).replace('.', ',');
  }
}
