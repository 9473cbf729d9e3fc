package rootwright.working.solve;

import java.util.OptionalInt;

/**
 * What the second, independent check said of the answer.
 *
 * @param method what was done, a few words: "on certified enclosures of the roots"
 * @param agrees whether it confirms the answer
 * @param digits how many decimal digits it confirms, where it is numerical
 */
public record SecondOpinion(String method, boolean agrees, OptionalInt digits) {}
