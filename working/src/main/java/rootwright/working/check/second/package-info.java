/** The second opinion: the claim on certified enclosures of the roots. */
@NullMarked
package rootwright.working.check.second;

import org.jspecify.annotations.NullMarked;
