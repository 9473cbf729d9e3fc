package rootwright.press.document;

import java.time.LocalDate;

/**
 * What tells one printed paper from another; it stands at the foot of every page.
 *
 * @param paperCode the code of the frozen paper, the same on sheet and key; empty for a draft
 * @param version the version mark ({@code A}), empty if there is only one
 * @param date the day the paper is made for; it is also the date inside the file, so that printing
 *     again gives the same bytes
 */
public record Identity(String paperCode, String version, LocalDate date) {

  /** A paper that is not frozen: no code, no version. */
  public static Identity draft(LocalDate date) {
    return new Identity("", "", date);
  }
}
