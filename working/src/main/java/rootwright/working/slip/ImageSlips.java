package rootwright.working.slip;

import java.util.List;

/** The slips on the way to a polynomial with given new roots; a new one registers itself here. */
public final class ImageSlips {

  /** In the order of a page that lists them. */
  public static final List<Turning> ALL =
      List.of(new TransformBackwards(), new CoefficientsSquared());

  private ImageSlips() {}
}
