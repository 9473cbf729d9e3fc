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

/** The coefficients are the elementary symmetric expressions of the roots, up to sign and lead. */
final class CoefficientsAndRoots implements Topic {

  private static final General EXPANDED =
      equation(letters -> "P(x) = a*(" + Texts.monic(letters, "x") + ")");

  private static final General FACTORS =
      equation(letters -> letters.factors("x") + " = " + Texts.monic(letters, "x"));

  @Override
  public String name() {
    return "coefficients-and-roots";
  }

  @Override
  public String title() {
    return "Coefficients and roots";
  }

  @Override
  public String aim() {
    return "Read sums and products of the roots off the coefficients, with the right signs, also"
        + " when the leading coefficient is not 1.";
  }

  @Override
  public List<String> known() {
    return List.of("multiplying brackets out", "a root makes the polynomial zero");
  }

  @Override
  public List<Fact> facts() {
    return List.of(
        new Fact(
            "coefficients-and-roots",
            "The coefficients know the roots",
            "If `P(x) = a*x^n + a_1*x^(n-1) + … + a_n` has the roots `r_1, …, r_n`, each as often"
                + " as it occurs, then `e_k = (-1)^k*a_k/a` for k from 1 to n.",
            List.of(
                "the lead a is not zero",
                "all n roots are counted, with multiplicity, in a field that has them all"),
            EXPANDED,
            new Proof(
                List.of(
                    argued("P is its lead times the product of the factors x minus a root."),
                    argued(
                        "Choosing minus a root from k factors and x from the others gives the"
                            + " coefficient of `x^(n-k)`.")),
                List.of(
                    argued("Split P into linear factors: one factor for each root."),
                    computed(
                        "The product of all factors, multiplied out,",
                        equation(letters -> "P(x) = a*" + letters.factors("x"))),
                    argued("From each bracket take x or minus a root."),
                    computed("Minus a root from one bracket, x from the others:", FACTORS),
                    computed("Compare with the coefficients:", EXPANDED)),
                List.of(
                    argued(
                        "Let K be a field and L a larger one in which P splits; for complex"
                            + " coefficients the complex numbers do, by the fundamental theorem of"
                            + " algebra."),
                    computed(
                        "In L the polynomial is its lead times the linear factors:",
                        equation(letters -> "P(x) = a*" + letters.factors("x"))),
                    argued(
                        "Multiplying n brackets out means to choose from each bracket either x or"
                            + " minus the root, in all `2^n` ways."),
                    argued(
                        "A choice of minus the root from k brackets contributes to `x^(n-k)`, and"
                            + " all these choices together add up to `(-1)^k*e_k`."),
                    computed("Therefore", FACTORS),
                    computed("and with the lead", EXPANDED),
                    argued(
                        "Two equal polynomials have equal coefficients, so `a_k = (-1)^k*a*e_k`."
                            + " Nothing was divided but by a, and the roots need not be"
                            + " different."))),
            Boundary.of(
                "the lead is divided out",
                "For `2*x^2 - 6*x + 4` with the roots 1 and 2, the second coefficient alone is not"
                    + " minus the sum.",
                Letters.usual(2),
                "6 = 1 + 2")));
  }

  @Override
  public Warning warning() {
    return new Warning(
        "Divide by the lead first, then let the signs alternate: minus, plus, minus.",
        "lead-forgotten");
  }

  @Override
  public Trick trick() {
    return new Trick(
        "A product of sums is a value of P",
        List.of(
            argued("Each sum of all roots but one is `e_1` minus that one."),
            computed(
                "So the product of these sums is a value of P over the lead:",
                equation(
                    letters ->
                        letters.joined("*", root -> "(e_1 - " + root + ")") + " = P(e_1)/a"))));
  }

  @Override
  public List<Exercise> exercises() {
    return List.of(
        new Exercise("3x^3 - 7x^2 + 5x + 11", "r s + s t + t r", ""),
        new Exercise("2x^3 - 6x^2 + x + 5", "Σ r^2", "build-from-e"),
        new Exercise("x^4 - 2x^3 - 5x^2 + 3x + 2", "Σ 1/(r s)", ""),
        new Exercise("4x^3 - 8x^2 + 3x + 6", "Σ r^2", "build-from-e"));
  }
}
