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

/** Partial fractions over the roots, and why the excluded value may be put in. */
final class PartialFractions implements Topic {
  private static final General SPLIT =
      equation("f(x)/P(x) = Σ f({r})/(P'({r})*(x - {r}))").with("f", letters -> "b*x + c");

  private static final General CLEARED =
      equation("f(x) = Σ f({r})*P(x)/(P'({r})*(x - {r}))").with("f", letters -> "b*x + c");

  private static final General SLOPE =
      equation(letters -> "P'({r}) = a*" + Texts.differences(letters, 1));

  private static final General SUM = equation("Σ 1/P'({r}) = 0");

  private static final General LEAD = equation("Σ {r}^{n-1}/P'({r}) = 1/a");

  @Override
  public String name() {
    return "partial-fractions";
  }

  @Override
  public String title() {
    return "Partial fractions";
  }

  @Override
  public String aim() {
    return "Split a fraction over the roots of its denominator, and say why the excluded value may be put in.";
  }

  @Override
  public List<String> known() {
    return List.of("the logarithmic derivative", "equal polynomials have equal values everywhere");
  }

  @Override
  public List<Fact> facts() {
    return List.of(
        new Fact(
            "partial-fractions",
            "Cover up and put in",
            "If the roots of P are different and the degree of f is below n, then `f(x)/P(x)` is the sum of `f(r)/(P'(r)*(x - r))` over the roots r.",
            List.of("no root is repeated", "the degree of f is below n"),
            SPLIT,
            new Proof(
                List.of(
                    argued(
                        "Multiply by P: on both sides stand polynomials of degree below n that agree at all n roots."),
                    argued(
                        "So they are the same polynomial, and equal also at the values that were excluded before.")),
                List.of(
                    computed(
                        "The slope at a root is the product of its differences from the others:",
                        SLOPE),
                    computed("Multiply the claim by P:", CLEARED),
                    argued("Now polynomials stand on both sides, of degree below n."),
                    argued("Put in a root: all terms but one vanish, and the two sides agree."),
                    argued(
                        "Agreeing at n places they are the same, also where the fractions had no value."),
                    computed("Divide by P again:", SPLIT)),
                List.of(
                    argued("Let all roots be different."),
                    computed("By the product rule the slope at a root is", SLOPE),
                    argued(
                        "so it is not zero, and the right side of the claim has a meaning for every x that is no root."),
                    computed(
                        "Multiply the claim by P. Each `P(x)/(x - r)` is a polynomial, since the factor cancels:",
                        CLEARED),
                    argued(
                        "Put in the root r. In every other term the factor `x - r` is still there, so it vanishes; in the term of r what is left of P is the slope, which cancels. Both sides are `f(r)`."),
                    argued(
                        "Both sides have degree below n and agree at n different places, so their difference has too many zeros: they are the same polynomial."),
                    argued(
                        "That is why the excluded value may be put in: it is put into an equation of polynomials, which holds everywhere, and not into the fractions."),
                    computed("Where x is no root, divide by P:", SPLIT))),
            Boundary.of(
                "no root is repeated",
                "For `(x - 1)^2` the slope at the root is zero, and one would divide by it.",
                Letters.usual(2),
                "1/(2*1 - 2) = 1")));
  }

  @Override
  public Warning warning() {
    return new Warning(
        "Put the excluded value only into the equation without fractions, there into everything that is left.",
        "cover-up-undivided");
  }

  @Override
  public Trick trick() {
    return new Trick(
        "Two sums for nothing",
        List.of(
            computed("With f constant, the powers of x compared at infinity give", SUM),
            computed("and with the highest power that is allowed", LEAD)));
  }

  @Override
  public List<Exercise> exercises() {
    return List.of(
        new Exercise("x^3 - 3x^2 - 2x + 5", "Σ 1/(r^2-1)", "partial-fractions"),
        new Exercise("x^3 - 6x + 2", "Σ r^2/(3r^2-6)", ""),
        new Exercise("x^3 - 2x^2 - 3x + 1", "Σ r^5/((r-s)(r-t))", ""),
        new Exercise("x^3 + 2x^2 - 5x + 1", "Σ 1/(r^2-4)", "partial-fractions"));
  }
}
