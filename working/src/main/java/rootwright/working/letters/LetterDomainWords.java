package rootwright.working.letters;

import rootwright.working.step.NumberDomain;

/** How a sentence says which numbers a letter stands for. */
final class LetterDomainWords {

  private LetterDomainWords() {}

  /** One member: "a real number". */
  static String one(NumberDomain domain) {
    return switch (domain) {
      case COMPLEX -> "a complex number";
      case REAL -> "a real number";
      case POSITIVE -> "a positive real number";
      case NEGATIVE -> "a negative real number";
      case RATIONAL -> "a rational number";
      case INTEGER -> "an integer";
      case POSITIVE_INTEGER -> "a positive integer";
    };
  }
}
