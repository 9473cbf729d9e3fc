package rootwright.working.letters;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.value.ExactValue;
import rootwright.working.route.Attempt;
import rootwright.working.step.Claim;
import rootwright.working.step.Idea;
import rootwright.working.step.NumberDomain;
import rootwright.working.step.RootPlace;
import rootwright.working.step.Setting;
import rootwright.working.step.Step;

/** The lines at the end of a working that finds a letter: what is kept, what is thrown out, why. */
final class JudgedLines {

  private JudgedLines() {}

  /** Writes them and ends the working. */
  static Attempt end(LetterLines lines, String title, LettersAsked asked) {
    LetterSolution solution = asked.solution();
    for (Candidate candidate : solution.candidates()) {
      rootsLines(asked, candidate).forEach(lines::write);
      candidate
          .objection()
          .filter(objection -> objection.sort() != Candidate.Objection.Sort.ROOTS)
          .ifPresent(
              objection ->
                  lines.argue(Idea.DOMAIN, "thrown out", new Formula.Words(objection.words())));
    }
    if (!solution.thrownOut().isEmpty()) {
      lines.argue(Idea.DOMAIN, "what is left", LetterLines.values(asked.letter(), solution.kept()));
    }
    return new Attempt.Worked(title, lines.steps(), asked.answer(), List.of());
  }

  /** How many roots are as they must be, at a rational value of the letter. */
  static List<Step> rootsLines(LettersAsked asked, Candidate candidate) {
    Optional<Polynomial> special =
        new NumberAt(asked.problem().polynomial(), candidate.value()).rational();
    boolean lettersFault =
        candidate
            .objection()
            .filter(objection -> objection.sort() != Candidate.Objection.Sort.ROOTS)
            .isPresent();
    Optional<NumberDomain> domain = domain(asked.problem());
    if (special.isEmpty() || special.get().degree() < 1 || lettersFault) {
      return List.of();
    }
    String reason = candidate.kept() ? "as it must be" : "thrown out";
    String here =
        "%s = %s: %s has"
            .formatted(
                asked.letter(),
                LetterSolution.text(candidate.value()),
                UnicodeWriter.write(
                    PolynomialFormula.of(special.get(), asked.problem().polynomial().unknown())));
    List<Step> lines = new ArrayList<>();
    if (domain.isPresent()) {
      int count = (int) candidate.roots().stream().filter(domain.get()::contains).count();
      lines.add(
          new Step(
              found(here, count, domain.get().words()),
              reason,
              Idea.DOMAIN,
              new Claim.CountOfRoots(special.get(), domain.get(), count)));
    }
    for (RootPlace place : places(asked.problem())) {
      int count = (int) candidate.roots().stream().filter(place::contains).count();
      lines.add(
          new Step(
              found(here, count, place.words()),
              reason,
              Idea.DOMAIN,
              new Claim.CountInPlace(special.get(), place, count)));
    }
    return lines;
  }

  /** “k = 1: x² − 2x + 5 has no distinct roots among the real numbers”. */
  static Formula found(String here, int count, String among) {
    return new Formula.Words(
        "%s %s distinct %s among the %s"
            .formatted(
                here,
                count == 0 ? "no" : String.valueOf(count),
                count == 1 ? "root" : "roots",
                among));
  }

  /** Where roots must lie, if the problem says so by a count or as a kind of number. */
  private static Optional<NumberDomain> domain(LetteredProblem problem) {
    List<RootNature> natures =
        problem.conditions(Condition.AllRoots.class).stream()
            .map(Condition.AllRoots::nature)
            .filter(nature -> nature != RootNature.DISTINCT)
            .toList();
    if (!natures.isEmpty()) {
      return Optional.of(natures.get(natures.size() - 1).domain());
    }
    return problem.conditions(Condition.RealCount.class).isEmpty()
        ? Optional.empty()
        : Optional.of(NumberDomain.REAL);
  }

  /** The places where roots are said to lie, each once. */
  static List<RootPlace> places(LetteredProblem problem) {
    return problem.conditions(Condition.Placed.class).stream()
        .flatMap(placed -> placed.places().stream())
        .distinct()
        .toList();
  }

  /** Writes that a polynomial in the letter is zero, factored, and its solutions. */
  static void solve(LetterLines lines, String letter, Polynomial common, List<ExactValue> all) {
    Formula written = PolynomialFormula.of(common, letter);
    LetterSolution.factored(common, letter)
        .ifPresent(
            factors ->
                lines.add(
                    Setting.ofLetters(List.of(letter)),
                    Idea.ARITHMETIC,
                    "factor",
                    written,
                    factors));
    lines.solutions(
        Idea.CASES,
        common.degree() < 1 ? "a number that is not 0" : "all that make it 0",
        letter,
        common,
        all);
  }
}
