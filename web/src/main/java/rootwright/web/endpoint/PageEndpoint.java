package rootwright.web.endpoint;

import io.javalin.config.RoutesConfig;
import rootwright.web.frame.DeskPage;
import rootwright.web.frame.Frame;

/** The pages themselves. */
public final class PageEndpoint {

  /** Adds {@code GET} of every page of the desk. */
  public void addTo(RoutesConfig routes) {
    for (DeskPage page : DeskPage.ALL) {
      String html = Frame.html(page);
      routes.get(
          page.path(),
          context ->
              context
                  .contentType("text/html; charset=utf-8")
                  .header("Cache-Control", "no-cache")
                  .result(html));
    }
  }
}
