package rootwright.working.letters;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.working.answer.Answer;
import rootwright.working.slip.SlipOn;
import rootwright.working.step.Idea;

/** The wrong turnings on an expression as a function of the letters. */
final class FunctionSlips {

  static final List<SlipOn<FunctionAsked>> ALL =
      List.of(
          new Misread(
              "sign-slip",
              "The signs alternate: e₁ is minus the second coefficient over the lead.",
              polynomial -> Optional.of(LetterSlips.mirrored(polynomial))),
          new Misread(
              "lead-forgotten",
              "Divide by the lead coefficient before you read e₁, e₂, … off.",
              LetterSlips::monic),
          new SquareOfSum());

  private FunctionSlips() {}

  /** Another polynomial is taken. */
  private record Misread(
      String name, String text, Function<LetteredPolynomial, Optional<LetteredPolynomial>> taken)
      implements SlipOn<FunctionAsked> {
    @Override
    public Idea spot() {
      return Idea.READ_COEFFICIENTS;
    }

    @Override
    public int weight() {
      return 20;
    }

    @Override
    public List<? extends Answer> answers(FunctionAsked asked) {
      return taken
          .apply(asked.problem().polynomial())
          .flatMap(other -> value(asked.expression(), other, asked.problem().roots()))
          .map(value -> List.of(answer(value, asked)))
          .orElse(List.of());
    }
  }

  /** Σ r^k taken for (Σ r)^k. */
  private static final class SquareOfSum implements SlipOn<FunctionAsked> {
    @Override
    public String name() {
      return "square-of-the-sum";
    }

    @Override
    public String text() {
      return "The sum of the squares is not the square of the sum: the products of pairs are left over.";
    }

    @Override
    public Idea spot() {
      return Idea.BUILD;
    }

    @Override
    public int weight() {
      return 20;
    }

    @Override
    public List<? extends Answer> answers(FunctionAsked asked) {
      Optional<Integer> power = PowerAsked.of(asked.expression(), asked.problem().roots());
      if (power.isEmpty() || power.get() < 2) {
        return List.of();
      }
      Formula wrong = Vieta.name(1).power(power.get());
      return value(wrong, asked.problem().polynomial(), asked.problem().roots())
          .map(value -> List.of(answer(value, asked)))
          .orElse(List.of());
    }
  }

  private static Optional<RationalFunction> value(
      Formula expression, LetteredPolynomial polynomial, List<String> roots) {
    try {
      return FunctionAsked.valueOf(expression, polynomial, roots);
    } catch (BeyondLettersException beyond) {
      return Optional.empty();
    }
  }

  private static Answer answer(RationalFunction value, FunctionAsked asked) {
    return new Answer.FunctionOf(InLetters.formula(value, asked.problem().polynomial().letters()));
  }
}
