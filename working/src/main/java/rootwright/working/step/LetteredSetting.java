package rootwright.working.step;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;

/**
 * What the names in a claim stand for where the coefficients of the polynomial hold letters.
 *
 * @param letters the letters for which a claim must hold identically: those of the coefficients,
 *     and others such as x in P(x) = (x − k)·Q(x)
 * @param polynomial the polynomial whose roots are meant: unknown 0 is its own, unknown k the k-th
 *     of the letters, counted from 1; its degree in unknown 0 is at least 1
 * @param roots names of its roots, each standing for another root; at most as many as the degree
 * @param functions what {@code P}, {@code Q}, … applied to something mean, with unknowns numbered
 *     like those of the polynomial; primes are derivatives
 * @param definitions names introduced on the way, in terms of the roots and the letters
 */
public record LetteredSetting(
    List<String> letters,
    MultivariatePolynomial polynomial,
    List<String> roots,
    Map<String, MultivariatePolynomial> functions,
    Map<String, Formula> definitions) {

  /**
   * Checks that there are no more names than roots.
   *
   * @throws IllegalArgumentException if there are
   */
  public LetteredSetting {
    letters = List.copyOf(letters);
    roots = List.copyOf(roots);
    functions = Map.copyOf(functions);
    definitions = Map.copyOf(definitions);
    if (polynomial.degreeIn(0) < 1 || roots.size() > polynomial.degreeIn(0)) {
      throw new IllegalArgumentException(
          "%d names for the roots of a polynomial of degree %d"
              .formatted(roots.size(), polynomial.degreeIn(0)));
    }
  }

  /** The setting in which P is the polynomial and nothing else is named. */
  public static LetteredSetting of(
      List<String> letters, MultivariatePolynomial polynomial, List<String> roots) {
    return new LetteredSetting(letters, polynomial, roots, Map.of("P", polynomial), Map.of());
  }

  /** The number of roots. */
  public int degree() {
    return polynomial.degreeIn(0);
  }

  /** The same with one more polynomial to apply. */
  public LetteredSetting withFunction(String name, MultivariatePolynomial function) {
    Map<String, MultivariatePolynomial> more = new HashMap<>(functions);
    more.put(name, function);
    return new LetteredSetting(letters, polynomial, roots, more, definitions);
  }

  /** The same with one more letter for which claims hold identically. */
  public LetteredSetting withLetter(String letter) {
    List<String> more = new ArrayList<>(letters);
    more.add(letter);
    return new LetteredSetting(more, polynomial, roots, functions, definitions);
  }

  /**
   * The setting with numbers put for the letters; empty if the lead coefficient is zero there.
   *
   * @param numbers one for each of the letters
   */
  public Optional<Setting> at(Map<String, Rational> numbers) {
    Polynomial special = at(polynomial, numbers);
    if (special.degree() < degree()) {
      return Optional.empty();
    }
    Map<String, Polynomial> applied = new HashMap<>();
    functions.forEach((name, function) -> applied.put(name, at(function, numbers)));
    return Optional.of(new Setting(special, roots, applied, definitions, letters));
  }

  private Polynomial at(MultivariatePolynomial lettered, Map<String, Rational> numbers) {
    Rational[] ascending = new Rational[lettered.degreeIn(0) + 1];
    Arrays.fill(ascending, Rational.ZERO);
    for (Map.Entry<Monomial, Rational> term : lettered.terms().entrySet()) {
      Monomial monomial = term.getKey();
      Rational value = term.getValue();
      for (int k = 1; k < monomial.length(); k++) {
        if (monomial.exponent(k) > 0) {
          value = value.times(number(letters.get(k - 1), numbers).power(monomial.exponent(k)));
        }
      }
      ascending[monomial.exponent(0)] = ascending[monomial.exponent(0)].plus(value);
    }
    return Polynomial.ofAscending(List.of(ascending));
  }

  private static Rational number(String letter, Map<String, Rational> numbers) {
    Rational number = numbers.get(letter);
    if (number == null) {
      throw new IllegalArgumentException("no number is put for the letter " + letter);
    }
    return number;
  }
}
