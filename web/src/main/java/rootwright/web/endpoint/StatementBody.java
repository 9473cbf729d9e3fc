package rootwright.web.endpoint;

import com.fasterxml.jackson.databind.JsonNode;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rootwright.working.problem.Statement;

/** A statement as the page sends it, and as its address says it. */
final class StatementBody {

  private StatementBody() {}

  /** Reads {@code polynomial}, {@code find}, {@code roots} (with commas) and {@code unknown}. */
  static Statement read(JsonNode body) {
    List<String> roots =
        Stream.of(body.path("roots").asText("").split(","))
            .map(String::strip)
            .filter(name -> !name.isEmpty())
            .toList();
    String unknown = body.path("unknown").asText("").strip();
    return new Statement(
        body.path("polynomial").asText(""),
        body.path("find").asText(""),
        roots,
        unknown.isEmpty() ? Optional.empty() : Optional.of(unknown));
  }

  /** The address of the problem after its question mark. */
  static String query(Statement statement) {
    StringBuilder query = new StringBuilder();
    query.append("polynomial=").append(encoded(statement.polynomial()));
    query.append("&find=").append(encoded(statement.find()));
    if (!statement.roots().isEmpty()) {
      query.append("&roots=").append(encoded(String.join(",", statement.roots())));
    }
    statement.unknown().ifPresent(name -> query.append("&unknown=").append(encoded(name)));
    return query.toString();
  }

  private static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }
}
