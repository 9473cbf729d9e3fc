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

/** The derivative over the polynomial is the sum of the simple fractions. */
final class LogDerivative implements Topic {
  private static final General SUM = equation("P'(x)/P(x) = Σ 1/(x - {r})");

  private static final General SPLIT = equation(letters -> "P(x) = a*" + letters.factors("x"));

  private static final General RULE =
      equation(letters -> "P'(x) = " + Texts.over(letters, "P(x)/(x - #)"));

  private static final General SQUARES = equation("Σ 1/(x - {r})^2 = (P'(x)/P(x))^2 - P''(x)/P(x)");

  @Override
  public String name() {
    return "log-derivative";
  }

  @Override
  public String title() {
    return "The logarithmic derivative";
  }

  @Override
  public String aim() {
    return "Find sums of 1/(k − r) over the roots from one value of P and one of its derivative.";
  }

  @Override
  public List<String> known() {
    return List.of("the product rule", "putting numbers into P");
  }

  @Override
  public List<Fact> facts() {
    return List.of(
        new Fact(
            "log-derivative",
            "P′ over P is the sum of the simple fractions",
            "`P'(x)/P(x)` is the sum of `1/(x - r)` over all roots r, each as often as it occurs.",
            List.of("x is no root of P; nothing is needed of the roots"),
            SUM,
            new Proof(
                List.of(
                    argued(
                        "Differentiate the product of the linear factors: each term leaves one of them out."),
                    argued(
                        "Divide by the product, and of each term only one over the missing factor is left.")),
                List.of(
                    computed("Split P into linear factors:", SPLIT),
                    computed("The product rule leaves one factor out at a time:", RULE),
                    computed("Divide by P:", SUM),
                    argued("At a number k that is no root this is a sum of numbers.")),
                List.of(
                    computed("Over a field with all roots P is a product:", SPLIT),
                    computed(
                        "The product rule gives one term for each factor, in which this factor is replaced by its derivative 1:",
                        RULE),
                    computed("Divide by P, as rational functions:", SUM),
                    argued(
                        "Nothing was assumed of the roots: one that occurs m times gives m equal terms. At a number k with `P(k)` not zero all terms have values."))),
            Boundary.of(
                "x is no root of P",
                "At the root 2 of `(x - 1)*(x - 2)` one term has the denominator zero.",
                Letters.usual(2),
                "1/(2 - 1) + 1/(2 - 2) = 1")));
  }

  @Override
  public Warning warning() {
    return new Warning(
        "The derivative stands above, and the fractions are 1/(k − r): for 1/(r − k) change the sign.",
        "log-derivative-flipped");
  }

  @Override
  public Trick trick() {
    return new Trick(
        "Squares in the denominator",
        List.of(
            argued("Differentiate once more."),
            computed("The squares come out with the second derivative:", SQUARES)));
  }

  @Override
  public List<Exercise> exercises() {
    return List.of(
        new Exercise("5x^3 - 10x^2 + x - 4", "Σ 1/(r-3)", "log-derivative"),
        new Exercise("x^3 - 2x^2 + 7x - 3", "Σ (r+1)/(r-2)", ""),
        new Exercise("x^3 - 3x^2 - 2x + 5", "Σ 1/(r^2-1)", ""),
        new Exercise("x^3 - 2x^2 + 7x - 3", "Σ 1/(2-r)", "log-derivative"));
  }
}
