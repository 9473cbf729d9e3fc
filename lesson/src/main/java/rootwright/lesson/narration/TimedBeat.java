package rootwright.lesson.narration;

import java.util.List;
import rootwright.lesson.caption.Cue;
import rootwright.lesson.slide.Beat;

/**
 * A beat with its time, in milliseconds from the beginning.
 *
 * @param beat what happens
 * @param from when the class begins to think, or at once when it appears
 * @param shown when it appears and is spoken about
 * @param to when the next one begins
 * @param cues its captions
 */
public record TimedBeat(Beat beat, long from, long shown, long to, List<Cue> cues) {
  public TimedBeat {
    cues = List.copyOf(cues);
  }

  /** How long it takes. */
  public long millis() {
    return to - from;
  }
}
