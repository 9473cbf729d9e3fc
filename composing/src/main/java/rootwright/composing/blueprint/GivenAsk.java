package rootwright.composing.blueprint;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rootwright.algebra.notation.UnreadableException;
import rootwright.composing.pattern.AnswerSort;
import rootwright.composing.pattern.Pattern;
import rootwright.composing.pattern.Patterns;
import rootwright.composing.pattern.Scale;
import rootwright.working.Subjects;
import rootwright.working.problem.Statement;
import rootwright.working.solve.Given;

/**
 * Statements for an ask that was typed and is not about the roots of one polynomial with numbers:
 * those of the patterns that ask just this, or else polynomials drawn for it. An ask that brings
 * its own data is varied in its numbers.
 */
final class GivenAsk {

  /** So many statements of a pattern are drawn to see whether it asks the same. */
  private static final int LOOKED_AT = 40;

  /** So many of them are enough to meet all forms of ask that a pattern has. */
  private static final int FORMS = 12;

  private static final List<String> LETTERS =
      List.of("k", "m", "a", "b", "c", "p", "q", "n", "d", "h");

  private final String find;
  private final Blueprint blueprint;
  private final Subjects subjects;

  GivenAsk(String find, Blueprint blueprint, Subjects subjects) {
    this.find = find;
    this.blueprint = blueprint;
    this.subjects = subjects;
  }

  /** The ask made ready; empty if nothing is known that it could be asked of. */
  Optional<StatementAsk> ask() {
    return Patterns.ALL.stream()
        .map(this::source)
        .flatMap(Optional::stream)
        .findFirst()
        .or(this::varied)
        .or(this::drawn)
        .map(this::ask);
  }

  /** The statements of a pattern that ask just this, if there are any. */
  private Optional<StatementSource> source(Pattern pattern) {
    PolynomialWish wish = blueprint.polynomial();
    int degree = pattern.degrees().contains(wish.degree()) ? wish.degree() : pattern.usualDegree();
    Scale scale = new Scale(degree, wish.size());
    StatementSource all = seed -> pattern.at(seed, scale);
    Optional<Given> asked =
        first(all)
            .filter(statement -> !statement.polynomial().isBlank())
            .flatMap(statement -> read(Statement.of(statement.polynomial(), find)));
    if (asked.isEmpty() || !isOfForm(all, Skeleton.of(asked.get()))) {
      return Optional.empty();
    }
    StatementSource exactly = seed -> all.at(seed).filter(each -> asks(each, asked.get()));
    return first(exactly).map(one -> exactly);
  }

  private boolean isOfForm(StatementSource source, Skeleton form) {
    return some(source, FORMS)
        .map(this::read)
        .flatMap(Optional::stream)
        .anyMatch(given -> Skeleton.of(given).equals(form));
  }

  /** The ask itself with other numbers, if it brings its own data. */
  private Optional<StatementSource> varied() {
    Statement alone = Statement.of("", find);
    return subjects.standsAlone(alone) && read(alone).isPresent()
        ? Optional.of(new OtherNumbers(alone))
        : Optional.empty();
  }

  private StatementAsk ask(StatementSource source) {
    return new StatementAsk(find, AnswerSort.SURDS, source, subjects);
  }

  /** Polynomials for the ask, with a letter that occurs in it among their coefficients, or none. */
  private Optional<StatementSource> drawn() {
    PolynomialWish wish = blueprint.polynomial();
    return Stream.concat(Stream.of(""), LETTERS.stream().filter(this::occurs))
        .map(letter -> new LetteredPolynomials(letter, wish.degree(), wish.size(), find))
        .filter(source -> first(source).flatMap(this::read).isPresent())
        .<StatementSource>map(source -> source)
        .findFirst();
  }

  private boolean occurs(String letter) {
    return find.matches("(?s)(.*[^\\p{L}])?" + letter + "([^\\p{L}].*)?");
  }

  private static Stream<Statement> some(StatementSource source, int many) {
    return Stream.iterate(1L, seed -> seed + 1)
        .limit(LOOKED_AT)
        .map(source::at)
        .flatMap(Optional::stream)
        .limit(many);
  }

  private static Optional<Statement> first(StatementSource source) {
    return some(source, 1).findFirst();
  }

  /** Whether a statement asks what was typed. */
  private boolean asks(Statement statement, Given asked) {
    return read(statement)
        .filter(
            given ->
                given.find().equals(asked.find()) && given.conditions().equals(asked.conditions()))
        .isPresent();
  }

  private Optional<Given> read(Statement statement) {
    try {
      return Optional.of(subjects.read(statement));
    } catch (UnreadableException other) {
      return Optional.empty();
    }
  }
}
