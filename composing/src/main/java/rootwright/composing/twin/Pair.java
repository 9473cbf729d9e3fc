package rootwright.composing.twin;

import java.util.Optional;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.problem.Problem;

/**
 * A polynomial, scaled, and an ask of its roots, transformed together.
 *
 * @param polynomial primitive with positive lead if the ask is one of the roots alone
 * @param ask what is asked of its roots
 */
record Pair(Polynomial polynomial, AskForm ask) {

  static Pair of(Problem problem) {
    AskForm ask = AskForm.of(problem);
    return new Pair(
        ask.isInRootsAlone() ? AskForm.scaled(problem.polynomial()) : problem.polynomial(), ask);
  }

  /** The pair whose roots have the other sign; its key is the same. */
  Optional<Pair> mirrored() {
    return ask.mirrored()
        .map(turned -> new Pair(AskForm.scaled(polynomial.compose(Polynomial.X.negate())), turned));
  }

  /** The pair whose roots are the reciprocals; its key is the same. Empty if a root is zero. */
  Optional<Pair> reversed() {
    return polynomial.coefficient(0).isZero()
        ? Optional.empty()
        : ask.inverted().map(turned -> new Pair(AskForm.scaled(polynomial.reversed()), turned));
  }

  /** The same text for the same pair up to renaming. */
  String text() {
    StringBuilder text = new StringBuilder();
    for (int k = polynomial.degree(); k >= 0; k--) {
      text.append(polynomial.coefficient(k)).append(k > 0 ? "," : "; ");
    }
    return text.append(ask.text()).toString();
  }
}
