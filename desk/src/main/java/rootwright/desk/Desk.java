package rootwright.desk;

import java.math.BigInteger;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.UnreadableException;
import rootwright.desk.figure.RootPicture;
import rootwright.desk.figure.SequencePicture;
import rootwright.working.ask.ProblemReader;
import rootwright.working.kind.Kinds;
import rootwright.working.problem.Problem;
import rootwright.working.problem.Statement;
import rootwright.working.route.ClassProfile;
import rootwright.working.route.Routes;
import rootwright.working.solve.Solution;

/** What a coach does at the desk: one method each. Safe to use from several threads. */
public final class Desk {

  private static final int MOST_ROOTS_DRAWN = 30;
  private static final Set<String> POWER_SUM_LETTERS = Set.of("S", "p");

  private final Kinds kinds = new Kinds();

  /**
   * Reads a problem and finds everything that can be said of it.
   *
   * @throws UnreadableException if the text cannot be read; says where and what to mend
   * @throws rootwright.working.solve.CheckFailedException if a check refutes something of ours
   */
  public Solution work(Statement statement, ClassProfile profile) throws UnreadableException {
    return kinds.solve(ProblemReader.read(statement), profile);
  }

  /**
   * Reads a problem without working it.
   *
   * @throws UnreadableException if the text cannot be read
   */
  public Problem read(Statement statement) throws UnreadableException {
    return ProblemReader.read(statement);
  }

  /** The roots and the curve of a problem, if it has roots and few enough to be drawn. */
  public Optional<RootPicture> picture(Problem problem) {
    boolean drawable = problem.degree() >= 1 && problem.degree() <= MOST_ROOTS_DRAWN;
    return drawable ? Optional.of(RootPicture.of(problem.polynomial())) : Optional.empty();
  }

  /** The power sums round the one that is asked for, if a power sum is asked for by its index. */
  public Optional<SequencePicture> sequence(Problem problem) {
    Formula ask = problem.ask() instanceof Formula.Modulo modulo ? modulo.of() : problem.ask();
    if (problem.degree() >= 1
        && ask instanceof Formula.Family family
        && POWER_SUM_LETTERS.contains(family.letter())
        && family.index() instanceof Formula.Numeral index
        && index.value().isInteger()
        && index.value().signum() > 0) {
      int asked = index.value().numerator().min(BigInteger.valueOf(Integer.MAX_VALUE)).intValue();
      return Optional.of(SequencePicture.of(problem.polynomial(), asked));
    }
    return Optional.empty();
  }

  /** Every route of the house by its name, with its title; a class may not have them all. */
  public Map<String, String> routes() {
    Map<String, String> titles = new LinkedHashMap<>();
    Routes.ALL.forEach(route -> titles.put(route.name(), route.title()));
    return titles;
  }
}
