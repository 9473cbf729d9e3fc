package rootwright.web.endpoint;

import io.javalin.config.RoutesConfig;
import rootwright.web.sentence.Sentences;

/** The kinds of ask, each with its sentence. */
public final class SentenceEndpoint {

  /** Adds {@code GET /api/kinds}. */
  public void addTo(RoutesConfig routes) {
    routes.get("/api/kinds", context -> Reply.value(context, Sentences.ALL));
  }
}
