package rootwright.desk.lesson;

/**
 * How a film would be made.
 *
 * @param encoder what encodes, a few words
 * @param millis about how long that takes
 * @param length of the film, in milliseconds
 */
public record FilmForecast(String encoder, long millis, long length) {}
