package rootwright.working.route;

import java.util.ArrayList;
import java.util.List;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.symmetric.ElementaryValues;
import rootwright.working.problem.Problem;
import rootwright.working.step.Idea;

/** The lines that say what the other roots together are, in terms of one root. */
final class OneForOthers {

  private final Problem problem;
  private final OthersReplaced replaced;
  private final Formula root;
  private final List<String> others;
  private final List<Rational> elementary;
  private final Lines lines;

  /** For what is replaced, written on these lines. */
  OneForOthers(Problem problem, OthersReplaced replaced, Lines lines) {
    this.problem = problem;
    this.replaced = replaced;
    this.root = Formula.name(problem.roots().get(replaced.root()));
    this.others = new ArrayList<>(problem.roots());
    this.others.remove(replaced.root());
    this.elementary = ElementaryValues.of(problem.polynomial());
    this.lines = lines;
  }

  /** Writes one line for each elementary polynomial of the others that is replaced. */
  void write() {
    int n = problem.degree();
    for (int k : replaced.used()) {
      Formula ofOthers = CoefficientLines.inRoots(others, k);
      Formula product = Formula.number(elementary.get(n));
      if (replaced.productAs() == OthersReplaced.ProductAs.QUOTIENT
          && k == n - 1
          && !elementary.get(n).isZero()) {
        lines.add(
            Idea.SUBSTITUTE,
            "all roots multiply to " + UnicodeWriter.write(product),
            ofOthers,
            product.over(root));
      } else if (k == 1) {
        Formula sum = Formula.number(elementary.get(1));
        lines.add(
            Idea.SUBSTITUTE,
            "all roots add up to " + UnicodeWriter.write(sum),
            ofOthers,
            new Combination().plus(elementary.get(1)).plus(Rational.MINUS_ONE, root).formula());
      } else {
        Polynomial inRoot = Polynomial.ZERO;
        for (int j = 0; j <= k; j++) {
          Rational e = elementary.get(k - j);
          inRoot = inRoot.plus(Polynomial.monomial(j % 2 == 0 ? e : e.negate(), j));
        }
        lines.add(
            Idea.SUBSTITUTE,
            "divide P by x − %s".formatted(problem.roots().get(replaced.root())),
            ofOthers,
            PolynomialFormula.of(inRoot, problem.roots().get(replaced.root())));
      }
    }
  }
}
