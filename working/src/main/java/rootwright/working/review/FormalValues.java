package rootwright.working.review;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.working.check.exact.Expansion;
import rootwright.working.step.Setting;

/**
 * Formulas written out in the roots as if these were letters, with nothing used of the polynomial:
 * two formulas with the same formal value are equal by algebra alone.
 */
final class FormalValues {

  private final Setting setting;
  private final String unknown;
  private final Map<Formula, Optional<RationalFunction>> known = new HashMap<>();

  FormalValues(Setting setting, String unknown) {
    this.setting = setting;
    this.unknown = unknown;
  }

  /** The formal value; empty if it has none or it is too long. */
  Optional<RationalFunction> of(Formula formula) {
    return known.computeIfAbsent(formula, key -> Expansion.of(key, setting));
  }

  /** Whether both formulas have the same formal value, for every number put for the unknown. */
  boolean same(Formula left, Formula right) {
    if (!hasUnknown(left) && !hasUnknown(right)) {
      return sameValue(left, right);
    }
    // Both sides are of degree at most 2n in the unknown in what people write.
    int points = 2 * setting.polynomial().degree() + 3;
    for (int point = 2; point < 2 + points; point++) {
      if (!sameValue(at(left, point), at(right, point))) {
        return false;
      }
    }
    return true;
  }

  /** Whether the polynomial's own letter occurs. */
  boolean hasUnknown(Formula formula) {
    return formula.contains(
        part -> part instanceof Formula.Name name && name.spelling().equals(unknown));
  }

  /** Whether a root, or anything made of roots, occurs. */
  boolean isInRoots(Formula formula) {
    return of(formula).map(value -> value.unknowns() > 0).orElse(true);
  }

  private boolean sameValue(Formula left, Formula right) {
    Optional<RationalFunction> one = of(left);
    Optional<RationalFunction> other = of(right);
    return one.isPresent() && other.isPresent() && one.get().isSameFunction(other.get());
  }

  private Formula at(Formula formula, int point) {
    return formula.rewrite(
        part ->
            part instanceof Formula.Name name && name.spelling().equals(unknown)
                ? Formula.number(point)
                : part);
  }
}
