package rootwright.lesson.film;

import java.util.ArrayList;
import java.util.List;
import rootwright.lesson.narration.Script;
import rootwright.lesson.narration.TimedBeat;
import rootwright.lesson.picture.Picture;

/** What a film of a lesson shows: one picture for each change, as long as it stands. */
public final class Frames {

  private Frames() {}

  /**
   * A picture that stands still.
   *
   * @param picture what is seen
   * @param millis for how long
   */
  public record Frame(Picture picture, long millis) {}

  /**
   * The pictures in order. While a class thinks before something appears, what was there before
   * stays.
   */
  public static List<Frame> of(Script script) {
    List<Frame> frames = new ArrayList<>();
    List<TimedBeat> beats = script.beats();
    for (int k = 0; k < beats.size(); k++) {
      TimedBeat timed = beats.get(k);
      long from = k == 0 ? 0 : timed.shown();
      long to = k == beats.size() - 1 ? timed.to() : beats.get(k + 1).shown();
      Picture picture = script.deck().slides().get(timed.beat().slide()).at(timed.beat().reveal());
      frames.add(new Frame(picture, to - from));
    }
    return frames;
  }
}
