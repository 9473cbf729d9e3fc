package rootwright.web.job;

import java.time.Duration;

/** A piece of a job that took longer than it may. */
public final class TooLongException extends Exception {

  private static final long serialVersionUID = 1L;

  TooLongException(Duration longest) {
    super("This took longer than %d seconds and was stopped.".formatted(longest.toSeconds()));
  }
}
