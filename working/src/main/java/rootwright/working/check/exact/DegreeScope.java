package rootwright.working.check.exact;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaNames;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.algebra.roots.Orbit;
import rootwright.working.step.LetteredSetting;
import rootwright.working.step.Setting;

/**
 * What decides the degree of a formula in one letter or in several together: which names are roots,
 * and how far the letters reach into them.
 *
 * @param counted the letters whose degree is meant, together
 * @param roots names of the roots
 * @param count how many roots there are
 * @param reach the degree of the polynomial in these letters. A symmetric polynomial of total
 *     degree t in the roots is, after multiplication by lead^t, a polynomial of degree at most t in
 *     the coefficients, since each of its terms e_λ has at most t factors; hence every root counts
 *     as so many letters
 * @param functions for each function its degree in its argument and in the letter
 * @param definitions names introduced on the way
 */
record DegreeScope(
    Set<String> counted,
    List<String> roots,
    int count,
    int reach,
    Map<String, Reach> functions,
    Map<String, Formula> definitions) {

  /** The degree of a function in its argument and in the letter. */
  record Reach(int inArgument, int inLetter) {}

  /** A letter that does not occur in the polynomial. */
  static DegreeScope of(Setting setting, String letter) {
    return of(setting, Set.of(letter));
  }

  /** Letters that do not occur in the polynomial. */
  static DegreeScope of(Setting setting, Set<String> letters) {
    Map<String, Reach> functions = new HashMap<>();
    setting
        .functions()
        .forEach((name, f) -> functions.put(name, new Reach(Math.max(0, f.degree()), 0)));
    return new DegreeScope(
        letters,
        setting.roots(),
        setting.polynomial().degree(),
        0,
        functions,
        setting.definitions());
  }

  /** Letters that may occur in the coefficients. */
  static DegreeScope of(LetteredSetting setting, Set<String> letters) {
    Map<String, Reach> functions = new HashMap<>();
    setting
        .functions()
        .forEach(
            (name, f) ->
                functions.put(name, new Reach(f.degreeIn(0), degree(f, setting, letters))));
    return new DegreeScope(
        letters,
        setting.roots(),
        setting.degree(),
        degree(setting.polynomial(), setting, letters),
        functions,
        setting.definitions());
  }

  /** The greatest degree of a term in these letters together. */
  private static int degree(
      MultivariatePolynomial polynomial, LetteredSetting setting, Set<String> letters) {
    int degree = 0;
    for (Monomial monomial : polynomial.terms().keySet()) {
      int sum = 0;
      for (int k = 1; k < monomial.length(); k++) {
        sum += letters.contains(setting.letters().get(k - 1)) ? monomial.exponent(k) : 0;
      }
      degree = Math.max(degree, sum);
    }
    return degree;
  }

  /**
   * How many images a body may have when the roots are renamed: the number of its formal images, or
   * where letters stand in it the number of ways to choose roots for its names.
   */
  int mostImages(Formula body) {
    long names = roots.stream().filter(root -> mentions(body, root)).count();
    boolean rootsAlone = FormulaNames.in(body).stream().allMatch(roots::contains);
    if (rootsAlone && names > 1) {
      try {
        Setting formal = Setting.of(Polynomial.X.power(count), roots);
        RationalFunction value =
            new FormalEvaluation(formal, new Unknowns(count), Map.of()).of(body);
        return Orbit.sizeOf(value, count).intValueExact();
      } catch (Unevaluable notFormal) {
        return choices(names);
      }
    }
    return choices(names);
  }

  private int choices(long names) {
    int images = 1;
    for (int k = 0; k < names; k++) {
      images = Math.multiplyExact(images, count - k);
    }
    return images;
  }

  private static boolean mentions(Formula body, String root) {
    return body.contains(part -> part instanceof Formula.Name name && name.spelling().equals(root));
  }
}
