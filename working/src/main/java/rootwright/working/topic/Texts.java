package rootwright.working.topic;

import java.util.ArrayList;
import java.util.List;
import rootwright.algebra.notation.PlainWriter;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.symmetric.Discriminant;
import rootwright.working.proof.Letters;

/** Pieces of equations that depend on the number of roots, as text for the reader of formulas. */
final class Texts {

  private Texts() {}

  /** {@code e_1*p_(k-1) - e_2*p_(k-2) + …}, so many terms. */
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

  /** The sum over the roots of a term with {@code #} for the root. */
  static String over(Letters letters, String term) {
    return letters.joined(" + ", root -> term.replace("#", root));
  }

  /** The root to the power n + more by lower powers: {@code e_1*r^2 - e_2*r + e_3}. */
  static String reduced(Letters letters, String root, int more) {
    int n = letters.n();
    StringBuilder text = new StringBuilder();
    for (int k = 1; k <= n; k++) {
      text.append(k == 1 ? "" : k % 2 == 1 ? " + " : " - ").append("e_").append(k);
      text.append(n - k + more == 0 ? "" : "*" + power(root, n - k + more));
    }
    return text.toString();
  }

  /** {@code b^3 - e_1*b^2*c + e_2*b*c^2 - e_3*c^3}. */
  static String homogeneous(Letters letters) {
    int n = letters.n();
    StringBuilder text = new StringBuilder(power("b", n));
    for (int k = 1; k <= n; k++) {
      text.append(k % 2 == 1 ? " - " : " + ").append("e_").append(k);
      text.append(k == n ? "" : "*" + power("b", n - k)).append("*").append(power("c", k));
    }
    return text.toString();
  }

  /** {@code 1 - e_1 + e_2 - e_3}. */
  static String atOne(Letters letters) {
    StringBuilder text = new StringBuilder("1");
    for (int k = 1; k <= letters.n(); k++) {
      text.append(k % 2 == 1 ? " - " : " + ").append("e_").append(k);
    }
    return text.toString();
  }

  /** The product of the squared differences in the elementary expressions. */
  static String discriminant(int n) {
    List<String> names = new ArrayList<>();
    for (int k = 1; k <= n; k++) {
      names.add("e_" + k);
    }
    return PlainWriter.write(PolynomialFormula.of(Discriminant.universal(n).polynomial(), names));
  }
}
