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

/** Power sums follow the recurrence that the polynomial writes down. */
final class PowerSumRecurrence implements Topic {
  private static final General VANISHES =
      equation(letters -> Texts.monic(letters, letters.root(1)) + " = 0");

  private static final General TIMES =
      equation(letters -> "{r}^{n+1} = " + Texts.reduced(letters, letters.root(1), 1));

  private static final General NEXT =
      equation(
          letters ->
              "p_%d = %s"
                  .formatted(letters.n() + 1, Texts.alternating(letters.n() + 1, letters.n())));

  private static final General AFTER =
      equation(
          letters ->
              "p_%d = %s"
                  .formatted(letters.n() + 2, Texts.alternating(letters.n() + 2, letters.n())));

  private static final General FIRST =
      equation(
          letters ->
              "p_%d = %s".formatted(letters.n(), Texts.alternating(letters.n(), letters.n())));

  @Override
  public String name() {
    return "power-sum-recurrence";
  }

  @Override
  public String title() {
    return "The recurrence of power sums";
  }

  @Override
  public String aim() {
    return "Make a table of power sums, each from the ones before it, as far out as is wanted.";
  }

  @Override
  public List<String> known() {
    return List.of("Newton's identities", "a root makes P zero");
  }

  @Override
  public List<Fact> facts() {
    return List.of(
        new Fact(
            "power-sum-recurrence",
            "Each power sum from the n before it",
            "For every k from n on: `p_k = e_1*p_(k-1) - e_2*p_(k-2) + … + (-1)^(n-1)*e_n*p_(k-n)`, with `p_0 = n`.",
            List.of("k is at least n", "all n roots are counted, with multiplicity"),
            NEXT,
            new Proof(
                List.of(
                    argued("Multiply P(r) = 0 by a power of the root and add over all roots."),
                    argued(
                        "Every power becomes a power sum, and the coefficients stay what they are.")),
                List.of(
                    computed("A root makes P zero:", VANISHES),
                    computed("Multiply by the root and solve:", TIMES),
                    computed("Add over all roots:", NEXT),
                    computed("Multiply once more:", AFTER),
                    computed("At k equal to n there stands `p_0`, which is n:", FIRST)),
                List.of(
                    computed("Every root makes P zero. For the first root:", VANISHES),
                    argued("Let k be at least n and multiply by the root to the power `k - n`."),
                    computed("For k one above n:", TIMES),
                    computed("Add these equations over all roots. Powers become power sums:", NEXT),
                    computed("and with one more factor", AFTER),
                    computed(
                        "For k equal to n the last power is the root to the power 0, which is 1, also for a root that is zero; so `p_0 = n`:",
                        FIRST))),
            Boundary.of(
                "k is at least n",
                "With the roots 1, 2 and 3 and k = 2 the rule would give 3, but the sum of the squares is 14.",
                Letters.usual(2),
                "1 + 4 + 9 = 6*6 - 11*3")));
  }

  @Override
  public Warning warning() {
    return new Warning(
        "Begin the table at `p_0 = n` and keep the index beside each value.", "index-off-by-one");
  }

  @Override
  public Trick trick() {
    return new Trick(
        "Jump by squaring",
        List.of(
            argued("The square of a power sum has the next power sum with twice the index in it."),
            computed(
                "What is too much is a sum over pairs:",
                equation("p_4 = p_2^2 - 2*Σ {r}^2*{s}^2"))));
  }

  @Override
  public List<Exercise> exercises() {
    return List.of(
        new Exercise("x^3 - x^2 - 2x + 3", "S_6", "recurrence"),
        new Exercise("x^3 - x - 1", "S_11", "recurrence"),
        new Exercise("x^4 - x^3 - 3", "S_9", "recurrence"),
        new Exercise("x^3 - 2x^2 + 3x - 5", "S_7", "recurrence"));
  }
}
