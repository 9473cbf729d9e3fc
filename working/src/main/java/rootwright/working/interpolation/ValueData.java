package rootwright.working.interpolation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.step.Setting;

/**
 * What is said of a polynomial, and where its value is wanted.
 *
 * @param function its letter
 * @param degree its degree
 * @param lead its first coefficient, if that is given
 * @param points where its values are given, each place once
 * @param rule the values as an expression in a letter, if one rule gives all of them
 * @param at where the value is wanted, at none of the points
 */
record ValueData(
    String function,
    int degree,
    Optional<Rational> lead,
    List<Point> points,
    Optional<Rule> rule,
    Rational at) {

  /** P(at) = value. */
  record Point(Rational at, Rational value) {}

  /** P(letter) = expression at all the points. */
  record Rule(String letter, Formula expression) {}

  ValueData {
    points = List.copyOf(points);
  }

  /** How many values fix the polynomial. */
  int needed() {
    return lead.isPresent() ? degree : degree + 1;
  }

  /** The points that fix it. */
  List<Point> used() {
    return points.subList(0, needed());
  }

  /** (x − x_1)(x − x_2)… over the points that fix it. */
  Polynomial vanishing() {
    return Polynomial.withRoots(used().stream().map(Point::at).toList());
  }

  /** The polynomial of the degree that takes the values at the points that fix it (Lagrange). */
  Polynomial polynomial() {
    Polynomial lowest = lowest();
    return lead.map(a -> lowest.plus(vanishing().times(a))).orElse(lowest);
  }

  /** The polynomial of lowest degree through the points that fix it. */
  Polynomial lowest() {
    Polynomial sum = Polynomial.ZERO;
    for (Point point : used()) {
      List<Rational> others = new ArrayList<>();
      used().stream().map(Point::at).filter(x -> !x.equals(point.at())).forEach(others::add);
      Polynomial basis = Polynomial.withRoots(others);
      sum = sum.plus(basis.times(point.value().over(basis.at(point.at()))));
    }
    return sum;
  }

  /** P at a number. */
  Formula applied(Rational x) {
    return applied(Formula.number(x));
  }

  /** P at something. */
  Formula applied(Formula x) {
    return new Formula.Application(function, List.of(x));
  }

  /** The setting in which the letter is this polynomial. */
  Setting setting(Polynomial polynomial) {
    return Setting.ofLetters(List.of("x")).withFunction(function, polynomial);
  }

  /** The conditions as formulas. */
  List<Formula> conditions() {
    List<Formula> shown = new ArrayList<>();
    shown.add(new Formula.Words("%s has degree %d".formatted(function, degree)));
    lead.ifPresent(
        a ->
            shown.add(
                new Formula.Words(
                    a.isOne()
                        ? function + " is monic"
                        : "the lead coefficient is " + UnicodeWriter.write(Formula.number(a)))));
    points.forEach(
        point -> shown.add(Formula.equation(applied(point.at()), Formula.number(point.value()))));
    return shown;
  }

  /** The problem as a sheet would print it. */
  String statement() {
    String kind = lead.filter(Rational::isOne).isPresent() ? "a monic polynomial" : "a polynomial";
    String first =
        lead.filter(a -> !a.isOne())
            .map(a -> " and lead coefficient " + UnicodeWriter.write(Formula.number(a)))
            .orElse("");
    String values =
        rule.map(
                one ->
                    "%s for %s = %s"
                        .formatted(
                            UnicodeWriter.write(
                                Formula.equation(
                                    applied(Formula.name(one.letter())), one.expression())),
                            one.letter(),
                            places()))
            .orElseGet(
                () ->
                    points.stream()
                        .map(
                            point ->
                                UnicodeWriter.write(
                                    Formula.equation(
                                        applied(point.at()), Formula.number(point.value()))))
                        .collect(Collectors.joining(", ")));
    return "Let %s be %s of degree %d%s with %s. Find %s."
        .formatted(function, kind, degree, first, values, UnicodeWriter.write(applied(at)));
  }

  /** The places: 1, 2, 3. */
  String places() {
    return points.stream()
        .map(point -> UnicodeWriter.write(Formula.number(point.at())))
        .collect(Collectors.joining(", "));
  }
}
