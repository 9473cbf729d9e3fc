package rootwright.working.review;

import java.util.List;
import rootwright.algebra.ideal.Ideal;
import rootwright.algebra.polynomial.MultivariatePolynomial;

/** What equations lead to when they are multiplied by anything and added. */
public final class Together {

  private Together() {}

  /**
   * Whether these equations, which do not contradict one another, lead to this being zero.
   *
   * @param unknowns how many unknowns there are
   */
  public static boolean leadTo(
      List<MultivariatePolynomial> equations, MultivariatePolynomial zero, int unknowns) {
    return !equations.isEmpty()
        && Ideal.of(equations, unknowns)
            .filter(ideal -> !ideal.isEverything())
            .flatMap(ideal -> ideal.factors(zero))
            .isPresent();
  }
}
