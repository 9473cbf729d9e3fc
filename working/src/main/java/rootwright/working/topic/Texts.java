package rootwright.working.topic;

import java.util.ArrayList;
import java.util.List;
import rootwright.working.proof.Letters;

/** Pieces of equations that depend on the number of roots, as text for the reader of formulas. */
final class Texts {

  private Texts() {}

  /** {@code e_1*p_(k-1) - e_2*p_(k-2) + …} with {@code from} to {@code to} terms of that form. */
  static String alternating(int k, int to) {
    StringBuilder text = new StringBuilder();
    for (int j = 1; j <= to; j++) {
      text.append(j == 1 ? "" : j % 2 == 1 ? " + " : " - ");
      text.append("e_").append(j).append("*p_").append(k - j);
    }
    return text.toString();
  }

  /** {@code - e_1*p_(k-1) + e_2*p_(k-2)} and so on, to be appended to p_k. */
  static String newton(int k, int to) {
    StringBuilder text = new StringBuilder();
    for (int j = 1; j <= to; j++) {
      text.append(j % 2 == 1 ? " - " : " + ");
      text.append("e_").append(j).append("*p_").append(k - j);
    }
    return text.toString();
  }

  /** {@code x^3 - e_1*x^2 + e_2*x - e_3} in the given unknown. */
  static String monic(Letters letters, String x) {
    int n = letters.n();
    StringBuilder text = new StringBuilder(power(x, n));
    for (int k = 1; k <= n; k++) {
      text.append(k % 2 == 1 ? " - " : " + ").append("e_").append(k);
      text.append(k == n ? "" : "*" + power(x, n - k));
    }
    return text.toString();
  }

  /** A power without a trivial exponent. */
  static String power(String base, int exponent) {
    return exponent == 1 ? base : base + "^" + exponent;
  }

  /** The differences of the root with this number from the others: {@code (r - s)*(r - t)}. */
  static String differences(Letters letters, int number) {
    List<String> factors = new ArrayList<>();
    for (int k = 1; k <= letters.n(); k++) {
      if (k != number) {
        factors.add("(" + letters.root(number) + " - " + letters.root(k) + ")");
      }
    }
    return String.join("*", factors);
  }

  /** Every pair of roots in a dress with {@code #} and {@code @} for the two, joined by a sign. */
  static String pairs(Letters letters, String sign, String dress) {
    List<String> all = new ArrayList<>();
    for (int i = 1; i <= letters.n(); i++) {
      for (int j = i + 1; j <= letters.n(); j++) {
        all.add(dress.replace("#", letters.root(i)).replace("@", letters.root(j)));
      }
    }
    return String.join(sign, all);
  }

  /** The sum over the roots of a term with {@code #} for the root. */
  static String over(Letters letters, String term) {
    return letters.joined(" + ", root -> term.replace("#", root));
  }
}
