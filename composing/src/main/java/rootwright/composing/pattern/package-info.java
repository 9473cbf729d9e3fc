/**
 * Patterns: how statements of one kind are made, numbers drawn by a seed so that the answer is
 * clean. What is drawn is a statement as a coach would type it and claims nothing; it is worked and
 * checked like any other.
 */
@NullMarked
package rootwright.composing.pattern;

import org.jspecify.annotations.NullMarked;
