package rootwright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rootwright.algebra.notation.UnreadableException;
import rootwright.working.problem.Statement;
import rootwright.working.review.Review;
import rootwright.working.review.SlipMatch;

/** Workings of problems of every kind, right and wrong, as students write them. */
class WorkingsOfStudentsTest {

  private static final Desk DESK = new Desk();

  /** One working and what is to be said of it. */
  record Working(
      String polynomial,
      String find,
      List<String> verdicts,
      List<String> lines,
      String end,
      Optional<String> slip) {

    static Working of(String block) {
      String polynomial = "";
      String find = "";
      List<String> verdicts = new ArrayList<>();
      List<String> lines = new ArrayList<>();
      String end = "";
      Optional<String> slip = Optional.empty();
      for (String line : block.lines().filter(text -> !text.startsWith("#")).toList()) {
        String rest = line.substring(line.indexOf(':') + 1).strip();
        if (line.startsWith("problem:")) {
          String[] parts = rest.split(";", 2);
          polynomial = parts[0].strip();
          find = parts[1].strip();
        } else if (line.startsWith("end:")) {
          end = rest;
        } else if (line.startsWith("slip:")) {
          slip = Optional.of(rest);
        } else {
          int bar = line.indexOf('|');
          verdicts.add(line.substring(0, bar).strip());
          lines.add(line.substring(bar + 1).strip());
        }
      }
      return new Working(polynomial, find, verdicts, lines, end, slip);
    }

    @Override
    public String toString() {
      return polynomial + " ; " + find + " ; " + lines;
    }
  }

  static Stream<Working> workings() throws IOException {
    try (InputStream in =
        WorkingsOfStudentsTest.class.getResourceAsStream("workings-of-students.txt")) {
      String all = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      return Stream.of(all.split("\n\\s*\n"))
          .filter(block -> block.lines().anyMatch(line -> line.startsWith("problem:")))
          .map(Working::of)
          .toList()
          .stream();
    }
  }

  @ParameterizedTest
  @MethodSource("workings")
  void everyLineIsJudgedAsACoachWould(Working working) throws UnreadableException {
    Review review =
        DESK.review(Statement.of(working.polynomial(), working.find()), working.lines());
    assertThat(review.lines().stream().map(line -> line.verdict().code()).toList())
        .as(review.lines().toString())
        .isEqualTo(working.verdicts());
    assertThat(review.end().code()).isEqualTo(working.end());
    working
        .slip()
        .ifPresent(
            slip ->
                assertThat(review.firstWrong().orElseThrow().slips())
                    .extracting(SlipMatch::name)
                    .contains(slip));
  }
}
