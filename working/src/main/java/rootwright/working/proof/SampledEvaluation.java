package rootwright.working.proof;

import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;

/** Puts a number drawn by chance for every letter; the same letter always gets the same number. */
final class SampledEvaluation extends LetterEvaluation<Surd> {

  private final SplittableRandom random;
  private final Map<String, Rational> drawn = new HashMap<>();
  private final Map<Formula, List<Formula>> images;
  private final IdentityHashMap<Formula, Formula> slopes = new IdentityHashMap<>();

  /**
   * @param images what is known of the images of bodies of this identity; more is added, since they
   *     are the same whatever the numbers are, and are dear
   */
  SampledEvaluation(
      Identity identity, Map<Formula, List<Formula>> images, SplittableRandom random) {
    super(identity);
    this.images = images;
    this.random = random;
  }

  @Override
  List<Formula> images(Formula body) {
    List<Formula> known = images.get(body);
    if (known == null) {
      known = super.images(body);
      images.put(body, known);
    }
    return known;
  }

  @Override
  Surd number(Rational value) {
    return Surd.of(value);
  }

  @Override
  Surd letter(String spelling) {
    return Surd.of(drawn.computeIfAbsent(spelling, fresh -> draw()));
  }

  private Rational draw() {
    return Rational.of(random.nextInt(-40, 41), random.nextInt(1, 6));
  }

  @Override
  Surd plus(Surd left, Surd right) {
    return left.plus(right);
  }

  @Override
  Surd negate(Surd value) {
    return Surd.of(Rational.MINUS_ONE).times(value);
  }

  @Override
  Surd times(Surd left, Surd right) {
    return left.times(right);
  }

  @Override
  Surd over(Surd left, Surd right) {
    return left.over(right);
  }

  @Override
  Surd squareRoot(Formula radicand) {
    return Surd.root(valueOf(radicand).rational());
  }

  @Override
  Surd applied(Formula body, int derivatives, Surd point) {
    Formula derived = body;
    for (int k = 0; k < derivatives; k++) {
      derived = slopes.computeIfAbsent(derived, rising -> Derivative.of(rising, "x"));
    }
    return new AtPoint(point).valueOf(derived);
  }

  /** The same letters, but x is the point at which a function is taken. */
  private final class AtPoint extends LetterEvaluation<Surd> {
    private final Surd point;

    AtPoint(Surd point) {
      super(SampledEvaluation.this.identity());
      this.point = point;
    }

    @Override
    List<Formula> images(Formula body) {
      return SampledEvaluation.this.images(body);
    }

    @Override
    Surd number(Rational value) {
      return Surd.of(value);
    }

    @Override
    Surd letter(String spelling) {
      return spelling.equals("x") ? point : SampledEvaluation.this.letter(spelling);
    }

    @Override
    Surd plus(Surd left, Surd right) {
      return left.plus(right);
    }

    @Override
    Surd negate(Surd value) {
      return SampledEvaluation.this.negate(value);
    }

    @Override
    Surd times(Surd left, Surd right) {
      return left.times(right);
    }

    @Override
    Surd over(Surd left, Surd right) {
      return left.over(right);
    }

    @Override
    Surd squareRoot(Formula radicand) {
      return SampledEvaluation.this.squareRoot(radicand);
    }

    @Override
    Surd applied(Formula body, int derivatives, Surd inner) {
      return SampledEvaluation.this.applied(body, derivatives, inner);
    }
  }
}
