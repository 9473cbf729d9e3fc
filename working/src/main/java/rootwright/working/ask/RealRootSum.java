package rootwright.working.ask;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaExpansion;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.working.problem.Problem;
import rootwright.working.problem.RootFunction;

/** Asks of the form Σ f(real roots). */
public final class RealRootSum {

  private static final Formula REAL_ROOTS = new Formula.Application("real roots", List.of());

  private RealRootSum() {}

  /** f, if the ask is the sum of f(r) over the real roots. */
  public static Optional<RootFunction> of(Problem problem) {
    if (!(problem.ask() instanceof Formula.Aggregate aggregate)
        || aggregate.operation() != Formula.Aggregate.Operation.SUM
        || !aggregate.contains(REAL_ROOTS::equals)) {
      return Optional.empty();
    }
    Formula letter = Formula.name(problem.unknown());
    Formula body = aggregate.body().rewrite(part -> part.equals(REAL_ROOTS) ? letter : part);
    try {
      RationalFunction f = FormulaExpansion.expand(body, Map.of(problem.unknown(), 0));
      return Optional.of(new RootFunction(inOne(f.numerator()), inOne(f.denominator())));
    } catch (UnreadableException other) {
      return Optional.empty();
    }
  }

  private static Polynomial inOne(MultivariatePolynomial polynomial) {
    Polynomial sum = Polynomial.ZERO;
    for (var term : polynomial.terms().entrySet()) {
      sum = sum.plus(Polynomial.monomial(term.getValue(), term.getKey().degree()));
    }
    return sum;
  }
}
