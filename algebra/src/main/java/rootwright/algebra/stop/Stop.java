package rootwright.algebra.stop;

/**
 * Asked by long loops, once a turn: a computation ends when its thread has been interrupted. It
 * costs a few nanoseconds.
 */
public final class Stop {

  private Stop() {}

  /**
   * Returns if the computation is still wanted. The thread stays marked as interrupted.
   *
   * @throws StoppedException if the thread has been interrupted
   */
  public static void ifUnwanted() {
    if (Thread.currentThread().isInterrupted()) {
      throw new StoppedException();
    }
  }
}
