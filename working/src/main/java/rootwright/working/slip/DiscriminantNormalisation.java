package rootwright.working.slip;

import java.util.List;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.symmetric.Discriminant;
import rootwright.working.ask.Asked;
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
    Rational factor = p.lead().power(2 * p.degree() - 2);
    if (discriminant.isZero() || asked.value().isEmpty()) {
      return List.of();
    }
    Rational right = asked.value().get();
    if (right.equals(discriminant)) {
      return List.of(discriminant.over(factor));
    }
    return right.equals(discriminant.over(factor)) ? List.of(discriminant) : List.of();
  }
}
