package rootwright.algebra.notation;

import java.util.Map;

/** What comes before the arguments of a function when it is spoken. */
final class SpokenFunctions {

  private static final Map<String, String> BEFORE =
      Map.ofEntries(
          Map.entry("discriminant", "the discriminant"),
          Map.entry("roots", "the roots"),
          Map.entry("real roots", "the number of real roots"),
          Map.entry("positive roots", "the number of positive roots"),
          Map.entry("negative roots", "the number of negative roots"),
          Map.entry("all roots real", "whether all roots are real"),
          Map.entry("root", "the root of"),
          Map.entry("reduce", "the reduced form of"),
          Map.entry("resolvent", "the resolvent of"),
          Map.entry("polynomial with roots", "the polynomial with roots"),
          Map.entry("log", "the logarithm of"),
          Map.entry("ln", "the natural logarithm of"),
          Map.entry("abs", "the absolute value of"),
          Map.entry("floor", "the whole part of"),
          Map.entry("ceil", "the whole number at or above"),
          Map.entry("sin", "the sine of"),
          Map.entry("cos", "the cosine of"),
          Map.entry("tan", "the tangent of"),
          Map.entry("cot", "the cotangent of"),
          Map.entry("csc", "the cosecant of"),
          Map.entry("sec", "the secant of"),
          Map.entry("gcd", "the greatest common divisor of"),
          Map.entry("resultant", "the resultant of"),
          Map.entry("max", "the greatest of"),
          Map.entry("min", "the least of"));

  private SpokenFunctions() {}

  /** {@code P prime of}, {@code the resolvent of}; without arguments {@code the discriminant}. */
  static String before(String function, boolean arguments) {
    String known = BEFORE.get(function);
    if (known != null) {
      return known.startsWith("the discriminant") && arguments ? known + " of" : known;
    }
    return spokenPrimes(function) + (arguments ? " of" : "");
  }

  /** {@code P double prime}: a letter with its primes. */
  static String spokenPrimes(String letter) {
    String bare = letter.replace("'", "");
    return switch (letter.length() - bare.length()) {
      case 0 -> bare;
      case 1 -> bare + " prime";
      case 2 -> bare + " double prime";
      case 3 -> bare + " triple prime";
      default -> bare + " with " + (letter.length() - bare.length()) + " primes";
    };
  }
}
