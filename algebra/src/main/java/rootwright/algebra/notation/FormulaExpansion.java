package rootwright.algebra.notation;

import java.util.Map;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.polynomial.RationalFunction;

/**
 * Multiplies formulas out. Numbers, names, the four operations and powers with whole exponents are
 * understood; the sums and products over the roots, families without a number in the table, root
 * signs and words are not.
 */
public final class FormulaExpansion {

  private FormulaExpansion() {}

  /**
   * The formula as a quotient of two polynomials, not reduced.
   *
   * @param unknowns the number of the unknown for each spelling ({@code r}, {@code r_1}, {@code
   *     e_2})
   * @throws UnreadableException if a part is of another kind, a name is not in the table, a
   *     denominator is identically zero, or a limit of {@link Limits} is exceeded; the refusal
   *     points into the formula written plainly
   */
  public static RationalFunction expand(Formula formula, Map<String, Integer> unknowns)
      throws UnreadableException {
    try {
      return new FunctionEvaluation(unknowns).valueOf(formula);
    } catch (PartRefusedException refused) {
      throw refused.in(formula);
    }
  }

  /**
   * The formula as a polynomial in one unknown with rational coefficients.
   *
   * @param unknown its spelling
   * @throws UnreadableException as {@link #expand}, and if the unknown stands in a denominator
   */
  public static Polynomial polynomial(Formula formula, String unknown) throws UnreadableException {
    try {
      return new PolynomialEvaluation(unknown).valueOf(formula);
    } catch (PartRefusedException refused) {
      throw refused.in(formula);
    }
  }
}
