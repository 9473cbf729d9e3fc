package rootwright.desk.figure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaExpansion;
import rootwright.algebra.notation.PlainWriter;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.algebra.real.RealRootCount;
import rootwright.working.answer.Answer;
import rootwright.working.solve.Given;

/** Pictures of a polynomial with one letter among its coefficients. */
final class Letters {

  private static final int SAMPLES = 160;
  private static final long WIDE = 12;
  private static final double NEAR = 4;

  private final Given given;
  private final String letter;
  private final MultivariatePolynomial polynomial;

  private Letters(Given given, String letter, MultivariatePolynomial polynomial) {
    this.given = given;
    this.letter = letter;
    this.polynomial = polynomial;
  }

  /** The polynomial with its letter; empty if it has none, or several, or is no polynomial. */
  static Optional<Letters> of(Given given) {
    Set<String> letters = new TreeSet<>();
    collect(given.polynomial(), letters);
    letters.remove(given.unknown());
    if (letters.size() != 1) {
      return Optional.empty();
    }
    String letter = letters.iterator().next();
    Map<String, Integer> places = new LinkedHashMap<>();
    places.put(given.unknown(), 0);
    places.put(letter, 1);
    try {
      RationalFunction expanded = FormulaExpansion.expand(given.polynomial(), places);
      return expanded.isPolynomial()
          ? Optional.of(new Letters(given, letter, expanded.numerator()))
          : Optional.empty();
    } catch (UnreadableException | IllegalArgumentException noPolynomial) {
      return Optional.empty();
    }
  }

  private static void collect(Formula formula, Set<String> letters) {
    if (formula instanceof Formula.Name name) {
      letters.add(name.spelling());
    }
    formula.parts().forEach(part -> collect(part, letters));
  }

  /** How the real roots move with the letter, with the values of the letter that are the answer. */
  Optional<Picture> moving(Answer answer) {
    boolean asked = PlainWriter.write(given.find()).equals(letter);
    if (polynomial.degreeIn(0) < 1) {
      return Optional.empty();
    }
    List<List<Double>> coefficients = new ArrayList<>();
    for (int i = 0; i <= polynomial.degreeIn(0); i++) {
      List<Double> row = new ArrayList<>();
      for (int j = 0; j <= polynomial.degreeIn(1); j++) {
        row.add(Sampled.of(polynomial.coefficient(Monomial.of(i, j))));
      }
      coefficients.add(row);
    }
    return Optional.of(
        new LetterPicture(
            letter,
            given.unknown(),
            coefficients,
            asked ? AnswerNumbers.decimals(answer) : List.of(),
            asked ? AnswerNumbers.spans(answer) : List.of()));
  }

  /**
   * The graph of a value that depends on the letter.
   *
   * @param value the value as a formula in the letter
   * @param name what it is the value of
   * @param levels values that matter
   */
  Optional<Picture> graph(Formula value, Formula name, List<Double> levels) {
    boolean realOnly =
        given.conditions().stream()
            .anyMatch(condition -> PlainWriter.write(condition).contains("roots are real"));
    List<Place> allowed = new ArrayList<>();
    List<Place> barred = new ArrayList<>();
    for (long k = -SAMPLES; k <= SAMPLES; k++) {
      Rational at = Rational.of(k * WIDE, SAMPLES);
      double x = Sampled.of(at);
      double y = Sampled.of(value, letter, x);
      if (Double.isFinite(y)) {
        (realOnly && !allReal(at) ? barred : allowed).add(new Place(x, y));
      }
    }
    double middle = middle(allowed, levels);
    allowed.removeIf(place -> Math.abs(place.x() - middle) > NEAR);
    barred.removeIf(place -> Math.abs(place.x() - middle) > NEAR);
    return allowed.isEmpty()
        ? Optional.empty()
        : Optional.of(new GraphPicture(letter, PlainWriter.write(name), allowed, barred, levels));
  }

  /** Where a level is reached; else the lowest place of the graph's ends and its middle. */
  private static double middle(List<Place> places, List<Double> levels) {
    double level =
        levels.isEmpty() ? places.stream().mapToDouble(Place::y).min().orElse(0) : levels.get(0);
    List<Place> nearest =
        places.stream()
            .filter(place -> Math.abs(place.y() - level) < 0.2 + 0.02 * Math.abs(level))
            .toList();
    return nearest.isEmpty() ? 0 : (nearest.get(0).x() + nearest.get(nearest.size() - 1).x()) / 2;
  }

  private boolean allReal(Rational at) {
    List<Rational> ascending = new ArrayList<>();
    for (MultivariatePolynomial coefficient : polynomial.coefficientsIn(0)) {
      ascending.add(coefficient.at(List.of(Rational.ZERO, at)));
    }
    var there = Polynomial.ofAscending(ascending);
    return there.degree() == polynomial.degreeIn(0)
        && RealRootCount.of(there).withMultiplicity() == there.degree();
  }
}
