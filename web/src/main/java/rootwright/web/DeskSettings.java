package rootwright.web;

import java.nio.file.Path;

/**
 * Where the desk stands.
 *
 * @param port where it listens if that is free, or 0 for any free port
 * @param folder the coach's folder, in which the desk keeps what it remembers; made if missing
 */
public record DeskSettings(int port, Path folder) {

  /** The port that a bookmark can rely on, as long as nobody else takes it. */
  public static final int USUAL_PORT = 7346;

  /**
   * Checks the port.
   *
   * @throws IllegalArgumentException if it is outside 0 … 65535
   */
  public DeskSettings {
    if (port < 0 || port > 65535) {
      throw new IllegalArgumentException("no such port: " + port);
    }
  }
}
