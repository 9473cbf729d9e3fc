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

/** Expressions that are not symmetric, and the polynomial of their values. */
final class Resolvents implements Topic {
  private static final General SUM = equation(Resolvents::sum);

  private static final General DIFFERENCE =
      equation(
          letters ->
              letters.n() == 3
                  ? "(({r}^2*{s} + {s}^2*{t} + {t}^2*{r}) - ({r}^2*{t} + {t}^2*{s} + {s}^2*{r}))^2 = Π ({r} - {s})^2"
                  : "({r} - {s})^2 = ({r} + {s})^2 - 4*{r}*{s}");

  private static final General HALVES = equation("{r} = (({r} + {s}) + ({r} - {s}))/2");

  @Override
  public String name() {
    return "resolvents";
  }

  @Override
  public String title() {
    return "Expressions that are not symmetric";
  }

  @Override
  public String aim() {
    return "Find all values that an expression can have when the names of the roots are exchanged.";
  }

  @Override
  public List<String> known() {
    return List.of("symmetric expressions", "the discriminant");
  }

  @Override
  public List<Fact> facts() {
    return List.of(
        new Fact(
            "resolvents",
            "The values are the roots of one polynomial",
            "The different images `E_1, …, E_m` of an expression, when the names of the roots are exchanged, are the roots of a polynomial whose coefficients are symmetric in the roots of P.",
            List.of("all names may be exchanged", "for one value, that all images are equal"),
            SUM,
            new Proof(
                List.of(
                    argued("Exchanging names only exchanges the images."),
                    argued(
                        "So everything symmetric in the images is symmetric in the roots, and known from the coefficients.")),
                List.of(
                    argued("Write down all images of the expression."),
                    argued("An exchange of names permutes the images among themselves."),
                    computed("So their sum is symmetric:", SUM),
                    computed("and so is the square of a difference:", DIFFERENCE),
                    argued("From sum and difference the values follow; the sign stays open.")),
                List.of(
                    argued(
                        "Let `E_1, …, E_m` be the formally different images of E under all exchanges of names."),
                    argued(
                        "Any exchange carries an image to an image, and different ones to different ones: it permutes them."),
                    argued(
                        "So the coefficients of the product of all `T - E_k` do not change under any exchange; they are symmetric, and known from the coefficients of P."),
                    computed("For example the sum:", SUM),
                    computed("and the square of a difference:", DIFFERENCE),
                    argued(
                        "The names of the roots are arbitrary; so each root of this polynomial is a possible value, and \"the value\" has a meaning only if all are equal or an order of the roots was given."))),
            Boundary.of(
                "the expression is symmetric",
                "For 1, 2 and 3 the cyclic sum is 23 one way round and 25 the other.",
                Letters.usual(2),
                "1^2*2 + 2^2*3 + 3^2*1 = 1^2*3 + 3^2*2 + 2^2*1")));
  }

  @Override
  public Warning warning() {
    return new Warning(
        "Ask for all possible values, or give the roots an order: no name is the first by nature.",
        "one-sign-kept");
  }

  @Override
  public Trick trick() {
    return new Trick(
        "Sum and difference",
        List.of(
            argued(
                "With the sum and the difference of two values known, each is half of their sum."),
            computed("As for two roots:", HALVES)));
  }

  @Override
  public List<Exercise> exercises() {
    return List.of(
        new Exercise("x^3 - x^2 - 4x - 1", "r^2 s + s^2 t + t^2 r", ""),
        new Exercise("x^2 - 5x + 3", "r^3 - s^3", ""),
        new Exercise("x^3 - 4x + 1", "r^2 s + s^2 t + t^2 r", ""));
  }

  /** The sum of all images, for two, three and more roots. */
  private static String sum(Letters letters) {
    return switch (letters.n()) {
      case 2 -> "({r} - {s}) + ({s} - {r}) = 0";
      case 3 ->
          "({r}^2*{s} + {s}^2*{t} + {t}^2*{r}) + ({r}^2*{t} + {t}^2*{s} + {s}^2*{r})"
              + " = e_1*e_2 - 3*e_3";
      default ->
          "Σ (%s*%s + %s*%s) = %d*e_2"
              .formatted(
                  letters.root(1),
                  letters.root(2),
                  letters.root(3),
                  letters.root(4),
                  (letters.n() - 2) * (letters.n() - 3) / 2);
    };
  }
}
