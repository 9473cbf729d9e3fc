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
import rootwright.working.route.RouteOn;
import rootwright.working.step.Claim;
import rootwright.working.step.Idea;
import rootwright.working.step.NumberDomain;
import rootwright.working.step.RootPlace;
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
    asked.conclude(lines, "together");
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
            "where %s vanishes".formatted(cuts(asked)),
            Idea.CASES,
            new Claim.SolutionSet(boundaries, NumberDomain.REAL, region.ends())));
    counts(asked).forEach(lines::write);
    for (ExactValue end : region.ends()) {
      endLines(asked, end).forEach(lines::write);
    }
  }

  /** "the discriminant, the lead coefficient or P(2)". */
  private static String cuts(RegionAsked asked) {
    List<String> cuts = new ArrayList<>();
    cuts.add("the discriminant");
    if (!asked.problem().polynomial().lead().isConstant()) {
      cuts.add("the lead coefficient");
    }
    asked.region().places().stream()
        .flatMap(place -> place.ends().stream())
        .distinct()
        .map("P(%s)"::formatted)
        .forEach(cuts::add);
    if (!asked.problem().conditions(Condition.LetterBound.class).isEmpty()) {
      cuts.add("a bound of the letter");
    }
    int last = cuts.size() - 1;
    return last == 0
        ? cuts.get(0)
        : String.join(", ", cuts.subList(0, last)) + " or " + cuts.get(last);
  }

  /** "k < -4: 1, -4 < k < 4: 3, k > 4: 1 real roots", a line for each place. */
  static List<Step> counts(RegionAsked asked) {
    LetterRegion region = asked.region();
    List<Step> lines = new ArrayList<>();
    for (int place = 0; place < region.places().size(); place++) {
      List<Integer> counts = region.counts().get(place);
      List<String> parts = new ArrayList<>();
      for (int k = 0; k < counts.size(); k++) {
        int count = counts.get(k);
        parts.add(
            "%s: %s"
                .formatted(
                    where(asked.letter(), region.ends(), k),
                    count == 0 ? "none" : String.valueOf(count)));
      }
      lines.add(
          new Step(
              new Formula.Words(String.join("; ", parts)),
              "how many distinct roots are among the " + region.places().get(place).words(),
              Idea.CASES,
              new Claim.CountsBetween(
                  asked.problem().polynomial().polynomial(),
                  region.boundaries(),
                  region.places().get(place),
                  counts)));
    }
    return lines;
  }

  /** The k-th interval between the ends: "-4 < k < 4". */
  private static String where(String letter, List<ExactValue> ends, int k) {
    if (ends.isEmpty()) {
      return "always";
    } else if (k == 0) {
      return "%s < %s".formatted(letter, LetterSolution.text(ends.get(0)));
    } else if (k == ends.size()) {
      return "%s > %s".formatted(letter, LetterSolution.text(ends.get(k - 1)));
    }
    return "%s < %s < %s"
        .formatted(LetterSolution.text(ends.get(k - 1)), letter, LetterSolution.text(ends.get(k)));
  }

  /** What happens at one of the ends, if it is rational. */
  static List<Step> endLines(RegionAsked asked, ExactValue end) {
    LetteredPolynomial polynomial = asked.problem().polynomial();
    NumberAt there = new NumberAt(polynomial, end);
    Optional<Polynomial> special = there.rational();
    if (special.isEmpty() || special.get().isZero()) {
      return List.of();
    }
    List<ExactValue> roots = there.distinctRoots();
    boolean drops = special.get().degree() < polynomial.degree();
    String here =
        "%s = %s: %s has"
            .formatted(
                asked.letter(),
                LetterSolution.text(end),
                UnicodeWriter.write(PolynomialFormula.of(special.get(), polynomial.unknown())));
    List<Step> lines = new ArrayList<>();
    for (RootPlace place : asked.region().places()) {
      int count = (int) roots.stream().filter(place::contains).count();
      lines.add(
          new Step(
              JudgedLines.found(here, count, place.words()),
              drops
                  ? "the degree drops here"
                  : roots.size() < polynomial.degree() ? "a root is repeated here" : "at an end",
              Idea.DOMAIN,
              new Claim.CountInPlace(special.get(), place, count)));
    }
    return lines;
  }
}
