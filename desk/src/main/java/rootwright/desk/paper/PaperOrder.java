package rootwright.desk.paper;

import java.time.LocalDate;
import java.util.List;
import rootwright.press.document.Language;

/**
 * What a coach wants on a paper.
 *
 * @param title of the paper
 * @param language of its words
 * @param date the day it is for
 * @param items in the order of the paper
 * @param choices how many choices a multiple-choice item has, 3 to 5
 * @param versions how many versions, from 1
 * @param arrangement how the versions differ
 * @param seed what chance starts from, in the order of items and in the search for siblings
 */
public record PaperOrder(
    String title,
    Language language,
    LocalDate date,
    List<ItemOrder> items,
    int choices,
    int versions,
    Arrangement arrangement,
    long seed) {

  /** The line on the sheet that says what the roots are, unless the coach writes another. */
  public static final String INSTRUCTION =
      "Roots are complex numbers, counted with multiplicity, unless said otherwise.";

  /**
   * @throws IllegalArgumentException if there is no item, or the title is blank
   */
  public PaperOrder {
    items = List.copyOf(items);
    if (items.isEmpty()) {
      throw new IllegalArgumentException("a paper needs at least one item");
    }
    if (title.isBlank()) {
      throw new IllegalArgumentException("a paper needs a title");
    }
  }
}
