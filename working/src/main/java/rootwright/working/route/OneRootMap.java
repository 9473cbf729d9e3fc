package rootwright.working.route;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.IntStream;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.algebra.roots.Orbit;
import rootwright.algebra.symmetric.ElementaryValues;
import rootwright.working.ask.Asked;
import rootwright.working.problem.Problem;
import rootwright.working.problem.RootFunction;
import rootwright.working.step.Idea;

/**
 * An expression with n images, one for each root, as a function of that root: by itself, or because
 * it is the same for all others (r + s = e_1 − t, r·s = e_3/t).
 *
 * @param problem the expression is its ask
 * @param root the name of the root
 * @param f the function of it, not constant, without a pole at a root
 * @param replaced how the others were replaced, if there were any
 */
record OneRootMap(Problem problem, String root, RootFunction f, Optional<OthersReplaced> replaced) {

  static final Attempt SEVERAL_ROOTS =
      new Attempt.Declined("there is not one new root for each old one");

  /** The ways to see the ask so; the shorter first; none if there is no way. */
  static List<OneRootMap> of(Asked asked) {
    Problem problem = asked.problem();
    int n = problem.degree();
    if (asked.expression().isEmpty()) {
      return List.of();
    }
    RationalFunction written = asked.expression().get();
    if (asked.singleRoot().isPresent()) {
      return IntStream.range(0, n)
          .filter(k -> occurs(k, written))
          .filter(k -> isMap(asked.singleRoot().get(), problem.polynomial()))
          .mapToObj(k -> problem.roots().get(k))
          .map(root -> new OneRootMap(problem, root, asked.singleRoot().get(), Optional.empty()))
          .toList();
    }
    if (n < 2 || !Orbit.sizeOf(written, n).equals(BigInteger.valueOf(n))) {
      return List.of();
    }
    List<OneRootMap> found = new ArrayList<>();
    for (OthersReplaced.ProductAs productAs : OthersReplaced.ProductAs.values()) {
      OthersReplaced.of(written, problem.polynomial(), productAs)
          .filter(replaced -> isMap(replaced.f(), problem.polynomial()))
          .ifPresent(
              replaced ->
                  found.add(
                      new OneRootMap(
                          problem,
                          problem.roots().get(replaced.root()),
                          replaced.f(),
                          Optional.of(replaced))));
    }
    return found;
  }

  private static boolean occurs(int root, RationalFunction written) {
    return written.numerator().degreeIn(root) > 0 || written.denominator().degreeIn(root) > 0;
  }

  private static boolean isMap(RootFunction f, Polynomial polynomial) {
    boolean constant = f.isPolynomial() && f.numerator().degree() <= 0;
    return !constant && f.denominator().gcd(polynomial).degree() == 0;
  }

  /** Whether it is (αr + β)/(γr + δ) with αδ ≠ βγ, so that r can be had back. */
  boolean isInvertible() {
    Polynomial over = f.numerator();
    Polynomial under = f.denominator();
    return over.degree() <= 1
        && under.degree() <= 1
        && !over.coefficient(1)
            .times(under.coefficient(0))
            .equals(over.coefficient(0).times(under.coefficient(1)));
  }

  /** The function written with the name of the root. */
  Formula written() {
    return fraction(f.numerator(), f.denominator(), root);
  }

  /** A fraction of polynomials in a name; no fraction if the denominator is 1. */
  static Formula fraction(Polynomial over, Polynomial under, String name) {
    Formula top = PolynomialFormula.of(over, name);
    return under.equals(Polynomial.ONE) ? top : top.over(PolynomialFormula.of(under, name));
  }

  /** Writes why the expression is this function of one root; nothing if that is plain. */
  void write(Lines lines) {
    if (replaced.isEmpty()) {
      return;
    }
    Polynomial p = problem.polynomial();
    int n = p.degree();
    List<String> others = new ArrayList<>(problem.roots());
    others.remove(root);
    TreeSet<Integer> needed = new TreeSet<>();
    for (int k : replaced.get().used()) {
      boolean product = isQuotient(k);
      IntStream.rangeClosed(product ? n : 1, product ? n : k).forEach(needed::add);
    }
    CoefficientLines.of(problem).write(lines, needed);
    for (int k : replaced.get().used()) {
      Formula one = Formula.name(root);
      lines.add(
          Idea.SUBSTITUTE,
          k == 1 && others.size() > 1
              ? "the sum of the others"
              : k == others.size() && others.size() > 1
                  ? "the product of the others"
                  : "by what is left of e" + subscript(k),
          CoefficientLines.inRoots(others, k),
          isQuotient(k)
              ? Formula.number(ElementaryValues.of(p).get(n)).over(one)
              : PolynomialFormula.of(
                  OthersReplaced.ofOthers(p, k, OthersReplaced.ProductAs.POLYNOMIAL),
                  List.of(root)));
    }
    lines.add(Idea.SUBSTITUTE, "one root is left", problem.ask(), written());
  }

  private boolean isQuotient(int k) {
    Polynomial p = problem.polynomial();
    return replaced.orElseThrow().productAs() == OthersReplaced.ProductAs.QUOTIENT
        && k == p.degree() - 1
        && !p.coefficient(0).isZero();
  }

  private static String subscript(int k) {
    return k < 10 ? String.valueOf((char) ('₀' + k)) : "_" + k;
  }
}
