package rootwright.algebra.roots;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;

/** Reads a polynomial as a table prints it: coefficients between blanks, highest power first. */
final class Coefficients {

  private Coefficients() {}

  static Polynomial read(String row) {
    List<Rational> coefficients =
        new ArrayList<>(Arrays.stream(row.trim().split(" +")).map(Rational::parse).toList());
    Collections.reverse(coefficients);
    return Polynomial.ofAscending(coefficients);
  }
}
