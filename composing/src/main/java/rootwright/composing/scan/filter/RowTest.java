package rootwright.composing.scan.filter;

import rootwright.composing.scan.candidate.Row;
import rootwright.composing.scan.candidate.Survivors;

/** A filter at work on whole rows. It may keep tables between rows and belongs to one thread. */
@FunctionalInterface
public interface RowTest {

  /** Takes out of {@code alive} every place whose candidate fails; looks at no other place. */
  void screen(Row row, Survivors alive);
}
