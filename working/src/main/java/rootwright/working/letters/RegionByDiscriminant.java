package rootwright.working.letters;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.value.ExactValue;
import rootwright.working.answer.AnswerFormula;
import rootwright.working.route.Attempt;
import rootwright.working.route.RouteOn;
import rootwright.working.step.Claim;
import rootwright.working.step.Idea;
import rootwright.working.step.NumberDomain;
import rootwright.working.step.Setting;
import rootwright.working.step.Step;

/** Where the discriminant or the lead vanishes nature can change; elsewhere one value decides. */
final class RegionByDiscriminant implements RouteOn<RegionAsked> {

  /** Highest degree for which the discriminant is confirmed as a product over the roots. */
  private static final int HIGHEST_CONFIRMED = 4;

  @Override
  public String name() {
    return "discriminant-cases";
  }

  @Override
  public String title() {
    return "the zeros of the discriminant cut the line; one value decides on each piece";
  }

  @Override
  public String teaches() {
    return "The number of real roots changes only where two meet or one goes off to infinity.";
  }

  @Override
  public Attempt attempt(RegionAsked asked) {
    LetterLines lines = new LetterLines();
    write(lines, asked);
    lines.argue(
        Idea.DOMAIN,
        "together",
        asked.region().isFinite()
            ? LetterLines.values(asked.letter(), asked.region().points())
            : AnswerFormula.of(asked.answer()));
    return new Attempt.Worked(title(), lines.steps(), asked.answer(), List.of());
  }

  /** The lines up to the counts. */
  static void write(LetterLines lines, RegionAsked asked) {
    LetteredProblem problem = asked.problem();
    LetterRegion region = asked.region();
    String letter = asked.letter();
    Formula discriminant = PolynomialFormula.of(region.discriminant(), letter);
    int n = problem.polynomial().degree();
    if (n >= 2 && n <= HIGHEST_CONFIRMED) {
      Formula meaning = Meaning.of(new Formula.Application("discriminant", List.of()), problem);
      lines.add(problem.setting(), Idea.DISCRIMINANT, "the discriminant", meaning, discriminant);
    }
    LetterSolution.factored(region.discriminant(), letter)
        .ifPresent(
            factors ->
                lines.add(
                    Setting.ofLetters(List.of(letter)),
                    Idea.ARITHMETIC,
                    "factor",
                    discriminant,
                    factors));
    Polynomial boundaries =
        region.boundaries().degree() < 1
            ? region.boundaries()
            : region.boundaries().squarefreePart().primitive();
    lines.write(
        new Step(
            LetterLines.values(letter, region.ends()),
            "where the discriminant%s vanishes"
                .formatted(
                    problem.polynomial().lead().isConstant() ? "" : " or the lead coefficient"),
            Idea.CASES,
            new Claim.SolutionSet(boundaries, NumberDomain.REAL, region.ends())));
    lines.write(counts(asked));
    for (ExactValue end : region.ends()) {
      endLine(asked, end).ifPresent(lines::write);
    }
  }

  /** "k < -4: 1, -4 < k < 4: 3, k > 4: 1 real roots". */
  static Step counts(RegionAsked asked) {
    LetterRegion region = asked.region();
    NumberDomain domain = LetterRegion.domain(asked.problem());
    List<String> parts = new ArrayList<>();
    List<ExactValue> ends = region.ends();
    for (int k = 0; k <= ends.size(); k++) {
      String where =
          ends.isEmpty()
              ? "always"
              : k == 0
                  ? "%s < %s".formatted(asked.letter(), LetterSolution.text(ends.get(0)))
                  : k == ends.size()
                      ? "%s > %s".formatted(asked.letter(), LetterSolution.text(ends.get(k - 1)))
                      : "%s < %s < %s"
                          .formatted(
                              LetterSolution.text(ends.get(k - 1)),
                              asked.letter(),
                              LetterSolution.text(ends.get(k)));
      int count = region.counts().get(k);
      parts.add("%s: %s".formatted(where, count == 0 ? "none" : String.valueOf(count)));
    }
    return new Step(
        new Formula.Words(String.join("; ", parts)),
        "how many distinct roots are among the " + domain.words(),
        Idea.CASES,
        new Claim.CountsBetween(
            asked.problem().polynomial().polynomial(),
            region.boundaries(),
            domain,
            region.counts()));
  }

  /** What happens at one of the ends, if it is rational. */
  static Optional<Step> endLine(RegionAsked asked, ExactValue end) {
    LetteredPolynomial polynomial = asked.problem().polynomial();
    NumberDomain domain = LetterRegion.domain(asked.problem());
    Optional<Polynomial> special = new NumberAt(polynomial, end).rational();
    if (special.isEmpty() || special.get().isZero()) {
      return Optional.empty();
    }
    List<ExactValue> roots = new NumberAt(polynomial, end).distinctRoots();
    int count = (int) roots.stream().filter(domain::contains).count();
    String text =
        "%s = %s: %s has %s distinct %s among the %s"
            .formatted(
                asked.letter(),
                LetterSolution.text(end),
                UnicodeWriter.write(PolynomialFormula.of(special.get(), polynomial.unknown())),
                count == 0 ? "no" : String.valueOf(count),
                count == 1 ? "root" : "roots",
                domain.words());
    boolean drops = special.get().degree() < polynomial.degree();
    return Optional.of(
        new Step(
            new Formula.Words(text),
            drops ? "the degree drops here" : "a root is repeated here, or changes its sign",
            Idea.DOMAIN,
            new Claim.CountOfRoots(special.get(), domain, count)));
  }
}
