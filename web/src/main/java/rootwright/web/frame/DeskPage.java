package rootwright.web.frame;

import java.util.List;
import java.util.stream.Stream;

/**
 * One page of the desk.
 *
 * @param path its address
 * @param name what it is called where the pages are listed
 * @param heading what it is, for those who hear it
 * @param main the resource that holds what stands on it, without the ending
 * @param script the resource of its script, without the ending
 * @param styles the resources of its styles, without the ending, in order
 */
public record DeskPage(
    String path, String name, String heading, String main, String script, List<String> styles) {

  /** The pages in the order in which they are listed; the first is where one begins. */
  public static final List<DeskPage> ALL =
      List.of(
          of("/", "Problem", "A problem about the roots of a polynomial", "problem", "figure"),
          of("/list.html", "List", "A list of problems", "list", "compose", "list"),
          of("/compose.html", "Compose", "The composer's table", "compose", "compose"),
          of("/check.html", "Check", "Checking somebody's working", "check", "check"),
          of("/shelf.html", "Shelf", "The shelf", "shelf", "compose", "list"),
          of("/board.html", "Board", "The board plan", "board", "compose", "board"),
          of("/tray.html", "Papers", "The paper tray", "tray", "compose", "tray"));

  /** Keeps its own copy. */
  public DeskPage {
    styles = List.copyOf(styles);
  }

  private static DeskPage of(
      String path, String name, String heading, String main, String... styles) {
    List<String> all =
        Stream.concat(Stream.of("paper", "statement", "working"), Stream.of(styles)).toList();
    return new DeskPage(path, name, heading, main, main + "-page", all);
  }

  /** What the browser shows as its title. */
  public String title() {
    return path.equals("/") ? "Rootwright" : name + " \u2014 Rootwright";
  }
}
