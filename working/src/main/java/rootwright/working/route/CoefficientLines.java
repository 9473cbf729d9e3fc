package rootwright.working.route;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.symmetric.ElementaryValues;
import rootwright.working.problem.Problem;
import rootwright.working.step.Idea;

/**
 * The lines that read e_1, e_2, … off the coefficients, one for each that is not zero and one for
 * all that are (Viète 1615, De aequationum recognitione).
 */
final class CoefficientLines {

  /** Longest sum of products that is written out. */
  private static final int LONGEST = 6;

  /** Most arrangements of k roots of n for which e_k is written in the roots at all. */
  private static final long MOST_ARRANGEMENTS = 1_000;

  private final Polynomial polynomial;
  private final List<String> names;
  private final String unknown;
  private final List<Rational> values;

  /**
   * @param polynomial the polynomial, of degree at least 1
   * @param names a name for every root
   * @param unknown the letter of the polynomial
   */
  CoefficientLines(Polynomial polynomial, List<String> names, String unknown) {
    this.polynomial = polynomial;
    this.names = List.copyOf(names);
    this.unknown = unknown;
    this.values = ElementaryValues.of(polynomial);
  }

  /** The lines for the polynomial of a problem. */
  static CoefficientLines of(Problem problem) {
    return new CoefficientLines(problem.polynomial(), problem.roots(), problem.unknown());
  }

  /** e_0, e_1, …, e_n. */
  List<Rational> values() {
    return values;
  }

  /** Writes the lines for these indices, each from 1 to n. */
  void write(Lines lines, SortedSet<Integer> wanted) {
    write(lines, wanted, Map.of());
  }

  /**
   * Writes the lines for these indices.
   *
   * @param alsoCalled other names for some e_k, put at the front of its line
   */
  void write(Lines lines, SortedSet<Integer> wanted, Map<Integer, Formula> alsoCalled) {
    List<Formula> zeros = new ArrayList<>();
    List<String> missing = new ArrayList<>();
    for (int k : wanted) {
      if (values.get(k).isZero()) {
        zeros.addAll(names(k, alsoCalled));
        missing.add(power(k));
      }
    }
    zeros.add(Formula.number(0));
    lines.add(
        Idea.READ_COEFFICIENTS,
        String.join(", ", missing) + (missing.size() == 1 ? " is missing" : " are missing"),
        zeros);
    for (int k : wanted) {
      if (!values.get(k).isZero()) {
        List<Formula> sides = new ArrayList<>(names(k, alsoCalled));
        if (OrbitSums.arrangements(names.size(), k) <= MOST_ARRANGEMENTS) {
          sides.add(inRoots(names, k));
        }
        sides.addAll(worked(k));
        lines.add(Idea.READ_COEFFICIENTS, reason(k), sides);
      }
    }
  }

  private static List<Formula> names(int k, Map<Integer, Formula> alsoCalled) {
    Formula e = NamedForm.elementary(k);
    return alsoCalled.containsKey(k) ? List.of(alsoCalled.get(k), e) : List.of(e);
  }

  /** e_k as a quotient of coefficients with its sign, and its value. */
  List<Formula> worked(int k) {
    Formula over = Formula.number(polynomial.coefficient(names.size() - k));
    Formula size = polynomial.lead().isOne() ? over : over.over(Formula.number(polynomial.lead()));
    return List.of(k % 2 == 0 ? size : new Formula.Negative(size), Formula.number(values.get(k)));
  }

  /** Why e_k has its value. */
  String reason(int k) {
    String sign = k % 2 == 0 ? "" : "minus ";
    String which = k == names.size() ? "the constant term" : "the coefficient of " + power(k);
    return sign + which + (polynomial.lead().isOne() ? "" : " over the lead");
  }

  /** e_k of these roots as a sum of products; shortened to Σ when it is long. */
  static Formula inRoots(List<String> names, int k) {
    List<Formula> products = new ArrayList<>();
    collect(names, k, 0, new ArrayList<>(), products);
    return products.size() <= LONGEST
        ? Formula.sum(products)
        : new Formula.Aggregate(Formula.Aggregate.Operation.SUM, products.get(0));
  }

  private static void collect(
      List<String> names, int left, int next, List<Formula> chosen, List<Formula> products) {
    if (products.size() > LONGEST) {
      return;
    }
    if (left == 0) {
      products.add(Formula.product(chosen));
      return;
    }
    for (int place = next; place + left <= names.size(); place++) {
      List<Formula> longer = new ArrayList<>(chosen);
      longer.add(Formula.name(names.get(place)));
      collect(names, left - 1, place + 1, longer, products);
    }
  }

  /** The power of the unknown whose coefficient gives e_k. */
  private String power(int k) {
    int exponent = names.size() - k;
    return exponent == 0
        ? "the constant term"
        : UnicodeWriter.write(Combination.power(Formula.name(unknown), exponent));
  }
}
