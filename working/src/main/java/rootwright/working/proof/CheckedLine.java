package rootwright.working.proof;

import java.util.Optional;
import rootwright.algebra.notation.Formula;

/**
 * A line of a proof in chosen letters.
 *
 * @param words what is said
 * @param shown the equation, confirmed by expansion; empty for an argument
 */
public record CheckedLine(String words, Optional<Formula> shown) {}
