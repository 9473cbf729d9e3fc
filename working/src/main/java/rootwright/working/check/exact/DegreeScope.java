package rootwright.working.check.exact;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rootwright.algebra.notation.Formula;
import rootwright.working.step.LetteredSetting;
import rootwright.working.step.Setting;

/**
 * What decides the degree of a formula in a letter: which names are roots, and how far the letter
 * reaches into them.
 *
 * @param letter the letter
 * @param roots names of the roots
 * @param count how many roots there are
 * @param reach the degree of the polynomial in the letter. A symmetric polynomial of total degree t
 *     in the roots is, after multiplication by lead^t, a polynomial of degree at most t in the
 *     coefficients, since each of its terms e_λ has at most t factors; hence every root counts as
 *     so many letters
 * @param functions for each function its degree in its argument and in the letter
 * @param definitions names introduced on the way
 */
record DegreeScope(
    String letter,
    List<String> roots,
    int count,
    int reach,
    Map<String, Reach> functions,
    Map<String, Formula> definitions) {

  /** The degree of a function in its argument and in the letter. */
  record Reach(int inArgument, int inLetter) {}

  /** A letter that does not occur in the polynomial. */
  static DegreeScope of(Setting setting, String letter) {
    Map<String, Reach> functions = new HashMap<>();
    setting
        .functions()
        .forEach((name, f) -> functions.put(name, new Reach(Math.max(0, f.degree()), 0)));
    return new DegreeScope(
        letter,
        setting.roots(),
        setting.polynomial().degree(),
        0,
        functions,
        setting.definitions());
  }

  /** A letter that may occur in the coefficients. */
  static DegreeScope of(LetteredSetting setting, String letter) {
    int number = setting.letters().indexOf(letter) + 1;
    Map<String, Reach> functions = new HashMap<>();
    setting
        .functions()
        .forEach((name, f) -> functions.put(name, new Reach(f.degreeIn(0), f.degreeIn(number))));
    return new DegreeScope(
        letter,
        setting.roots(),
        setting.degree(),
        setting.polynomial().degreeIn(number),
        functions,
        setting.definitions());
  }
}
