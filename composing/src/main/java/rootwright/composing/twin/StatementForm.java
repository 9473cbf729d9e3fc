package rootwright.composing.twin;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaExpansion;
import rootwright.algebra.notation.FormulaNames;
import rootwright.algebra.notation.NormalForm;
import rootwright.algebra.notation.PlainWriter;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.working.solve.Given;

/**
 * A statement that is not about the roots of one polynomial with numbers alone: letters among the
 * coefficients, conditions, two polynomials, or no polynomial at all. Scaled, its letters and roots
 * renamed by their place, and mirrored where everything in it can be.
 */
final class StatementForm {

  /** Words in a condition that say the same of the roots with the other sign. */
  private static final List<String> MIRRORED =
      List.of(
          "arithmetic",
          "geometric",
          "harmonic",
          "repeated",
          "distinct",
          "real",
          "integer",
          "rational",
          "share",
          "sum of the other two",
          "common");

  /** Words that say something else of them. */
  private static final List<String> TURNED =
      List.of(
          "positive", "negative", "greatest", "least", "largest", "smallest", "root is", "more");

  private final Given given;

  StatementForm(Given given) {
    this.given = given;
  }

  /** The same text for statements that are the same up to scaling and renaming. */
  String text() {
    return text(false);
  }

  /** The text of the statement about the roots with the other sign, if it can be turned so. */
  Optional<String> mirrored() {
    boolean can =
        !polynomials().isEmpty()
            && Stream.concat(Stream.of(given.find()), given.conditions().stream())
                .allMatch(this::canBeMirrored);
    return can ? Optional.of(text(true)) : Optional.empty();
  }

  private boolean canBeMirrored(Formula part) {
    if (part.contains(each -> each instanceof Formula.Words)) {
      String words = PlainWriter.write(part);
      return TURNED.stream().noneMatch(words::contains)
          && MIRRORED.stream().anyMatch(words::contains);
    }
    return !part.contains(
        each ->
            each instanceof Formula.Aggregate
                || each instanceof Formula.Family
                || each instanceof Formula.Application);
  }

  private String text(boolean mirror) {
    Map<String, String> names = names();
    List<String> parts = new ArrayList<>();
    if (polynomials().isEmpty()) {
      parts.add(plain(given.polynomial(), names));
    } else {
      polynomials().forEach(each -> parts.add(polynomial(each, mirror, names)));
      if (isTwo()) {
        parts.sort(String::compareTo);
      }
    }
    List<String> conditions = new ArrayList<>();
    given.conditions().forEach(each -> conditions.add(formula(each, mirror, names)));
    conditions.sort(String::compareTo);
    parts.add(formula(given.find(), mirror, names));
    parts.addAll(conditions);
    return String.join("; ", parts);
  }

  private boolean isTwo() {
    return given.polynomial() instanceof Formula.Listing;
  }

  /** The polynomials in the unknown; empty if what is given is something else. */
  private List<Formula> polynomials() {
    List<Formula> all =
        given.polynomial() instanceof Formula.Listing listing
            ? listing.items()
            : List.of(given.polynomial());
    return all.stream().allMatch(this::isPolynomial) ? all : List.of();
  }

  private boolean isPolynomial(Formula formula) {
    return expanded(formula, indexed(formula))
        .filter(function -> function.isPolynomial() && function.numerator().degreeIn(0) > 0)
        .isPresent();
  }

  /** The unknown first, then the letters as they occur. */
  private Map<String, Integer> indexed(Formula formula) {
    Set<String> all = new LinkedHashSet<>(List.of(given.unknown()));
    all.addAll(FormulaNames.in(formula));
    Map<String, Integer> indexed = new LinkedHashMap<>();
    all.forEach(name -> indexed.put(name, indexed.size()));
    return indexed;
  }

  private static Optional<RationalFunction> expanded(Formula formula, Map<String, Integer> names) {
    try {
      return Optional.of(FormulaExpansion.expand(formula, names));
    } catch (UnreadableException | IllegalArgumentException other) {
      return Optional.empty();
    }
  }

