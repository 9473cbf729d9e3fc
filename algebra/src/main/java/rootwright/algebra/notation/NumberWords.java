package rootwright.algebra.notation;

import java.math.BigInteger;

/** Whole numbers as English words, up to a million; larger ones stay digits. */
final class NumberWords {

  private static final BigInteger LIMIT = BigInteger.valueOf(1_000_000);

  private static final String[] SMALL = {
    "zero",
    "one",
    "two",
    "three",
    "four",
    "five",
    "six",
    "seven",
    "eight",
    "nine",
    "ten",
    "eleven",
    "twelve",
    "thirteen",
    "fourteen",
    "fifteen",
    "sixteen",
    "seventeen",
    "eighteen",
    "nineteen"
  };
  private static final String[] TENS = {
    "", "", "twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"
  };

  private NumberWords() {}

  /** {@code seventy-six}; digits from a million on. */
  static String cardinal(BigInteger value) {
    if (value.signum() < 0) {
      return "minus " + cardinal(value.negate());
    }
    return value.compareTo(LIMIT) < 0 ? below(value.intValue()) : value.toString();
  }

  private static String below(int value) {
    if (value < 20) {
      return SMALL[value];
    }
    if (value < 100) {
      return TENS[value / 10] + (value % 10 == 0 ? "" : "-" + SMALL[value % 10]);
    }
    if (value < 1000) {
      return SMALL[value / 100]
          + " hundred"
          + (value % 100 == 0 ? "" : " and " + below(value % 100));
    }
    int rest = value % 1000;
    return below(value / 1000)
        + " thousand"
        + (rest == 0 ? "" : (rest < 100 ? " and " : " ") + below(rest));
  }

  /** {@code eleventh}, {@code twenty-first}; digits with “th” from a million on. */
  static String ordinal(BigInteger value) {
    if (value.compareTo(LIMIT) >= 0) {
      return value + "th";
    }
    String words = below(value.intValue());
    int last = Math.max(words.lastIndexOf(' '), words.lastIndexOf('-')) + 1;
    return words.substring(0, last) + ordinalOf(words.substring(last));
  }

  private static String ordinalOf(String word) {
    return switch (word) {
      case "one" -> "first";
      case "two" -> "second";
      case "three" -> "third";
      case "five" -> "fifth";
      case "eight" -> "eighth";
      case "nine" -> "ninth";
      case "twelve" -> "twelfth";
      default -> word.endsWith("y") ? word.substring(0, word.length() - 1) + "ieth" : word + "th";
    };
  }

  /** The word for one part of so many: half, third, quarter, eleventh; plural if not one. */
  static String part(BigInteger denominator, boolean one) {
    return switch (denominator.bitLength() > 3 ? 0 : denominator.intValue()) {
      case 2 -> one ? "half" : "halves";
      case 4 -> one ? "quarter" : "quarters";
      default -> ordinal(denominator) + (one ? "" : "s");
    };
  }
}
