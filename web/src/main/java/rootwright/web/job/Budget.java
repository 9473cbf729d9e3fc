package rootwright.web.job;

import java.time.Duration;

/**
 * What one request may use.
 *
 * @param time after this it is stopped
 * @param alone how often it is looked whether anybody listens; found alone twice, it is stopped
 */
public record Budget(Duration time, Duration alone) {

  /** For reading what is being typed. */
  public static final Budget READING = new Budget(Duration.ofSeconds(10), Duration.ofSeconds(10));

  /** For one problem. */
  public static final Budget PROBLEM = new Budget(Duration.ofSeconds(30), Duration.ofSeconds(2));

  /** For one problem that somebody is willing to wait for. */
  public static final Budget PATIENT = new Budget(Duration.ofMinutes(10), Duration.ofSeconds(2));

  /** For a scan that may take its time. */
  public static final Budget SCAN = new Budget(Duration.ofHours(6), Duration.ofSeconds(2));
}
