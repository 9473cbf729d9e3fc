package rootwright.algebra.symmetric;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.stop.Stop;

/**
 * "Build it from e₁, e₂, e₃", stage by stage as a person does it: which product of elementary
 * polynomials makes the largest wanted term, what else that product makes, subtract, repeat.
 *
 * @param start the polynomial to be built
 * @param stages the stages in order; after the last nothing remains
 * @param form the result: the sum of coefficient times product over the stages
 */
public record ClassroomReduction(
    SymmetricPolynomial start, List<Stage> stages, ElementaryForm form) {

  public ClassroomReduction {
    stages = List.copyOf(stages);
  }

  /**
   * One stage.
   *
   * @param leading the lexicographically largest partition that was left
   * @param coefficient its coefficient, with which the product is taken
   * @param elementaryProduct the indices of the factors e_k, descending: the columns of {@code
   *     leading}; empty for a constant
   * @param expansion the product multiplied out, before it is taken with the coefficient
   * @param remainder what is left after {@code coefficient·expansion} is subtracted
   */
  public record Stage(
      Partition leading,
      Rational coefficient,
      List<Integer> elementaryProduct,
      SymmetricPolynomial expansion,
      SymmetricPolynomial remainder) {

    public Stage {
      elementaryProduct = List.copyOf(elementaryProduct);
    }
  }

  /** Reduces a symmetric polynomial; as many stages as the result has terms. */
  public static ClassroomReduction of(SymmetricPolynomial start) {
    ElementaryExpansions expansions = new ElementaryExpansions(start.variables());
    List<Stage> stages = new ArrayList<>();
    NavigableMap<Monomial, Rational> result = new TreeMap<>();
    SymmetricPolynomial remainder = start;
    while (!remainder.isZero()) {
      Stop.ifUnwanted();
      Partition leading = remainder.terms().lastKey();
      Rational coefficient = remainder.coefficient(leading);
      SymmetricPolynomial expansion = expansions.of(leading);
      remainder = remainder.minus(expansion.times(coefficient));
      result.put(ElementaryForm.product(leading), coefficient);
      stages.add(
          new Stage(leading, coefficient, leading.conjugate().parts(), expansion, remainder));
    }
    return new ClassroomReduction(
        start, stages, ElementaryForm.of(start.variables(), MultivariatePolynomial.of(result)));
  }
}
