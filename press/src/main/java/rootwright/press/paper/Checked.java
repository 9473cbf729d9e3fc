package rootwright.press.paper;

import rootwright.working.problem.Statement;
import rootwright.working.solve.Solution;

/**
 * What the checks found, and the statement they read.
 *
 * @param read the statement as it stood when it was read
 * @param solution everything found
 */
public record Checked(Statement read, Solution solution) {}
