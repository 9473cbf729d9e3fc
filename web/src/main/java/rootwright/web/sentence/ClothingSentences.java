package rootwright.web.sentence;

import java.util.List;
import java.util.Map;

/** Sentences about equations and figures behind which a polynomial stands. */
final class ClothingSentences {

  private static final Map<String, String> EQUATION = Map.of("polynomial", "equation");
  private static final Map<String, String> LEVEL =
      Map.of("polynomial", "polynomial", "value", "number on the right");

  static final List<Sentence> ALL =
      List.of(
          Sentence.of(
              "solutions",
              "the solutions of an equation with powers, a root or fractions",
              "Solve {polynomial} in real numbers.",
              "solutions",
              EQUATION,
              Map.of("polynomial", "√(2x + 10) = x - 1")),
          Sentence.of(
              "sum-of-solutions",
              "the sum of the solutions of such an equation",
              "Find the sum of the real solutions of {polynomial}.",
              "sum of the solutions",
              EQUATION,
              Map.of("polynomial", "9^x - 5*3^x + 5 = 0")),
          Sentence.of(
              "product-of-solutions",
              "the product of the solutions of such an equation",
              "Find the product of the real solutions of {polynomial}.",
              "product of the solutions",
              EQUATION,
              Map.of("polynomial", "1/(x-1) + 1/(x+3) = 1/2")),
          Sentence.of(
              "triangle",
              "a triangle with the roots for sides",
              "The sides of a triangle are the roots of {polynomial}. Find its {what}.",
              "{what} of the triangle with these sides",
              Map.of("polynomial", "polynomial", "what", "area, inradius or circumradius"),
              Map.of("polynomial", "x^3 - 12x^2 + 46x - 56", "what", "area")),
          Sentence.of(
              "sum-of-composition",
              "the sum of the roots of P(P(x))",
              "Let P(x) be {polynomial}. Find the sum of the roots of P(P(x)) = {value}.",
              "sum of the roots of P(P(x)) = {value}",
              LEVEL,
              Map.of("polynomial", "x^2 - 6x + 2", "value", "0")),
          Sentence.of(
              "product-of-composition",
              "the product of the roots of P(P(x))",
              "Let P(x) be {polynomial}. Find the product of the roots of P(P(x)) = {value}.",
              "product of the roots of P(P(x)) = {value}",
              LEVEL,
              Map.of("polynomial", "x^2 - 3x + 1", "value", "5")),
          new Sentence(
              "least-polynomial",
              "the polynomial of least degree with given roots",
              "Find the polynomial of least degree with rational coefficients that has {numbers}"
                  + " among its roots.",
              "",
              "polynomial with roots ({numbers})",
              "",
              Map.of("numbers", "numbers with commas between them"),
              Map.of("numbers", "√2 + √5")));

  private ClothingSentences() {}
}
