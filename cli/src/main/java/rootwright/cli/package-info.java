/** Floor 6: the command line. Input in, result or refusal out; nothing is computed here. */
@NullMarked
package rootwright.cli;

import org.jspecify.annotations.NullMarked;
