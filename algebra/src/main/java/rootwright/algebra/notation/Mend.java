package rootwright.algebra.notation;

/** Makes sure that a suggested text would really be read. */
final class Mend {

  /** Mends that need a mend themselves are followed so far: closing three brackets takes three. */
  private static final int ROUNDS = 8;

  /** Texts longer than this are not tried again and again. */
  private static final int LONGEST = 2_000;

  private Mend() {}

  /**
   * One way to read a text.
   *
   * @param <T> what is read
   */
  @FunctionalInterface
  interface Attempt<T> {
    T read(String text) throws UnreadableException;
  }

  /** Reads; a refusal keeps its mend only if the mend, perhaps mended further, can be read. */
  static <T> T tried(Attempt<T> attempt, String text) throws UnreadableException {
    try {
      return attempt.read(text);
    } catch (UnreadableException unreadable) {
      Refusal refusal = unreadable.refusal();
      throw new UnreadableException(
          new Refusal(
              refusal.code(),
              refusal.text(),
              refusal.input(),
              refusal.at(),
              refusal.expected(),
              readable(attempt, refusal.mend())));
    }
  }

  private static <T> String readable(Attempt<T> attempt, String suggested) {
    String mend = suggested.strip();
    for (int round = 0; round < ROUNDS && !mend.isEmpty() && mend.length() < LONGEST; round++) {
      try {
        attempt.read(mend);
        return mend;
      } catch (UnreadableException still) {
        mend = still.refusal().mend().strip();
      }
    }
    return "";
  }
}
