package rootwright.algebra.enclosure;

/**
 * A root of a polynomial with rational coefficients, enclosed.
 *
 * @param disc holds this root and no other; for a real root its centre is real
 * @param multiplicity how often the root occurs, at least 1
 * @param real whether the root is proved to be real; if not, it is proved not to be, and the disc
 *     misses the real axis
 */
public record EnclosedRoot(ComplexBall disc, int multiplicity, boolean real) {

  /**
   * Checks what can be checked.
   *
   * @throws IllegalArgumentException if the multiplicity is not positive, a real root has a centre
   *     off the axis or a root that is not real has a disc that meets it
   */
  public EnclosedRoot {
    if (multiplicity < 1) {
      throw new IllegalArgumentException("multiplicity of a root: " + multiplicity);
    }
    if (real ? !disc.imaginaryCentre().isZero() : disc.meetsRealAxis()) {
      throw new IllegalArgumentException(
          "a root said to be %s in %s".formatted(real ? "real" : "not real", disc));
    }
  }

  /**
   * The interval that holds a real root.
   *
   * @throws IllegalStateException if the root is not real
   */
  public RealBall interval() {
    if (!real) {
      throw new IllegalStateException("the root in " + disc + " is not real");
    }
    return disc.real();
  }
}
