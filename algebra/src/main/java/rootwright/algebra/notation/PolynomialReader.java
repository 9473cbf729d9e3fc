package rootwright.algebra.notation;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.polynomial.RationalFunction;

/**
 * Reads a polynomial: an expression, an equation of two sides (everything is moved left), or a list
 * of at least three coefficients, highest power first. Brackets are multiplied out exactly.
 *
 * <p>The unknown is x if it occurs, else z, else y, else the only letter. Constants and the zero
 * polynomial are returned as they are.
 */
public final class PolynomialReader {

  /** The unknown where no letter says another. */
  private static final String USUAL = "x";

  private PolynomialReader() {}

  /**
   * The polynomial, its coefficients being numbers.
   *
   * @throws UnreadableException if the text is not a polynomial, a letter stands in a coefficient,
   *     the unknown is not clear, or a limit of {@link Limits} is exceeded
   */
  public static StatedPolynomial read(String text) throws UnreadableException {
    return Mend.tried(typed -> numeric(typed, Optional.empty()), text);
  }

  /**
   * The polynomial in this unknown, its coefficients being numbers.
   *
   * @param unknown its spelling
   * @throws UnreadableException as {@link #read(String)}
   */
  public static StatedPolynomial read(String text, String unknown) throws UnreadableException {
    return Mend.tried(typed -> numeric(typed, Optional.of(unknown)), text);
  }

  /**
   * The polynomial with letters in its coefficients.
   *
   * @throws UnreadableException as {@link #read(String)}, except that letters are allowed as
   *     factors of a coefficient
   */
  public static StatedWithLetters readWithLetters(String text) throws UnreadableException {
    return Mend.tried(typed -> lettered(typed, Optional.empty()), text);
  }

  /**
   * The polynomial in this unknown with letters in its coefficients.
   *
   * @param unknown its spelling
   * @throws UnreadableException as {@link #readWithLetters(String)}
   */
  public static StatedWithLetters readWithLetters(String text, String unknown)
      throws UnreadableException {
    return Mend.tried(typed -> lettered(typed, Optional.of(unknown)), text);
  }

  private static StatedPolynomial numeric(String text, Optional<String> asked)
      throws UnreadableException {
    Optional<List<Rational>> list = CoefficientList.read(text);
    if (list.isPresent()) {
      String unknown = asked.orElse(USUAL);
      Formula stated = CoefficientList.stated(list.get(), unknown);
      return new StatedPolynomial(
          Polynomial.ofAscending(list.get()),
          stated,
          unknown,
          List.of(CoefficientList.reading(text, stated)));
    }
    PlacedFormula placed = FormulaReader.placed(text);
    OneSide side = OneSide.of(placed);
    String unknown = unknown(placed, side, asked);
    try {
      return new StatedPolynomial(
          new PolynomialEvaluation(unknown).valueOf(side.formula()),
          placed.formula(),
          unknown,
          side.readings());
    } catch (PartRefusedException refused) {
      throw refused.in(text, placed.placeOf(refused.part()), PolynomialMend.of(placed, refused));
    }
  }

  private static StatedWithLetters lettered(String text, Optional<String> asked)
      throws UnreadableException {
    if (CoefficientList.read(text).isPresent()) {
      StatedPolynomial stated = numeric(text, asked);
      return new StatedWithLetters(
          MultivariatePolynomial.of(stated.polynomial(), 0),
          List.of(stated.unknown()),
          stated.stated(),
          stated.readings());
    }
    PlacedFormula placed = FormulaReader.placed(text);
    OneSide side = OneSide.of(placed);
    String unknown = unknown(placed, side, asked);
    List<String> names = new ArrayList<>(List.of(unknown));
    for (Formula.Name name : FormulaNames.first(side.formula()).values()) {
      requireNoIndexForPower(placed, name, unknown);
      if (!name.spelling().equals(unknown)) {
        names.add(name.spelling());
      }
    }
    try {
      RationalFunction function = new FunctionEvaluation(numbered(names)).valueOf(side.formula());
      if (!function.isPolynomial()) {
        throw placed.refused(
            "division-by-unknown",
            "A letter stands below a stroke; multiply the polynomial by it.",
            side.formula(),
            "numbers below every stroke");
      }
      return new StatedWithLetters(function.numerator(), names, placed.formula(), side.readings());
    } catch (PartRefusedException refused) {
      throw refused.in(text, placed.placeOf(refused.part()), PolynomialMend.of(placed, refused));
    }
  }

  /** {@code x3 - 2x + 5}, as a page without raised digits gives it, is no polynomial in x_3. */
  private static void requireNoIndexForPower(
      PlacedFormula placed, Formula.Name name, String unknown) throws UnreadableException {
    if (name.letter().equals(unknown) && !name.index().isEmpty()) {
      int at = placed.text().offsetByCodePoints(0, placed.placeOf(name));
      throw placed.refused(
          "which-unknown",
          "“%s%s” stands beside %s: a power has the sign ^."
              .formatted(name.letter(), name.index(), unknown),
          name,
          "^",
          PolynomialMend.power(placed.text(), at, name));
    }
  }

  private static Map<String, Integer> numbered(List<String> names) {
    Map<String, Integer> numbers = new HashMap<>();
    for (String name : names) {
      numbers.put(name, numbers.size());
    }
    return numbers;
  }

  private static String unknown(PlacedFormula placed, OneSide side, Optional<String> asked)
      throws UnreadableException {
    if (asked.isPresent()) {
      return asked.get();
    }
    Map<String, Formula.Name> names = FormulaNames.first(side.formula());
    for (String usual : List.of(USUAL, "z", "y")) {
      if (names.containsKey(usual)) {
        return usual;
      }
    }
    if (names.size() > 1) {
      throw placed.refused(
          "which-unknown",
          "Several letters stand here (%s); say which one is the unknown with --unknown."
              .formatted(String.join(", ", names.keySet())),
          names.values().iterator().next(),
          "one letter, or --unknown");
    }
    if (names.isEmpty()) {
      return USUAL;
    }
    Formula.Name only = names.values().iterator().next();
    int at = placed.text().offsetByCodePoints(0, placed.placeOf(only));
    String power = PolynomialMend.power(placed.text(), at, only);
    if (!power.isEmpty()) {
      throw placed.refused(
          "which-unknown",
          "“%s%s” is the name of one letter with an index; a power has the sign ^."
              .formatted(only.letter(), only.index()),
          only,
          "^",
          power);
    }
    return only.spelling();
  }
}
