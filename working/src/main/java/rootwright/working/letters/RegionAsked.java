package rootwright.working.letters;

import java.math.BigInteger;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.value.ExactValue;
import rootwright.working.answer.Answer;
import rootwright.working.step.Idea;
import rootwright.working.step.NumberDomain;

/**
 * A letter of which all values are wanted at which the roots are of some nature.
 *
 * @param problem the problem
 * @param region the values
 */
record RegionAsked(LetteredProblem problem, LetterRegion region) {

  String letter() {
    return problem.polynomial().letters().get(0);
  }

  /** Whether only whole numbers are meant for the letter. */
  boolean wholeNumbers() {
    return problem
        .domain(letter())
        .filter(domain -> domain == NumberDomain.INTEGER || domain == NumberDomain.POSITIVE_INTEGER)
        .isPresent();
  }

  /** The values, if they are finitely many and not too many to be listed. */
  Optional<List<ExactValue>> listed() {
    if (!wholeNumbers()) {
      return region.isFinite() ? Optional.of(region.points()) : Optional.empty();
    }
    return WholeNumbers.in(region.pieces());
  }

  /**
   * The values, as a set where they are finitely many; or how many there are, if that is asked and
   * they are finitely many.
   */
  Answer answer() {
    Optional<List<ExactValue>> listed = listed();
    if (problem.ask() instanceof LetterAsk.NumberOf) {
      return listed
          .<Answer>map(values -> new Answer.Count(BigInteger.valueOf(values.size())))
          .orElseGet(() -> new Answer.None("there are infinitely many such values, or very many"));
    }
    return listed
        .<Answer>map(Answer.Solutions::new)
        .orElseGet(() -> new Answer.Interval(IntervalFormula.of(region.pieces(), letter())));
  }

  /** Writes the last lines: all values, then the whole numbers among them, then their number. */
  void conclude(LetterLines lines, String reason) {
    lines.argue(
        Idea.DOMAIN,
        reason,
        region.isFinite()
            ? LetterLines.values(letter(), region.points())
            : IntervalFormula.of(region.pieces(), letter()));
    Optional<List<ExactValue>> listed = listed();
    if (wholeNumbers() && listed.isPresent()) {
      lines.argue(
          Idea.DOMAIN, "the whole numbers among them", LetterLines.values(letter(), listed.get()));
    }
    if (problem.ask() instanceof LetterAsk.NumberOf && listed.isPresent()) {
      lines.argue(Idea.DOMAIN, "so many", Formula.number(listed.get().size()));
    }
  }
}
