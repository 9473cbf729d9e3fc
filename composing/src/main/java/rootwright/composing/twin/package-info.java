/**
 * Problems that are the same problem in other clothes: scaled, renamed, mirrored, reversed,
 * shifted. The polynomial and the ask are transformed together, never the polynomial alone. Start
 * at {@link rootwright.composing.twin.Fingerprint#of} and {@link
 * rootwright.composing.twin.Twin#relation}.
 */
@NullMarked
package rootwright.composing.twin;

import org.jspecify.annotations.NullMarked;
