package rootwright.working.gate;

/**
 * Something the coach should know before setting the ask.
 *
 * @param code what kind of thing
 * @param text one plain sentence, which is what a person sees
 */
public record Warning(WarningCode code, String text) {}
