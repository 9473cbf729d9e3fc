package rootwright.press.paper;

import java.time.LocalDate;
import java.util.List;
import rootwright.press.document.Language;

/**
 * What a paper says, whatever its state.
 *
 * @param title its title
 * @param language of its words
 * @param instruction one line that fixes what the roots are
 * @param date the day it is for
 * @param versions at least one
 */
public record Content(
    String title, Language language, String instruction, LocalDate date, List<Version> versions) {

  /**
   * @throws IllegalArgumentException if there is no version or two have the same mark
   */
  public Content {
    versions = List.copyOf(versions);
    long marks = versions.stream().map(Version::mark).distinct().count();
    if (versions.isEmpty() || marks < versions.size()) {
      throw new IllegalArgumentException(
          "%d versions with %d marks".formatted(versions.size(), marks));
    }
  }

  /** The same with other versions. */
  public Content withVersions(List<Version> others) {
    return new Content(title, language, instruction, date, others);
  }

  /** The version with this mark. */
  public Version version(String mark) {
    return versions.stream()
        .filter(version -> version.mark().equals(mark))
        .findFirst()
        .orElseThrow(
            () -> new IllegalArgumentException("the paper has no version '%s'".formatted(mark)));
  }
}
