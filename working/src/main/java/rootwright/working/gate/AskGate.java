package rootwright.working.gate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.value.ExactRoot;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.ExactValues;
import rootwright.algebra.value.RootOf;
import rootwright.working.ask.Asked;
import rootwright.working.check.exact.Valuation;
import rootwright.working.problem.Problem;
import rootwright.working.problem.RootFunction;

/** Whether an expression in the roots is well posed, and what to say where it is not. */
public final class AskGate {

  private AskGate() {}

  /** The warnings about an ask whose exact valuation is known. */
  public static List<Warning> warnings(Problem problem, Valuation valuation) {
    List<Warning> warnings = new ArrayList<>();
    if (valuation instanceof Valuation.Undefined undefined) {
      warnings.add(new Warning(WarningCode.ZERO_DENOMINATOR, zeroDenominator(problem, undefined)));
    } else if (valuation instanceof Valuation.Several several) {
      warnings.add(new Warning(WarningCode.NOT_SYMMETRIC, several(several.orbit())));
      if (problem.degree() == 2) {
        warnings.add(
            new Warning(
                WarningCode.ORDER_OPEN,
                "Saying which root is the larger would settle it, if they are real."));
      }
    } else if (valuation instanceof Valuation.TooMany many) {
      warnings.add(
          new Warning(
              WarningCode.NOT_SYMMETRIC,
              "The expression is not symmetric: renaming the roots gives it %s forms, too many to find their exact values, which are told up to 120. Their sum Σ(%s) would be definite, or fewer names of roots."
                  .formatted(many.images(), UnicodeWriter.write(problem.ask()))));
    } else if (valuation instanceof Valuation.InOneRoot one && isSingle(one, problem)) {
      warnings.add(coincidence(problem));
    } else if (valuation instanceof Valuation.InOneRoot one) {
      warnings.add(
          new Warning(
              WarningCode.NOT_SYMMETRIC,
              "The value depends on which root %s is; as a polynomial of lower degree it is %s. The sum over all roots would be definite."
                  .formatted(
                      one.root(),
                      UnicodeWriter.write(PolynomialFormula.of(one.reduced(), one.root())))));
    } else if (valuation instanceof Valuation.Determined determined && !determined.byForm()) {
      warnings.add(coincidence(problem));
    }
    if (valuation instanceof Valuation.Determined determined) {
      distinctReading(problem, determined.value()).ifPresent(warnings::add);
    }
    return warnings;
  }

  /** Whether the expression has the same value at all roots, as 2r has at the roots of (x − 1)². */
  public static boolean isSingle(Valuation.InOneRoot one, Problem problem) {
    return one.reduced().remainder(problem.polynomial().squarefreePart()).degree() <= 0;
  }

  /** What the ask needs and, as has been found, has. */
  public static List<String> conditions(Problem problem, Asked asked) {
    List<String> conditions = new ArrayList<>();
    asked
        .sumOverRoots()
        .or(asked::productOverRoots)
        .or(asked::singleRoot)
        .filter(f -> !f.isPolynomial())
        .map(f -> denominator(f, problem))
        .ifPresent(conditions::add);
    return conditions;
  }

  private static String denominator(RootFunction f, Problem problem) {
    Polynomial powerless = f.denominator().squarefreePart();
    String root = problem.roots().get(0);
    return powerless.degree() == 1 && powerless.coefficient(0).isZero()
        ? "no root is 0"
        : "%s is not 0 for any root, since it has no root in common with the polynomial"
            .formatted(UnicodeWriter.write(PolynomialFormula.of(powerless, root)));
  }

  private static String several(Polynomial orbit) {
    int distinct = orbit.squarefreePart().degree();
    Rational sum = orbit.squarefreePart().coefficient(distinct - 1).negate();
    String count = distinct == 2 ? "two possible values" : distinct + " possible values";
    String values = distinct <= 6 ? valuesOf(orbit) : "";
    return "The expression is not symmetric: depending on which root has which name it has %s%s. Ask for all possible values, for their sum %s, or fix which root is which."
        .formatted(count, values, UnicodeWriter.write(Formula.number(sum)));
  }

