package rootwright.working.review.given;

import java.util.ArrayList;
import java.util.List;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.polynomial.MultivariatePolynomial;

/** What the lines of a working have said so far. */
final class Notebook {

  private static final int MOST_CASES = 20;

  /** An equation that is wrong, as it was written. */
  record WrongEquation(Formula left, Formula right, int line) {}

  private final Ground ground;
  private final Truths truths;
  private final List<Known> facts = new ArrayList<>();
  private final List<MultivariatePolynomial> casesDone = new ArrayList<>();
  private final List<MultivariatePolynomial> thrownOut = new ArrayList<>();
  private final List<WrongEquation> wrong = new ArrayList<>();

  Notebook(Ground ground, Truths truths) {
    this.ground = ground;
    this.truths = truths;
    facts.addAll(ground.given());
  }

  /** Equations of the statement and of the lines, the latest first. */
  List<Known> facts() {
    return facts;
  }

  /** What the cases have given one after another, multiplied together. */
  List<MultivariatePolynomial> casesDone() {
    return casesDone;
  }

  /** Cases that were looked at and are not allowed. */
  List<MultivariatePolynomial> thrownOut() {
    return thrownOut;
  }

  /** Wrong equations, as they were written. */
  List<WrongEquation> wrong() {
    return wrong;
  }

  void throwOut(MultivariatePolynomial zero) {
    thrownOut.add(zero);
  }

  void wrong(Formula left, Formula right, int line) {
    wrong.add(new WrongEquation(left, right, line));
  }

  /** Takes down an equation of a line; what a case gives holds in that case only. */
  void remember(MultivariatePolynomial zero, int line, boolean sound) {
    if (zero.isZero()) {
      return;
    }
    if (truths.supposed().isPresent()) {
      List<MultivariatePolynomial> more = new ArrayList<>(List.of(zero));
      casesDone.forEach(done -> more.add(done.times(zero)));
      casesDone.addAll(more.subList(0, Math.min(more.size(), MOST_CASES)));
    } else {
      facts.add(0, new Known(zero, "line " + line, sound));
    }
  }

  /** The steps that may be taken from what is true so far. */
  Steps steps() {
    List<Known> used = new ArrayList<>();
    truths.supposed().ifPresent(zero -> used.add(new Known(zero, "the case looked at", true)));
    facts.stream().filter(Known::sound).forEach(used::add);
    return new Steps(used, truths.chosen(), ground.names().signs(), ground.names().size());
  }
}
