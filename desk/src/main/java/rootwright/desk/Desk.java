package rootwright.desk;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rootwright.algebra.notation.Refusal;
import rootwright.algebra.notation.UnreadableException;
import rootwright.bank.shelf.Shelf;
import rootwright.bank.shelf.ShelfEntry;
import rootwright.bank.shelf.ShelfTwin;
import rootwright.composing.blueprint.Composition;
import rootwright.desk.figure.Pictures;
import rootwright.desk.paper.Papers;
import rootwright.desk.table.ComposersTable;
import rootwright.working.Subjects;
import rootwright.working.ask.ProblemReader;
import rootwright.working.kind.Kinds;
import rootwright.working.problem.Problem;
import rootwright.working.problem.Statement;
import rootwright.working.review.Review;
import rootwright.working.review.Reviewer;
import rootwright.working.review.given.GivenReviewer;
import rootwright.working.route.ClassProfile;
import rootwright.working.route.Routes;
import rootwright.working.solve.Given;
import rootwright.working.solve.Solution;
import rootwright.working.solve.TwoChecks;

/** What a coach does at the desk: one method each. Safe to use from several threads. */
public final class Desk {

  /** Kinds of ask whose lines lean on the roots of one polynomial and on nothing else. */
  private static final Set<String> LINE_BY_ROOTS = Set.of("value", "reduce", "discriminant");

  private final Kinds kinds = new Kinds();
  private final TwoChecks checks = new TwoChecks();
  private final Subjects subjects = new Subjects(kinds);
  private final Pictures pictures =
      new Pictures(statement -> work(statement, ClassProfile.EVERYTHING));
  private final ComposersTable table = new ComposersTable(kinds);
  private final Papers papers =
      new Papers(statement -> work(statement, ClassProfile.EVERYTHING), this::siblings);

  /**
   * Reads a problem and finds everything that can be said of it.
   *
   * @throws UnreadableException if the text cannot be read; says where and what to mend
   * @throws rootwright.working.solve.CheckFailedException if a check refutes something of ours
   */
  public Solution work(Statement statement, ClassProfile profile) throws UnreadableException {
    return subjects.work(statement, profile);
  }

  /**
   * Reads a statement, whatever it is about, without working it.
   *
   * @throws UnreadableException if the text cannot be read
   */
  public Given given(Statement statement) throws UnreadableException {
    return subjects.read(statement);
  }

  /** Whether a statement without a polynomial brings what it is about in its conditions. */
  public boolean standsAlone(Statement statement) {
    return subjects.standsAlone(statement);
  }

  /**
   * Reads a problem about the roots of one polynomial without working it.
   *
   * @throws UnreadableException if the text cannot be read
   */
  public Problem read(Statement statement) throws UnreadableException {
    return ProblemReader.read(statement);
  }

  /**
   * Judges somebody's working of a problem line by line.
   *
   * @param lines as they were written; a line beginning with = goes on from the one above
   * @throws UnreadableException if the problem itself cannot be read, or has no roots
   */
  public Review review(Statement statement, List<String> lines) throws UnreadableException {
    Optional<Problem> problem = subjects.aboutRoots(statement);
    if (problem.isPresent() && problem.get().degree() < 1) {
      throw new UnreadableException(
          new Refusal(
              "no-roots",
              "A constant has no roots, so there is no working to check.",
              statement.polynomial(),
              0,
              "a polynomial of degree 1 or more",
              ""));
    }
    Solution solution = work(statement, ClassProfile.EVERYTHING);
    if (problem.isPresent() && LINE_BY_ROOTS.contains(solution.kind())) {
      return Reviewer.of(problem.get(), lines, checks);
    }
    Optional<Review> review = GivenReviewer.of(solution, lines, checks);
    if (review.isPresent()) {
      return review.get();
    } else if (problem.isPresent()) {
      return Reviewer.of(problem.get(), lines, checks);
    }
    throw new UnreadableException(
        new Refusal(
            "not-checked",
            "Lines about more than five roots that come with letters or conditions are not checked.",
            statement.polynomial(),
            0,
            "a polynomial of degree 5 or less",
            ""));
  }

  /** What there is to see of a solution. */
  public Pictures pictures() {
    return pictures;
  }

  /** Every route of the house by its name, with its title; a class may not have them all. */
  public Map<String, String> routes() {
    Map<String, String> titles = new LinkedHashMap<>();
    Routes.ALL.forEach(route -> titles.put(route.name(), route.title()));
    return titles;
  }

  /** The composer's table, with everything that is done there. */
  public ComposersTable table() {
    return table;
  }

  /**
   * Finds problems of the same kind and level with other numbers.
   *
   * @throws UnreadableException if the problem cannot be read
   */
  public Composition siblings(Statement statement, int many, long seed) throws UnreadableException {
    return table.siblings(statement, many, seed, ComposersTable.Attention.NONE);
  }

  /**
   * Puts a problem on a shelf, unless it stands there already in whatever clothes.
   *
   * @return the problems there that it is related to; if one of them is the same in other clothes,
   *     nothing was put on the shelf, a shift is reported only
   * @throws UnreadableException if the problem cannot be read
   * @throws IOException if the shelf cannot be read or written
   */
  public List<ShelfTwin> shelve(Path shelf, Statement statement)
      throws UnreadableException, IOException {
    return new Shelf(shelf, subjects).add(statement);
  }

  /**
   * The problems on a shelf in whose line all words occur.
   *
   * @throws IOException if the shelf cannot be read
   */
  public List<ShelfEntry> onShelf(Path shelf, List<String> words) throws IOException {
    return new Shelf(shelf, subjects).find(words);
  }

  /**
   * What a composer is told to stay away from.
   *
   * @throws IOException if the shelf cannot be read
   */
  public Set<String> fingerprints(Path shelf) throws IOException {
    return new Shelf(shelf, subjects).fingerprints();
  }

  /** What a coach does with papers. */
  public Papers papers() {
    return papers;
  }
}
