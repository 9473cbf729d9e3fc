package rootwright.working.review;

import java.util.ArrayList;
import java.util.List;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.working.problem.Problem;

/** What stands so far: the coefficients, and what the lines above say. */
final class Facts {

  /** How the coefficients are pointed to. */
  static final String COEFFICIENTS = "the coefficients";

  private final List<Fact> all = new ArrayList<>();

  /** What the coefficients say: e_k = (−1)^k a_{n−k}/a_n (Viète). */
  Facts(Problem problem) {
    int n = problem.degree();
    for (int k = 1; k <= n; k++) {
      Rational size = problem.polynomial().coefficient(n - k).over(problem.polynomial().lead());
      all.add(
          new Fact(
              new Formula.Family("e", Formula.number(k)),
              Formula.number(k % 2 == 0 ? size : size.negate()),
              COEFFICIENTS,
              true));
    }
  }

  /** Adds what a line says; what was said last is put in first. */
  void add(Fact fact) {
    all.add(0, fact);
  }

  /** What is true. */
  List<Fact> sound() {
    return all.stream().filter(Fact::sound).toList();
  }

  /** Everything, wrong lines included and preferred, since whoever wrote them goes on with them. */
  List<Fact> asWritten() {
    List<Fact> wrongFirst = new ArrayList<>(all.stream().filter(fact -> !fact.sound()).toList());
    wrongFirst.addAll(sound());
    return wrongFirst;
  }
}
