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

/** How often a root occurs, and what the derivative knows of it. */
final class Multiplicity implements Topic {
  private static final General DERIVED =
      equation("f'(x) = (x - {r})^{n-1}*({n}*g(x) + (x - {r})*g'(x))")
          .with("f", letters -> "(x - {r})^{n}*(b*x^2 + c*x + d)")
          .with("g", letters -> "b*x^2 + c*x + d");

  private static final General PRODUCT =
      equation("f'(x) = {n}*(x - {r})^{n-1}*g(x) + (x - {r})^{n}*g'(x)")
          .with("f", letters -> "(x - {r})^{n}*(b*x^2 + c*x + d)")
          .with("g", letters -> "b*x^2 + c*x + d");

  private static final General LEFT =
      equation("{n}*g({r}) + ({r} - {r})*g'({r}) = {n}*g({r})")
          .with("g", letters -> "b*x^2 + c*x + d");

  @Override
  public String name() {
    return "multiplicity";
  }

  @Override
  public String title() {
    return "Repeated roots";
  }

  @Override
  public String aim() {
    return "Say how often a root occurs, count it so often in every sum, and find it with the derivative.";
  }

  @Override
  public List<String> known() {
    return List.of("coefficients and roots", "the product rule");
  }

  @Override
  public List<Fact> facts() {
    return List.of(
        new Fact(
            "multiplicity",
            "The derivative takes one off",
            "If r is a root of f exactly m times, it is a root of `f'(x)` exactly m − 1 times.",
            List.of(
                "m counts how often the factor occurs, no more and no less",
                "m is not zero in the field, as in all numbers we use"),
            DERIVED,
            new Proof(
                List.of(
                    argued(
                        "Write f as a power of x minus r times a factor that is not zero at r, and differentiate by the product rule."),
                    argued("One factor less can be taken out, and what is left is not zero at r.")),
                List.of(
                    argued("Write `f(x) = (x - r)^m*g(x)` with `g(r)` not zero."),
                    computed("The product rule:", PRODUCT),
                    computed("Take out all factors but one:", DERIVED),
                    computed("At r the rest of it is", LEFT),
                    argued("That is not zero, so no further factor comes out.")),
                List.of(
                    argued(
                        "That r is a root exactly m times means `f(x) = (x - r)^m*g(x)` with `g(r)` not zero."),
                    computed("By the product rule", PRODUCT),
                    computed("Both terms have m − 1 factors x minus r in common:", DERIVED),
                    computed("Put r into the bracket:", LEFT),
                    argued(
                        "Since m is not zero and `g(r)` is not zero, the bracket is not zero at r, and r is a root of the derivative exactly m − 1 times."),
                    argued(
                        "In particular r is a repeated root exactly when it is a root of f and of its derivative: a common factor of both finds it."))),
            Boundary.of(
                "a root is counted as often as it occurs",
                "For `(x - 1)^2*(x + 4)` the sum of the squares over the different roots is not `e_1^2 - 2*e_2`.",
                Letters.usual(2),
                "1^2 + (-4)^2 = (1 + 1 - 4)^2 - 2*(1*1 - 1*4 - 1*4)")));
  }

  @Override
  public Warning warning() {
    return new Warning(
        "A double root stands twice in every sum over the roots.", "double-root-once");
  }

  @Override
  public Trick trick() {
    return new Trick(
        "The derivative finds it",
        List.of(
            argued("A root that occurs twice is a root of the derivative too."),
            computed(
                "So it is found without solving the equation:",
                equation("f'({r}) = 0").with("f", letters -> "(x - {r})^2*(b*x + c)"))));
  }

  @Override
  public List<Exercise> exercises() {
    return List.of(
        new Exercise("(x-1)^2 (x+4)", "Σ r^2", ""),
        new Exercise("x^3 - 3x + 2", "S_3", ""),
        new Exercise("(x-2)^2 (x+1)", "Σ r^2", ""));
  }
}
