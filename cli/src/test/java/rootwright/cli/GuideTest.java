package rootwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The guide tells the truth: every problem in it is worked or checked, and what is shown below a
 * command that begins with $ is what the program prints. A line with … alone leaves something out.
 */
class GuideTest {

  private static final Pattern COMMAND =
      Pattern.compile("(\\$ )?\\./rootwright ((?:work|check) .*)", Pattern.DOTALL);
  private static final Pattern ARGUMENT = Pattern.compile("\"([^\"]*)\"|(\\S+)");

  /** A command of the guide with what stands below it. */
  record Example(String page, String command, List<String> shown) {
    @Override
    public String toString() {
      return page + ": " + command;
    }
  }

  static Stream<Example> examples() throws IOException {
    List<Path> pages = new ArrayList<>(List.of(Path.of("..", "README.md")));
    try (Stream<Path> docs = Files.list(Path.of("..", "docs"))) {
      docs.filter(path -> path.toString().endsWith(".md")).sorted().forEach(pages::add);
    }
    List<Example> all = new ArrayList<>();
    for (Path page : pages) {
      read(page, all);
    }
    // A file that stands for the coach's own is not there.
    return all.stream().filter(example -> !example.command().contains("working.txt"));
  }

  private static void read(Path page, List<Example> all) throws IOException {
    List<String> lines = Files.readAllLines(page);
    List<String> shown = List.of();
    for (int k = 0; k < lines.size(); k++) {
      String line = lines.get(k);
      if (!line.startsWith("    ")) {
        shown = line.isBlank() ? shown : List.of();
        continue;
      }
      StringBuilder whole = new StringBuilder(line.strip());
      while (whole.toString().endsWith("\\")) {
        whole.setLength(whole.length() - 1);
        whole.append(lines.get(++k).strip());
      }
      Matcher command = COMMAND.matcher(whole);
      if (command.matches()) {
        List<String> below = new ArrayList<>();
        all.add(new Example(page.getFileName().toString(), command.group(2), below));
        shown = command.group(1) == null ? List.of() : below;
      } else if (shown instanceof ArrayList<String> open) {
        open.add(line.strip());
      }
    }
  }

  private static String[] arguments(String command) {
    List<String> arguments = new ArrayList<>();
    Matcher matcher = ARGUMENT.matcher(command);
    while (matcher.find()) {
      arguments.add(matcher.group(1) == null ? matcher.group(2) : matcher.group(1));
    }
    return arguments.toArray(String[]::new);
  }

  @ParameterizedTest
  @MethodSource("examples")
  void whatTheGuideShowsIsWhatTheProgramPrints(Example example) {
    String[] arguments = arguments(example.command());
    Shell shell = Shell.run(arguments);
    assertThat(shell.status()).as(shell.err()).isIn(0, 3);
    List<String> printed = shell.out().lines().map(String::strip).toList();
    int at = 0;
    boolean leftOut = true;
    for (String line : example.shown()) {
      if (line.equals("…")) {
        leftOut = true;
        continue;
      }
      int found = printed.subList(at, printed.size()).indexOf(line);
      assertThat(found).as("“%s” is not printed:%n%s", line, shell.out()).isNotNegative();
      List<String> between = printed.subList(at, at + found);
      assertThat(leftOut || between.stream().allMatch(String::isBlank))
          .as("something stands before “%s”:%n%s", line, shell.out())
          .isTrue();
      at += found + 1;
      leftOut = false;
    }
  }
}
