package rootwright.working.letters;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.value.ExactValue;
import rootwright.working.answer.Answer;
import rootwright.working.slip.SlipOn;
import rootwright.working.step.Claim;
import rootwright.working.step.Idea;
import rootwright.working.step.LetterInterval;

/** The wrong turnings where all values of a letter are wanted. */
final class RegionSlips {

  static final List<SlipOn<RegionAsked>> ALL =
      List.of(
          new LinearCaseLost(),
          new EqualityTurned(),
          new OneSignForgotten(true),
          new OneSignForgotten(false));

  private RegionSlips() {}

  /** The value at which the degree drops is forgotten. */
  private static final class LinearCaseLost implements SlipOn<RegionAsked> {
    @Override
    public String name() {
      return "linear-case-lost";
    }

    @Override
    public String text() {
      return "Where the lead coefficient is 0 there is no discriminant, but there may be a solution: look at that value by itself.";
    }

    @Override
    public Idea spot() {
      return Idea.DOMAIN;
    }

    @Override
    public int weight() {
      return 20;
    }

    @Override
    public List<? extends Answer> answers(RegionAsked asked) {
      List<ExactValue> leadZeros = asked.region().leadZeros();
      if (!asked.region().isFinite()
          || asked.region().points().stream().noneMatch(leadZeros::contains)) {
        return List.of();
      }
      return List.of(
          new Answer.Solutions(
              asked.region().points().stream()
                  .filter(point -> !leadZeros.contains(point))
                  .toList()));
    }
  }

  /** The ends are taken in where they are out, and out where they are in. */
  private static final class EqualityTurned implements SlipOn<RegionAsked> {
    @Override
    public String name() {
      return "equality-turned";
    }

    @Override
    public String text() {
      return "Look at the ends by themselves: there a root is repeated.";
    }

    @Override
    public Idea spot() {
      return Idea.DOMAIN;
    }

    @Override
    public int weight() {
      return 15;
    }

    @Override
    public List<? extends Answer> answers(RegionAsked asked) {
      if (asked.region().isFinite()
          || asked.region().pieces().stream().anyMatch(LetterInterval::isPoint)
          || asked.region().ends().isEmpty()) {
        return List.of();
      }
      List<LetterInterval> turned = new ArrayList<>();
      for (LetterInterval piece : asked.region().pieces()) {
        Optional<ExactValue> low = piece.low();
        Optional<ExactValue> high = piece.high();
        LetterInterval one =
            new LetterInterval(
                low, low.isPresent() && !piece.lowIn(), high, high.isPresent() && !piece.highIn());
        int last = turned.size() - 1;
        boolean touches =
            last >= 0
                && one.low().isPresent()
                && turned.get(last).high().equals(one.low())
                && (one.lowIn() || turned.get(last).highIn());
        if (touches) {
          LetterInterval before = turned.remove(last);
          one = new LetterInterval(before.low(), before.lowIn(), one.high(), one.highIn());
        }
        turned.add(one);
      }
      return List.of(new Answer.Interval(IntervalFormula.of(turned, asked.letter())));
    }
  }

  /**
   * One of the inequalities for a quadratic is forgotten.
   *
   * @param first the first, which is that of the discriminant, or else the second
   */
  private record OneSignForgotten(boolean first) implements SlipOn<RegionAsked> {
    @Override
    public String name() {
      return first ? "existence-unchecked" : "sum-forgotten";
    }

    @Override
    public String text() {
      return first
          ? "Roots must be real before they lie anywhere: the discriminant must not be negative."
          : "A positive product says only that both lie on one side; the sum says on which.";
    }

    @Override
    public Idea spot() {
      return Idea.INEQUALITY;
    }

    @Override
    public int weight() {
      return first ? 30 : 20;
    }

    @Override
    public List<? extends Answer> answers(RegionAsked asked) {
      List<Claim.SignOn> demands = new ArrayList<>(RegionBySigns.inequalities(asked));
      if (demands.size() < 3 || asked.wholeNumbers()) {
        return List.of();
      }
      demands.remove(first ? 0 : 1);
      List<LetterInterval> left = LetterRegion.whereAll(demands);
      return left.isEmpty() || left.stream().allMatch(LetterInterval::isPoint)
          ? List.of()
          : List.of(new Answer.Interval(IntervalFormula.of(left, asked.letter())));
    }
  }
}
