/** What a coach orders from the composer, and how the order is filled. */
@NullMarked
package rootwright.composing.blueprint;

import org.jspecify.annotations.NullMarked;
