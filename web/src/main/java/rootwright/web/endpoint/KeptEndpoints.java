package rootwright.web.endpoint;

import com.fasterxml.jackson.databind.JsonNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import rootwright.desk.Desk;
import rootwright.desk.keep.KeptProfile;
import rootwright.web.keep.RecentProblems;

/** What the desk remembers: the last problems, and which routes the class has. */
public final class KeptEndpoints {

  private final Desk desk;
  private final RecentProblems recent;
  private final KeptProfile profile;

  /** For what this desk keeps. */
  public KeptEndpoints(Desk desk, RecentProblems recent, KeptProfile profile) {
    this.desk = desk;
    this.recent = recent;
    this.profile = profile;
  }

  /** Adds {@code GET /api/recent} and {@code GET}, {@code PUT /api/profile}. */
  public void addTo(RoutesConfig routes) {
    routes.get("/api/recent", context -> Reply.value(context, recent.latest()));
    routes.get("/api/profile", this::tellProfile);
    routes.put("/api/profile", this::chooseProfile);
  }

  private void tellProfile(Context context) {
    Reply.value(context, Map.of("without", profile.without(), "routes", desk.routes()));
  }

  private void chooseProfile(Context context) {
    Set<String> without = new TreeSet<>();
    for (JsonNode route : Reply.body(context).path("without")) {
      without.add(route.asText());
    }
    profile.choose(without);
    tellProfile(context);
  }
}
