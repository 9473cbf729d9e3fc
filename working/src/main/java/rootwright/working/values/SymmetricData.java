package rootwright.working.values;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.problem.Problem;
import rootwright.working.step.NumberDomain;
import rootwright.working.step.Setting;

/**
 * Numbers of which symmetric values are given.
 *
 * @param names the names of the numbers, at least one
 * @param unknown a letter for the polynomial whose roots they are
 * @param domain what kind of numbers they are, if it is said
 * @param distinct whether they are said to be different
 * @param givens the values
 * @param reading how doubtful notation was understood
 */
record SymmetricData(
    List<String> names,
    String unknown,
    Optional<NumberDomain> domain,
    boolean distinct,
    List<GivenValue> givens,
    List<String> reading) {

  SymmetricData {
    names = List.copyOf(names);
    givens = List.copyOf(givens);
    reading = List.copyOf(reading);
  }

  /** How many numbers there are. */
  int count() {
    return names.size();
  }

  /** The monic polynomial with these values of e_1, …, e_n. */
  Polynomial polynomial(List<Rational> elementary) {
    Polynomial sum = Polynomial.monomial(Rational.ONE, count());
    for (int k = 1; k <= count(); k++) {
      Rational coefficient = elementary.get(k - 1).times(Rational.of(k % 2 == 0 ? 1 : -1));
      sum = sum.plus(Polynomial.monomial(coefficient, count() - k));
    }
    return sum;
  }

  /** The problem about the roots of a polynomial whose roots the numbers are. */
  Problem problem(Polynomial polynomial, Formula ask) {
    List<String> roots = new ArrayList<>(names);
    for (int k = 2; roots.size() < polynomial.degree(); k++) {
      roots.add(names.get(0) + "_" + k);
    }
    return new Problem(
        polynomial, PolynomialFormula.of(polynomial, unknown), unknown, roots, ask, reading);
  }

  /** The setting for identities in the numbers, with e_1, e_2, … defined by them. */
  Setting identities() {
    Setting setting = Setting.ofLetters(names);
    for (int k = 1; k <= count(); k++) {
      setting = setting.withDefinition("e_" + k, ElementaryNames.inNames(names, k));
    }
    return setting;
  }

  /** The beginning of the statement: “Let x, y, z be real numbers with x + y + z = 3.” */
  String inWords(NumberDomain shownDomain, boolean saysDomain) {
    List<String> written =
        givens.stream().map(given -> UnicodeWriter.write(given.relation())).distinct().toList();
    String numbers = (distinct ? "distinct " : "") + (saysDomain ? shownDomain.words() : "numbers");
    String values =
        written.size() == 1
            ? written.get(0)
            : String.join(", ", written.subList(0, written.size() - 1))
                + " and "
                + written.get(written.size() - 1);
    List<String> called =
        names.stream().map(name -> UnicodeWriter.write(Formula.name(name))).toList();
    return names.size() == 1
        ? "Let %s be a %s with %s.".formatted(called.get(0), numbers.replaceAll("s$", ""), values)
        : "Let %s be %s with %s.".formatted(String.join(", ", called), numbers, values);
  }
}
