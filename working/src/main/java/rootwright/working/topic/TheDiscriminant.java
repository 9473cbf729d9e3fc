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

/** The discriminant: what it is made of and when it vanishes. */
final class TheDiscriminant implements Topic {
  private static final General BY_SLOPES =
      equation(
          letters ->
              "a^{2n-2}*Π ({r} - {s})^2 = "
                  + ((letters.n() * (letters.n() - 1) / 2) % 2 == 0 ? "" : "-")
                  + "a^{n-2}*Π P'({r})");

  private static final General SLOPE =
      equation(letters -> "P'({r}) = a*" + Texts.differences(letters, 1));

  private static final General IN_E =
      equation(letters -> "Π ({r} - {s})^2 = " + Texts.discriminant(letters.n()));

  @Override
  public String name() {
    return "discriminant";
  }

  @Override
  public String title() {
    return "The discriminant";
  }

  @Override
  public String aim() {
    return "Find the product of the squared differences of the roots, and tell from it whether a root is repeated.";
  }

  @Override
  public List<String> known() {
    return List.of("reading `e_1`, `e_2`, `e_3` off", "the derivative at a root");
  }

  @Override
  public List<Fact> facts() {
    return List.of(
        new Fact(
            "discriminant",
            "The product of the squared differences",
            "`D = a^(2*n-2)*Π (r-s)^2` over all pairs of roots, and it is zero exactly when a root is repeated.",
            List.of("every pair is taken once", "the power of the lead belongs to it"),
            BY_SLOPES,
            new Proof(
                List.of(
                    argued(
                        "The slope at a root is the lead times its differences from the other roots."),
                    argued(
                        "Multiply the slopes: every difference occurs twice, with opposite signs.")),
                List.of(
                    computed("The slope at a root:", SLOPE),
                    argued(
                        "Multiply the slopes at all roots: each difference occurs once from either end."),
                    argued("That is minus its square, once for each pair."),
                    computed("With the powers of the lead:", BY_SLOPES),
                    argued("One factor is zero exactly when two roots are equal.")),
                List.of(
                    argued(
                        "The product of the squared differences does not change when roots are exchanged, so it is a polynomial in the elementary expressions."),
                    computed("By the product rule", SLOPE),
                    argued(
                        "In the product of all slopes the difference of two roots occurs twice, once from either end, with opposite signs: together minus its square."),
                    argued(
                        "There are `n*(n-1)/2` pairs, which gives the sign, and n slopes, which give the power of the lead."),
                    computed("So", BY_SLOPES),
                    argued(
                        "A product is zero exactly when a factor is: D is zero exactly when two roots are equal."))),
            Boundary.of(
                "the power of the lead belongs to it",
                "For `2*x^2 - 3*x + 1` with the roots 1 and 1/2, `b^2 - 4*a*c` is not the squared difference.",
                Letters.usual(2),
                "(1 - 1/2)^2 = 3^2 - 4*2*1")));
  }

  @Override
  public Warning warning() {
    return new Warning(
        "Say which is meant: the product of the squared differences, or that times a power of the lead.",
        "discriminant-normalisation");
  }

  @Override
  public Trick trick() {
    return new Trick(
        "In the elementary expressions",
        List.of(
            argued("The product of the squared differences is symmetric."),
            computed("Reduced, it is", IN_E)));
  }

  @Override
  public List<Exercise> exercises() {
    return List.of(
        new Exercise("x^3 - 4x + 1", "discriminant", ""),
        new Exercise("2x^3 - 5x + 1", "Π (r-s)^2", ""),
        new Exercise("x^2 - 5x + 3", "(r-s)^2", ""),
        new Exercise("x^3 - 3x + 1", "discriminant", ""));
  }
}
