package rootwright.working.letters;

import java.util.ArrayList;
import java.util.List;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.working.step.Idea;

/** e_1, e_2, … read off coefficients with letters (Viète 1615). */
final class Vieta {

  private static final int LONGEST = 6;

  private final LetteredProblem problem;

  Vieta(LetteredProblem problem) {
    this.problem = problem;
  }

  /** e_k as a function of the letters. */
  RationalFunction elementary(int k) {
    LetteredPolynomial polynomial = problem.polynomial();
    MultivariatePolynomial over = polynomial.coefficient(polynomial.degree() - k);
    return InLetters.cleared(
        new RationalFunction(k % 2 == 0 ? over : over.negate(), polynomial.lead()));
  }

  /** Whether e_k is a number. */
  boolean isNumber(int k) {
    RationalFunction value = elementary(k);
    return value.isPolynomial() && value.numerator().isConstant();
  }

  /** Writes the line for e_k. */
  void write(LetterLines lines, int k) {
    LetteredPolynomial polynomial = problem.polynomial();
    Formula value = InLetters.formula(elementary(k), polynomial.letters());
    String which =
        k == polynomial.degree()
            ? "the constant term"
            : "the coefficient of "
                + UnicodeWriter.write(power(polynomial.unknown(), polynomial.degree() - k));
    boolean monic = polynomial.lead().equals(MultivariatePolynomial.ONE);
    lines.add(
        problem.setting(),
        Idea.READ_COEFFICIENTS,
        (k % 2 == 0 ? "" : "minus ") + which + (monic ? "" : " over the lead"),
        name(k),
        inRoots(k),
        value);
  }

  private static Formula power(String unknown, int exponent) {
    return exponent == 1 ? Formula.name(unknown) : Formula.name(unknown).power(exponent);
  }

  /** The name e_k. */
  static Formula name(int k) {
    return new Formula.Family("e", Formula.number(k));
  }

  private Formula inRoots(int k) {
    ArrayList<Formula> products = new ArrayList<>();
    collect(k, 0, List.of(), products);
    return products.size() <= LONGEST
        ? Formula.sum(products)
        : new Formula.Aggregate(Formula.Aggregate.Operation.SUM, products.get(0));
  }

  private void collect(int left, int next, List<Formula> chosen, List<Formula> products) {
    if (products.size() > LONGEST) {
      return;
    } else if (left == 0) {
      products.add(Formula.product(chosen));
      return;
    }
    for (int place = next; place + left <= problem.roots().size(); place++) {
      List<Formula> longer = new ArrayList<>(chosen);
      longer.add(Formula.name(problem.roots().get(place)));
      collect(left - 1, place + 1, longer, products);
    }
  }
}
