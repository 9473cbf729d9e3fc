package rootwright.working.route;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.roots.PowerSums;
import rootwright.algebra.symmetric.NewtonIdentity;
import rootwright.working.ask.Asked;
import rootwright.working.step.Idea;

/**
 * The lines that work power sums out one after another by Newton's identities, only those that are
 * needed.
 */
final class PowerSumLines {

  private final CoefficientLines coefficients;
  private final List<Rational> elementary;
  private final int degree;
  private final String letter;
  private final List<Rational> values;

  /**
   * @param coefficients the lines for the coefficients of the polynomial
   * @param polynomial the polynomial
   * @param letter S or p, the name of the power sums
   * @param highest the highest index that may be wanted
   */
  PowerSumLines(CoefficientLines coefficients, Polynomial polynomial, String letter, int highest) {
    this.coefficients = coefficients;
    this.elementary = coefficients.values();
    this.degree = polynomial.degree();
    this.letter = letter;
    this.values = PowerSums.of(polynomial).upTo(highest);
  }

  /** The lines for the polynomial of an ask, the power sums called as the ask calls them. */
  static PowerSumLines of(Asked asked, int highest) {
    return new PowerSumLines(
        CoefficientLines.of(asked.problem()), asked.problem().polynomial(), letter(asked), highest);
  }

  /** How the ask calls power sums: p if it says so, else S. */
  static String letter(Asked asked) {
    boolean saysP =
        asked
            .formula()
            .contains(part -> part instanceof Formula.Family family && family.letter().equals("p"));
    return saysP ? "p" : "S";
  }

  /** The name S_k. */
  Formula name(int k) {
    return new Formula.Family(letter, Formula.number(k));
  }

  /** S_0, S_1, … up to the highest index. */
  List<Rational> values() {
    return values;
  }

  /** Σ f(r) in power sums; the constant is taken once for every root. */
  Formula written(Polynomial f) {
    Combination sum = new Combination();
    for (int k = f.degree(); k >= 1; k--) {
      sum.plus(f.coefficient(k), name(k));
    }
    return plusConstant(sum, f).formula();
  }

  /** Σ f(r) with the numbers; power sums that are zero are left out. */
  Formula worked(Polynomial f) {
    Combination sum = new Combination();
    for (int k = f.degree(); k >= 1; k--) {
      if (!values.get(k).isZero()) {
        sum.plus(f.coefficient(k), Formula.number(values.get(k)));
      }
    }
    return plusConstant(sum, f).formula();
  }

  /** Writes the line that adds f up over all roots, the power sums in it being known. */
  void total(Lines lines, Formula ask, Polynomial f) {
    boolean constant = !f.coefficient(0).isZero();
    lines.add(
        Idea.SUM_OVER_ROOTS,
        constant
            ? "add up; the constant counts %d times".formatted(degree)
            : "add up over the roots",
        ask,
        written(f),
        worked(f),
        Formula.number(value(f)));
  }

  /** The value of Σ f(r). */
  Rational value(Polynomial f) {
    Rational sum = Rational.ZERO;
    for (int k = 0; k <= f.degree(); k++) {
      sum = sum.plus(f.coefficient(k).times(values.get(k)));
    }
    return sum;
  }

  /** The indices of the power sums, from 1, that occur in Σ f(r). */
  static SortedSet<Integer> indices(Polynomial f) {
    SortedSet<Integer> indices = new TreeSet<>();
    for (int k = 1; k <= f.degree(); k++) {
      if (!f.coefficient(k).isZero()) {
        indices.add(k);
      }
    }
    return indices;
  }

  private Combination plusConstant(Combination sum, Polynomial f) {
    Rational constant = f.coefficient(0);
    return constant.isZero()
        ? sum
        : sum.plus(
            Rational.of(constant.signum()),
            Combination.product(
                List.of(Formula.number(degree), Formula.number(constant.absolute()))));
  }

  /** Writes what is needed for these power sums, each with an index of at least 1. */
  void write(Lines lines, Collection<Integer> wanted) {
    write(lines, wanted, Map.of());
  }

  /**
   * Writes what is needed for these power sums, each with an index of at least 1.
   *
   * @param alsoCalled other names for some S_k with k above 1, put at the front of its line
   */
  void write(Lines lines, Collection<Integer> wanted, Map<Integer, Formula> alsoCalled) {
    write(lines, wanted, alsoCalled, List.of());
  }

  /**
   * Writes what is needed for these power sums.
   *
   * @param further indices of e_k that are wanted for something else
   */
  void write(
      Lines lines,
      Collection<Integer> wanted,
      Map<Integer, Formula> alsoCalled,
      Collection<Integer> further) {
    SortedSet<Integer> sums = new TreeSet<>(wanted);
    SortedSet<Integer> coefficientsNeeded = new TreeSet<>(further);
    for (int k = sums.isEmpty() ? 0 : sums.last(); k >= 1; k--) {
      if (sums.contains(k)) {
        for (NewtonIdentity.Term term : NewtonIdentity.forPowerSum(k, degree).terms()) {
          coefficientsNeeded.add(term.elementary());
          if (term.powerSum() > 0 && !elementary.get(term.elementary()).isZero()) {
            sums.add(term.powerSum());
          }
        }
      }
    }
    coefficients.write(lines, coefficientsNeeded, sums.contains(1) ? Map.of(1, name(1)) : Map.of());
    for (int k : sums) {
      if (k > 1) {
        identity(lines, k, alsoCalled.getOrDefault(k, name(k)));
      }
    }
  }

  private void identity(Lines lines, int k, Formula called) {
    Combination written = new Combination();
    Combination whole = new Combination();
    Combination worked = new Combination();
    for (NewtonIdentity.Term term : NewtonIdentity.forPowerSum(k, degree).terms()) {
      Rational e = elementary.get(term.elementary());
      Rational factor = Rational.of(term.factor());
      List<Formula> names = new ArrayList<>(List.of(NamedForm.elementary(term.elementary())));
      List<Formula> numbers = new ArrayList<>(List.of(Formula.number(e)));
      Rational product = e;
      if (term.powerSum() > 0) {
        names.add(name(term.powerSum()));
        numbers.add(Formula.number(values.get(term.powerSum())));
        product = e.times(values.get(term.powerSum()));
      }
      whole.plus(factor, Combination.product(names));
      if (!e.isZero()) {
        written.plus(factor, Combination.product(names));
      }
      if (!product.isZero()) {
        worked.plus(factor, Combination.product(numbers));
      }
    }
    lines.add(
        k > degree ? Idea.RECURRENCE : Idea.NEWTON,
        k > degree ? "Newton, beyond the degree" : "Newton",
        called,
        name(k),
        written.isEmpty() ? whole.formula() : written.formula(),
        worked.formula(),
        Formula.number(values.get(k)));
  }
}
