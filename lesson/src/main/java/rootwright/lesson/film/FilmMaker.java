package rootwright.lesson.film;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import rootwright.lesson.narration.Script;

/** Makes a silent film of a lesson, over which a coach may speak. */
public interface FilmMaker {

  /** Every maker of the house, the best first. */
  List<FilmMaker> ALL = List.of(new InstalledEncoder(), new OwnEncoder());

  /** What encodes, a few words. */
  String title();

  /** Whether it can be used on this machine. */
  boolean isHere();

  /** How long it takes about, in milliseconds. */
  long estimate(Script script);

  /**
   * Writes the film.
   *
   * @param file ends in .mp4
   * @param listener is told after each picture
   * @throws IOException if it cannot be written
   */
  void make(Script script, Path file, FilmListener listener) throws IOException;

  /** The best maker on this machine. */
  static FilmMaker best() {
    Optional<FilmMaker> here = ALL.stream().filter(FilmMaker::isHere).findFirst();
    return here.orElseThrow();
  }
}
