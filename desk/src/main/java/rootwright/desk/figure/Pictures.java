package rootwright.desk.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaExpansion;
import rootwright.algebra.notation.PlainWriter;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.answer.Answer;
import rootwright.working.described.DescribedRoots;
import rootwright.working.problem.Statement;
import rootwright.working.recurrence.LinearRecurrences;
import rootwright.working.solve.Given;
import rootwright.working.solve.Solution;

/**
 * What there is to see of a solution. Some pictures need another ask of the same problem to be
 * worked, such as the least value beside the greatest.
 */
public final class Pictures {

  /** More roots than this are not seen apart. */
  private static final int MOST_ROOTS = 30;

  private static final int MEMBERS = 11;

  private static final Set<String> WHOLE_SEQUENCE =
      Set.of("generating-function", "recurrence", "divisibility");

  private static final Pattern BOUND =
      Pattern.compile(
          "^(\\s*(?:the )?)(least|smallest|minimum|minimal|min|greatest|largest|maximum|maximal|max)\\b"
              + "(.*)$",
          Pattern.DOTALL);

  private static final List<String> OLD_AND_NEW =
      List.of("the roots", "the roots of the new polynomial");

  private final Worker worker;

  /** Works another ask of the same problem. */
  public interface Worker {
    /**
     * The solution.
     *
     * @throws UnreadableException if it cannot be read
     */
    Solution work(Statement statement) throws UnreadableException;
  }

  /** With somebody to work other asks. */
  public Pictures(Worker worker) {
    this.worker = worker;
  }

  /** The roots of a solution and their polynomial, if it is about the roots of one with numbers. */
  public Optional<RootPicture> roots(Statement statement, Solution solution) {
    return polynomial(statement, solution)
        .filter(polynomial -> polynomial.degree() >= 1 && polynomial.degree() <= MOST_ROOTS)
        .map(RootPicture::of);
  }

  /** The power sums or the members of a sequence, if the solution is about them. */
  public Optional<SequencePicture> sums(Statement statement, Solution solution) {
    Map<Integer, Rational> members = LinearRecurrences.members(statement, MEMBERS);
    if (!members.isEmpty()) {
      return Optional.of(SequencePicture.of("u", members));
    }
    Optional<Polynomial> polynomial = expanded(solution.given());
    if (polynomial.isEmpty() || polynomial.get().degree() < 1) {
      return Optional.empty();
    }
    Formula find = solution.given().find();
    Formula ask = find instanceof Formula.Modulo modulo ? modulo.of() : find;
    return SequencePicture.about(polynomial.get(), ask, WHOLE_SEQUENCE.contains(solution.kind()));
  }

  /** Everything else. */
  public List<Picture> of(Statement statement, Solution solution) {
    Given given = solution.given();
    Answer answer = solution.answer();
    List<Picture> pictures = new ArrayList<>();
    if (answer instanceof Answer.None || answer instanceof Answer.Refused) {
      return pictures;
    }
    switch (solution.kind()) {
      case "bound" -> range(statement, solution).ifPresent(pictures::add);
      case "value-of-polynomial" -> points(given, answer).ifPresent(pictures::add);
      case "disguised-equation" -> Sides.of(given).ifPresent(pictures::add);
      case "vieta-jumping" -> Lattices.of(given).ifPresent(pictures::add);
      case "floor" -> Rings.ofWholePart(given.find()).ifPresent(pictures::add);
      case "period" ->
          expanded(given)
              .flatMap(polynomial -> Rings.ofSums(polynomial, given.find()))
              .ifPresent(pictures::add);
      case "polynomial-with-roots", "resolvent" -> newRoots(solution).ifPresent(pictures::add);
      default -> {
        Pairs.of(given, answer).ifPresent(pictures::add);
        Letters.of(given).ifPresent(letters -> letters(statement, solution, letters, pictures));
      }
    }
    return pictures;
  }

