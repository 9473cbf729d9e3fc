package rootwright.working.values;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.IntFunction;
import rootwright.algebra.ideal.Ideal;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.NormalForm;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.working.route.NamedForm;
import rootwright.working.step.Claim;
import rootwright.working.step.Idea;
import rootwright.working.step.Setting;
import rootwright.working.step.Step;

/**
 * The lines by which a student finds e_1, e_2, … from the data: Newton's identities backwards and
 * their like, one elementary polynomial at a time, each from the first value in which it alone is
 * open.
 */
final class DataLines {

  private final SymmetricData data;
  private final SortedMap<Integer, Rational> known = new TreeMap<>();
  private final SortedMap<Integer, List<Step>> lines = new TreeMap<>();
  private final SortedMap<Integer, SortedSet<Integer>> needs = new TreeMap<>();
  private final Setting setting;
  private final Optional<Setting> identities;
  private final IntFunction<Formula> name;

  private DataLines(
      SymmetricData data,
      Setting setting,
      Optional<Setting> identities,
      IntFunction<Formula> name) {
    this.data = data;
    this.setting = setting;
    this.identities = identities;
    this.name = name;
  }

  /**
   * Finds what can be found one by one.
   *
   * @param setting in which the numbers, or e_1, e_2, …, have their values
   * @param name how e_k is called there
   */
  static DataLines of(SymmetricData data, Setting setting, IntFunction<Formula> name) {
    return new DataLines(data, setting, Optional.empty(), name).found();
  }

  /**
   * The same where not all of e_1, e_2, … are numbers, so that the numbers themselves have no
   * polynomial: what is given is then told, and the rest is an identity.
   *
   * @param setting in which the letters e_1, e_2, … have their values or are free
   * @param identities in which the names of the numbers are free
   */
  static DataLines withIdentities(SymmetricData data, Setting setting, Setting identities) {
    return new DataLines(data, setting, Optional.of(identities), ElementaryNames::letter).found();
  }

  private DataLines found() {
    List<GivenValue> open = new ArrayList<>(data.givens());
    while (open.removeIf(this::solves)) {
      // Each value that is used may open the way for another.
    }
    return this;
  }

  /** The values found so far, by index. */
  SortedMap<Integer, Rational> known() {
    return known;
  }

  /** Finds what is left by a combination of all data at once, where the ideal determines it. */
  void complete(List<Rational> elementary, List<MultivariatePolynomial> equations, Ideal ideal) {
    for (int k = 1; k <= elementary.size(); k++) {
      if (!known.containsKey(k)) {
        MultivariatePolynomial difference =
            MultivariatePolynomial.unknown(k - 1)
                .minus(MultivariatePolynomial.constant(elementary.get(k - 1)));
        boolean follows =
            ideal
                .factors(difference)
                .filter(factors -> factors.size() == data.givens().size())
                .isPresent();
        known.put(k, elementary.get(k - 1));
        needs.put(k, new TreeSet<>());
        lines.put(
            k,
            List.of(
                Step.argument(
                    Idea.ELIMINATE,
                    follows
                        ? "the given equations, taken together, leave no other value"
                        : "the given equations leave no other value",
                    Formula.equation(name.apply(k), Formula.number(elementary.get(k - 1))))));
      }
    }
  }

  /** The lines for these indices and for all that they need, in the order in which they go. */
  List<Step> lines(SortedSet<Integer> wanted) {
    SortedSet<Integer> all = new TreeSet<>();
    wanted.forEach(k -> need(k, all));
    List<Step> steps = new ArrayList<>();
    all.forEach(k -> steps.addAll(lines.getOrDefault(k, List.of())));
    return steps;
  }

  private void need(int k, SortedSet<Integer> all) {
    if (lines.containsKey(k) && all.add(k)) {
      needs.getOrDefault(k, new TreeSet<>()).forEach(other -> need(other, all));
    }
  }

  /** Whether one e_k alone is open in this value, linearly; it is then found. */
  private boolean solves(GivenValue given) {
    MultivariatePolynomial equation = given.equation();
    List<Integer> open = new ArrayList<>();
    for (int k = 1; k <= data.count(); k++) {
      if (equation.degreeIn(k - 1) > 0 && !known.containsKey(k)) {
        open.add(k);
      }
    }
    MultivariatePolynomial reduced = withKnown(equation);
    List<Integer> left = open.stream().filter(k -> reduced.degreeIn(k - 1) > 0).toList();
    if (left.isEmpty()) {
      return true;
    }
    int k = left.get(0);
    if (left.size() > 1 || reduced.degreeIn(k - 1) > 1) {
      return false;
    }
    List<MultivariatePolynomial> parts = equation.coefficientsIn(k - 1);
    if (parts.size() != 2 || !reduced.coefficientsIn(k - 1).get(1).isConstant()) {
      return false;
    }
    write(given, k, parts.get(0), parts.get(1));
    return true;
  }

