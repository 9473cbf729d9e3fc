package rootwright.working.review;

/**
 * A wrong turning that leads to what somebody wrote.
 *
 * @param name of the slip
 * @param text the wrong thought and its mend, for a student
 */
public record SlipMatch(String name, String text) {}
