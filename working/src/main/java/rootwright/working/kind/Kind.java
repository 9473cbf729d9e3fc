package rootwright.working.kind;

import rootwright.working.problem.Problem;
import rootwright.working.route.ClassProfile;
import rootwright.working.solve.Solution;

/** One kind of ask: what it looks like, and how everything about it is found. */
public interface Kind {

  /** Stable short name, lower case with hyphens: {@code real-roots}. */
  String name();

  /** Whether the ask of this problem is of this kind. */
  boolean recognises(Problem problem);

  /** Works the problem. */
  Solution solve(Problem problem, ClassProfile profile);
}
