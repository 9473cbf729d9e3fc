package rootwright.working.slip;

import java.util.List;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.symmetric.Discriminant;
import rootwright.working.ask.Asked;
import rootwright.working.ask.DiscriminantMeaning;
import rootwright.working.step.Idea;

/**
 * The discriminant taken for the product of the squared differences, or the other way round. Common
 * practice.
 */
final class DiscriminantNormalisation implements Slip {

  @Override
  public String name() {
    return "discriminant-normalisation";
  }

  @Override
  public String text() {
    return "The discriminant has the factor a^(2n−2); the product of squared differences has not.";
  }

  @Override
  public Idea spot() {
    return Idea.DISCRIMINANT;
  }

  @Override
  public int weight() {
    return 5;
  }

  @Override
  public List<Rational> on(Asked asked) {
    Polynomial p = asked.problem().polynomial();
    Rational discriminant = Discriminant.of(p);
    if (discriminant.isZero()) {
      return List.of();
    }
    // For lead 1 the two are one formula, and it makes no difference which is taken for which.
    if (asked.formula().equals(DiscriminantMeaning.of(asked.problem()))) {
      return List.of(discriminant.over(p.lead().power(2 * p.degree() - 2)));
    }
    return DiscriminantMeaning.isSquaredDifferences(asked) ? List.of(discriminant) : List.of();
  }
}
