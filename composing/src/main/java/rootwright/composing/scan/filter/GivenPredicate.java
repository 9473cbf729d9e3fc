package rootwright.composing.scan.filter;

import java.util.function.Predicate;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.composing.scan.candidate.CoefficientBox;

/**
 * A wish that only the caller can judge, such as "not on the shelf".
 *
 * @param name a name that no other filter of the scan has
 * @param explanation the wish as a sentence
 * @param predicate the judgement; it must depend on the polynomial alone and allow several threads
 */
public record GivenPredicate(String name, String explanation, Predicate<Polynomial> predicate)
    implements CandidateFilter {

  @Override
  public Stage stage() {
    return Stage.OTHER;
  }

  @Override
  public boolean passes(long[] ascending) {
    return predicate.test(CoefficientBox.polynomial(ascending));
  }
}
