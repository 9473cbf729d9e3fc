package rootwright.web.frame;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Puts the pages together: the head and the list of pages, which all have, round what stands on
 * each. Every script that a page will need is announced in its head, so that none waits for
 * another.
 */
public final class Frame {

  private static final Pattern IMPORT = Pattern.compile("from \"\\./([\\w-]+)\\.js\"");

  private Frame() {}

  /** The page as HTML. */
  public static String html(DeskPage page) {
    String frame = resource("/rootwright/web/frame/frame.html");
    frame = put(frame, "title", page.title());
    frame = put(frame, "styles", lines(page.styles(), Frame::style));
    frame = put(frame, "preloads", lines(scriptsBehind(page.script()), Frame::preload));
    frame = put(frame, "script", "script/%s.js".formatted(page.script()));
    frame = put(frame, "links", lines(DeskPage.ALL, other -> link(other, page)));
    frame = put(frame, "heading", page.heading());
    return put(frame, "main", resource("/rootwright/web/frame/main/" + page.main() + ".html"));
  }

  /** Puts lines in the place of a name in braces, each indented like it. */
  private static String put(String frame, String name, String text) {
    Matcher place = Pattern.compile("(?m)( *)(\\S.*)?\\{" + name + "\\}").matcher(frame);
    if (!place.find()) {
      throw new IllegalStateException("the frame has no place for " + name);
    }
    String indented = text.stripTrailing().replace("\n", "\n" + place.group(1));
    return frame.replace("{" + name + "}", indented);
  }

  private static <T> String lines(Collection<T> things, Function<T, String> line) {
    return things.stream().map(line).collect(Collectors.joining("\n"));
  }

  private static String style(String name) {
    return "<link rel=\"stylesheet\" href=\"style/%s.css\">".formatted(name);
  }

  private static String preload(String name) {
    return "<link rel=\"modulepreload\" href=\"script/%s.js\">".formatted(name);
  }

  private static String link(DeskPage page, DeskPage current) {
    String now = page.equals(current) ? " aria-current=\"page\"" : "";
    return "<a href=\"%s\"%s>%s</a>".formatted(page.path(), now, page.name());
  }

  /** The scripts that a script takes from, directly or through others; not itself. */
  private static Set<String> scriptsBehind(String script) {
    Set<String> found = new LinkedHashSet<>();
    follow(script, found);
    found.remove(script);
    return found;
  }

  private static void follow(String script, Set<String> found) {
    if (found.add(script)) {
      Matcher imports = IMPORT.matcher(resource("/rootwright/web/page/script/" + script + ".js"));
      while (imports.find()) {
        follow(imports.group(1), found);
      }
    }
  }

  private static String resource(String name) {
    try (InputStream stream = Frame.class.getResourceAsStream(name)) {
      if (stream == null) {
        throw new IllegalStateException("the program lacks " + name);
      }
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
