package rootwright.algebra.enclosure;

/**
 * A root was to be taken of a disc that meets the negative real axis or zero, so that the principal
 * roots of its numbers do not lie together. A smaller disc may help, unless the number itself lies
 * there.
 */
public final class BranchCutException extends ArithmeticException {

  private static final long serialVersionUID = 1L;

  /** Names the disc. */
  public BranchCutException(String disc) {
    super("the principal root jumps within " + disc);
  }
}
