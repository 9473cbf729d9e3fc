package rootwright.composing.level;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaExpansion;
import rootwright.algebra.notation.FormulaNames;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.working.answer.Answer;
import rootwright.working.ask.AskedReader;
import rootwright.working.route.Working;
import rootwright.working.solve.Solution;
import rootwright.working.step.Idea;
import rootwright.working.step.Step;

/**
 * The features of a problem and its shortest working, with the weights to start from.
 *
 * <p>The weights are a judgement of practice, in hundredths of a logit; they are to be fitted to
 * answers once there are enough. Items whose difficulty is a weighted sum of what solving them
 * takes: the linear logistic test model, Fischer 1973, Acta Psychologica 37 (from memory).
 */
final class Features {

  private static final String VALUE = "value";

  private final Solution solution;
  private final Working shortest;
  private final List<Feature> found = new ArrayList<>();

  private Features(Solution solution, Working shortest) {
    this.solution = solution;
    this.shortest = shortest;
  }

  /** All features, also those of which the problem has nothing. */
  static List<Feature> of(Solution solution, Working shortest) {
    return new Features(solution, shortest).find();
  }

  private List<Feature> find() {
    int degree = solution.given().roots().size();
    add("degree", "degree above 2", Math.max(0, degree - 2), 15);
    add("lead", "a lead other than 1", isMonic() ? 0 : 1, 35);
    add("ideas", "ideas beyond reading off", shortest.cost().ideas(), 45);
    add("lines", "lines of the shortest working", shortest.cost().lines(), 12);
    add("numbers", "bits of the numbers carried from line to line", carriedBits(), 1);
    add("power", "a power above the degree", highestPower() > degree ? 1 : 0, 50);
    add("class", "distance of the ask from a read-off", distanceFromReadOff(), 35);
    add("domain", "a condition on what counts as a solution", lines(Idea.DOMAIN) > 0 ? 1 : 0, 60);
    add("disguise", "quantities to be given a name first", disguises(), 70);
    add("parameters", "letters among the coefficients", parameters(), 40);
    found.add(
        new Feature("slips", "wrong turnings that show, by weight", slips(), Rational.of(25, 100)));
    add("fraction", "a fraction for an answer", hasFractionForAnswer() ? 1 : 0, 20);
    add("several", "several answers", hasSeveralAnswers() ? 1 : 0, 60);
    add("missing-terms", "missing terms (counted, no weight yet)", missingTerms(), 0);
    found.add(
        new Feature(
            "surprise",
            "how many times the cost of the shortest working the dearest has (no weight yet)",
            surprise(),
            Rational.ZERO));
    return List.copyOf(found);
  }

  private void add(String name, String words, int amount, int hundredths) {
    found.add(new Feature(name, words, Rational.of(amount), Rational.of(hundredths, 100)));
  }

  /** Whether every polynomial that is given has the lead 1; what is no polynomial has no lead. */
  private boolean isMonic() {
    Formula given = solution.given().polynomial();
    List<Formula> all = given instanceof Formula.Listing listing ? listing.items() : List.of(given);
    return all.stream().allMatch(this::isMonic);
  }

  private boolean isMonic(Formula formula) {
    Map<String, Integer> names = new HashMap<>();
    names.put(solution.given().unknown(), 0);
    FormulaNames.in(formula).forEach(name -> names.putIfAbsent(name, names.size()));
    try {
      RationalFunction function = FormulaExpansion.expand(formula, names);
      List<MultivariatePolynomial> coefficients = function.numerator().coefficientsIn(0);
      return !function.isPolynomial()
          || coefficients.size() < 2
          || coefficients.get(coefficients.size() - 1).equals(MultivariatePolynomial.ONE);
    } catch (UnreadableException noPolynomial) {
      return true;
    }
  }

  private int carriedBits() {
    List<Step> steps = shortest.steps();
    return steps.subList(0, steps.size() - 1).stream()
        .mapToInt(step -> NumbersWritten.bits(NumbersWritten.end(step.shown())))
        .sum();
  }

  private int highestPower() {
    return NumbersWritten.highestExponent(solution.given().find());
  }

  /**
   * 0 for a read-off, 1 for Σr² and for asks that are no expression, 2 for other polynomials, 3 for
   * fractions, 4 if not symmetric.
   */
  private int distanceFromReadOff() {
    if (solution.answer() instanceof Answer.Values) {
      return 4;
    }
    if (NumbersWritten.hasRootBelow(solution.given().find(), solution.given().roots())) {
      return 3;
    }
    if (shortest.cost().ideas() == 0) {
      return 0;
    }
    return asksForSquares() || !solution.kind().equals(VALUE) ? 1 : 2;
  }

  private boolean asksForSquares() {
    return solution.kind().equals(VALUE)
        && solution
            .given()
            .problem()
            .flatMap(problem -> AskedReader.read(problem).powerSumIndex())
            .filter(index -> index == 2)
            .isPresent();
  }

  /** Where a condition is put in, as r = 2s, the statement names it: nothing is hidden. */
  private int disguises() {
    return solution.kind().equals(VALUE) ? lines(Idea.SUBSTITUTE) : 0;
  }

  private int lines(Idea idea) {
    return (int) shortest.steps().stream().filter(step -> step.idea() == idea).count();
  }

  private int parameters() {
    Set<String> letters = new HashSet<>(FormulaNames.in(solution.given().polynomial()));
    letters.remove(solution.given().unknown());
    return letters.size();
  }

  private int missingTerms() {
    return solution
        .given()
        .problem()
        .map(
            problem ->
                (int) problem.polynomial().ascending().stream().filter(Rational::isZero).count())
        .orElse(0);
  }

  /** The dearest working is what the ask looks like before the idea is seen. */
  private Rational surprise() {
    return tenths(solution.routes().get(solution.routes().size() - 1)).over(tenths(shortest));
  }

  private static Rational tenths(Working working) {
    return Rational.of(working.cost().total().unscaledValue());
  }

  /** Each wrong turning once, however many values it leads to. */
  private Rational slips() {
    Map<String, Integer> weights = new HashMap<>();
    solution.slips().forEach(slip -> weights.put(slip.name(), slip.weight()));
    return Rational.of(weights.values().stream().mapToInt(Integer::intValue).sum(), 100);
  }

  private boolean hasFractionForAnswer() {
    return solution.answer() instanceof Answer.Exact exact
        && NumbersWritten.hasFraction(exact.value().toFormula());
  }

  private boolean hasSeveralAnswers() {
    return (solution.answer() instanceof Answer.Values values && values.values().size() != 1)
        || (solution.answer() instanceof Answer.Solutions all && all.values().size() > 1);
  }
}
