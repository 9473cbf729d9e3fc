package rootwright.working.review.given;

import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaNames;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.working.review.LineFindings;
import rootwright.working.review.LineVerdict;

/**
 * Equations that are not true of everything and not meant so: cases, and names chosen for roots.
 */
final class Choices {

  private final Ground ground;
  private final Truths truths;
  private final Notebook notebook;

  Choices(Ground ground, Truths truths, Notebook notebook) {
    this.ground = ground;
    this.truths = truths;
    this.notebook = notebook;
  }

  /** A name for one root, or one of the cases that a line above leaves. */
  boolean isChoice(
      Formula left,
      Formula right,
      MultivariatePolynomial zero,
      boolean leads,
      LineFindings findings) {
    boolean integers = ground.says("integer") && Steps.unknownsIn(zero).size() == 1;
    boolean named = (left instanceof Formula.Name || integers) && FormulaNames.in(right).isEmpty();
    List<MultivariatePolynomial> with = truths.equations(true);
    with.add(zero);
    boolean asked = left.equals(ground.find());
    if (!named || !truths.isPossible(with) || (asked && !leads)) {
      return false;
    }
    Formula shown = Formula.equation(left, right);
    boolean isCase =
        notebook.facts().stream()
            .filter(Known::sound)
            .anyMatch(
                fact ->
                    Steps.unknownsIn(fact.zero()).equals(Steps.unknownsIn(zero))
                        && new Steps(
                                List.of(new Known(zero, "", true)),
                                List.of(),
                                ground.names().signs(),
                                ground.names().size())
                            .to(fact.zero())
                            .isPresent());
    if (isCase || (ground.says("integer") && !asked) || (isLetter(left) && !asked)) {
      truths.suppose(Optional.of(zero));
      findings.add(shown, LineVerdict.FOLLOWS, isCase ? "one of the cases" : "a case to look at");
      return true;
    }
    if (!losesNothing(with)) {
      return false;
    }
    boolean found = isFound(left, right);
    truths.choose(zero);
    notebook.remember(zero, findings.number(), true);
    findings.add(
        shown,
        found ? LineVerdict.FOLLOWS : LineVerdict.UNEXPLAINED,
        found ? "found above, with the names chosen so" : "possible, with the names chosen so");
    return true;
  }

  /** Whether an equation above, in this name or in the letter of the polynomial, has this value. */
  private boolean isFound(Formula left, Formula right) {
    return List.of(left, Formula.name(ground.unknown())).stream()
        .map(name -> ground.writing().difference(name, right))
        .flatMap(Optional::stream)
        .anyMatch(
            zero ->
                notebook.facts().stream()
                    .filter(Known::sound)
                    .filter(fact -> Steps.unknownsIn(fact.zero()).equals(Steps.unknownsIn(zero)))
                    .anyMatch(
                        fact ->
                            Steps.inOne(fact.zero(), Steps.unknownsIn(zero).get(0))
                                .remainder(Steps.inOne(zero, Steps.unknownsIn(zero).get(0)))
                                .isZero()));
  }

  /** A letter of the statement that is neither a root nor the polynomial's own. */
  private boolean isLetter(Formula left) {
    return left instanceof Formula.Name name
        && !name.spelling().equals(ground.unknown())
        && !ground.solution().given().roots().contains(name.spelling())
        && ground.polynomials().stream().noneMatch(p -> p.roots().contains(name.spelling()));
  }

  private boolean losesNothing(List<MultivariatePolynomial> with) {
    Optional<RationalFunction> find = ground.writing().of(ground.find());
    if (find.isEmpty() || !find.get().isPolynomial()) {
      return true;
    }
    Optional<Polynomial> before = truths.values(find.get().numerator(), truths.equations(true));
    Optional<Polynomial> after = truths.values(find.get().numerator(), with);
    return before.isPresent() && before.equals(after);
  }

  /** Whether it is the polynomial's own letter, and nothing is said of that. */
  boolean isFreeUnknown(Formula left) {
    return left.equals(Formula.name(ground.unknown()))
        && !left.equals(ground.find())
        && notebook.facts().stream()
            .allMatch(fact -> fact.zero().degreeIn(ground.names().number(ground.unknown())) < 1);
  }
}
