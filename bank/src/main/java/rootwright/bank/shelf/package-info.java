/** The shelf: problems that a coach keeps. */
@NullMarked
package rootwright.bank.shelf;

import org.jspecify.annotations.NullMarked;
