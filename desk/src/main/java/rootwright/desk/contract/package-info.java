/** The objects that scripts and the page rely on, as JSON. A field's meaning never changes. */
@NullMarked
package rootwright.desk.contract;

import org.jspecify.annotations.NullMarked;
