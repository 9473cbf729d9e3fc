package rootwright.working.topic;

/**
 * A warning with the wrong turning it is about.
 *
 * @param words what goes wrong and what helps
 * @param slip the name of the slip that is run on the worked example
 */
public record Warning(String words, String slip) {}
