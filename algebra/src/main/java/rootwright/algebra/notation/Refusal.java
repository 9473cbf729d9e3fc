package rootwright.algebra.notation;

/**
 * Why a text could not be read, with the place and, where it can be guessed, the mend.
 *
 * @param code a stable short name for scripts, lower case with hyphens
 * @param text one plain sentence for a person
 * @param input the offending text
 * @param at where in the input, in code points from 0
 * @param expected what should stand there, empty if nothing can be said
 * @param mend a text that would be read, empty if none can be guessed
 */
public record Refusal(
    String code, String text, String input, int at, String expected, String mend) {}
