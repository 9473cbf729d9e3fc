package rootwright.working.topic;

import static rootwright.working.proof.General.equation;
import static rootwright.working.proof.ProofLine.argued;
import static rootwright.working.proof.ProofLine.computed;

import java.util.List;
import rootwright.working.proof.Boundary;
import rootwright.working.proof.Fact;
import rootwright.working.proof.General;
import rootwright.working.proof.Letters;
import rootwright.working.proof.Proof;

/** The polynomial whose roots are made from the roots of another. */
final class TransformedPolynomials implements Topic {
  private static final General SHIFTED =
      equation(
          letters -> "P(x - c) = a*" + letters.joined("*", root -> "(x - (" + root + " + c))"));

  private static final General SPLIT = equation(letters -> "P(x) = a*" + letters.factors("x"));

  private static final General PUT =
      equation(letters -> "P(x - c) = a*" + letters.factors("x - c"));

  private static final General TURNED =
      equation(
          letters -> "x^{n}*P(1/x) = a*" + letters.joined("*", root -> "(1 - " + root + "*x)"));

  private static final General SQUARED =
      equation(
          letters ->
              "P(x)*P(-x) = "
                  + (letters.n() % 2 == 0 ? "" : "-")
                  + "a^2*"
                  + letters.joined("*", root -> "(x^2 - " + root + "^2)"));

  @Override
  public String name() {
    return "transformed-polynomials";
  }

  @Override
  public String title() {
    return "New polynomials from old";
  }

  @Override
  public String aim() {
    return "Write down the polynomial whose roots are r + c, c·r, 1/r or r² without finding a root.";
  }

  @Override
  public List<String> known() {
    return List.of("coefficients and roots", "putting a formula for x");
  }

  @Override
  public List<Fact> facts() {
    return List.of(
        new Fact(
            "transformed-polynomials",
            "Put the way back for x",
            "If new roots `y = f(r)` can be solved for r, put the solution for x in `P(x) = 0` and clear the fractions.",
            List.of("the way back is unique on the roots", "for 1/r: no root is zero"),
            SHIFTED,
            new Proof(
                List.of(
                    argued(
                        "A number y is a new root exactly when the way back leads to an old one."),
                    argued("So the way back, put into P, gives the polynomial of the new roots.")),
                List.of(
                    computed("Split P:", SPLIT),
                    argued("The new root `y = r + c` comes from `r = y - c`."),
                    computed("Put that in:", PUT),
                    computed("Its roots are the old ones plus c:", SHIFTED),
                    computed("For 1/r the coefficients turn round:", TURNED)),
                List.of(
                    argued(
                        "Let `y = f(r)` with the way back `r = g(y)`. Then y is a new root exactly when `P(g(y)) = 0`."),
                    computed("For a shift:", PUT),
                    computed(
                        "so the roots are the old ones plus c, each as often as before:", SHIFTED),
                    computed("For reciprocals, cleared of fractions:", TURNED),
                    argued(
                        "That has the roots 1/r, if no root is zero, and its coefficients are those of P in the other order."),
                    computed(
                        "For squares there are two ways back, and the product of both serves:",
                        SQUARED),
                    argued(
                        "Here the right side has only even powers, so it is a polynomial in the square of x."))),
            Boundary.of(
                "the way back is put in, not the way there",
                "For the roots 1 and 2 and the new roots 4 and 5, putting `x + 3` for x does not vanish at 4.",
                Letters.usual(2),
                "(4 + 3 - 1)*(4 + 3 - 2) = 0")));
  }

  @Override
  public Warning warning() {
    return new Warning("Put the way back for x: x − c for the roots r + c.", "transform-backwards");
  }

  @Override
  public Trick trick() {
    return new Trick(
        "Squares of the roots",
        List.of(
            argued("P at x times P at minus x has only even powers."),
            computed("It has the squares for its roots:", SQUARED)));
  }

  @Override
  public List<Exercise> exercises() {
    return List.of(
        new Exercise("x^3 - 2x^2 - 3x + 5", "polynomial with roots (r+2)", ""),
        new Exercise("x^3 - 2x^2 - 3x + 5", "polynomial with roots (2r-1)", ""),
        new Exercise("x^3 - 2x^2 - 3x + 5", "polynomial with roots (r^2)", ""),
        new Exercise("x^3 - 2x^2 - 3x + 5", "polynomial with roots (1/r)", ""));
  }
}
