package rootwright.working.route;

import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.ask.Asked;
import rootwright.working.problem.Problem;
import rootwright.working.step.Idea;
import rootwright.working.step.Setting;

/** Pairs roots that belong together, r with −r or r with 1/r, and adds up over the pairs. */
final class PairUp implements Route {

  private static final String TITLE = "pair the roots that belong together";

  /** Highest power of a root for which a pair is added up. */
  private static final int HIGHEST_POWER = 8;

  @Override
  public String name() {
    return "conjugates";
  }

  @Override
  public String title() {
    return TITLE;
  }

  @Override
  public String teaches() {
    return "Where roots come in pairs, half the degree is enough.";
  }

  @Override
  public Attempt attempt(Asked asked) {
    Optional<Laurent> f = asked.sumOverRoots().flatMap(Laurent::of);
    List<Pairing> pairings = Pairing.of(asked.problem().polynomial());
    if (pairings.isEmpty()) {
      return new Attempt.Declined("the roots do not come in pairs r, −r or r, 1/r");
    } else if (f.isEmpty()) {
      return new Attempt.Declined("the ask is no sum of powers over the roots");
    } else if (f.get().reach() > HIGHEST_POWER) {
      return new Attempt.Declined("the powers are too high to be written for a pair");
    }
    for (Pairing pairing : pairings) {
      Optional<Polynomial> together = pairing.together(f.get());
      if (together.isPresent()) {
        return worked(asked, pairing, f.get(), together.get());
      }
    }
    return new Attempt.Declined("a pair does not give a polynomial in its number");
  }

  private static Attempt worked(Asked asked, Pairing pairing, Laurent f, Polynomial together) {
    Problem problem = asked.problem();
    String letter = FreshNames.letter(problem);
    Formula root = Formula.name(problem.roots().get(0));
    Setting setting = problem.setting().withDefinition(letter, pairing.numberOf(root));
    Lines lines = new Lines(setting);
    pairing.show(lines.in(problem.setting().withFree(problem.unknown())), unknown(problem));
    Formula pair =
        new Combination().plusTerms(f.written(root)).plusTerms(pairing.written(f, root)).formula();
    boolean constant = together.degree() <= 0;
    if (!constant) {
      lines.add(
          Idea.SUBSTITUTE,
          "one number for each pair",
          Formula.name(letter),
          pairing.numberOf(root));
    }
    lines.add(
        Idea.CONJUGATE,
        "one pair",
        pair,
        f.plus(pairing.atPartner(f)).written(root),
        PolynomialFormula.of(together, letter));
    int pairs = problem.degree() / 2;
    if (constant) {
      Rational value = together.coefficient(0).times(pairs);
      lines.add(
          Idea.SUM_OVER_ROOTS,
          "%d pairs".formatted(pairs),
          asked.formula(),
          Formula.number(pairs).times(Formula.number(together.coefficient(0))),
          Formula.number(value));
      return Attempt.Worked.of(TITLE, lines.steps(), value);
    }
    Polynomial numbers = pairing.pairs();
    List<String> names = FreshNames.indexed(letter, pairs);
    PowerSumLines sums =
        new PowerSumLines(
            new CoefficientLines(numbers, names, letter),
            numbers,
            PowerSumLines.letter(asked),
            together.degree());
    Lines below = lines.in(Setting.of(numbers, names));
    sums.write(below, PowerSumLines.indices(together));
    sums.total(
        below,
        new Formula.Aggregate(
            Formula.Aggregate.Operation.SUM, PolynomialFormula.of(together, names.get(0))),
        together);
    lines.add(
        Idea.SUM_OVER_ROOTS,
        "all pairs together",
        asked.formula(),
        Formula.number(sums.value(together)));
    return Attempt.Worked.of(TITLE, lines.steps(), sums.value(together));
  }

  private static Formula unknown(Problem problem) {
    return Formula.name(problem.unknown());
  }
}
