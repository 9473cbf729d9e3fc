package rootwright.working.route;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.algebra.roots.Orbit;
import rootwright.working.answer.Answer;
import rootwright.working.ask.Asked;
import rootwright.working.problem.Problem;
import rootwright.working.step.Claim;
import rootwright.working.step.Idea;
import rootwright.working.step.Setting;

/**
 * The polynomial whose roots are the two or three values that an expression takes when the roots
 * are renamed: renaming only exchanges them, so their sum, their product and what lies between are
 * symmetric in the roots (Lagrange 1771, Réflexions, for rs + tu of a quartic and for a cubic).
 */
final class ValuesTogether implements Route {

  private static final int MOST_VALUES = 3;

  private final Optional<String> letter;

  /** With the letter of the answer; absent for that of the problem. */
  ValuesTogether(Optional<String> letter) {
    this.letter = letter;
  }

  @Override
  public String name() {
    return "values-together";
  }

  @Override
  public String title() {
    return "build the sum and the product of the values from e₁, e₂, …";
  }

  @Override
  public String teaches() {
    return "Renaming the roots only exchanges the values, so what is symmetric in them is symmetric in the roots.";
  }

  @Override
  public Attempt attempt(Asked asked) {
    Problem problem = asked.problem();
    if (asked.expression().isEmpty()) {
      return new Attempt.Declined("the new root is no rational expression in the old ones");
    }
    Orbit orbit = Orbit.of(asked.expression().get(), problem.degree());
    if (!orbit.isListed() || orbit.images().size() < 2 || orbit.images().size() > MOST_VALUES) {
      return new Attempt.Declined(
          "there are %s values; this is for two or three".formatted(orbit.size()));
    }
    List<SymmetricFraction> forms = new ArrayList<>();
    for (RationalFunction together : elementary(orbit.images())) {
      Optional<SymmetricFraction> form =
          SymmetricFraction.of(together, problem.degree(), NamedForm::elementary);
      if (form.isEmpty()) {
        return Reasons.TOO_LONG;
      }
      forms.add(form.get());
    }
    return worked(problem, orbit.images(), forms);
  }

  /** The elementary symmetric functions of the values, the sum first. */
  private static List<RationalFunction> elementary(List<RationalFunction> values) {
    List<RationalFunction> found = new ArrayList<>();
    found.add(RationalFunction.of(Rational.ONE));
    for (RationalFunction value : values) {
      found.add(RationalFunction.ZERO);
      for (int k = found.size() - 1; k >= 1; k--) {
        found.set(k, found.get(k).plus(found.get(k - 1).times(value)).lowestTerms());
      }
    }
    return found.subList(1, found.size());
  }

  private Attempt worked(
      Problem problem, List<RationalFunction> values, List<SymmetricFraction> forms) {
    CoefficientLines coefficients = CoefficientLines.of(problem);
    List<String> names = FreshNames.indexed(FreshNames.letter(problem), values.size());
    Setting setting = problem.setting();
    List<Formula> written = new ArrayList<>();
    for (int k = 0; k < values.size(); k++) {
      Formula value = k == 0 ? problem.ask() : PolynomialFormula.of(values.get(k), problem.roots());
      written.add(value);
      setting = setting.withDefinition(names.get(k), value);
    }
    Lines lines = new Lines(setting);
    for (int k = 0; k < values.size(); k++) {
      lines.add(
          Idea.STATE,
          k == 0 ? "one name for each value" : "the roots renamed",
          Formula.name(names.get(k)),
          written.get(k));
    }
    SortedSet<Integer> wanted = new TreeSet<>();
    forms.forEach(form -> wanted.addAll(form.indices()));
    coefficients.write(lines, wanted);
    List<Rational> ascending = new ArrayList<>();
    for (int k = 1; k <= forms.size(); k++) {
      SymmetricFraction form = forms.get(k - 1);
      Optional<Rational> value = form.value(coefficients.values());
      if (value.isEmpty()) {
        return Reasons.ZERO_DENOMINATOR;
      }
      lines.add(
          Idea.BUILD,
          k == 1 ? "symmetric in the roots" : "symmetric too",
          CoefficientLines.inRoots(names, k),
          form.written(),
          form.worked(coefficients.values()),
          Formula.number(value.get()));
      ascending.add(0, k % 2 == 0 ? value.get() : value.get().negate());
    }
    ascending.add(Rational.ONE);
    Polynomial image = Polynomial.ofAscending(ascending).primitive();
    String shownIn = letter.orElse(problem.unknown());
    lines.addRoots(
        Idea.STATE,
        "these are its coefficients, with alternating signs; its roots are the values of "
            + UnicodeWriter.write(problem.ask()),
        Formula.equation(PolynomialFormula.of(image, shownIn), Formula.number(0)),
        new Claim.HasRoots(problem.setting(), image, problem.ask()));
    return new Attempt.Worked(
        title(), lines.steps(), new Answer.PolynomialIn(image, shownIn), List.of());
  }
}
