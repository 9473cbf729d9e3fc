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

/** High powers of a root are brought down by P(r) = 0. */
final class ReducingPowers implements Topic {
  private static final General REDUCED =
      equation(letters -> "{r}^{n} = " + Texts.reduced(letters, letters.root(1), 0));

  private static final General NEXT =
      equation(letters -> "{r}^{n+1} = " + Texts.reduced(letters, letters.root(1), 1));

  private static final General VANISHES =
      equation(letters -> Texts.monic(letters, letters.root(1)) + " = 0");

  private static final General DIVIDED =
      equation("f({r}) = g({r})")
          .with("f", letters -> letters.factors("x") + "*(b*x + c) + d*x + k")
          .with("g", letters -> "d*x + k");

  @Override
  public String name() {
    return "reducing-powers";
  }

  @Override
  public String title() {
    return "Reducing powers";
  }

  @Override
  public String aim() {
    return "Bring every power of a root down below the degree with `P(r) = 0`, and add up.";
  }

  @Override
  public List<String> known() {
    return List.of("a root makes P zero", "division with remainder");
  }

  @Override
  public List<Fact> facts() {
    return List.of(
        new Fact(
            "reducing-powers",
            "Only the remainder counts",
            "If `F(x) = P(x)*Q(x) + R(x)` and `P(r) = 0`, then `F(r) = R(r)`.",
            List.of("r is a root of P", "the lead of P can be divided by"),
            REDUCED,
            new Proof(
                List.of(
                    argued("A root makes P zero, so a multiple of P adds nothing."),
                    argued(
                        "Only the remainder of the division by P is left, and its degree is below that of P.")),
                List.of(
                    computed("A root makes P zero:", VANISHES),
                    computed("So the highest power is a sum of lower ones:", REDUCED),
                    computed("Multiply by the root:", NEXT),
                    argued("Replace the highest power again, as often as it takes."),
                    computed("With a quotient and a remainder at once:", DIVIDED)),
                List.of(
                    argued(
                        "Divide F by P: there are Q and R with `F(x) = P(x)*Q(x) + R(x)`, the degree of R below n, since one can divide by the lead of P."),
                    computed("Put in the root. The first term vanishes:", DIVIDED),
                    computed("Step by step this is: a root makes P zero,", VANISHES),
                    computed("the highest power is a sum of lower ones,", REDUCED),
                    computed("and so is the next.", NEXT),
                    argued(
                        "The value does not depend on which root is meant exactly when the remainder is constant, if P cannot be factored."),
                    argued(
                        "Added over all roots, the remainder gives a sum of powers below n; its constant is added n times."))),
            Boundary.of(
                "r is a root of P",
                "2 is no root of `x^2 - 4*x - 3`, and its square is not what the rule says.",
                Letters.usual(2),
                "2^2 = 4*2 + 3")));
  }

  @Override
  public Warning warning() {
    return new Warning(
        "A constant in a sum over the roots counts once for each root.", "constant-once");
  }

  @Override
  public Trick trick() {
    return new Trick(
        "Look for the whole block",
        List.of(
            argued(
                "P times anything vanishes at a root, so a block with the coefficients of P goes at once."),
            computed(
                "Here times the square of the root:",
                equation(letters -> "{r}^2*(" + Texts.monic(letters, letters.root(1)) + ") = 0"))));
  }

  @Override
  public List<Exercise> exercises() {
    return List.of(
        new Exercise("x^3 - 3x^2 + 4x - 7", "Σ (r^3 - 3r^2 + r + 5)", "reduce-powers"),
        new Exercise("x^2 - 4x - 3", "r^4 - 4r^3 - 4r^2 + 4r + 10", ""),
        new Exercise("x^3 - x - 1", "S_5", "reduce-powers"),
        new Exercise("x^3 - 2x^2 + 3x - 5", "Σ (r^3 - 2r^2 + 4)", "reduce-powers"));
  }
}
