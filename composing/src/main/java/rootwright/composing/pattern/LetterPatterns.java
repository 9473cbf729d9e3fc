package rootwright.composing.pattern;

import static rootwright.composing.pattern.Written.bears;
import static rootwright.composing.pattern.Written.statement;
import static rootwright.composing.pattern.Written.withLetter;
import static rootwright.composing.pattern.Written.withRoots;

import java.util.List;
import java.util.Optional;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.problem.Statement;

/** A letter among the coefficients, to be found from what is said of the roots. */
final class LetterPatterns {

  private static final String KIND = "letters";
  private static final List<Integer> CUBIC = List.of(3);

  static final List<Pattern> ALL =
      List.of(
          new Pattern(
              "letter-known-root",
              "the letter if one root is known",
              KIND,
              List.of(3, 2, 4, 5),
              AnswerSort.WHOLE,
              LetterPatterns::knownRoot),
          cubic(
              "letter-double-root",
              "the letter if two roots are equal",
              LetterPatterns::doubleRoot),
          cubic(
              "letter-opposite-roots",
              "the letter if two roots are opposite",
              LetterPatterns::opposite),
          cubic(
              "letter-root-multiple",
              "the letter if one root is a multiple of another",
              LetterPatterns::multiple),
          cubic(
              "letter-sum-of-two",
              "the letter if one root is the sum of the other two",
              LetterPatterns::sumOfTwo),
          cubic(
              "letter-product-of-two",
              "the letter if two roots have a given product",
              LetterPatterns::productOfTwo),
          cubic(
              "letter-arithmetic-roots",
              "the letter if the roots are in arithmetic progression",
              LetterPatterns::arithmetic),
          cubic(
              "letter-geometric-roots",
              "the letter if the roots are in geometric progression",
              LetterPatterns::geometric),
          new Pattern(
              "letter-symmetric-value",
              "the letter from the sum of the squares, the roots being real",
              KIND,
              List.of(2),
              AnswerSort.WHOLE,
              LetterPatterns::symmetricValue),
          new Pattern(
              "letters-conjugate-root",
              "two letters if a root with i or a square root is known",
              KIND,
              CUBIC,
              AnswerSort.SEVERAL,
              LetterPatterns::conjugate),
          new Pattern(
              "letters-divisor",
              "two letters if a quadratic divides",
              KIND,
              List.of(5, 4, 6, 7, 8),
              AnswerSort.SEVERAL,
              LetterPatterns::divisor),
          new Pattern(
              "letters-relation",
              "the relation between the letters if something is said of the roots",
              "relation",
              CUBIC,
              AnswerSort.FUNCTIONS,
              LetterPatterns::relation));

  private LetterPatterns() {}

  private static Pattern cubic(String name, String words, Pattern.Recipe recipe) {
    return new Pattern(name, words, KIND, CUBIC, AnswerSort.WHOLE, recipe);
  }

  /** The letter put in for one of the coefficients, if the others are fit to be printed. */
  private static Optional<Statement> asked(
      Polynomial polynomial, int power, String condition, Scale scale) {
    boolean hidden = polynomial.coefficient(power).isZero();
    return bears(scale, polynomial) && !hidden
        ? statement(withLetter(polynomial, power, "k"), "k if " + condition)
        : Optional.empty();
  }

  private static Optional<Statement> knownRoot(Chance chance, Scale scale) {
    Polynomial rest = Polynomial.ONE;
    while (rest.degree() < scale.degree() - 1) {
      int step = Math.min(2, scale.degree() - 1 - rest.degree());
      rest =
          rest.times(
              step == 2
                  ? Polynomial.ofDescending(
                      1,
                      chance.between(-scale.roots(), scale.roots()),
                      chance.nonZero(scale.roots()))
                  : withRoots(chance.nonZero(scale.roots())));
    }
    int root = chance.nonZero(Math.min(4, scale.size()));
    Polynomial polynomial = rest.times(withRoots(root));
    return asked(polynomial, chance.between(0, scale.degree() - 1), root + " is a root", scale);
  }

  private static Optional<Statement> doubleRoot(Chance chance, Scale scale) {
    int twice = chance.nonZero(scale.roots());
    int once = chance.nonZero(scale.size());
    Polynomial polynomial =
        Polynomial.ofDescending(chance.between(1, 2), -once).times(withRoots(twice, twice));
    return asked(polynomial, chance.between(0, 1), "a double root", scale);
  }

  private static Optional<Statement> opposite(Chance chance, Scale scale) {
    int square = chance.between(2, Math.max(2, scale.size()));
    int third = chance.nonZero(scale.roots());
    Polynomial polynomial =
        Polynomial.ofDescending(1, 0, chance.flip() ? square : -square)
            .times(Polynomial.ofDescending(chance.between(1, 2), -third));
    return asked(polynomial, chance.between(0, 2), "r = -s", scale);
  }

