package rootwright.working.letters;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.algebra.value.ExactRoot;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.ExactValues;
import rootwright.working.answer.Answer;
import rootwright.working.route.Attempt;
import rootwright.working.route.RouteOn;
import rootwright.working.slip.SlipOn;
import rootwright.working.step.Claim;
import rootwright.working.step.Idea;
import rootwright.working.step.NumberDomain;
import rootwright.working.step.Setting;
import rootwright.working.step.Step;

/** The route to a least or greatest value, and the slip that lurks on it. */
final class ExtremeRoutes {

  static final List<RouteOn<ExtremeAsked>> ALL = List.of(new EndsAndVertex());

  static final List<SlipOn<ExtremeAsked>> SLIPS = List.of(new VertexOutside());

  private ExtremeRoutes() {}

  static RationalFunction function(ExtremeAsked asked) {
    return new RationalFunction(
        MultivariatePolynomial.of(asked.over(), 1), MultivariatePolynomial.of(asked.under(), 1));
  }

  /** Region first, then ends and stationary places. */
  private static final class EndsAndVertex implements RouteOn<ExtremeAsked> {
    @Override
    public String name() {
      return "ends-and-vertex";
    }

    @Override
    public String title() {
      return "write it in the letter and compare the ends with the stationary places that are allowed";
    }

    @Override
    public String teaches() {
      return "A vertex counts only if the letter may stand there.";
    }

    @Override
    public Attempt attempt(ExtremeAsked asked) {
      LetteredProblem problem = asked.asked().problem();
      String letter = asked.asked().letter();
      LetterLines lines = new LetterLines();
      Formula function = InLetters.formula(function(asked), List.of(letter));
      lines.add(
          problem.setting(),
          Idea.BUILD,
          "symmetric in the roots",
          Meaning.of(asked.ask().expression(), problem),
          function);
      RegionByDiscriminant.write(lines, asked.asked());
      lines.argue(
          Idea.DOMAIN,
          "what the letter may be",
          IntervalFormula.of(asked.asked().region().pieces(), letter));
      var slope =
          asked
              .over()
              .derivative()
              .times(asked.under())
              .minus(asked.over().times(asked.under().derivative()));
      if (slope.degree() > 0) {
        lines.write(
            new Step(
                LetterLines.values(letter, asked.stationary()),
                "where it is stationary",
                Idea.INEQUALITY,
                new Claim.SolutionSet(slope, NumberDomain.REAL, asked.stationary())));
      }
      List<ExactValue> places = new ArrayList<>();
      asked
          .asked()
          .region()
          .pieces()
          .forEach(
              piece -> {
                piece.low().ifPresent(places::add);
                piece.high().ifPresent(places::add);
              });
      asked.stationary().stream()
          .filter(
              place ->
                  asked.asked().region().pieces().stream().anyMatch(piece -> piece.contains(place)))
          .forEach(places::add);
      for (ExactValue place : places.stream().distinct().toList()) {
        lines.add(
            Setting.ofLetters(List.of()),
            Idea.ARITHMETIC,
            "at %s = %s".formatted(letter, LetterSolution.text(place)),
            function.rewrite(part -> part.equals(Formula.name(letter)) ? place.toFormula() : part),
            ValueAtLetter.of(function(asked), place).toFormula());
      }
      Optional<ExtremeAsked.Attained> best = asked.best();
      Optional<Claim> claim = asked.claim();
      if (best.isEmpty() || claim.isEmpty()) {
        return new Attempt.Declined(asked.why());
      }
      lines.write(
          new Step(
              Formula.equation(asked.ask().shown(), best.get().value().toFormula()),
              "at %s = %s".formatted(letter, LetterSolution.text(best.get().letter())),
              Idea.INEQUALITY,
              claim.get()));
      return new Attempt.Worked(
          title(), lines.steps(), new Answer.Exact(best.get().value()), List.of());
    }
  }

  /** The stationary value is taken without asking whether the letter may stand there. */
  private static final class VertexOutside implements SlipOn<ExtremeAsked> {
    @Override
    public String name() {
      return "vertex-outside";
    }

    @Override
    public String text() {
      return "The vertex lies where the roots are not what the statement says; then an end is the place.";
    }

    @Override
    public Idea spot() {
      return Idea.INEQUALITY;
    }

    @Override
    public int weight() {
      return 15;
    }

    @Override
    public List<? extends Answer> answers(ExtremeAsked asked) {
      if (asked.under().degree() > 0 || asked.over().degree() != 2) {
        return List.of();
      }
      return ExactValues.rootsOf(asked.over().derivative()).stream()
          .map(ExactRoot::value)
          .map(vertex -> new Answer.Exact(ValueAtLetter.of(function(asked), vertex)))
          .toList();
    }
  }
}