  private String polynomial(Formula formula, boolean mirror, Map<String, String> names) {
    Map<String, Integer> indexed = indexed(formula);
    MultivariatePolynomial whole =
        expanded(formula, indexed).map(RationalFunction::numerator).orElseThrow();
    MultivariatePolynomial turned = mirror ? turned(whole, Set.of(0)) : whole;
    List<String> renamed = indexed.keySet().stream().map(names::get).toList();
    return PlainWriter.write(PolynomialFormula.of(scaled(turned), renamed));
  }

  /** Scaled so that the term that is written first has the factor 1. */
  private static MultivariatePolynomial scaled(MultivariatePolynomial polynomial) {
    return polynomial.isZero()
        ? polynomial
        : polynomial.times(polynomial.terms().firstEntry().getValue().reciprocal());
  }

  /** With the sign changed of every term of odd degree in these unknowns. */
  private static MultivariatePolynomial turned(
      MultivariatePolynomial polynomial, Set<Integer> unknowns) {
    Map<Monomial, Rational> terms = new LinkedHashMap<>();
    polynomial
        .terms()
        .forEach(
            (monomial, coefficient) -> {
              int odd = 0;
              for (int k : unknowns) {
                odd += k < monomial.length() ? monomial.exponent(k) : 0;
              }
              terms.put(monomial, odd % 2 == 0 ? coefficient : coefficient.negate());
            });
    return MultivariatePolynomial.of(terms);
  }

  /** An equation is its difference, scaled; another formula a fraction; the rest as written. */
  private String formula(Formula formula, boolean mirror, Map<String, String> names) {
    Map<String, Integer> indexed = new LinkedHashMap<>();
    FormulaNames.in(formula).forEach(name -> indexed.put(name, indexed.size()));
    boolean equation =
        formula instanceof Formula.Relation relation
            && relation.sides().size() == 2
            && relation.comparisons().get(0) == Formula.Comparison.EQUAL;
    Formula one =
        equation && formula instanceof Formula.Relation relation
            ? relation.sides().get(0).minus(relation.sides().get(1))
            : formula;
    Optional<RationalFunction> function = expanded(one, indexed);
    if (function.isEmpty()) {
      return plain(formula, names);
    }
    Set<Integer> roots = new LinkedHashSet<>();
    given.roots().stream().filter(indexed::containsKey).map(indexed::get).forEach(roots::add);
    RationalFunction lowest = function.get().lowestTerms();
    if (mirror) {
      lowest =
          new RationalFunction(
                  turned(lowest.numerator(), roots), turned(lowest.denominator(), roots))
              .lowestTerms();
    }
    List<String> renamed = indexed.keySet().stream().map(names::get).toList();
    return equation
        ? PlainWriter.write(PolynomialFormula.of(scaled(lowest.numerator()), renamed)) + " = 0"
        : PlainWriter.write(PolynomialFormula.of(lowest, renamed));
  }

  private static String plain(Formula formula, Map<String, String> names) {
    return PlainWriter.write(
        NormalForm.of(
            formula.rewrite(
                part ->
                    part instanceof Formula.Name name && names.containsKey(name.spelling())
                        ? PolynomialFormula.named(names.getOrDefault(name.spelling(), ""))
                        : part)));
  }

  /** The unknown is x, roots are r_1, r_2, …, other letters a_1, a_2, … as they come. */
  private Map<String, String> names() {
    Map<String, String> names = new LinkedHashMap<>();
    names.put(given.unknown(), "x");
    for (int k = 0; k < given.roots().size(); k++) {
      names.putIfAbsent(given.roots().get(k), "r_" + (k + 1));
    }
    List<Formula> all = new ArrayList<>(List.of(given.polynomial(), given.find()));
    all.addAll(given.conditions());
    int letters = 0;
    for (Formula each : all) {
      for (String name : FormulaNames.in(each)) {
        if (!names.containsKey(name)) {
          names.put(name, "a_" + ++letters);
        }
      }
    }
    return names;
  }
}
