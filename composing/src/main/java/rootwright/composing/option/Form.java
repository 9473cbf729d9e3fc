package rootwright.composing.option;

import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.RationalValue;
import rootwright.working.answer.Answer;

/** What an answer looks like before it is read; a choice alone in its form gives itself away. */
enum Form {
  INTEGER,
  FRACTION,
  SURD,
  LETTERS;

  static Form of(Answer answer) {
    return Numbers.in(answer).map(Form::of).orElse(LETTERS);
  }

  private static Form of(ExactValue number) {
    return number instanceof RationalValue rational
        ? rational.number().isInteger() ? INTEGER : FRACTION
        : SURD;
  }
}
