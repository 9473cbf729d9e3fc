package rootwright.working.topic;

/**
 * A problem that belongs to a topic.
 *
 * @param polynomial as it is typed
 * @param find what is wanted, as it is typed
 * @param route the route that is shown; empty for the shortest
 */
public record Exercise(String polynomial, String find, String route) {}
