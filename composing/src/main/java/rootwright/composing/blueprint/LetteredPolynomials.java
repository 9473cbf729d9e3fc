package rootwright.composing.blueprint;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.composing.pattern.Chance;
import rootwright.working.problem.Statement;

/**
 * Polynomials with lead 1 in which one coefficient may be a letter, the others drawn, under an ask
 * that is given.
 *
 * @param letter the letter; blank for none
 * @param degree the degree
 * @param size bound for the coefficients
 * @param find the ask
 */
record LetteredPolynomials(String letter, int degree, int size, String find)
    implements StatementSource {

  @Override
  public Optional<Statement> at(long seed) {
    Chance chance = new Chance(seed);
    int place = chance.between(0, degree - 1);
    List<String> terms = new ArrayList<>(List.of("x^" + degree));
    for (int power = degree - 1; power >= 0; power--) {
      int drawn = chance.between(-size, size);
      String unknown = power == 0 ? "" : power == 1 ? " x" : " x^" + power;
      if (power == place && !letter.isEmpty()) {
        terms.add("+ " + letter + unknown);
      } else if (drawn != 0) {
        terms.add((drawn < 0 ? "- " : "+ ") + Math.abs(drawn) + unknown);
      }
    }
    return Optional.of(Statement.of(String.join(" ", terms), find));
  }
}