  /** The values, unless they have no name but their place among the roots of a polynomial. */
  private static String valuesOf(Polynomial orbit) {
    List<ExactValue> values =
        ExactValues.rootsOf(orbit.squarefreePart()).stream().map(ExactRoot::value).toList();
    return values.stream()
            .anyMatch(value -> value instanceof RootOf root && root.inSurds().isEmpty())
        ? ""
        : values.stream()
            .map(value -> UnicodeWriter.write(value.toFormula()))
            .collect(Collectors.joining(" and ", ": ", ""));
  }

  private static Warning coincidence(Problem problem) {
    return problem.polynomial().isSquarefree()
        ? new Warning(
            WarningCode.BY_COINCIDENCE,
            "The expression is not symmetric by its form; it has one value because of this polynomial, whatever the roots are called.")
        : new Warning(
            WarningCode.BY_COINCIDENCE,
            "The expression is not symmetric by its form; it has one value only because a root is repeated.");
  }

  private static String zeroDenominator(Problem problem, Valuation.Undefined undefined) {
    Optional<Rational> culprit =
        undefined
            .culprit()
            .filter(common -> common.degree() == 1)
            .map(common -> common.coefficient(0).negate());
    if (culprit.isEmpty()) {
      return "The ask is undefined: " + undefined.why() + ".";
    }
    Rational root = culprit.get();
    String name = UnicodeWriter.write(Formula.number(root));
    return "%s is a root, so one term has denominator 0.%s%s"
        .formatted(
            name,
            withAnotherNumber(problem, root)
                .map(ask -> " With another number it is definite, such as " + ask + ".")
                .orElse(""),
            overTheOthers(problem, root));
  }

  /** The same ask with the next whole number that is no root in the place of the culprit. */
  private static Optional<String> withAnotherNumber(Problem problem, Rational root) {
    Rational other = root.plus(Rational.ONE);
    while (problem.polynomial().at(other).isZero()) {
      other = other.plus(Rational.ONE);
    }
    Rational replacement = other;
    Formula changed =
        problem
            .ask()
            .rewrite(
                part ->
                    part instanceof Formula.Numeral numeral
                            && numeral.value().absolute().equals(root.absolute())
                        ? Formula.number(replacement.absolute().times(numeral.value().signum()))
                        : part);
    return Valuation.of(changed, problem.setting()) instanceof Valuation.Determined
        ? Optional.of(UnicodeWriter.write(changed))
        : Optional.empty();
  }

  private static String overTheOthers(Problem problem, Rational root) {
    Polynomial factor = Polynomial.withRoots(List.of(root));
    Polynomial others = problem.polynomial();
    while (others.at(root).isZero()) {
      others = others.divide(factor).quotient();
    }
    if (others.degree() < 1 || !(problem.ask() instanceof Formula.Aggregate)) {
      return "";
    }
    Problem rest =
        new Problem(
            others,
            problem.stated(),
            problem.unknown(),
            problem.roots().subList(0, others.degree()),
            problem.ask(),
            List.of());
    return Valuation.of(rest.ask(), rest.setting()) instanceof Valuation.Determined determined
        ? " Over the other %s it is %s."
            .formatted(
                others.degree() == 1 ? "root" : others.degree() + " roots",
                UnicodeWriter.write(Formula.number(determined.value())))
        : "";
  }

  /** With repeated roots, the value if every root were counted once, where that differs. */
  private static Optional<Warning> distinctReading(Problem problem, Rational value) {
    Polynomial distinct = problem.polynomial().squarefreePart();
    boolean namesRoots =
        problem
            .ask()
            .contains(
                part ->
                    part instanceof Formula.Name name
                        && problem.roots().indexOf(name.spelling()) >= distinct.degree());
    if (distinct.degree() == problem.degree() || distinct.degree() < 1 || namesRoots) {
      return Optional.empty();
    }
    Problem once =
        new Problem(
            distinct,
            problem.stated(),
            problem.unknown(),
            problem.roots().subList(0, distinct.degree()),
            problem.ask(),
            List.of());
    return Valuation.of(once.ask(), once.setting()) instanceof Valuation.Determined other
            && !other.value().equals(value)
        ? Optional.of(
            new Warning(
                WarningCode.REPEATED_ROOT,
                "Over the distinct roots, each counted once, the value would be %s; say which is meant."
                    .formatted(UnicodeWriter.write(Formula.number(other.value())))))
        : Optional.empty();
  }
}
