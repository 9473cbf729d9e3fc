package rootwright.desk.paper;

import java.time.LocalDate;
import java.util.List;
import rootwright.press.document.Language;
import rootwright.working.problem.Statement;

/**
 * What a coach wants printed.
 *
 * @param title of the paper
 * @param language of its words
 * @param date the day it is for
 * @param problems in the order of the paper
 * @param form how every item is answered: {@code short}, {@code choice} or {@code integer}
 * @param points what every item is worth
 * @param versions how many versions, re-ordered from the first
 * @param seed of the re-ordering
 */
public record PaperOrder(
    String title,
    Language language,
    LocalDate date,
    List<Statement> problems,
    String form,
    int points,
    int versions,
    long seed) {

  public PaperOrder {
    problems = List.copyOf(problems);
  }
}
