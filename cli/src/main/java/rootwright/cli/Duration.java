package rootwright.cli;

import java.math.BigInteger;

/** A length of time as a person says it. */
final class Duration {

  private static final BigInteger MINUTE = BigInteger.valueOf(60);
  private static final BigInteger HOUR = BigInteger.valueOf(3_600);
  private static final BigInteger DAY = BigInteger.valueOf(86_400);
  private static final BigInteger YEAR = BigInteger.valueOf(31_557_600);

  private Duration() {}

  /** In the largest unit of which there are two at least. */
  static String inWords(BigInteger seconds) {
    if (seconds.compareTo(MINUTE.shiftLeft(1)) < 0) {
      return seconds + " seconds";
    } else if (seconds.compareTo(HOUR.shiftLeft(1)) < 0) {
      return seconds.divide(MINUTE) + " minutes";
    } else if (seconds.compareTo(DAY.shiftLeft(1)) < 0) {
      return seconds.divide(HOUR) + " hours";
    }
    return seconds.compareTo(YEAR.shiftLeft(1)) < 0
        ? seconds.divide(DAY) + " days"
        : "%,d years".formatted(seconds.divide(YEAR));
  }
}
