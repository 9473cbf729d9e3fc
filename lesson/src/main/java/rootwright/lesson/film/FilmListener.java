package rootwright.lesson.film;

/** Is told how far a film is. */
@FunctionalInterface
public interface FilmListener {

  /** So many pictures of so many are done. */
  void done(int pictures, int ofAll);
}
