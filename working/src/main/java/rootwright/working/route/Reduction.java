package rootwright.working.route;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.roots.ResidueAlgebra;
import rootwright.working.step.Cost;
import rootwright.working.step.Idea;
import rootwright.working.step.Setting;

/**
 * The lines that bring an expression in one root below the degree of its polynomial: one power
 * after the other, or by repeated squaring, or by one short division, whichever costs a student
 * least.
 */
final class Reduction {

  /** A division is written as one line if its quotient has at most this degree. */
  private static final int LONGEST_QUOTIENT = 2;

  /** Most powers that are reduced one after the other. */
  private static final int MOST_STEPS = 40;

  private final Polynomial polynomial;
  private final int degree;
  private final String root;
  private final Polynomial f;
  private final Formula called;
  private final Lines lines;
  private final ResidueAlgebra algebra;
  private final Map<Integer, Polynomial> remainders = new HashMap<>();

  private Reduction(Setting setting, String root, Polynomial f, Formula called) {
    this.polynomial = setting.polynomial();
    this.degree = polynomial.degree();
    this.root = root;
    this.f = f;
    this.called = called;
    this.lines = new Lines(setting);
    this.algebra = ResidueAlgebra.of(polynomial);
  }

  /**
   * Writes the cheapest lines from f(r) to its remainder.
   *
   * @param f of at least the degree of the polynomial
   * @param called how f(r) is written where it stands for the first time
   * @return the remainder
   */
  static Polynomial write(Lines lines, String root, Polynomial f, Formula called) {
    Setting setting = lines.setting();
    List<Lines> ways = new ArrayList<>();
    int beyond = f.degree() - setting.polynomial().degree();
    if (beyond <= MOST_STEPS) {
      ways.add(new Reduction(setting, root, f, called).oneByOne());
    }
    if (beyond > 1) {
      ways.add(new Reduction(setting, root, f, called).bySquaring());
    }
    if (beyond > 0 && beyond <= LONGEST_QUOTIENT && terms(f).size() > 2) {
      ways.add(new Reduction(setting, root, f, called).byDivision());
    }
    lines.addAll(ways.stream().map(Lines::steps).min(Comparator.comparing(Cost::of)).orElseThrow());
    return f.remainder(setting.polynomial());
  }

  private Lines oneByOne() {
    powersUpTo(f.degree());
    return together();
  }

  /** Halves every exponent until it is small, then squares up again. */
  private Lines bySquaring() {
    SortedMap<Integer, Polynomial> squares = new TreeMap<>();
    int last = degree;
    for (int exponent : terms(f)) {
      int k = exponent;
      for (; k >= 2 * degree; k /= 2) {
        Polynomial half = reduced(k / 2);
        Polynomial square = half.times(half).times(Polynomial.monomial(Rational.ONE, k % 2));
        squares.put(k, square);
        last = Math.max(last, square.degree());
      }
      last = Math.max(last, k);
    }
    powersUpTo(last);
    squares.forEach(this::square);
    return together();
  }

  private void square(int k, Polynomial square) {
    Formula half = written(reduced(k / 2)).power(2);
    boolean even = k % 2 == 0;
    lines.add(
        Idea.REDUCE,
        even
            ? "square, then lower the powers"
            : "square, times %s, lower the powers".formatted(root),
        rootPower(k),
        even ? half : Combination.product(List.of(Formula.name(root), half)),
        written(square),
        written(reduced(k)));
  }

  private Lines byDivision() {
    Polynomial.Division division = f.divide(polynomial);
    Formula product =
        Combination.product(List.of(written(division.quotient()), written(polynomial)));
    lines.add(
        Idea.REDUCE,
        "divide by P; P(%s) = 0".formatted(root),
        called,
        new Combination().plus(product).plusTerms(written(division.remainder())).formula(),
        written(division.remainder()));
    return lines;
  }

  /** r^n, r^(n+1), … up to an exponent, each from the one before. */
  private void powersUpTo(int last) {
    lines.add(
        Idea.VANISHING, "P(%s) = 0".formatted(root), rootPower(degree), written(reduced(degree)));
    for (int k = degree + 1; k <= last; k++) {
      lines.add(
          Idea.REDUCE,
          "times " + root,
          rootPower(k),
          written(reduced(k - 1).times(Polynomial.X)),
          written(reduced(k)));
    }
  }

  /** f(r) with the reduced powers put in; nothing where f is a power and stands there already. */
  private Lines together() {
    Combination sum = new Combination();
    for (int k : terms(f)) {
      sum.plus(f.coefficient(k), k < degree ? rootPower(k) : written(reduced(k)));
    }
    if (!called.equals(rootPower(f.degree()))) {
      lines.add(
          Idea.REDUCE,
          "put the lower powers in",
          called,
          sum.formula(),
          written(f.remainder(polynomial)));
    }
    return lines;
  }

  /** The remainder of x^k. */
  private Polynomial reduced(int k) {
    return remainders.computeIfAbsent(k, exponent -> algebra.power(Polynomial.X, exponent));
  }

  private Formula rootPower(int k) {
    return k == 0 ? Formula.number(1) : Combination.power(Formula.name(root), k);
  }

  private Formula written(Polynomial of) {
    return PolynomialFormula.of(of, root);
  }

  /** The exponents that occur, descending. */
  private static List<Integer> terms(Polynomial f) {
    return IntStream.rangeClosed(0, f.degree())
        .mapToObj(k -> f.degree() - k)
        .filter(k -> !f.coefficient(k).isZero())
        .toList();
  }
}
