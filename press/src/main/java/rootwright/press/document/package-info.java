/**
 * What stands on a paper, whatever it is printed as: titles, paragraphs with formulas, items with
 * room for the answer, worked lines with their reasons, tables and figures.
 *
 * <p>Nothing here knows an output format. A document for students cannot hold a key: {@link
 * rootwright.press.document.Document} refuses it.
 */
@NullMarked
package rootwright.press.document;

import org.jspecify.annotations.NullMarked;
