package rootwright.working.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.algebra.symmetric.Partition;
import rootwright.algebra.symmetric.QuotientRecognition;
import rootwright.algebra.symmetric.SymmetricPolynomial;
import rootwright.algebra.symmetric.SymmetricQuotient;
import rootwright.working.check.exact.Expansion;
import rootwright.working.check.exact.Valuation;
import rootwright.working.problem.Problem;
import rootwright.working.problem.RootFunction;
import rootwright.working.problem.WholeNumber;

/** Finds every view of an ask. */
public final class AskedReader {

  private final Problem problem;

  private AskedReader(Problem problem) {
    this.problem = problem;
  }

  /** The views of the ask of a problem whose polynomial has degree at least 1. */
  public static Asked read(Problem problem) {
    return read(problem, Valuation.of(problem.ask(), problem.setting()));
  }

  /** The same where the value of the ask is known already. */
  public static Asked read(Problem problem, Valuation valuation) {
    return new AskedReader(problem).asked(valuation);
  }

  private Asked asked(Valuation valuation) {
    Formula ask = problem.ask();
    Optional<RationalFunction> expression = Expansion.of(ask, problem);
    Optional<SymmetricPolynomial> symmetric =
        SymmetricView.of(ask, problem).or(() -> expression.flatMap(written -> symmetric(written)));
    Optional<SymmetricQuotient> quotient =
        symmetric.map(this::upright).or(() -> expression.flatMap(this::recognised));
    Optional<Rational> value =
        valuation instanceof Valuation.Determined determined
            ? Optional.of(determined.value())
            : Optional.empty();
    return new Asked(
        problem,
        singleRoot(ask),
        overRoots(ask, Formula.Aggregate.Operation.SUM)
            .or(() -> symmetric.flatMap(this::sumOfPowers)),
        overRoots(ask, Formula.Aggregate.Operation.PRODUCT),
        symmetric,
        quotient,
        expression,
        value);
  }

  private SymmetricQuotient upright(SymmetricPolynomial polynomial) {
    return new SymmetricQuotient(
        polynomial, SymmetricPolynomial.constant(problem.degree(), Rational.ONE));
  }

  private Optional<SymmetricQuotient> recognised(RationalFunction written) {
    return SymmetricQuotient.recognise(written, problem.degree())
            instanceof QuotientRecognition.Symmetric symmetric
        ? Optional.of(symmetric.quotient())
        : Optional.empty();
  }

  private Optional<SymmetricPolynomial> symmetric(RationalFunction written) {
    return written.isPolynomial()
        ? SymmetricView.recognised(written.numerator(), problem.degree())
        : Optional.empty();
  }

  private Optional<RootFunction> singleRoot(Formula formula) {
    return Expansion.of(formula, problem)
        .filter(written -> !written.numerator().isConstant() || !written.isPolynomial())
        .flatMap(written -> OneRoot.of(written, problem.degree()).map(OneRoot::function));
  }

  /** f, if the formula is the sum or product of f(r) over all roots, by Σ or Π or typed out. */
  private Optional<RootFunction> overRoots(Formula formula, Formula.Aggregate.Operation operation) {
    if (formula instanceof Formula.Aggregate aggregate && aggregate.operation() == operation) {
      return singleRoot(aggregate.body());
    }
    boolean sum = operation == Formula.Aggregate.Operation.SUM;
    if (sum && formula instanceof Formula.Family family) {
      return negativePowers(family);
    }
    if (sum && formula instanceof Formula.Negative negative) {
      return overRoots(negative.of(), operation).map(f -> scaled(f, Rational.MINUS_ONE));
    }
    if (sum
        && formula instanceof Formula.Product product
        && product.factors().size() == 2
        && product.factors().get(0) instanceof Formula.Numeral factor) {
      return overRoots(product.factors().get(1), operation).map(f -> scaled(f, factor.value()));
    }
    List<Formula> parts =
        sum && formula instanceof Formula.Sum typed
            ? typed.terms()
            : !sum && formula instanceof Formula.Product typed ? typed.factors() : List.of();
    return parts.size() == problem.degree() ? sameForEveryRoot(parts) : Optional.empty();
  }

  /** 1/x^k for S_(−k); power sums with a positive index are seen as symmetric polynomials. */
  private static Optional<RootFunction> negativePowers(Formula.Family family) {
    return WholeNumber.of(family.index())
        .filter(k -> family.letter().equals("S") || family.letter().equals("p"))
        .filter(k -> k.signum() < 0 && k.bitLength() < 10)
        .map(
            k ->
                new RootFunction(
                    Polynomial.ONE, Polynomial.monomial(Rational.ONE, k.negate().intValue())));
  }

  private Optional<RootFunction> sameForEveryRoot(List<Formula> parts) {
    List<OneRoot> found = new ArrayList<>();
    for (Formula part : parts) {
      Optional<OneRoot> one =
          Expansion.of(part, problem).flatMap(written -> OneRoot.of(written, problem.degree()));
      if (one.isEmpty()) {
        return Optional.empty();
      }
      found.add(one.get());
    }
    boolean everyRootOnce = found.stream().map(OneRoot::root).distinct().count() == found.size();
    boolean sameFunction = found.stream().map(OneRoot::function).distinct().count() == 1;
    return everyRootOnce && sameFunction ? Optional.of(found.get(0).function()) : Optional.empty();
  }

  /** f with Σ f(r) equal to a symmetric polynomial whose every term has one root in it. */
  private Optional<RootFunction> sumOfPowers(SymmetricPolynomial polynomial) {
    Polynomial f = Polynomial.ZERO;
    for (var term : polynomial.terms().entrySet()) {
      Partition partition = term.getKey();
      if (partition.length() != 1) {
        return Optional.empty();
      }
      f = f.plus(Polynomial.monomial(term.getValue(), partition.weight()));
    }
    return f.isZero() ? Optional.empty() : Optional.of(RootFunction.of(f));
  }

  private static RootFunction scaled(RootFunction f, Rational factor) {
    return new RootFunction(f.numerator().times(factor), f.denominator());
  }
}
