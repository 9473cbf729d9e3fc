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

/** Every symmetric polynomial is a polynomial in the elementary ones. */
final class SymmetricPolynomials implements Topic {
  private static final General BUILT = equation("Σ {r}^2*{s} = e_1*e_2 - 3*e_3");

  private static final General MULTIPLIED = equation("e_1*e_2 = Σ {r}^2*{s} + 3*e_3");

  private static final General SQUARES = equation("Σ {r}^2 = e_1^2 - 2*e_2");

  private static final General SQUARED = equation("e_1^2 = Σ {r}^2 + 2*e_2");

  private static final General CUBES = equation("Σ {r}^3 = e_1^3 - 3*e_1*e_2 + 3*e_3");

  @Override
  public String name() {
    return "symmetric-polynomials";
  }

  @Override
  public String title() {
    return "Symmetric expressions";
  }

  @Override
  public String aim() {
    return "Write any symmetric expression of the roots in `e_1`, `e_2` and so on, and so find its value.";
  }

  @Override
  public List<String> known() {
    return List.of("coefficients and roots", "multiplying sums out");
  }

  @Override
  public List<Fact> facts() {
    return List.of(
        new Fact(
            "symmetric-polynomials",
            "Everything symmetric is made of elementary ones",
            "Every polynomial in `r_1, …, r_n` that does not change when they are exchanged is a polynomial in `e_1, …, e_n`, and in only one way. Whole coefficients stay whole.",
            List.of(
                "the expression is symmetric",
                "coefficients that can be added and multiplied; nothing is divided"),
            BUILT,
            new Proof(
                List.of(
                    argued(
                        "Take the leading term, find the product of elementary expressions with the same leading term, and subtract it."),
                    argued("What is left is symmetric and leads with less, so this ends.")),
                List.of(
                    argued(
                        "Order terms as in a dictionary; the leading exponents of a symmetric expression never rise."),
                    argued(
                        "A product of elementary expressions has the same leading term: `e_1*e_2` leads with `{r}^2*{s}`."),
                    computed("Multiply it out:", MULTIPLIED),
                    computed("Subtract what is too much:", BUILT),
                    argued("Each time the leading term falls, so it ends."),
                    computed("The same for squares:", SQUARES)),
                List.of(
                    argued(
                        "Order the terms by the exponent of the first letter, then of the second, and so on. Let F be symmetric and not zero."),
                    argued(
                        "If its leading term had exponents that rise somewhere, exchanging two letters would give a term of F that leads it: so the exponents `a_1, …, a_n` fall or stay."),
                    argued(
                        "The product `e_1^(a_1-a_2)*e_2^(a_2-a_3)*…*e_n^(a_n)` has the same leading term with coefficient 1."),
                    argued(
                        "Subtract it with the coefficient of F: what is left is symmetric and its leading term is smaller. There are only finitely many smaller ones of the same degree, so this ends, and F is a polynomial in the elementary expressions."),
                    argued(
                        "Different products of elementary expressions have different leading terms; so no combination of them vanishes, and there is only one way."),
                    computed("For the squares:", SQUARED),
                    computed("hence", SQUARES),
                    computed("For the mixed sum:", MULTIPLIED),
                    computed("hence", BUILT),
                    computed("and for the cubes", CUBES))),
            Boundary.of(
                "the expression is symmetric",
                "For 1, 2 and 3 the cyclic sum depends on which is called what.",
                Letters.usual(2),
                "1^2*2 + 2^2*3 + 3^2*1 = 1^2*3 + 3^2*2 + 2^2*1")));
  }

  @Override
  public Warning warning() {
    return new Warning(
        "The square of a sum is not the sum of the squares: the products in pairs are in it, each twice.",
        "square-of-the-sum");
  }

  @Override
  public Trick trick() {
    return new Trick(
        "Count with ones",
        List.of(
            argued("Put 1 for every root: each side then counts its terms."),
            computed(
                "Here that gives the number of terms on both sides:",
                equation(
                    "{n}*({n}*({n} - 1)/2) - 3*({n}*({n} - 1)*({n} - 2)/6) = {n}*({n} - 1)"))));
  }

  @Override
  public List<Exercise> exercises() {
    return List.of(
        new Exercise("2x^3 - 6x^2 + x + 5", "Σ r^2", "build-from-e"),
        new Exercise("x^3 - 5x^2 + 2x - 1", "Σ r^2 s", "build-from-e"),
        new Exercise("x^3 - 4x^2 + 2x + 6", "(r+s)(s+t)(t+r)", ""),
        new Exercise("4x^3 - 8x^2 + 3x + 6", "Σ r^2", "build-from-e"));
  }

  @Override
  public String figure() {
    return "product e_1 e_2";
  }
}
