package rootwright.working.route;

import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.SortedSet;
import java.util.TreeSet;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.roots.PowerSums;
import rootwright.working.step.Idea;

/**
 * The lines that add a sum of powers up over the roots of a polynomial, powers down to −2 included:
 * Σ 1/r = e_(n−1)/e_n and Σ 1/r² = (Σ 1/r)² − 2·e_(n−2)/e_n.
 */
final class LaurentTotal {

  /** Lowest power that is added up. */
  static final int LOWEST = -2;

  /** Highest power that is added up. */
  static final int HIGHEST = 4;

  private final Polynomial polynomial;
  private final String root;
  private final CoefficientLines coefficients;
  private final PowerSumLines sums;

  /**
   * @param polynomial of degree at least 2, its constant term not zero if there are negative powers
   * @param names a name for every root
   * @param unknown the letter of the polynomial
   * @param letter the letter of power sums
   */
  LaurentTotal(Polynomial polynomial, List<String> names, String unknown, String letter) {
    this.polynomial = polynomial;
    this.root = names.get(0);
    this.coefficients = new CoefficientLines(polynomial, names, unknown);
    this.sums = new PowerSumLines(coefficients, polynomial, letter, HIGHEST);
  }

  /** Whether the powers are within reach. */
  static boolean isWithinReach(Laurent f) {
    return f.terms().isEmpty()
        || (f.terms().firstKey() >= LOWEST && f.terms().lastKey() <= HIGHEST);
  }

  /**
   * Writes the lines, in a setting of the polynomial, and returns the value.
   *
   * @param ask what the sum is called
   */
  Rational write(Lines lines, Laurent f, Formula ask) {
    boolean bare =
        f.terms().size() == 1
            && f.terms().firstKey() < 0
            && f.terms().firstEntry().getValue().isOne();
    write(lines, f.terms().navigableKeySet(), bare ? Map.of(f.terms().firstKey(), ask) : Map.of());
    if (!bare) {
      total(lines, f, ask);
    }
    return value(f);
  }

  /**
   * Writes the lines for the sums of these powers; none for the power 0.
   *
   * @param called other names for some sums of negative powers
   */
  void write(Lines lines, NavigableSet<Integer> exponents, Map<Integer, Formula> called) {
    int n = polynomial.degree();
    SortedSet<Integer> further = new TreeSet<>();
    for (int k : exponents.headSet(0)) {
      further.add(n);
      further.add(n - 1);
      if (k == LOWEST && n > 2) {
        further.add(n - 2);
      }
    }
    sums.write(lines, exponents.tailSet(1), Map.of(), further);
    for (int k : exponents.headSet(0, false).descendingSet()) {
      reciprocals(lines, k, called.getOrDefault(k, name(k)));
    }
  }

  private void reciprocals(Lines lines, int k, Formula called) {
    int n = polynomial.degree();
    List<Rational> e = coefficients.values();
    Formula first = NamedForm.elementary(n - 1).over(NamedForm.elementary(n));
    Formula firstNumber = Formula.number(e.get(n - 1)).over(Formula.number(e.get(n)));
    if (k == -1) {
      lines.add(
          Idea.REVERSE,
          "over the common denominator",
          called,
          first,
          firstNumber,
          Formula.number(sum(k)));
      return;
    }
    Formula second = n == 2 ? Formula.number(1) : NamedForm.elementary(n - 2);
    lines.add(
        Idea.REVERSE,
        "square of the sum, less twice the products",
        called,
        first.power(2).minus(twice(second.over(NamedForm.elementary(n)))),
        firstNumber
            .power(2)
            .minus(twice(Formula.number(e.get(n - 2)).over(Formula.number(e.get(n))))),
        Formula.number(sum(k)));
  }

  private static Formula twice(Formula formula) {
    return Formula.number(2).times(formula);
  }

  private void total(Lines lines, Laurent f, Formula ask) {
    Combination named = new Combination();
    Combination worked = new Combination();
    for (int k : f.ordered()) {
      Rational c = f.coefficient(k);
      if (k == 0) {
        Formula often =
            Combination.product(
                List.of(Formula.number(polynomial.degree()), Formula.number(c.absolute())));
        named.plus(Rational.of(c.signum()), often);
        worked.plus(Rational.of(c.signum()), often);
      } else {
        named.plus(c, name(k));
        if (!sum(k).isZero()) {
          worked.plus(c, Formula.number(sum(k)));
        }
      }
    }
    lines.add(
        Idea.SUM_OVER_ROOTS,
        f.terms().containsKey(0)
            ? "add up; the constant counts %d times".formatted(polynomial.degree())
            : "add up over the roots",
        ask,
        named.formula(),
        worked.formula(),
        Formula.number(value(f)));
  }

  /** S_k, and Σ 1/r, Σ 1/r² for negative k; the number of roots for 0. */
  Formula name(int k) {
    if (k == 0) {
      return Formula.number(polynomial.degree());
    }
    return k > 0
        ? sums.name(k)
        : new Formula.Aggregate(
            Formula.Aggregate.Operation.SUM,
            Formula.number(1).over(Combination.power(Formula.name(root), -k)));
  }

  /** The sum of the k-th powers. */
  Rational sum(int k) {
    return PowerSums.of(polynomial).value(k);
  }

  private Rational value(Laurent f) {
    Rational value = Rational.ZERO;
    for (Map.Entry<Integer, Rational> term : f.terms().entrySet()) {
      value = value.plus(term.getValue().times(sum(term.getKey())));
    }
    return value;
  }
}
