package rootwright.composing.scan.candidate;

import java.util.IdentityHashMap;

/**
 * What the tests of one thread share: the box, and one {@link RowForm} for each form, so that two
 * tests that look at the same form evaluate it once a row.
 */
public final class Workspace {

  private final CoefficientBox box;
  private final IdentityHashMap<IntegerForm, RowForm> forms = new IdentityHashMap<>();

  /** A workspace for rows of this box. */
  public Workspace(CoefficientBox box) {
    this.box = box;
  }

  /** The box. */
  public CoefficientBox box() {
    return box;
  }

  /** The values of a form along the rows; the same object for the same form. */
  public RowForm along(IntegerForm form) {
    return forms.computeIfAbsent(form, key -> new RowForm(key, box));
  }
}
