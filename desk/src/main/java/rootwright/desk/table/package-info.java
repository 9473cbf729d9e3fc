/**
 * The composer's table: orders read and written, filled, estimated, stopped and gone on with;
 * siblings, climbs and twins.
 */
@NullMarked
package rootwright.desk.table;

import org.jspecify.annotations.NullMarked;
