package rootwright.working.letters;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.working.step.LetteredSetting;

/**
 * What it says of the letters that a number is a root: P is zero there. For a number with a square
 * root in it P comes out as A + B·√d, and both A and B are zero for rational letters (real ones, if
 * d is negative).
 */
final class RootPutIn {

  private RootPutIn() {}

  /** The equations for the letters. */
  static List<LetterEquation> equations(Condition.RootIs condition, LetteredProblem problem) {
    LetteredPolynomial polynomial = problem.polynomial();
    Surd value = Surd.of(condition.value(), polynomial.letters());
    MultivariatePolynomial plain = MultivariatePolynomial.ZERO;
    MultivariatePolynomial rooted = MultivariatePolynomial.ZERO;
    for (int power = polynomial.degree(); power >= 0; power--) {
      MultivariatePolynomial next =
          plain
              .times(value.a())
              .plus(rooted.times(value.b()).times(value.square()))
              .plus(polynomial.coefficient(power));
      rooted = plain.times(value.b()).plus(rooted.times(value.a()));
      plain = next;
    }
    Formula putIn = new Formula.Application("P", List.of(condition.value()));
    if (value.b().isZero()) {
      return List.of(equation(condition, putIn, plain, problem.setting()));
    }
    Formula conjugate = new Formula.Application("P", List.of(value.conjugate(condition.value())));
    Formula half = putIn.plus(conjugate).over(Formula.number(2));
    Formula other = putIn.minus(conjugate).over(Formula.number(2).times(value.root()));
    List<LetterEquation> equations = new ArrayList<>();
    equations.add(equation(condition, half, plain, problem.setting()));
    equations.add(equation(condition, other, rooted, problem.setting()));
    return equations;
  }

  private static LetterEquation equation(
      Condition condition,
      Formula expression,
      MultivariatePolynomial value,
      LetteredSetting setting) {
    return new LetterEquation(
        condition, LetterEquation.Shape.PUT_IN, expression, RationalFunction.of(value), setting);
  }

  /**
   * a + b·√d, with a and b polynomials in the letters.
   *
   * @param square d; 0 if there is no root sign
   */
  record Surd(MultivariatePolynomial a, MultivariatePolynomial b, Rational square) {

    static Surd of(Formula formula, List<String> letters) {
      if (formula instanceof Formula.Numeral numeral) {
        return plain(MultivariatePolynomial.constant(numeral.value()));
      } else if (formula instanceof Formula.Name name && letters.contains(name.spelling())) {
        return plain(MultivariatePolynomial.unknown(letters.indexOf(name.spelling()) + 1));
      } else if (formula instanceof Formula.ImaginaryUnit) {
        return new Surd(
            MultivariatePolynomial.ZERO, MultivariatePolynomial.ONE, Rational.MINUS_ONE);
      } else if (formula instanceof Formula.Radical radical && radical.index() == 2) {
        return new Surd(
            MultivariatePolynomial.ZERO, MultivariatePolynomial.ONE, number(radical.radicand()));
      } else if (formula instanceof Formula.Negative negative) {
        Surd of = of(negative.of(), letters);
        return new Surd(of.a.negate(), of.b.negate(), of.square);
      } else if (formula instanceof Formula.Sum sum) {
        return sum.terms().stream()
            .map(term -> of(term, letters))
            .reduce(plain(MultivariatePolynomial.ZERO), Surd::plus);
      } else if (formula instanceof Formula.Product product) {
        return product.factors().stream()
            .map(factor -> of(factor, letters))
            .reduce(plain(MultivariatePolynomial.ONE), Surd::times);
      } else if (formula instanceof Formula.Quotient quotient) {
        Rational under = number(quotient.under());
        if (under.isZero()) {
          throw new BeyondLettersException("a given root has the denominator 0");
        }
        return of(quotient.over(), letters)
            .times(plain(MultivariatePolynomial.constant(under.reciprocal())));
      } else if (formula instanceof Formula.Power power
          && power.exponent() instanceof Formula.Numeral exponent
          && exponent.value().isInteger()
          && exponent.value().signum() >= 0
          && exponent.value().numerator().bitLength() < 4) {
        Surd base = of(power.base(), letters);
        Surd result = plain(MultivariatePolynomial.ONE);
        for (int k = 0; k < exponent.value().intValueExact(); k++) {
          result = result.times(base);
        }
        return result;
      }
      throw new BeyondLettersException(
          "a given root is a rational number, a letter, or of the form a + b√d");
    }

    private static Rational number(Formula formula) {
      Surd value = of(formula, List.of());
      if (!value.b.isZero()) {
        throw new BeyondLettersException("a given root holds roots of rational numbers only");
      }
      return value.a.coefficient(Monomial.ONE);
    }

    private static Surd plain(MultivariatePolynomial value) {
      return new Surd(value, MultivariatePolynomial.ZERO, Rational.ZERO);
    }

    private Surd plus(Surd other) {
      return new Surd(a.plus(other.a), b.plus(other.b), common(other));
    }

    private Surd times(Surd other) {
      Rational d = common(other);
      return new Surd(
          a.times(other.a).plus(b.times(other.b).times(d)),
          a.times(other.b).plus(b.times(other.a)),
          d);
    }

    private Rational common(Surd other) {
      if (!square.isZero() && !other.square.isZero() && !square.equals(other.square)) {
        throw new BeyondLettersException("a given root holds one square root at most");
      }
      return square.isZero() ? other.square : square;
    }

    /** √d as it is written. */
    Formula root() {
      return square.equals(Rational.MINUS_ONE)
          ? new Formula.ImaginaryUnit()
          : new Formula.Radical(Formula.number(square), 2);
    }

    /** The formula with the other sign before the root. */
    Formula conjugate(Formula formula) {
      Map<Formula, Formula> turned = Map.of(root(), new Formula.Negative(root()));
      return formula.rewrite(part -> turned.getOrDefault(part, part));
    }
  }
}
