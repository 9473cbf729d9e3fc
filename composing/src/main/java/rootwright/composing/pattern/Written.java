package rootwright.composing.pattern;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.PlainWriter;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.problem.Statement;

/** Statements written down as a coach would type them. */
final class Written {

  private Written() {}

  /** The polynomial with lead 1 and these roots. */
  static Polynomial withRoots(long... roots) {
    Polynomial product = Polynomial.ONE;
    for (long root : roots) {
      product = product.times(Polynomial.ofDescending(1, -root));
    }
    return product;
  }

  /** A polynomial in x. */
  static String text(Polynomial polynomial) {
    return PlainWriter.write(PolynomialFormula.of(polynomial, "x"));
  }

  /** The polynomial with a letter in the place of one coefficient, its sign kept plus. */
  static String withLetter(Polynomial polynomial, int power, String letter) {
    List<String> coefficients = new ArrayList<>();
    for (int k = polynomial.degree(); k >= 0; k--) {
      coefficients.add(k == power ? letter : polynomial.coefficient(k).toString());
    }
    return terms(coefficients);
  }

  /** A polynomial in x from texts of coefficients, the highest first; "0" is left out. */
  static String terms(List<String> coefficients) {
    StringBuilder text = new StringBuilder();
    int degree = coefficients.size() - 1;
    for (int k = degree; k >= 0; k--) {
      String coefficient = coefficients.get(degree - k);
      if (!coefficient.equals("0")) {
        append(text, coefficient, k);
      }
    }
    return text.toString();
  }

  private static void append(StringBuilder text, String coefficient, int power) {
    boolean minus = coefficient.startsWith("-");
    String size = minus ? coefficient.substring(1) : coefficient;
    String factor = size.equals("1") && power > 0 ? "" : power > 0 ? size + " " : size;
    String unknown = power == 0 ? "" : power == 1 ? "x" : "x^" + power;
    text.append(text.isEmpty() ? (minus ? "-" : "") : minus ? " - " : " + ")
        .append(factor)
        .append(unknown);
  }

  /** A number with its sign written before it, to go on from another term: " + 3", " - 3". */
  static String signed(long number) {
    return number < 0 ? " - " + -number : " + " + number;
  }

  /** A statement about a polynomial. */
  static Optional<Statement> statement(Polynomial polynomial, String find) {
    return statement(text(polynomial), find);
  }

  /** A statement. */
  static Optional<Statement> statement(String polynomial, String find) {
    return Optional.of(Statement.of(polynomial, find));
  }

  /** A statement that brings its own data. */
  static Optional<Statement> alone(String find) {
    return statement("", find);
  }

  /** Whether all coefficients are fit to be printed. */
  static boolean bears(Scale scale, Polynomial polynomial) {
    return polynomial.ascending().stream()
        .allMatch(
            coefficient ->
                coefficient.numerator().bitLength() < 32
                    && scale.bears(coefficient.numerator().longValueExact()));
  }

  /** A square root of a whole number, as it would be typed. */
  static String root(long radicand) {
    return "sqrt(" + radicand + ")";
  }

  /** Whether a whole number that is not negative is a square. */
  static boolean isSquare(long number) {
    long root = BigInteger.valueOf(number).sqrt().longValueExact();
    return root * root == number;
  }
}
