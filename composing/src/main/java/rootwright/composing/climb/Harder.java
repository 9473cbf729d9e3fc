package rootwright.composing.climb;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PlainWriter;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.UnreadableException;
import rootwright.composing.blueprint.AnswerWish;
import rootwright.composing.blueprint.AskWish;
import rootwright.composing.blueprint.Blueprint;
import rootwright.composing.blueprint.Composer;
import rootwright.composing.blueprint.ComposingControl;
import rootwright.composing.blueprint.Composition;
import rootwright.composing.blueprint.ContradictoryBlueprintException;
import rootwright.composing.blueprint.Effort;
import rootwright.composing.blueprint.PolynomialWish;
import rootwright.composing.blueprint.RootsWish;
import rootwright.composing.blueprint.WorkingWish;
import rootwright.composing.family.AskFamily;
import rootwright.composing.family.Families;
import rootwright.composing.level.Level;
import rootwright.composing.pattern.Patterns;
import rootwright.composing.twin.Fingerprint;
import rootwright.working.Subjects;
import rootwright.working.ask.ProblemReader;
import rootwright.working.kind.Kinds;
import rootwright.working.problem.Problem;
import rootwright.working.problem.Statement;
import rootwright.working.route.ClassProfile;
import rootwright.working.solve.Solution;

/**
 * A problem of the next level: the same ask with other numbers if that can be so hard, else the
 * nearest ask of its kind that can.
 */
public final class Harder {

  private static final int HIGHEST_LEVEL = 5;

  /** So many candidates are worked for each ask. */
  private static final Effort LITTLE = new Effort(24, 24);

  private final Kinds kinds;
  private final Composer composer;
  private final Subjects subjects;

  /** With the kinds of ask to work candidates by. */
  public Harder(Kinds kinds) {
    this.kinds = kinds;
    this.composer = new Composer(kinds, LITTLE);
    this.subjects = new Subjects(kinds);
  }

  /**
   * Finds a harder problem.
   *
   * @param seed what chance starts from
   * @param known fingerprints of problems to stay away from
   * @return the composition of one problem; empty if every ask tried stays below
   * @throws ContradictoryBlueprintException if the problem has no level or the highest
   * @throws UnreadableException if its ask cannot be read for other polynomials
   */
  public Composition than(
      Statement statement, long seed, Set<String> known, ComposingControl control)
      throws UnreadableException {
    Solution solution = subjects.work(statement, ClassProfile.EVERYTHING);
    int level =
        Level.of(solution)
            .map(Level::number)
            .orElseThrow(
                () ->
                    new ContradictoryBlueprintException(
                        List.of("the problem has no working, so there is no level to go up from")));
    if (level == HIGHEST_LEVEL) {
      throw new ContradictoryBlueprintException(
          List.of("the problem is at the highest level, %d, already".formatted(HIGHEST_LEVEL)));
    }
    Set<String> taken = new LinkedHashSet<>(known);
    taken.add(Fingerprint.of(solution.given()).text());
    List<Blueprint> orders =
        subjects.standsAlone(statement)
            ? orders(statement, solution)
            : orders(ProblemReader.read(statement));
    Optional<Composition> last = Optional.empty();
    for (int wanted = level + 1; wanted <= HIGHEST_LEVEL; wanted++) {
      for (Blueprint order : orders) {
        Optional<Composition> tried = tried(atLevel(order, wanted).withSeed(seed), taken, control);
        if (tried.isPresent() && !tried.get().problems().isEmpty()) {
          return tried.get();
        }
        last = tried.isPresent() ? tried : last;
      }
    }
    return last.orElseThrow(
        () -> new ContradictoryBlueprintException(List.of("no ask of its kind could be tried")));
  }

  private List<Blueprint> orders(Problem problem) throws UnreadableException {
    List<Blueprint> orders = new ArrayList<>();
    for (String ask : asks(problem)) {
      orders.add(order(problem, ask));
    }
    return orders;
  }

  /** The same ask with other numbers, then the other patterns of its kind. */
  private static List<Blueprint> orders(Statement statement, Solution solution) {
    List<AskWish> wishes = new ArrayList<>(List.of(new AskWish.Given(statement.find())));
    Patterns.ALL.stream()
        .filter(pattern -> pattern.kind().equals(solution.kind()))
        .forEach(pattern -> wishes.add(new AskWish.OfFamily(pattern.name())));
    return wishes.stream().map(wish -> Blueprint.USUAL.withAsk(wish).withMany(1)).toList();
  }

  private static Blueprint atLevel(Blueprint order, int level) {
    return order.withWorking(
        WorkingWish.USUAL.withLevel(OptionalInt.of(level)).withSlips(OptionalInt.of(0)));
  }

  private Optional<Composition> tried(Blueprint order, Set<String> known, ComposingControl control)
      throws UnreadableException {
    try {
      return Optional.of(composer.compose(order, known, control));
    } catch (ContradictoryBlueprintException without) {
      return Optional.empty();
    }
  }

  /** The same ask, then those of its kind from its own family on. */
  private List<String> asks(Problem problem) throws UnreadableException {
    String kind = kinds.nameFor(problem);
    List<AskFamily> alike =
        Families.ALL.stream().filter(family -> family.kind().equals(kind)).toList();
    int start = 0;
    for (int k = 0; k < alike.size(); k++) {
      for (String ask : alike.get(k).asks(problem.degree())) {
        if (formula(ask, problem).equals(problem.ask())) {
          start = k;
        }
      }
    }
    List<String> asks = new ArrayList<>(List.of(PlainWriter.write(problem.ask())));
    for (int k = 0; k < alike.size(); k++) {
      asks.addAll(alike.get((start + k) % alike.size()).asks(problem.degree()));
    }
    return asks;
  }

  private static Formula formula(String ask, Problem problem) throws UnreadableException {
    String polynomial =
        PlainWriter.write(PolynomialFormula.of(problem.polynomial(), problem.unknown()));
    return ProblemReader.read(
            new Statement(polynomial, ask, problem.roots(), Optional.of(problem.unknown())))
        .ask();
  }

  private static Blueprint order(Problem problem, String ask) {
    PolynomialWish wish =
        PolynomialWish.USUAL
            .withDegree(problem.degree())
            .withLead(1, 5)
            .withRoots(RootsWish.NO_RATIONAL_ROOT);
    return Blueprint.USUAL
        .withAsk(new AskWish.Given(ask))
        .withPolynomial(wish)
        .withAnswer(new AnswerWish.Fraction(12))
        .withMany(1);
  }
}
