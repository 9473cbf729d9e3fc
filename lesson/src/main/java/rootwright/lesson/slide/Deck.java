package rootwright.lesson.slide;

import java.util.List;
import rootwright.lesson.picture.Picture;
import rootwright.lesson.plan.Lesson;

/**
 * The slides of a lesson and the order in which things appear on them.
 *
 * @param lesson what it is about
 * @param slides in order
 * @param beats in order; every reveal of every slide is one beat
 */
public record Deck(Lesson lesson, List<Picture> slides, List<Beat> beats) {
  public Deck {
    slides = List.copyOf(slides);
    beats = List.copyOf(beats);
  }
}
