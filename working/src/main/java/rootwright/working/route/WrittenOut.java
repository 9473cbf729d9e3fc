package rootwright.working.route;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.working.check.exact.Expansion;
import rootwright.working.problem.Problem;

/** Writes Σ, Π, S_k and e_k out, term by term, in the names of the roots. */
final class WrittenOut {

  /** Most terms that are written for one sign. */
  private static final int MOST_TERMS = 12;

  private final Problem problem;

  private WrittenOut(Problem problem) {
    this.problem = problem;
  }

  /** The ask written out; empty if that would be too long. */
  static Optional<Formula> of(Problem problem) {
    return new WrittenOut(problem).of(problem.ask());
  }

  private Optional<Formula> of(Formula formula) {
    if (formula instanceof Formula.Aggregate aggregate) {
      return of(aggregate.body()).flatMap(body -> images(aggregate.operation(), body));
    } else if (formula instanceof Formula.Family family) {
      return family(family);
    }
    List<Formula> parts = new ArrayList<>();
    for (Formula part : formula.parts()) {
      Optional<Formula> written = of(part);
      if (written.isEmpty()) {
        return Optional.empty();
      }
      parts.add(written.get());
    }
    return Optional.of(parts.isEmpty() ? formula : formula.withParts(parts));
  }

  private Optional<Formula> family(Formula.Family family) {
    if (!(family.index() instanceof Formula.Numeral index)
        || !index.value().isInteger()
        || index.value().signum() <= 0
        || index.value().numerator().bitLength() > 16) {
      return Optional.empty();
    }
    int k = index.value().intValueExact();
    return switch (family.letter()) {
      case "S", "p" ->
          images(
              Formula.Aggregate.Operation.SUM,
              Combination.power(Formula.name(problem.roots().get(0)), k));
      case "e" ->
          k > problem.degree()
              ? Optional.of(Formula.number(0))
              : images(
                  Formula.Aggregate.Operation.SUM,
                  Formula.product(
                      problem.roots().subList(0, k).stream().map(Formula::name).toList()));
      default -> Optional.empty();
    };
  }

  /** All distinct images of a body under renaming the roots, with the sign between them. */
  private Optional<Formula> images(Formula.Aggregate.Operation operation, Formula body) {
    List<String> occurring =
        problem.roots().stream()
            .filter(
                root ->
                    body.contains(
                        part -> part instanceof Formula.Name name && name.spelling().equals(root)))
            .toList();
    Map<RationalFunction, Formula> distinct = new LinkedHashMap<>();
    return collect(body, occurring, new ArrayList<>(), distinct)
        ? Optional.of(
            operation == Formula.Aggregate.Operation.SUM
                ? Formula.sum(List.copyOf(distinct.values()))
                : Formula.product(List.copyOf(distinct.values())))
        : Optional.empty();
  }

  /** Goes through the choices of names; false as soon as it gets too long. */
  private boolean collect(
      Formula body,
      List<String> occurring,
      List<String> chosen,
      Map<RationalFunction, Formula> distinct) {
    if (chosen.size() == occurring.size()) {
      Formula image = Renaming.of(occurring, chosen).of(body);
      Optional<RationalFunction> expansion = Expansion.of(image, problem);
      expansion.ifPresent(value -> distinct.putIfAbsent(value.lowestTerms(), image));
      return expansion.isPresent() && distinct.size() <= MOST_TERMS;
    }
    for (String root : problem.roots()) {
      if (!chosen.contains(root)) {
        List<String> longer = new ArrayList<>(chosen);
        longer.add(root);
        if (!collect(body, occurring, longer, distinct)) {
          return false;
        }
      }
    }
    return true;
  }
}
