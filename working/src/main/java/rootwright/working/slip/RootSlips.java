package rootwright.working.slip;

import java.util.List;

/** The slips on the way to all roots; a new one registers itself here. */
public final class RootSlips {

  /** In the order of a page that lists them. */
  public static final List<Turning> ALL = List.of(new WholeRootsOnly());

  private RootSlips() {}
}
