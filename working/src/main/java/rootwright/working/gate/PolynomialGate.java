package rootwright.working.gate;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.factor.Factorisation;
import rootwright.algebra.factor.IrreducibleFactor;
import rootwright.algebra.factor.RationalRoot;
import rootwright.algebra.factor.RationalRoots;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.working.problem.Problem;

/** What a coach should know of the polynomial, whatever is asked. */
public final class PolynomialGate {

  private PolynomialGate() {}

  /** The warnings about a polynomial of degree at least 1. */
  public static List<Warning> warnings(Problem problem) {
    List<Warning> warnings = new ArrayList<>();
    leadGone(problem).ifPresent(warnings::add);
    Optional<Factorisation> factorisation = Factorisation.tried(problem.polynomial());
    factorisation.flatMap(known -> repeated(known, problem)).ifPresent(warnings::add);
    List<RationalRoot> rational = RationalRoots.of(problem.polynomial());
    if (!rational.isEmpty()) {
      warnings.add(new Warning(WarningCode.RATIONAL_ROOT, rationalRoots(rational)));
    }
    factorisation
        .filter(known -> splitsBesideRoots(known, problem))
        .map(known -> factors(known, problem))
        .map("The polynomial factors over the rational numbers: %s."::formatted)
        .ifPresent(text -> warnings.add(new Warning(WarningCode.REDUCIBLE, text)));
    return warnings;
  }

  private static boolean splitsBesideRoots(Factorisation factorisation, Problem problem) {
    return factorisation.factors().stream()
        .mapToInt(factor -> factor.polynomial().degree())
        .anyMatch(degree -> degree > 1 && degree < problem.degree());
  }

  private static Optional<Warning> leadGone(Problem problem) {
    BigInteger formal = new FormalDegree(problem.unknown()).of(problem.stated());
    return formal.compareTo(BigInteger.valueOf(problem.degree())) <= 0
        ? Optional.empty()
        : Optional.of(
            new Warning(
                WarningCode.LEAD_ZERO,
                "The terms of degree %s cancel or have the coefficient 0, so the degree is %d."
                    .formatted(formal, problem.degree())));
  }

  private static Optional<Warning> repeated(Factorisation factorisation, Problem problem) {
    List<String> repeated = new ArrayList<>();
    List<IrreducibleFactor> inOrder = new ArrayList<>(factorisation.factors());
    inOrder.sort(
        Comparator.comparing((IrreducibleFactor factor) -> factor.polynomial().degree())
            .thenComparing(
                factor ->
                    factor.polynomial().coefficient(0).over(factor.polynomial().lead()).negate()));
    for (IrreducibleFactor factor : inOrder) {
      if (factor.multiplicity() > 1) {
        repeated.add(
            factor.polynomial().degree() == 1
                ? "%s is a root %s"
                    .formatted(
                        text(
                            Formula.number(
                                factor
                                    .polynomial()
                                    .coefficient(0)
                                    .over(factor.polynomial().lead())
                                    .negate())),
                        times(factor.multiplicity()))
                : "the roots of %s are roots %s each"
                    .formatted(
                        text(PolynomialFormula.of(factor.polynomial(), problem.unknown())),
                        times(factor.multiplicity())));
      }
    }
    return repeated.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Warning(
                WarningCode.REPEATED_ROOT,
                capital(String.join(", ", repeated))
                    + "; roots are counted as often as they occur."));
  }

  private static String rationalRoots(List<RationalRoot> roots) {
    List<String> values = roots.stream().map(r -> text(Formula.number(r.value()))).toList();
    return values.size() == 1
        ? values.get(0)
            + " is a root, so a student can split it off instead of using the intended route."
        : "%s are roots, so a student can split them off instead of using the intended route."
            .formatted(String.join(", ", values));
  }

  private static String factors(Factorisation factorisation, Problem problem) {
    StringBuilder product = new StringBuilder();
    for (IrreducibleFactor factor : factorisation.factors()) {
      product
          .append('(')
          .append(text(PolynomialFormula.of(factor.polynomial(), problem.unknown())))
          .append(')')
          .append(
              factor.multiplicity() == 1
                  ? ""
                  : text(Formula.name("x").power(factor.multiplicity())).substring(1));
    }
    return product.toString();
  }

  private static String times(int multiplicity) {
    return multiplicity == 2 ? "twice" : multiplicity + " times";
  }

  private static String text(Formula formula) {
    return UnicodeWriter.write(formula);
  }

  private static String capital(String sentence) {
    return Character.toUpperCase(sentence.charAt(0)) + sentence.substring(1);
  }
}
