package rootwright.desk.figure;

/**
 * Something to see of a solution, as numbers to draw. Its numbers are rounded and decide nothing;
 * what the records hold is what a page receives.
 */
public sealed interface Picture
    permits GraphPicture,
        LatticePicture,
        LetterPicture,
        PairPicture,
        PointsPicture,
        RangePicture,
        RingPicture,
        SidesPicture {

  /** Stable short name of the sort of picture. */
  String kind();
}
