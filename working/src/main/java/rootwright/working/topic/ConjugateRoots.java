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

/** Roots that come in pairs: conjugate complex numbers, conjugate surds. */
final class ConjugateRoots implements Topic {
  private static final General PAIR =
      equation("(x - (b + c*i))*(x - (b - c*i)) = x^2 - 2*b*x + b^2 + c^2");

  private static final General SURDS =
      equation("(x - (b + c*√d))*(x - (b - c*√d)) = x^2 - 2*b*x + b^2 - c^2*d");

  private static final General POWERS = equation("(b + c*i)^{n}*(b - c*i)^{n} = (b^2 + c^2)^{n}");

  private static final General SIZE = equation("(b + c*i)*(b - c*i) = b^2 + c^2");

  @Override
  public String name() {
    return "conjugate-roots";
  }

  @Override
  public String title() {
    return "Conjugate roots";
  }

  @Override
  public String aim() {
    return "Complete a root to its pair, and multiply the pair out to a real or rational factor.";
  }

  @Override
  public List<String> known() {
    return List.of("complex numbers", "whole powers of a sum");
  }

  @Override
  public List<Fact> facts() {
    return List.of(
        new Fact(
            "conjugate-roots",
            "Roots come in pairs",
            "If P has real coefficients and the root `b + c*i`, it has the root `b - c*i`, equally often. If P has rational coefficients and the root `b + c*√d`, it has `b - c*√d`.",
            List.of(
                "the coefficients are real, or rational for surds",
                "for surds: the square root of d is not rational"),
            PAIR,
            new Proof(
                List.of(
                    argued("Conjugation respects sums and products and leaves real numbers alone."),
                    argued(
                        "So it carries the equation that says the one is a root to the equation that says the other is.")),
                List.of(
                    argued(
                        "Conjugate the equation `P(z) = 0`: sums go to sums, products to products."),
                    argued("The coefficients are real and stay, so the conjugate is a root too."),
                    computed("Both together give a real factor:", PAIR),
                    argued("Divide by it and go on: both occur equally often."),
                    computed("The same with surds:", SURDS)),
                List.of(
                    argued(
                        "The conjugate of a sum is the sum of the conjugates, and the same for products; a real number is its own conjugate."),
                    computed(
                        "So the conjugate of a power is the power of the conjugate, and their product is",
                        POWERS),
                    argued(
                        "Conjugate `P(z) = 0`. On the left stands P at the conjugate, since the coefficients stay; on the right zero."),
                    computed("The two factors together are real:", PAIR),
                    argued(
                        "Dividing P by this factor leaves a polynomial with real coefficients. By induction both roots occur equally often."),
                    argued(
                        "For `√d` not rational, write numbers as `b + c*√d` with rational b and c in the only possible way, and exchange `√d` with its negative: that respects sums and products and leaves rational numbers alone."),
                    computed("The factor is then rational:", SURDS))),
            Boundary.of(
                "the coefficients are real",
                "The polynomial `x^2 - i*x` has the root i, but −i is none.",
                Letters.usual(2),
                "(-i)^2 - i*(-i) = 0")));
  }

  @Override
  public Warning warning() {
    return new Warning(
        "Both of a pair count. Rational coefficients pair surds, real ones pair only complex numbers: 1 + √3 can stand alone among real coefficients.",
        "real-roots-only");
  }

  @Override
  public Trick trick() {
    return new Trick(
        "The square of the size is the constant",
        List.of(
            argued("A pair multiplies to a real number, the square of the size of either."),
            computed("It is the constant of their quadratic factor:", SIZE)));
  }

  @Override
  public List<Exercise> exercises() {
    return List.of(
        new Exercise("x^4 - 6x^3 + 11x^2 - 2x - 10", "roots", ""),
        new Exercise("x^2 - 4x + 13", "r^3 + s^3", ""),
        new Exercise("x^3 - 5x^2 + 17x - 13", "Σ r^2", ""),
        new Exercise("x^4 + x^3 + 6x^2 + x + 35", "Σ r^2", ""));
  }
}
