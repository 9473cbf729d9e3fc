package rootwright.lesson.slide;

import java.util.List;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.symmetric.SymmetricPolynomial;
import rootwright.lesson.picture.Board;
import rootwright.lesson.picture.ProductTable;
import rootwright.lesson.picture.RootFigure;
import rootwright.lesson.plan.LessonStep;

/** Draws the figure of a step into the margin of its first slide. */
final class Figures {

  private Figures() {}

  static void draw(LessonStep step, Board board) {
    if (step.figure().startsWith("product ")) {
      product(step, board);
      return;
    }
    step.polynomial()
        .filter(polynomial -> polynomial.degree() >= 1)
        .ifPresent(
            polynomial -> {
              if (step.figure().equals("roots")) {
                board.figure(
                    RootFigure.roots(polynomial), "The roots in the plane", RootFigure.SIDE);
              } else if (step.figure().equals("curve")) {
                board.figure(
                    RootFigure.curve(polynomial), "The curve and its real roots", RootFigure.SIDE);
              }
            });
  }

  /** {@code product e_1 e_2}: which terms the product of two elementary expressions makes. */
  private static void product(LessonStep step, Board board) {
    String[] factors = step.figure().substring("product ".length()).split("[ *]+");
    if (factors.length == 2) {
      MultivariatePolynomial left = elementary(factors[0], step.roots().size());
      MultivariatePolynomial right = elementary(factors[1], step.roots().size());
      board.figure(
          ProductTable.of(left, right, List.copyOf(step.roots())),
          "Which terms the product of %s and %s makes"
              .formatted(factors[0].replace("_", " "), factors[1].replace("_", " ")),
          ProductTable.height(left));
    }
  }

  private static MultivariatePolynomial elementary(String name, int n) {
    int k = Integer.parseInt(name.replaceAll("\\D", ""));
    return SymmetricPolynomial.elementary(n, Math.min(k, n)).expand();
  }
}
