package rootwright.working.proof;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.RationalFunction;

/**
 * Multiplies a formula out, each letter an unknown. A square root is one more unknown; {@link
 * #reduced} then replaces its square.
 */
final class ExpandedEvaluation extends LetterEvaluation<RationalFunction> {

  private static final int MOST_TERMS = 60_000;

  private final Map<String, Integer> numbers = new LinkedHashMap<>();
  private final Map<Integer, RationalFunction> squares = new LinkedHashMap<>();

  ExpandedEvaluation(Identity identity) {
    super(identity);
    identity.letters().roots().forEach(this::letter);
  }

  @Override
  RationalFunction number(Rational value) {
    return RationalFunction.of(value);
  }

  @Override
  RationalFunction letter(String spelling) {
    return RationalFunction.of(MultivariatePolynomial.unknown(numberOf(spelling)));
  }

  private int numberOf(String spelling) {
    return numbers.computeIfAbsent(spelling, fresh -> numbers.size());
  }

  @Override
  RationalFunction plus(RationalFunction left, RationalFunction right) {
    return bounded(left.plus(right));
  }

  @Override
  RationalFunction negate(RationalFunction value) {
    return value.negate();
  }

  @Override
  RationalFunction times(RationalFunction left, RationalFunction right) {
    return bounded(left.times(right));
  }

  @Override
  RationalFunction over(RationalFunction left, RationalFunction right) {
    if (reduced(right.numerator()).isZero()) {
      throw new UnsayableException("a denominator is zero");
    }
    return bounded(left.over(right));
  }

  @Override
  RationalFunction squareRoot(Formula radicand) {
    int number = numberOf("√" + radicand);
    if (!squares.containsKey(number)) {
      RationalFunction square = valueOf(radicand);
      if (!square.isPolynomial()) {
        throw new UnsayableException("a fraction stands below a root sign");
      }
      squares.put(number, square);
    }
    return RationalFunction.of(MultivariatePolynomial.unknown(number));
  }

  @Override
  RationalFunction applied(Formula body, int derivatives, RationalFunction point) {
    RationalFunction value = valueOf(body);
    if (!value.isPolynomial()) {
      throw new UnsayableException("the function is not a polynomial");
    }
    List<MultivariatePolynomial> coefficients =
        new ArrayList<>(value.numerator().coefficientsIn(numberOf("x")));
    for (int times = 0; times < derivatives; times++) {
      for (int k = 1; k < coefficients.size(); k++) {
        coefficients.set(k - 1, coefficients.get(k).times(Rational.of(k)));
      }
      coefficients.set(coefficients.size() - 1, MultivariatePolynomial.ZERO);
    }
    RationalFunction sum = RationalFunction.ZERO;
    for (int k = coefficients.size() - 1; k >= 0; k--) {
      sum = plus(times(sum, point), RationalFunction.of(coefficients.get(k)));
    }
    return sum;
  }

  /** Whether two values are the same function of the letters. */
  boolean same(RationalFunction left, RationalFunction right) {
    return reduced(
            left.numerator()
                .times(right.denominator())
                .minus(right.numerator().times(left.denominator())))
        .isZero();
  }

  /** The polynomial with the square of every square root replaced by its radicand. */
  MultivariatePolynomial reduced(MultivariatePolynomial polynomial) {
    MultivariatePolynomial result = polynomial;
    for (Map.Entry<Integer, RationalFunction> square : squares.entrySet()) {
      MultivariatePolynomial root =
          MultivariatePolynomial.term(Rational.ONE, Monomial.power(square.getKey(), 1));
      List<MultivariatePolynomial> parts = result.coefficientsIn(square.getKey());
      result = MultivariatePolynomial.ZERO;
      for (int k = 0; k < parts.size(); k++) {
        MultivariatePolynomial part =
            parts.get(k).times(square.getValue().numerator().power(k / 2));
        result = result.plus(k % 2 == 0 ? part : part.times(root));
      }
    }
    return result;
  }

  private static RationalFunction bounded(RationalFunction value) {
    if (value.numerator().terms().size() > MOST_TERMS
        || value.denominator().terms().size() > MOST_TERMS) {
      throw new UnsayableException("it is too long to be multiplied out");
    }
    return value;
  }
}
