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

/** Which rational numbers can be roots of a polynomial with whole coefficients. */
final class RationalRoots implements Topic {
  private static final General CLEARED =
      equation(letters -> "c^{n}*P(b/c) = a*(" + Texts.homogeneous(letters) + ")");

  private static final General FACTORS =
      equation(
          letters -> "c^{n}*P(b/c) = a*" + letters.joined("*", root -> "(b - c*" + root + ")"));

  private static final General AT_ONE =
      equation(letters -> "P(1) = a*(" + Texts.atOne(letters) + ")");

  @Override
  public String name() {
    return "rational-roots";
  }

  @Override
  public String title() {
    return "Rational roots";
  }

  @Override
  public String aim() {
    return "List the few fractions that can be roots, and test them.";
  }

  @Override
  public List<String> known() {
    return List.of("lowest terms", "coefficients and roots");
  }

  @Override
  public List<Fact> facts() {
    return List.of(
        new Fact(
            "rational-roots",
            "Numerator and denominator are divisors",
            "If `a*x^n + a_1*x^(n-1) + … + a_n` has whole coefficients and the root `b/c` in lowest terms, then b divides `a_n` and c divides `a`.",
            List.of("whole coefficients", "b and c have no common factor"),
            CLEARED,
            new Proof(
                List.of(
                    argued("Put the fraction in and clear the denominators."),
                    argued(
                        "All terms but the last have the factor b, and all but the first the factor c.")),
                List.of(
                    computed("Put the fraction in and multiply by the power of c:", CLEARED),
                    argued("At a root this is zero. All terms but the last are multiples of b."),
                    argued(
                        "So b divides `a_n*c^n`, and having nothing in common with c it divides `a_n`."),
                    argued("All terms but the first are multiples of c: so c divides `a`.")),
                List.of(
                    argued("Let `b/c` be a root in lowest terms."),
                    computed("Multiply by the power of c:", CLEARED),
                    computed("In factors that is", FACTORS),
                    argued(
                        "The products of the lead with the elementary expressions are the coefficients up to sign, so all numbers here are whole, and the sum is zero."),
                    argued(
                        "All terms but the last have the factor b, so b divides the last one, `a_n*c^n`; b has no prime factor in common with c, so b divides `a_n`."),
                    argued(
                        "All terms but the first have the factor c, so c divides `a*b^n`, and hence `a`."),
                    argued("If the lead is 1, every rational root is a whole number."))),
            Boundary.of(
                "whole coefficients",
                "`x^2 - 5/2*x + 1` has the root 1/2: the denominator 2 does not divide the lead 1.",
                Letters.usual(2),
                "2 = 1")));
  }

  @Override
  public Warning warning() {
    return new Warning(
        "Fractions are candidates too, and candidates are all that is found: each has to be tested.",
        "whole-roots-only");
  }

  @Override
  public Trick trick() {
    return new Trick(
        "Try one first",
        List.of(
            argued("The number 1 is a root exactly when the coefficients add up to zero."),
            computed("For P at 1 is their sum:", AT_ONE)));
  }

  @Override
  public List<Exercise> exercises() {
    return List.of(
        new Exercise("2x^3 - 3x^2 - 3x + 2", "roots", ""),
        new Exercise("x^3 - 2x^2 - 5x + 6", "roots", ""),
        new Exercise("6x^3 - 11x^2 + 6x - 1", "roots", ""));
  }
}
