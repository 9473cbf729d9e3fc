package rootwright.desk.paper;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import rootwright.algebra.notation.PlainWriter;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.algebra.value.RationalValue;
import rootwright.composing.blueprint.Composed;
import rootwright.composing.blueprint.ContradictoryBlueprintException;
import rootwright.composing.level.Level;
import rootwright.composing.option.Choices;
import rootwright.press.paper.Checker;
import rootwright.press.paper.WholeNumberRule;
import rootwright.working.answer.Answer;
import rootwright.working.ask.ProblemReader;
import rootwright.working.problem.Problem;
import rootwright.working.problem.Statement;
import rootwright.working.solve.Solution;

/**
 * Siblings of an item for the versions of a paper: levels pairwise within 0.3, keys pairwise
 * different and of one look, the same live slips, monic only beside monic, and each fit for the
 * form of the item.
 */
final class Renumbering {

  /** Siblings looked at for every one that is needed, since some do not suit the others. */
  private static final int LOOKED_AT = 6;

  private static final int MOST_LOOKED_AT = 300;

  /** Levels on paper are rounded to hundredths, and rounded they may differ by 0.3. */
  private static final Rational NEAR = Rational.of(29, 100);

  /**
   * A statement with what was found about it.
   *
   * @param statement as it will stand in the file
   * @param solution everything about it
   */
  record Worked(Statement statement, Solution solution) {}

  private final SiblingSource source;
  private final Checker checker;

  Renumbering(SiblingSource source, Checker checker) {
    this.source = source;
    this.checker = checker;
  }

  /**
   * The item and its siblings.
   *
   * @param count how many versions, the first is the item itself
   * @throws IllegalArgumentException if there are not so many siblings
   */
  List<Worked> of(Worked first, AnswerForm form, int choices, int count, long seed)
      throws UnreadableException {
    List<Worked> chosen = new ArrayList<>(List.of(first));
    if (count < 2) {
      return chosen;
    }
    int wanted = Math.min(MOST_LOOKED_AT, LOOKED_AT * count);
    for (Composed composed : found(first.statement(), wanted, seed)) {
      if (chosen.size() == count) {
        break;
      }
      Optional<Worked> candidate = reworked(first.statement(), composed);
      if (candidate.isPresent()
          && suits(form, choices, candidate.get())
          && chosen.stream().allMatch(other -> areSiblings(other, candidate.get()))) {
        chosen.add(candidate.get());
      }
    }
    if (chosen.size() < count) {
      throw new IllegalArgumentException(
          ("only %d of %d versions of “%s” were found; order fewer versions, versions reordered, or"
                  + " another item")
              .formatted(chosen.size(), count, first.statement().find()));
    }
    return chosen;
  }

  private List<Composed> found(Statement statement, int wanted, long seed)
      throws UnreadableException {
    try {
      return source.siblings(statement, wanted, seed).problems();
    } catch (ContradictoryBlueprintException none) {
      throw new IllegalArgumentException(
          "“%s” has no siblings: %s".formatted(statement.find(), none.getMessage()), none);
    }
  }

  /** The sibling in the words of the first: read anew, so that its text is what was worked. */
  private Optional<Worked> reworked(Statement like, Composed composed) throws UnreadableException {
    Optional<Problem> sibling = composed.solution().given().problem();
    Statement statement =
        sibling.isEmpty() || like.polynomial().isBlank()
            ? composed.statement()
            : new Statement(
                PlainWriter.write(
                    PolynomialFormula.of(
                        sibling.get().polynomial(), ProblemReader.read(like).unknown())),
                like.find(),
                like.roots(),
                like.unknown());
    Solution solution = checker.read(statement);
    return solution.answer().equals(composed.solution().answer())
        ? Optional.of(new Worked(statement, solution))
        : Optional.empty();
  }

  private static boolean suits(AnswerForm form, int choices, Worked candidate) {
    Solution solution = candidate.solution();
    return switch (form) {
      case SHORT -> true;
      case CHOICE -> Choices.of(solution, choices).options().size() >= Choices.FEWEST;
      case INTEGER -> WholeNumberRule.of(solution.answer()).isPresent();
    };
  }

  private static boolean areSiblings(Worked one, Worked other) {
    return !one.solution().answer().equals(other.solution().answer())
        && look(one).equals(look(other))
        && isMonic(one) == isMonic(other)
        && slips(one).equals(slips(other))
        && near(one, other);
  }

  /** Keys of siblings are alike in sign, and whole beside whole, fraction beside fraction. */
  private static String look(Worked worked) {
    return worked.solution().answer() instanceof Answer.Exact exact
            && exact.value() instanceof RationalValue value
        ? value.number().signum() + (value.number().isInteger() ? " whole" : " fraction")
        : "other";
  }

  private static boolean isMonic(Worked worked) {
    try {
      return ProblemReader.read(worked.statement())
          .polynomial()
          .primitive()
          .lead()
          .numerator()
          .equals(BigInteger.ONE);
    } catch (UnreadableException impossible) {
      throw new IllegalStateException("it was read before", impossible);
    }
  }

  private static Set<String> slips(Worked worked) {
    return worked.solution().slips().stream()
        .map(Solution.WrongTurning::name)
        .collect(Collectors.toSet());
  }

  private static boolean near(Worked one, Worked other) {
    Optional<Rational> left = Level.of(one.solution()).map(Level::difficulty);
    Optional<Rational> right = Level.of(other.solution()).map(Level::difficulty);
    return left.isPresent()
        && right.isPresent()
        && left.get().minus(right.get()).absolute().compareTo(NEAR) <= 0;
  }
}