  private void letters(
      Statement statement, Solution solution, Letters letters, List<Picture> pictures) {
    Formula find = solution.given().find();
    if (solution.answer() instanceof Answer.FunctionOf function) {
      letters.graph(function.formula(), find, List.of()).ifPresent(pictures::add);
    } else if (solution.kind().equals("extreme")
        && find instanceof Formula.Application extreme
        && extreme.arguments().size() == 1) {
      Formula value = extreme.arguments().get(0);
      worked(statement, PlainWriter.write(value))
          .filter(whole -> whole.answer() instanceof Answer.FunctionOf)
          .flatMap(
              whole ->
                  letters.graph(
                      ((Answer.FunctionOf) whole.answer()).formula(),
                      value,
                      AnswerNumbers.decimals(solution.answer())))
          .ifPresent(pictures::add);
    }
    letters.moving(solution.answer()).ifPresent(pictures::add);
  }

  /** What the number that is bounded may be: from its least to its greatest. */
  private Optional<Picture> range(Statement statement, Solution solution) {
    Matcher bound = BOUND.matcher(statement.find());
    if (!bound.matches()) {
      return Optional.empty();
    }
    boolean greatest = bound.group(2).matches("greatest|largest|max.*");
    String turned = bound.group(1) + (greatest ? "least" : "greatest") + bound.group(3);
    Optional<Answer> other = worked(statement, turned).map(Solution::answer);
    if (other.isEmpty()
        || AnswerNumbers.decimals(other.get()).size() != 1
        || AnswerNumbers.decimals(solution.answer()).size() != 1) {
      return Optional.empty();
    }
    Answer low = greatest ? other.get() : solution.answer();
    Answer high = greatest ? solution.answer() : other.get();
    return Optional.of(
        new RangePicture(
            PlainWriter.write(solution.given().find()),
            AnswerNumbers.decimals(low).get(0),
            AnswerNumbers.decimals(high).get(0),
            PlainWriter.write(low.formula()),
            PlainWriter.write(high.formula()),
            greatest));
  }

  private static Optional<Picture> newRoots(Solution solution) {
    if (!(solution.answer() instanceof Answer.PolynomialIn fresh)) {
      return Optional.empty();
    }
    return expanded(solution.given())
        .flatMap(old -> Pairs.of(old, fresh.polynomial(), OLD_AND_NEW, ""));
  }

  /** The points that are given of a polynomial, with the one that was asked for. */
  private static Optional<Picture> points(Given given, Answer answer) {
    List<Place> places = new ArrayList<>();
    for (Formula condition : given.conditions()) {
      if (condition instanceof Formula.Relation relation && relation.sides().size() == 2) {
        place(relation.sides().get(0), Sampled.of(relation.sides().get(1))).ifPresent(places::add);
      }
    }
    return place(given.find(), Sampled.of(answer.formula()))
        .filter(asked -> places.size() > 1)
        .map(asked -> new PointsPicture(places, asked, "P"));
  }

  private static Optional<Place> place(Formula applied, double value) {
    if (applied instanceof Formula.Application application && application.arguments().size() == 1) {
      double at = Sampled.of(application.arguments().get(0));
      if (Double.isFinite(at) && Double.isFinite(value)) {
        return Optional.of(new Place(at, value));
      }
    }
    return Optional.empty();
  }

  private Optional<Solution> worked(Statement statement, String find) {
    try {
      return Optional.of(
          worker.work(
              new Statement(statement.polynomial(), find, statement.roots(), statement.unknown())));
    } catch (UnreadableException unreadable) {
      return Optional.empty();
    }
  }

  private static Optional<Polynomial> polynomial(Statement statement, Solution solution) {
    Optional<Polynomial> described = DescribedRoots.polynomialOf(statement.polynomial());
    if (described.isPresent()) {
      return described;
    }
    Optional<Polynomial> expanded = expanded(solution.given());
    return expanded.isEmpty() && solution.answer() instanceof Answer.PolynomialIn fresh
        ? Optional.of(fresh.polynomial())
        : expanded;
  }

  /** The polynomial of a problem, if it has one with numbers for coefficients. */
  private static Optional<Polynomial> expanded(Given given) {
    if (given.unknown().isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(FormulaExpansion.polynomial(given.polynomial(), given.unknown()));
    } catch (UnreadableException | IllegalArgumentException noPolynomial) {
      return Optional.empty();
    }
  }
}
