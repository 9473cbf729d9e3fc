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

/** Newton's identities: power sums from the coefficients, one after the other. */
final class NewtonsIdentities implements Topic {

  private static final General SECOND = equation("p_2 - e_1*p_1 + 2*e_2 = 0");

  private static final General THIRD = equation("p_3 - e_1*p_2 + e_2*p_1 - 3*e_3 = 0");

  private static final General VANISHES =
      equation(letters -> Texts.monic(letters, letters.root(1)) + " = 0");

  /** At k = n, by adding P(r) = 0 over the roots. */
  private static final General AT_N =
      equation(
          letters -> {
            int n = letters.n();
            return "p_%d%s %s %d*e_%d = 0"
                .formatted(n, Texts.newton(n, n - 1), n % 2 == 0 ? "+" : "-", n, n);
          });

  private static final General ABOVE =
      equation(
          letters ->
              "p_%d = %s"
                  .formatted(letters.n() + 1, Texts.alternating(letters.n() + 1, letters.n())));

  @Override
  public String name() {
    return "newton-identities";
  }

  @Override
  public String title() {
    return "Newton's identities";
  }

  @Override
  public String aim() {
    return "Find sums of squares, cubes and higher powers of the roots from the coefficients,"
        + " without finding a root.";
  }

  @Override
  public List<String> known() {
    return List.of("coefficients and roots: `e_1`, `e_2`, `e_3`", "a root makes P zero");
  }

  @Override
  public List<Fact> facts() {
    return List.of(
        new Fact(
            "newton-identities",
            "Newton's identities",
            "For k from 1 to n: `p_k - e_1*p_(k-1) + e_2*p_(k-2) - … + (-1)^k*k*e_k = 0`.",
            List.of(
                "all n roots are counted, with multiplicity",
                "to solve for `e_k` one must be able to divide by k"),
            THIRD,
            new Proof(
                List.of(
                    argued(
                        "A root makes P zero; multiply by a power of the root and add over all"
                            + " roots."),
                    argued(
                        "That gives every identity from k equal to n on; the earlier ones follow"
                            + " by setting roots to zero, since the degree is too low for anything"
                            + " to be left.")),
                List.of(
                    computed("A root makes P zero:", VANISHES),
                    computed("Add this over all roots:", AT_N),
                    argued(
                        "The last term appears once for each root, so it counts n times: that is"
                            + " where the factor comes from."),
                    argued(
                        "For k below n set the last roots to zero: what remains is the identity"
                            + " for k roots, which holds."),
                    computed("The first that is needed:", SECOND),
                    computed("The next:", THIRD)),
                List.of(
                    argued("First let k be n. Every root makes P zero."),
                    computed("For the first root this says", VANISHES),
                    argued("Add these n equations. Powers become power sums, and `p_0 = n`."),
                    computed("The sum is the identity for k equal to n:", AT_N),
                    argued("Now let k be below n and call the left side F."),
                    argued(
                        "F is symmetric and homogeneous of degree k, so each of its terms has at"
                            + " most k different roots in it."),
                    argued(
                        "Set all roots but k of them to zero. What remains is the identity for k"
                            + " roots, which was shown: so F becomes zero."),
                    argued(
                        "A term of F has at most k roots in it and survives for some choice of k"
                            + " roots; so F has no term at all, and F is zero."),
                    computed("For k equal to two:", SECOND),
                    computed("For k equal to three:", THIRD),
                    computed(
                        "Above n, multiply `P({r}) = 0` by powers of `{r}` before adding; the term with k"
                            + " is gone:",
                        ABOVE))),
            Boundary.of(
                "the last term carries the factor k, not n",
                "With the three roots 1, 2 and 3 the count 3 in place of 2 is wrong.",
                new Letters(List.of("r", "s", "t")),
                "1 + 4 + 9 - (1 + 2 + 3)*(1 + 2 + 3) + 3*(2 + 3 + 6) = 0")));
  }

  @Override
  public Warning warning() {
    return new Warning(
        "The last term carries the number of the identity, k, and not the degree: `2*e_2` in the"
            + " second, `3*e_3` in the third.",
        "newton-count");
  }

  @Override
  public Trick trick() {
    return new Trick(
        "Above the degree the factor is gone",
        List.of(
            argued("Multiply `P({r}) = 0` by `{r}` before adding over the roots."),
            computed("No term has a factor of its own any more:", ABOVE)));
  }

  @Override
  public List<Exercise> exercises() {
    return List.of(
        new Exercise("2x^3 - 6x^2 + x + 5", "S_2", "newton"),
        new Exercise("x^3 - 2x^2 + 3x - 5", "S_3", "newton"),
        new Exercise("x^3 - 2x^2 + 3x - 5", "S_4", "newton"),
        new Exercise("4x^3 - 8x^2 + 3x + 6", "S_2", "newton"));
  }
}
