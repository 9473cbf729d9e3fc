package rootwright.lesson.text;

import rootwright.algebra.notation.Formula;

/** A part of a phrase. */
public sealed interface Part {

  /** Words, blanks at both ends kept. */
  record Words(String text) implements Part {}

  /** A formula in the line. */
  record Mathematics(Formula formula) implements Part {}
}
