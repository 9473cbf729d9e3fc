package rootwright.composing.blueprint;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import rootwright.algebra.factor.Factorisation;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PlainWriter;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.symmetric.SymmetricQuotient;
import rootwright.composing.scan.Relaxation;
import rootwright.composing.scan.Relaxations;
import rootwright.composing.scan.Scan;
import rootwright.composing.scan.ScanControl;
import rootwright.composing.scan.ScanResult;
import rootwright.composing.scan.candidate.CoefficientBox;
import rootwright.composing.scan.candidate.CoefficientRange;
import rootwright.composing.scan.candidate.CompiledExpression;
import rootwright.composing.scan.filter.CandidateFilter;
import rootwright.composing.scan.filter.ExactTests;
import rootwright.composing.scan.filter.PolynomialTests;
import rootwright.composing.scan.filter.PositiveLead;
import rootwright.composing.scan.filter.Primitive;
import rootwright.composing.scan.filter.RealRootCount;
import rootwright.composing.twin.Fingerprint;
import rootwright.working.ask.Asked;
import rootwright.working.ask.AskedReader;
import rootwright.working.ask.ProblemReader;
import rootwright.working.kind.Kinds;
import rootwright.working.problem.Problem;
import rootwright.working.problem.Statement;
import rootwright.working.route.ClassProfile;
import rootwright.working.solve.Solution;

/**
 * Fills an order: compiles the ask once, scans a box of coefficients in 64-bit arithmetic, and
 * works every candidate that passes by all routes and both checks before it is offered.
 */
public final class Composer {

  /** Candidates drawn for every problem that is wanted, since some are turned away afterwards. */
  private static final int DRAWN_FOR_ONE = 12;

  /** Candidates that the search for a relaxation may look at. */
  private static final long RELAXATION_BUDGET = 4_000_000L;

  private final Kinds kinds;

  /** With the kinds of ask to work candidates by. */
  public Composer(Kinds kinds) {
    this.kinds = kinds;
  }

  /**
   * Fills an order.
   *
   * @param known fingerprints of problems to stay away from
   * @param control who does the work of the scan and who may stop it; does not change the result
   * @throws ContradictoryBlueprintException if the order contradicts itself
   * @throws UnreadableException if its ask cannot be read
   */
  public Composition compose(Blueprint blueprint, Set<String> known, ScanControl control)
      throws UnreadableException {
    return compose(blueprint, known, solution -> Judgement.of(solution, blueprint), control);
  }

  /** Fills an order, with another judge of the worked candidates. */
  Composition compose(
      Blueprint blueprint,
      Set<String> known,
      Function<Solution, Judgement> judge,
      ScanControl control)
      throws UnreadableException {
    List<String> contradictions = blueprint.contradictions();
    if (!contradictions.isEmpty()) {
      throw new ContradictoryBlueprintException(contradictions);
    }
    Problem pattern = pattern(blueprint);
    CompiledExpression expression = compiled(pattern);
    ExactTests exact = new PolynomialTests(p -> Factorisation.of(p).isIrreducible());
    Scan scan =
        Scan.seeded(
            box(blueprint),
            expression,
            filters(blueprint, expression, exact),
            blueprint.many() * DRAWN_FOR_ONE,
            blueprint.seed());
    ScanResult result = scan.run(control);
    Map<String, Integer> rejected = new LinkedHashMap<>();
    List<Composed> problems = new ArrayList<>();
    Set<String> seen = new HashSet<>(known);
    for (ScanResult.Found found : result.found()) {
      if (problems.size() == blueprint.many() || control.stopped().getAsBoolean()) {
        break;
      }
      Problem candidate = candidate(pattern, found.polynomial());
      if (!seen.add(Fingerprint.of(candidate).text())) {
        rejected.merge("a twin of a problem that is there already", 1, Integer::sum);
        continue;
      }
      Judgement judgement = judge.apply(kinds.solve(candidate, ClassProfile.EVERYTHING));
      if (judgement.refusal().isPresent()) {
        rejected.merge(judgement.refusal().get(), 1, Integer::sum);
      } else {
        problems.add(new Composed(candidate, judgement.solution(), judgement.good()));
      }
    }
    List<Relaxation> relaxations =
        result.found().isEmpty()
            ? new Relaxations(scan, RELAXATION_BUDGET, control).find()
            : List.of();
    return new Composition(
        blueprint, problems, result.counts(), rejected, result.isExhausted(), relaxations);
  }

  /** The ask on a polynomial without special properties, by which names and form are settled. */
  private static Problem pattern(Blueprint blueprint) throws UnreadableException {
    Polynomial general =
        Polynomial.monomial(Rational.ONE, blueprint.degree())
            .minus(Polynomial.X)
            .minus(Polynomial.ONE);
    return ProblemReader.read(
        Statement.of(PlainWriter.write(PolynomialFormula.of(general, "x")), blueprint.ask()));
  }

  private static CompiledExpression compiled(Problem pattern) {
    Asked asked = AskedReader.read(pattern);
    Optional<SymmetricQuotient> quotient = asked.quotient();
    if (quotient.isEmpty()) {
      throw new ContradictoryBlueprintException(
          List.of(
              "the ask is not symmetric in the roots, or too long to compile, so its answer is no"
                  + " expression in the coefficients"));
    }
    return CompiledExpression.of(
        pattern.degree(),
        quotient.get().numerator().toElementary().polynomial(),
        quotient.get().denominator().toElementary().polynomial());
  }

  private static CoefficientBox box(Blueprint blueprint) {
    CoefficientBox box = CoefficientBox.upTo(blueprint.degree(), blueprint.size());
    return box.with(blueprint.degree(), new CoefficientRange(1, blueprint.largestLead()));
  }

  private static List<CandidateFilter> filters(
      Blueprint blueprint, CompiledExpression expression, ExactTests exact) {
    List<CandidateFilter> filters = new ArrayList<>();
    filters.add(new PositiveLead());
    filters.add(new Primitive());
    filters.addAll(blueprint.answer().filters(expression));
    filters.addAll(blueprint.roots().filters(exact));
    blueprint.realRoots().ifPresent(count -> filters.add(new RealRootCount(count, exact)));
    return filters;
  }

  /** The pattern with another polynomial. */
  private static Problem candidate(Problem pattern, Polynomial polynomial) {
    Formula written = PolynomialFormula.of(polynomial, pattern.unknown());
    return new Problem(
        polynomial, written, pattern.unknown(), pattern.roots(), pattern.ask(), List.of());
  }
}
