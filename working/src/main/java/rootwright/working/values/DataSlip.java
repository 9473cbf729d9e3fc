package rootwright.working.values;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.answer.Answer;
import rootwright.working.check.exact.Valuation;
import rootwright.working.problem.Problem;
import rootwright.working.slip.SlipOn;
import rootwright.working.step.Idea;

/**
 * A slip on the way from given values to the elementary polynomials: the polynomial that comes of
 * it is another one, and the ask has another value there.
 */
abstract class DataSlip implements SlipOn<DataAsked> {

  /** The slips on symmetric data. */
  static final List<SlipOn<DataAsked>> ALL =
      List.of(
          new HalfForgotten(), new SignOfSquares(), new SignsOfCoefficients(), new ProductOfSums());

  private final String name;
  private final String text;
  private final int weight;

  DataSlip(String name, String text, int weight) {
    this.name = name;
    this.text = text;
    this.weight = weight;
  }

  @Override
  public String name() {
    return name;
  }

  @Override
  public String text() {
    return text;
  }

  @Override
  public Idea spot() {
    return Idea.NEWTON;
  }

  @Override
  public int weight() {
    return weight;
  }

  /** The polynomial that the slip leads to. */
  abstract Optional<Polynomial> polynomial(DataAsked asked);

  @Override
  public List<? extends Answer> answers(DataAsked asked) {
    return polynomial(asked)
        .flatMap(p -> value(asked.data().problem(p, asked.problem().ask())))
        .map(value -> List.of(Answer.exact(value)))
        .orElse(List.of());
  }

  private static Optional<Rational> value(Problem problem) {
    return Valuation.of(problem.ask(), problem.setting()) instanceof Valuation.Determined found
        ? Optional.of(found.value())
        : Optional.empty();
  }

  /** The elementary values with another e_2. */
  private static Optional<Polynomial> withSecond(DataAsked asked, Optional<Rational> second) {
    return second.map(
        two -> {
          List<Rational> changed = new ArrayList<>(asked.elementary());
          changed.set(1, two);
          return asked.data().polynomial(changed);
        });
  }

  /** S_2, if it is among the data. */
  private static Optional<Rational> squares(DataAsked asked) {
    return asked.data().count() < 2 ? Optional.empty() : asked.givenPowerSum(2);
  }

  /** e_2 = e_1² − S_2, the half forgotten. */
  private static final class HalfForgotten extends DataSlip {
    HalfForgotten() {
      super(
          "half-forgotten",
          "The square of the sum holds every product twice: e_2 is half of e_1² − S_2.",
          15);
    }

    @Override
    Optional<Polynomial> polynomial(DataAsked asked) {
      Rational one = asked.elementary().get(0);
      return withSecond(asked, squares(asked).map(s -> one.times(one).minus(s)));
    }
  }

  /** e_2 = (S_2 − e_1²)/2. */
  private static final class SignOfSquares extends DataSlip {
    SignOfSquares() {
      super(
          "cross-sign", "e_1² = S_2 + 2e_2, so e_2 = (e_1² − S_2)/2, not the other way round.", 15);
    }

    @Override
    Optional<Polynomial> polynomial(DataAsked asked) {
      Rational one = asked.elementary().get(0);
      return withSecond(
          asked, squares(asked).map(s -> s.minus(one.times(one)).times(Rational.of(1, 2))));
    }
  }

  /** t³ + e_1·t² + e_2·t + e_3. */
  private static final class SignsOfCoefficients extends DataSlip {
    SignsOfCoefficients() {
      super("sign-slip", "The signs alternate: tⁿ − e_1·tⁿ⁻¹ + e_2·tⁿ⁻² − …", 20);
    }

    @Override
    Optional<Polynomial> polynomial(DataAsked asked) {
      List<Rational> changed = new ArrayList<>();
      for (int k = 1; k <= asked.elementary().size(); k++) {
        Rational e = asked.elementary().get(k - 1);
        changed.add(k % 2 == 1 ? e.negate() : e);
      }
      return Optional.of(asked.data().polynomial(changed));
    }
  }

  /** x⁵ + y⁵ + z⁵ = (x² + y² + z²)(x³ + y³ + z³). */
  private static final class ProductOfSums extends DataSlip {
    ProductOfSums() {
      super(
          "product-of-sums",
          "A product of power sums has mixed terms too; S_2·S_3 is not S_5.",
          15);
    }

    @Override
    Optional<Polynomial> polynomial(DataAsked asked) {
      return Optional.empty();
    }

    @Override
    public List<? extends Answer> answers(DataAsked asked) {
      Optional<Integer> k = asked.asked().powerSumIndex();
      if (k.isEmpty() || k.get() < 2) {
        return List.of();
      }
      return Stream.iterate(k.get() / 2, i -> i >= 1, i -> i - 1)
          .flatMap(
              i ->
                  asked.givenPowerSum(i).stream()
                      .flatMap(a -> asked.givenPowerSum(k.get() - i).stream().map(b -> a.times(b))))
          .limit(1)
          .map(Answer::exact)
          .toList();
    }
  }
}
