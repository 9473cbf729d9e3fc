package rootwright.working.letters;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.value.ExactRoot;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.ExactValues;
import rootwright.working.step.NumberDomain;

/**
 * The values of a letter at which two polynomials share roots.
 *
 * @param problem the problem
 * @param resultant the resultant as a polynomial in the letter, not zero
 * @param candidates its roots, judged
 */
record PairAsked(PairProblem problem, Polynomial resultant, List<Candidate> candidates) {

  PairAsked {
    candidates = List.copyOf(candidates);
  }

  static PairAsked of(PairProblem problem, Polynomial resultant) {
    List<Candidate> candidates = new ArrayList<>();
    if (resultant.degree() > 0) {
      for (ExactRoot root : ExactValues.rootsOf(resultant)) {
        candidates.add(new Candidate(root.value(), List.of(), objection(problem, root.value())));
      }
    }
    return new PairAsked(problem, resultant, candidates);
  }

  private static Optional<Candidate.Objection> objection(PairProblem problem, ExactValue value) {
    String letter = problem.letters().get(0);
    String here = "%s = %s".formatted(letter, LetterSolution.text(value));
    NumberDomain domain =
        problem.conditions().stream()
            .filter(Condition.LetterIn.class::isInstance)
            .map(Condition.LetterIn.class::cast)
            .map(Condition.LetterIn::domain)
            .findFirst()
            .orElse(NumberDomain.REAL);
    if (!domain.contains(value)) {
      return Optional.of(
          new Candidate.Objection(
              Candidate.Objection.Sort.LETTER,
              "%s is not %s".formatted(here, LetterDomainWords.one(domain))));
    }
    for (Condition condition : problem.conditions()) {
      if (condition instanceof Condition.LetterBound bound
          && !BoundAt.holds(bound.relation(), letter, value)) {
        return Optional.of(
            new Candidate.Objection(
                Candidate.Objection.Sort.LETTER,
                "%s does not satisfy %s".formatted(here, bound.words())));
      }
    }
    int common = NumberAt.common(problem.first(), problem.second(), value);
    boolean dropped =
        new NumberAt(problem.first(), value).leadVanishes()
            || new NumberAt(problem.second(), value).leadVanishes();
    if (common == 0) {
      return Optional.of(
          new Candidate.Objection(
              Candidate.Objection.Sort.LEAD,
              dropped
                  ? "for %s the lead coefficients vanish and no root is shared".formatted(here)
                  : "for %s no root is shared".formatted(here)));
    }
    boolean identical = common == problem.first().degree() && common == problem.second().degree();
    Optional<Integer> exactly = problem.common().flatMap(PairProblem.CommonRoots::exactly);
    return exactly.filter(wanted -> wanted != common).isPresent()
        ? Optional.of(
            new Candidate.Objection(
                Candidate.Objection.Sort.ROOTS,
                identical
                    ? "for %s the two have all roots in common".formatted(here)
                    : "for %s they share %d roots".formatted(here, common)))
        : Optional.empty();
  }

  String letter() {
    return problem.letters().get(0);
  }

  /** The values that are kept. */
  List<ExactValue> kept() {
    return candidates.stream().filter(Candidate::kept).map(Candidate::value).toList();
  }
}
