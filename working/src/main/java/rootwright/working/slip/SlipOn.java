package rootwright.working.slip;

import java.util.List;
import rootwright.working.answer.Answer;
import rootwright.working.step.Idea;

/**
 * What all slips have in common, whatever they are taken on and whatever sort of answer they lead
 * to.
 *
 * @param <Q> what it is taken on: an ask in one of the shapes that subjects read
 */
public interface SlipOn<Q> {

  /** Stable short name, lower case with hyphens: {@code lead-forgotten}. */
  String name();

  /** The wrong thought and its mend, one or two sentences to a student. */
  String text();

  /** The idea on whose line the slip lurks. */
  Idea spot();

  /**
   * How often it is met in a hundred, before any answers are in: a judgement of practice that
   * observed shares are to replace.
   */
  int weight();

  /**
   * The answers to which the wrong turning leads, the likeliest first; empty if there is nothing
   * here on which to slip.
   */
  List<? extends Answer> answers(Q asked);
}
