package rootwright.working.values;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeSet;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.working.answer.Answer;
import rootwright.working.route.Combination;
import rootwright.working.route.NamedForm;
import rootwright.working.route.Working;
import rootwright.working.solve.TwoChecks;
import rootwright.working.step.Idea;
import rootwright.working.step.Setting;
import rootwright.working.step.Step;

/** The workings of an ask that is determined although not all of e_1, e_2, … are known numbers. */
final class KnownValues {

  /** Longest combination of the data that is written down. */
  private static final int MOST_TERMS = 16;

  private final Checked checked;
  private final Rational value;
  private final TwoChecks checks;
  private final SymmetricData data;

  KnownValues(Checked checked, Rational value, TwoChecks checks) {
    this.checked = checked;
    this.value = value;
    this.checks = checks;
    this.data = checked.data();
  }

  /** The workings whose every line both checks confirm, cheapest first. */
  List<Working> workings(Answer answer) {
    List<Working> found = new ArrayList<>();
    known()
        .filter(this::confirmed)
        .map(
            steps ->
                working(
                    "known-values",
                    "write it in e_1, e_2, … and put in what is known",
                    "An ask may need less than all the numbers' symmetric values.",
                    steps,
                    answer))
        .ifPresent(found::add);
    combination()
        .filter(this::confirmed)
        .map(
            steps ->
                working(
                    "combination",
                    "build it from the given expressions",
                    "What is asked may be made of what is given, without finding anything else.",
                    steps,
                    answer))
        .ifPresent(found::add);
    found.sort(Working.CHEAPEST_FIRST);
    return found;
  }

  private static Working working(
      String name, String title, String teaches, List<Step> steps, Answer answer) {
    return Working.of(name, title, teaches, steps, answer);
  }

  private boolean confirmed(List<Step> steps) {
    for (Step step : steps) {
      if (!step.isArgument()
          && checks.confirm("a route from the data", step.shown(), step.claim()).isEmpty()) {
        return false;
      }
    }
    return true;
  }

  /** The ask in e_1, e_2, …, then numbers for those that are known; the others must drop out. */
  private Optional<List<Step>> known() {
    SortedMap<Integer, Rational> known =
        DataLines.of(data, data.identities(), ElementaryNames::letter).known();
    List<String> free = new ArrayList<>();
    Setting setting = Setting.ofLetters(List.of());
    for (int k = 1; k <= data.count(); k++) {
      if (known.containsKey(k)) {
        setting = setting.withDefinition("e_" + k, Formula.number(known.get(k)));
      } else {
        free.add("e_" + k);
      }
    }
    for (String letter : free) {
      setting = setting.withFree(letter);
    }
    List<Rational> values = new ArrayList<>(List.of(Rational.ONE));
    List<MultivariatePolynomial> images = new ArrayList<>();
    for (int k = 1; k <= data.count(); k++) {
      values.add(known.getOrDefault(k, Rational.ZERO));
      images.add(
          known.containsKey(k)
              ? MultivariatePolynomial.constant(known.get(k))
              : MultivariatePolynomial.unknown(k - 1));
    }
    if (!checked.over().substitute(images).isConstant()
        || !checked.under().substitute(images).isConstant()) {
      return Optional.empty();
    }
    DataLines lines = DataLines.withIdentities(data, setting, data.identities());
    TreeSet<Integer> wanted = new TreeSet<>();
    wanted.addAll(NamedForm.inElementary(checked.over()).indices());
    wanted.addAll(NamedForm.inElementary(checked.under()).indices());
    List<Step> steps = new ArrayList<>(lines.lines(wanted));
    steps.add(inElementary());
    Formula above = new NamedForm(checked.over(), ElementaryNames::letter).worked(values);
    Formula below = new NamedForm(checked.under(), ElementaryNames::letter).worked(values);
    steps.add(
        DataLines.line(
            setting,
            Idea.ARITHMETIC,
            free.isEmpty() ? "with these numbers" : "what is not known drops out",
            checked.written(checked.over(), checked.under()),
            below.equals(Formula.number(1)) ? above : above.over(below),
            Formula.number(value)));
    return Optional.of(steps);
  }

  private Step inElementary() {
    return Step.equation(
        data.identities(),
        Idea.BUILD,
        "in the elementary symmetric polynomials",
        checked.ask(),
        checked.written(checked.over(), checked.under()));
  }

  /** ask − value = Σ factor·(given expression − its value). */
  private Optional<List<Step>> combination() {
    MultivariatePolynomial conclusion = checked.over().minus(checked.under().times(value));
    Optional<List<MultivariatePolynomial>> factors = checked.ideal().factors(conclusion);
    if (!checked.under().equals(MultivariatePolynomial.ONE)
        || factors.isEmpty()
        || factors.get().stream().mapToInt(f -> f.terms().size()).sum() > MOST_TERMS
        || factors.get().subList(data.givens().size(), factors.get().size()).stream()
            .anyMatch(f -> !f.isZero())) {
      return Optional.empty();
    }
    Combination sum = new Combination();
    for (int k = 0; k < data.givens().size(); k++) {
      GivenValue given = data.givens().get(k);
      if (!factors.get().get(k).isZero()) {
        Formula bracket =
            given.value().isZero()
                ? given.shown()
                : new Combination().plus(given.shown()).plus(given.value().negate()).formula();
        sum.plus(
            Combination.product(
                List.of(
                    new NamedForm(
                            factors.get().get(k).times(given.under()), ElementaryNames::letter)
                        .written(),
                    bracket)));
      }
    }
    List<Step> steps = new ArrayList<>();
    steps.add(
        Step.equation(
            data.identities(),
            Idea.BUILD,
            "multiply out: an identity, with e_1, e_2, … for the elementary symmetric polynomials",
            new Combination().plus(checked.ask()).plus(value.negate()).formula(),
            sum.formula()));
    steps.add(
        Step.argument(
            Idea.ELIMINATE,
            "every bracket with a given expression is zero",
            Formula.equation(checked.ask(), Formula.number(value))));
    return Optional.of(steps);
  }
}