  private MultivariatePolynomial withKnown(MultivariatePolynomial polynomial) {
    List<MultivariatePolynomial> images = new ArrayList<>();
    for (int k = 1; k <= data.count(); k++) {
      images.add(
          known.containsKey(k)
              ? MultivariatePolynomial.constant(known.get(k))
              : MultivariatePolynomial.unknown(k - 1));
    }
    for (int k = data.count(); k < polynomial.unknowns(); k++) {
      images.add(MultivariatePolynomial.unknown(k));
    }
    return polynomial.substitute(images);
  }

  /** factor·e_k + rest = 0. */
  private void write(
      GivenValue given, int k, MultivariatePolynomial rest, MultivariatePolynomial factor) {
    Rational under = withKnown(factor).coefficient(Monomial.ONE);
    Rational value = withKnown(rest).coefficient(Monomial.ONE).negate().over(under);
    SortedSet<Integer> used = new TreeSet<>();
    used.addAll(NamedForm.inElementary(rest).indices());
    used.addAll(NamedForm.inElementary(factor).indices());
    known.put(k, value);
    List<Step> steps = new ArrayList<>();
    if (given.isElementary(k)) {
      steps.add(
          stated(Formula.equation(name.apply(k), given.shown(), Formula.number(value)), given, k));
    } else {
      steps.add(
          stated(
              Formula.equation(given.shown(), given.written(name), Formula.number(given.value())),
              given,
              k));
      boolean turned = factor.isConstant() && under.signum() > 0;
      MultivariatePolynomial over = turned ? rest.negate() : rest;
      MultivariatePolynomial below = turned ? factor : factor.negate();
      List<Rational> values = new ArrayList<>(List.of(Rational.ONE));
      for (int i = 1; i <= data.count(); i++) {
        values.add(known.getOrDefault(i, Rational.ZERO));
      }
      steps.add(
          line(
              setting,
              Idea.NEWTON,
              "solve for it",
              name.apply(k),
              fraction(new NamedForm(over, name).written(), new NamedForm(below, name).written()),
              fraction(
                  new NamedForm(over, name).worked(values),
                  Formula.number(withKnown(below).coefficient(Monomial.ONE))),
              Formula.number(value)));
    }
    lines.put(k, steps);
    needs.put(k, used);
  }

  /** A given value, in the elementary polynomials. */
  private Step stated(Formula line, GivenValue given, int k) {
    boolean elementary = given.isElementary(k);
    Idea idea = elementary ? Idea.STATE : Idea.BUILD;
    if (identities.isEmpty()) {
      return new Step(
          line,
          elementary ? "given" : "given; in the elementary symmetric polynomials",
          idea,
          new Claim.Equal(setting, line.parts()));
    } else if (elementary) {
      return Step.argument(idea, "given", line);
    }
    return Step.equation(
        identities.get(),
        idea,
        "an identity; given is the value " + UnicodeWriter.write(Formula.number(given.value())),
        given.shown(),
        given.written(name));
  }

  /**
   * The line with these sides, of neighbours that look the same only one; if that leaves a single
   * side, there is nothing to compute and it is only said. Letters such as e_1 stay letters, which
   * a {@link rootwright.working.route.Lines sheet of lines} would not leave them.
   */
  static Step line(Setting setting, Idea idea, String reason, Formula... sides) {
    List<Formula> kept = new ArrayList<>();
    for (Formula side : sides) {
      boolean same =
          !kept.isEmpty() && NormalForm.of(kept.get(kept.size() - 1)).equals(NormalForm.of(side));
      if (!same) {
        kept.add(side);
      }
    }
    return kept.size() == 1
        ? Step.argument(idea, reason, kept.get(0))
        : Step.equation(setting, idea, reason, kept.toArray(Formula[]::new));
  }

  private static Formula fraction(Formula over, Formula under) {
    return under.equals(Formula.number(1)) ? over : over.over(under);
  }
}
