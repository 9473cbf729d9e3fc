package rootwright.web.endpoint;

import com.fasterxml.jackson.databind.JsonNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import rootwright.desk.Desk;
import rootwright.desk.keep.KeptProfile;
import rootwright.web.keep.RecentProblems;
import rootwright.web.reply.FaultException;

/** What the desk remembers: the last problems, and which routes the class has. */
public final class KeptEndpoints {

  private final Desk desk;
  private final RecentProblems recent;
  private final KeptProfile profile;
  private final Path folder;

  /** For what this desk keeps in a folder. */
  public KeptEndpoints(Desk desk, RecentProblems recent, KeptProfile profile, Path folder) {
    this.desk = desk;
    this.recent = recent;
    this.profile = profile;
    this.folder = folder;
  }

  /**
   * Adds {@code GET /api/recent}; {@code GET} and {@code PUT /api/profile}: the routes that the
   * class does not have; and {@code PUT /api/profile/NAME}: the same kept under a name.
   */
  public void addTo(RoutesConfig routes) {
    routes.get("/api/recent", context -> Reply.value(context, recent.latest()));
    routes.get("/api/profile", this::tellProfile);
    routes.put("/api/profile", this::chooseProfile);
    routes.put("/api/profile/{name}", this::keepProfile);
  }

  private void tellProfile(Context context) throws IOException {
    Reply.value(
        context,
        Map.of(
            "without",
            profile.without(),
            "routes",
            desk.routes(),
            "classes",
            KeptProfile.all(folder)));
  }

  private void chooseProfile(Context context) throws IOException {
    profile.choose(without(context));
    tellProfile(context);
  }

  private void keepProfile(Context context) throws IOException {
    try {
      new KeptProfile(folder, context.pathParam("name").strip()).choose(without(context));
    } catch (IllegalArgumentException unfit) {
      String why = String.valueOf(unfit.getMessage());
      throw new FaultException(
          422, "no-name", why.substring(0, 1).toUpperCase(Locale.ROOT) + why.substring(1) + ".");
    }
    tellProfile(context);
  }

  private static Set<String> without(Context context) {
    Set<String> without = new TreeSet<>();
    for (JsonNode route : Reply.body(context).path("without")) {
      without.add(route.asText());
    }
    return without;
  }
}
