/** Floor 4: what a coach keeps. Plain text in open formats, readable without the program. */
@NullMarked
package rootwright.bank;

import org.jspecify.annotations.NullMarked;
