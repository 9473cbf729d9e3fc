package rootwright.composing.blueprint;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rootwright.algebra.notation.UnreadableException;
import rootwright.composing.pattern.Pattern;
import rootwright.composing.pattern.Patterns;
import rootwright.composing.pattern.Scale;
import rootwright.working.Subjects;
import rootwright.working.problem.Statement;
import rootwright.working.solve.Given;

/**
 * Where other statements of the form of a given one come from: the patterns that make such
 * statements, and the statement itself with other numbers.
 */
final class GivenStatement {

  /** So many statements of a pattern are drawn to see whether it makes such ones. */
  private static final int LOOKED_AT = 12;

  private static final int LARGEST = 40;

  private final Statement original;
  private final Given given;
  private final Subjects subjects;

  GivenStatement(Statement original, Subjects subjects) throws UnreadableException {
    this.original = original;
    this.given = subjects.read(original);
    this.subjects = subjects;
  }

  /** Sources of statements with the same skeleton, patterns first. */
  List<StatementSource> sources() {
    Skeleton wanted = Skeleton.of(given);
    Stream<StatementSource> patterns =
        Patterns.ALL.stream()
            .map(pattern -> (StatementSource) seed -> pattern.at(seed, scale(pattern)))
            .filter(source -> makes(source, wanted))
            .map(source -> seed -> source.at(seed).filter(each -> isLike(each, wanted)));
    return Stream.concat(patterns, Stream.of(new OtherNumbers(original))).toList();
  }

  private Scale scale(Pattern pattern) {
    int degree = given.roots().size();
    return new Scale(
        pattern.degrees().contains(degree) ? degree : pattern.usualDegree(),
        Math.min(LARGEST, PolynomialWish.USUAL.size()));
  }

  private boolean makes(StatementSource source, Skeleton wanted) {
    return Stream.iterate(1L, seed -> seed + 1)
        .limit(LOOKED_AT)
        .map(source::at)
        .flatMap(Optional::stream)
        .anyMatch(statement -> isLike(statement, wanted));
  }

  /** What can be seen of two statements without reading them. */
  private boolean looksLike(Statement statement) {
    return statement.polynomial().isBlank() == original.polynomial().isBlank()
        && statement.find().contains(" if ") == original.find().contains(" if ")
        && statement.polynomial().contains("π") == original.polynomial().contains("π");
  }

  private boolean isLike(Statement statement, Skeleton wanted) {
    if (!looksLike(statement)) {
      return false;
    }
    try {
      Given other = subjects.read(statement);
      return other.roots().size() == given.roots().size() && Skeleton.of(other).equals(wanted);
    } catch (UnreadableException other) {
      return false;
    }
  }
}
