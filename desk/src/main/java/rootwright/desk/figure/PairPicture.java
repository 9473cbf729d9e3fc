package rootwright.desk.figure;

import java.util.List;

/**
 * The roots of two polynomials in one plane.
 *
 * @param first roots of the first
 * @param second roots of the second
 * @param names what each set is called
 * @param remark for which value of a letter it is drawn, such as k = 3; empty if there is none
 */
public record PairPicture(
    List<PairedRoot> first, List<PairedRoot> second, List<String> names, String remark)
    implements Picture {

  /** Keeps its own copies. */
  public PairPicture {
    first = List.copyOf(first);
    second = List.copyOf(second);
    names = List.copyOf(names);
  }

  /**
   * A root of one of two polynomials.
   *
   * @param root where it is
   * @param common whether it is a root of the other one too
   */
  public record PairedRoot(PicturedRoot root, boolean common) {}

  @Override
  public String kind() {
    return "pair";
  }
}
