package rootwright.working.letters;

import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.RationalValue;
import rootwright.working.step.NumberDomain;

/** What all roots of a polynomial may be said to be. */
enum RootNature {
  REAL("real", NumberDomain.REAL),
  POSITIVE("positive", NumberDomain.POSITIVE),
  NEGATIVE("negative", NumberDomain.NEGATIVE),
  RATIONAL("rational", NumberDomain.RATIONAL),
  INTEGER("integers", NumberDomain.INTEGER),
  POSITIVE_INTEGER("positive integers", NumberDomain.POSITIVE_INTEGER),
  EVEN("even integers", NumberDomain.INTEGER),
  ODD("odd integers", NumberDomain.INTEGER),
  DISTINCT("distinct", NumberDomain.COMPLEX);

  private final String words;
  private final NumberDomain domain;

  RootNature(String words, NumberDomain domain) {
    this.words = words;
    this.domain = domain;
  }

  String words() {
    return words;
  }

  NumberDomain domain() {
    return domain;
  }

  /** Whether one root is as all must be. */
  boolean holdsFor(ExactValue root) {
    return domain.contains(root)
        && (this != EVEN || isEven(root))
        && (this != ODD || !isEven(root));
  }

  private static boolean isEven(ExactValue integer) {
    return integer instanceof RationalValue value && !value.number().numerator().testBit(0);
  }
}
