package rootwright.working.letters;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import rootwright.algebra.notation.Formula;

/**
 * The body of Σ or Π where it is c − r or r − c, or one over that.
 *
 * @param point c, a number or a formula in the letters
 * @param rootFirst whether it is r − c
 * @param inverse whether it is one over the difference
 */
record LinearBody(Formula point, boolean rootFirst, boolean inverse) {

  static Optional<LinearBody> of(FunctionAsked asked, Formula.Aggregate.Operation operation) {
    if (!(asked.expression() instanceof Formula.Aggregate aggregate)
        || aggregate.operation() != operation) {
      return Optional.empty();
    }
    Set<String> roots = Set.copyOf(asked.problem().roots());
    Formula body = aggregate.body();
    if (body instanceof Formula.Quotient quotient && quotient.over().equals(Formula.number(1))) {
      return difference(quotient.under(), roots)
          .map(found -> new LinearBody(found.point, found.rootFirst, /* inverse= */ true));
    }
    return difference(body, roots);
  }

  private static Optional<LinearBody> difference(Formula formula, Set<String> roots) {
    if (!(formula instanceof Formula.Sum sum) || sum.terms().size() != 2) {
      return Optional.empty();
    }
    Formula first = sum.terms().get(0);
    Formula second = sum.terms().get(1);
    List<Formula> names = roots.stream().map(Formula::name).toList();
    if (names.contains(first) && !LetterEquations.mentions(second, roots)) {
      Formula point =
          second instanceof Formula.Negative negative
              ? negative.of()
              : second instanceof Formula.Numeral numeral
                  ? Formula.number(numeral.value().negate())
                  : new Formula.Negative(second);
      return Optional.of(new LinearBody(point, true, false));
    } else if (second instanceof Formula.Negative negative
        && names.contains(negative.of())
        && !LetterEquations.mentions(first, roots)) {
      return Optional.of(new LinearBody(first, false, false));
    }
    return Optional.empty();
  }
}
