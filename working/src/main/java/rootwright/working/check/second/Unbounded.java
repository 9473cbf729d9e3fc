package rootwright.working.check.second;

/** Thrown inside the second check where a formula cannot be enclosed, with one plain sentence. */
final class Unbounded extends RuntimeException {

  private static final long serialVersionUID = 1L;

  Unbounded(String sentence) {
    super(sentence);
  }
}
