package rootwright.working.moduli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;

/** What is asked of absolute values. */
sealed interface ModulusAsk {

  /**
   * A number times a power of one absolute value.
   *
   * @param inside what stands between the bars
   */
  record Single(Rational factor, Formula inside, int power) implements ModulusAsk {}

  /** The sum of the powers of the absolute values of all roots. */
  record SumOfPowers(int power) implements ModulusAsk {}

  /** The product of the powers of the absolute values of all roots. */
  record ProductOfPowers(int power) implements ModulusAsk {}

  /** The ask that a formula is, if it is one of these. */
  static Optional<ModulusAsk> of(Formula ask, List<String> roots) {
    if (ask instanceof Formula.Aggregate aggregate) {
      return powerOfRoot(aggregate.body(), roots)
          .map(
              power ->
                  aggregate.operation() == Formula.Aggregate.Operation.SUM
                      ? new SumOfPowers(power)
                      : new ProductOfPowers(power));
    }
    List<Formula> parts =
        ask instanceof Formula.Sum sum
            ? sum.terms()
            : ask instanceof Formula.Product product ? product.factors() : List.of();
    List<String> seen = new ArrayList<>();
    List<Integer> powers = new ArrayList<>();
    for (Formula part : parts) {
      powerOfRoot(part, roots).ifPresent(powers::add);
      name(part).ifPresent(seen::add);
    }
    boolean each =
        roots.size() > 1
            && parts.size() == roots.size()
            && powers.size() == parts.size()
            && List.copyOf(new TreeSet<>(seen)).size() == roots.size()
            && powers.stream().distinct().count() == 1;
    if (each) {
      return Optional.of(
          ask instanceof Formula.Sum
              ? new SumOfPowers(powers.get(0))
              : new ProductOfPowers(powers.get(0)));
    }
    return single(ask);
  }

  private static Optional<ModulusAsk> single(Formula ask) {
    if (ask instanceof Formula.Product product
        && product.factors().size() == 2
        && product.factors().get(0) instanceof Formula.Numeral factor) {
      return single(product.factors().get(1))
          .map(
              found ->
                  new Single(factor.value(), ((Single) found).inside(), ((Single) found).power()));
    }
    return bars(ask).map(found -> new Single(Rational.ONE, found.inside(), found.power()));
  }

  /** |E| or |E|^k. */
  private static Optional<Single> bars(Formula formula) {
    if (formula instanceof Formula.Application application
        && application.function().equals("abs")
        && application.arguments().size() == 1) {
      return Optional.of(new Single(Rational.ONE, application.arguments().get(0), 1));
    }
    return formula instanceof Formula.Power power
            && power.exponent() instanceof Formula.Numeral exponent
            && exponent.value().isInteger()
            && exponent.value().signum() > 0
            && exponent.value().compareTo(Rational.of(12)) <= 0
        ? bars(power.base())
            .map(
                found ->
                    new Single(
                        Rational.ONE,
                        found.inside(),
                        found.power() * exponent.value().intValueExact()))
        : Optional.empty();
  }

  private static Optional<Integer> powerOfRoot(Formula formula, List<String> roots) {
    return bars(formula)
        .filter(
            found -> found.inside() instanceof Formula.Name name && roots.contains(name.spelling()))
        .map(Single::power);
  }

  private static Optional<String> name(Formula formula) {
    return bars(formula)
        .map(Single::inside)
        .filter(Formula.Name.class::isInstance)
        .map(inside -> ((Formula.Name) inside).spelling());
  }
}
