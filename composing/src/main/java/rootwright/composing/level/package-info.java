/**
 * How hard a problem is likely to be: a linear model over what can be computed from its shortest
 * working, declared as a judgement until answers come in. Start at {@link
 * rootwright.composing.level.Level#of}.
 */
@NullMarked
package rootwright.composing.level;

import org.jspecify.annotations.NullMarked;