  private static Optional<Statement> multiple(Chance chance, Scale scale) {
    int times = chance.oneOf(List.of(2, 3, 4, -2, -3));
    int root = chance.nonZero(Math.max(2, scale.roots() / 2));
    int third = chance.nonZero(scale.roots());
    Polynomial polynomial = withRoots(root, (long) times * root, third);
    return asked(polynomial, chance.between(0, 1), "r = " + times + "s", scale);
  }

  private static Optional<Statement> sumOfTwo(Chance chance, Scale scale) {
    int square = chance.nonZero(scale.roots());
    int sum = chance.nonZero(scale.roots());
    Polynomial polynomial = Polynomial.ofDescending(1, -sum, square).times(withRoots(sum));
    return asked(polynomial, chance.between(0, 1), "one root is the sum of the other two", scale);
  }

  private static Optional<Statement> productOfTwo(Chance chance, Scale scale) {
    int product = chance.nonZero(scale.roots());
    int sum = chance.nonZero(scale.roots());
    int third = chance.nonZero(scale.roots());
    Polynomial polynomial = Polynomial.ofDescending(1, -sum, product).times(withRoots(third));
    return asked(polynomial, chance.between(1, 2), "r s = " + product, scale);
  }

  private static Optional<Statement> arithmetic(Chance chance, Scale scale) {
    int middle = chance.nonZero(scale.roots());
    int square = chance.between(1, 3 * scale.size());
    int lead = chance.between(1, 3) == 3 ? 2 : 1;
    // The roots are m − √q, m, m + √q; with lead 2 the middle one is m/2.
    Polynomial polynomial =
        lead == 1
            ? Polynomial.ofDescending(1, -2L * middle, (long) middle * middle - square)
                .times(withRoots(middle))
            : Polynomial.ofDescending(1, -middle, square)
                .times(Polynomial.ofDescending(2, -middle));
    return asked(polynomial, chance.between(0, 1), "roots in arithmetic progression", scale);
  }

  private static Optional<Statement> geometric(Chance chance, Scale scale) {
    int middle = chance.nonZero(Math.min(4, scale.roots()));
    int sum = chance.nonZero(scale.size());
    // The outer two have the sum and the product of the middle one's square.
    Polynomial polynomial =
        Polynomial.ofDescending(1, -sum, (long) middle * middle).times(withRoots(middle));
    return sum == 2 * middle
        ? Optional.empty()
        : asked(polynomial, chance.between(1, 2), "roots in geometric progression", scale);
  }

  private static Optional<Statement> symmetricValue(Chance chance, Scale scale) {
    int letter = chance.nonZero(scale.roots());
    int add = chance.nonZero(scale.roots());
    int times = chance.nonZero(3);
    int free = chance.between(-scale.size(), scale.size());
    long sum = letter + (long) add;
    long product = (long) times * letter + free;
    String below =
        (times == 1 ? "m" : times == -1 ? "-m" : times + "m")
            + (free == 0 ? "" : Written.signed(free));
    return sum * sum < 4 * product || sum == 0
        ? Optional.empty()
        : statement(
            "x^2 - (m%s)x + (%s)".formatted(Written.signed(add), below),
            "m if r^2 + s^2 = %d, roots real".formatted(sum * sum - 2 * product));
  }

  private static Optional<Statement> conjugate(Chance chance, Scale scale) {
    int real = chance.between(-3, 3);
    int third = chance.nonZero(scale.roots());
    boolean complex = chance.flip();
    int part = complex ? chance.between(1, 4) : chance.oneOf(List.of(2, 3, 5, 6, 7));
    long square = complex ? -(long) part * part : part;
    Polynomial polynomial =
        Polynomial.ofDescending(1, -2L * real, (long) real * real - square).times(withRoots(third));
    String root =
        (real == 0 ? "" : real + " + ")
            + (complex ? part == 1 ? "i" : part + "i" : Written.root(part));
    if (polynomial.coefficient(2).isZero()) {
      return Optional.empty();
    }
    return statement(
        Written.terms(List.of("1", polynomial.coefficient(2).toString(), "a", "b")),
        "a, b if %s is a root".formatted(root));
  }

  private static Optional<Statement> divisor(Chance chance, Scale scale) {
    int linear = chance.nonZero(3);
    int constant = chance.nonZero(3);
    Polynomial divisor = Polynomial.ofDescending(1, linear, constant);
    Polynomial rest = Polynomial.X.power(scale.degree()).remainder(divisor);
    return linear * linear == 4 * constant || rest.degree() < 1 || !bears(scale, rest)
        ? Optional.empty()
        : statement(
            "x^%d + a x + b".formatted(scale.degree()),
            "a, b if %s divides".formatted(Written.text(divisor)));
  }

  private static Optional<Statement> relation(Chance chance, Scale scale) {
    int number = chance.oneOf(List.of(2, 3, 4, 5, 6, -2, -3, -4));
    return statement(
        "x^3 + a x^2 + b x + c",
        "condition if " + (chance.flip() ? "r = " + number + "s" : "r s = " + number));
  }
}
