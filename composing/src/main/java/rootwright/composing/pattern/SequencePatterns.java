package rootwright.composing.pattern;

import static rootwright.composing.pattern.Written.alone;
import static rootwright.composing.pattern.Written.statement;

import java.util.List;
import java.util.Optional;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.problem.Statement;

/** Power sums as a sequence, and whole parts of powers. */
final class SequencePatterns {

  static final List<Pattern> ALL =
      List.of(
          sequence(
              "backward-power-sum",
              "power sums with a negative index: S₋₂",
              "value",
              AnswerSort.WHOLE,
              (chance, scale) -> about(chance, scale, "S_-" + chance.between(2, 4))),
          sequence(
              "power-sum-last-digits",
              "the last digits of a power sum far out",
              "residue",
              AnswerSort.WHOLE,
              (chance, scale) ->
                  about(
                      chance,
                      scale,
                      chance.oneOf("last digit of S_", "last two digits of S_")
                          + chance.between(20, 400))),
          sequence(
              "power-sum-period",
              "after how many places the remainders return",
              "period",
              AnswerSort.WHOLE,
              (chance, scale) -> about(chance, scale, "period mod " + chance.oneOf("3", "5", "7"))),
          sequence(
              "power-sum-recurrence",
              "the recurrence of the power sums",
              "recurrence",
              AnswerSort.FUNCTIONS,
              (chance, scale) -> about(chance, scale, "recurrence")),
          sequence(
              "power-sum-series",
              "the generating function of the power sums",
              "generating-function",
              AnswerSort.FUNCTIONS,
              (chance, scale) -> about(chance, scale, "generating function")),
          sequence(
              "power-sums-divisible",
              "whether all power sums are divisible",
              "divisibility",
              AnswerSort.TRUTHS,
              SequencePatterns::divisible),
          typed(
              "sequence-member",
              "a member of a sequence that is given by a recurrence",
              "recurrence",
              AnswerSort.WHOLE,
              SequencePatterns::member),
          typed(
              "sequence-closed-form",
              "the closed form of a sequence that is given by a recurrence",
              "recurrence",
              AnswerSort.FUNCTIONS,
              SequencePatterns::closedForm),
          typed(
              "sequence-remainders",
              "the last digits of a member far out, or after how many places the remainders return",
              "recurrence",
              AnswerSort.WHOLE,
              SequencePatterns::remainders),
          new Pattern(
              "floor-of-power",
              "the last digit of the whole part of a power",
              "floor",
              List.of(),
              AnswerSort.WHOLE,
              SequencePatterns::floor));

  private SequencePatterns() {}

  private static Pattern sequence(
      String name, String words, String kind, AnswerSort answers, Pattern.Recipe recipe) {
    return new Pattern(name, words, kind, List.of(3, 2, 4), answers, recipe);
  }

  private static Pattern typed(
      String name, String words, String kind, AnswerSort answers, Pattern.Recipe recipe) {
    return new Pattern(name, words, kind, List.of(), answers, recipe);
  }

  /** u_{k+2} = p·u_{k+1} + q·u_k with its first two members. */
  private static String recurrence(int first, int second, int p, int q) {
    String one = p == 1 ? "" : p == -1 ? "-" : Integer.toString(p);
    String other = Math.abs(q) == 1 ? "" : Integer.toString(Math.abs(q));
    return "u_0 = %d, u_1 = %d, u_{k+2} = %su_{k+1} %s %su_k"
        .formatted(first, second, one, q < 0 ? "-" : "+", other);
  }

  private static Optional<Statement> member(Chance chance, Scale scale) {
    return alone(
        "u_%d if %s"
            .formatted(
                chance.between(5, 10),
                recurrence(
                    chance.between(0, 3),
                    chance.between(1, 4),
                    chance.nonZero(Math.min(5, scale.roots())),
                    chance.nonZero(Math.min(6, scale.roots())))));
  }

  /** The characteristic equation has the whole roots a and b. */
  private static Optional<Statement> closedForm(Chance chance, Scale scale) {
    int a = chance.nonZero(Math.min(4, scale.roots()));
    int b = chance.nonZero(Math.min(4, scale.roots()));
    int first = chance.between(0, 3);
    // c·aⁿ + d·bⁿ with whole c and d, or (c + dn)·aⁿ.
    int factor = chance.nonZero(3);
    int second = a == b ? (first + factor) * a : (first - factor) * a + factor * b;
    return a + b == 0
        ? Optional.empty()
        : alone("closed form if " + recurrence(first, second, a + b, -a * b));
  }

  private static Optional<Statement> remainders(Chance chance, Scale scale) {
    String given =
        recurrence(
            chance.between(0, 2),
            chance.between(1, 3),
            chance.between(1, Math.min(4, scale.roots())),
            chance.nonZero(Math.min(3, scale.roots())));
    return alone(
        chance.flip()
            ? "last %s of u_%d if %s"
                .formatted(chance.oneOf("digit", "two digits"), chance.between(30, 300), given)
            : "period mod %s if %s".formatted(chance.oneOf("3", "5", "7", "10"), given));
  }

  private static Polynomial drawn(Chance chance, Scale scale) {
    long[] coefficients = new long[scale.degree() + 1];
    coefficients[0] = 1;
    for (int k = 1; k < scale.degree(); k++) {
      coefficients[k] = chance.between(-scale.roots(), scale.roots());
    }
    coefficients[scale.degree()] = chance.nonZero(scale.roots());
    return Polynomial.ofDescending(coefficients);
  }

  private static Optional<Statement> about(Chance chance, Scale scale, String find) {
    return statement(drawn(chance, scale), find);
  }

  /** Every other time all coefficients below the lead are divisible, and so are all sums. */
  private static Optional<Statement> divisible(Chance chance, Scale scale) {
    int prime = chance.oneOf(List.of(2, 3, 5));
    Polynomial polynomial = drawn(chance, scale);
    if (chance.flip()) {
      Polynomial lead = Polynomial.X.power(scale.degree());
      polynomial = lead.plus(polynomial.minus(lead).times(Rational.of(prime)));
    }
    return statement(polynomial, "are all power sums divisible by " + prime);
  }

  /** The conjugate a − √b lies between −1 and 1. */
  private static Optional<Statement> floor(Chance chance, Scale scale) {
    int whole = chance.between(2, Math.max(3, scale.roots()));
    int radicand = chance.between((whole - 1) * (whole - 1) + 1, (whole + 1) * (whole + 1) - 1);
    int power = chance.between(20, 2100);
    return Written.isSquare(radicand)
        ? Optional.empty()
        : alone(
            "last digit of floor((%d + %s)^%d)".formatted(whole, Written.root(radicand), power));
  }
}
