package rootwright.lesson.plan;

import rootwright.algebra.notation.Formula;

/**
 * A wrong turning beside the line where it is taken.
 *
 * @param name of the slip
 * @param text the wrong thought and its mend
 * @param value where it leads on this problem
 */
public record SlipNote(String name, String text, Formula value) {}
