/**
 * The press: from problems to what is handed out.
 *
 * <p>{@code document} holds what stands on a paper; each output has a package of its own and knows
 * nothing of the others.
 */
@NullMarked
package rootwright.press;

import org.jspecify.annotations.NullMarked;
