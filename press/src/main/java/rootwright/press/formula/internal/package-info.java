/** Catches what the formula setter draws. */
@NullMarked
package rootwright.press.formula.internal;

import org.jspecify.annotations.NullMarked;
