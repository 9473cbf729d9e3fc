/**
 * Hints in five rungs, from the shortest working, none of which gives the answer away. Start at
 * {@link rootwright.composing.hint.HintLadder#of}.
 */
@NullMarked
package rootwright.composing.hint;

import org.jspecify.annotations.NullMarked;
