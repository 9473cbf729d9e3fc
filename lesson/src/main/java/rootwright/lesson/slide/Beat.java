package rootwright.lesson.slide;

import rootwright.lesson.plan.StepKind;
import rootwright.lesson.text.Phrase;

/**
 * Something appears on a slide and is spoken about.
 *
 * @param step the number of the step of the lesson, from 0
 * @param slide the number of the slide, from 0
 * @param reveal what appears on it, from 0
 * @param kind of the step
 * @param said what is said
 * @param thinking how long the class thinks before this, in seconds
 * @param newFormula whether a formula appears that has to be looked at
 */
public record Beat(
    int step,
    int slide,
    int reveal,
    StepKind kind,
    Phrase said,
    int thinking,
    boolean newFormula) {}
