package rootwright.web.keep;

import com.fasterxml.jackson.core.type.TypeReference;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import rootwright.desk.keep.KeptFile;

/** The last problems worked on, latest first. */
public final class RecentProblems {

  /** How many are remembered. */
  public static final int REMEMBERED = 12;

  private final KeptFile<List<Visit>> file;
  private List<Visit> visits;

  /** As kept in a folder. */
  public RecentProblems(Path folder) {
    file = new KeptFile<>(folder.resolve("recent-problems.json"), new TypeReference<>() {});
    visits = List.copyOf(file.readOr(List.of()));
  }

  /** The last problems, latest first. */
  public synchronized List<Visit> latest() {
    return visits;
  }

  /** Remembers a problem; one that is remembered already moves to the front. */
  public synchronized void remember(Visit visit) {
    if (!visits.isEmpty() && visits.get(0).equals(visit)) {
      return;
    }
    List<Visit> more = new ArrayList<>();
    more.add(visit);
    visits.stream().filter(old -> !old.query().equals(visit.query())).forEach(more::add);
    visits = List.copyOf(more.subList(0, Math.min(more.size(), REMEMBERED)));
    file.write(visits);
  }
}
