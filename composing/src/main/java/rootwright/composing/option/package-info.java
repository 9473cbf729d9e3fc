/**
 * Wrong options for a problem with choices, each of them where a known wrong turning leads.
 *
 * <p>The rules follow published guidelines for writing items: Haladyna, Downing and Rodriguez 2002,
 * Applied Measurement in Education 15(3), 309–334 (believable wrong options from the mistakes that
 * students make, choices in numerical order, the place of the key varied, choices alike in form and
 * length, one right answer) and Rodriguez 2005, Educational Measurement: Issues and Practice 24(2),
 * 3–13 (one key and two believable wrong options are enough; more adds little). Start at {@link
 * rootwright.composing.option.Choices#of}.
 */
@NullMarked
package rootwright.composing.option;

import org.jspecify.annotations.NullMarked;
