package rootwright.algebra.roots;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.algebra.stop.Stop;

/**
 * The distinct formal images of an expression in n root names under all n! renamings. Unknown k of
 * the expression is the k-th name; images are distinct as functions, whatever values the roots
 * have.
 */
public final class Orbit {

  /** The greatest number of images that are listed; of a larger orbit only the size is told. */
  public static final int LONGEST_LIST = 120;

  private final RationalFunction function;
  private final int names;
  private final List<RationalFunction> images;
  private volatile List<Optional<FormalTraces>> traces = List.of();

  private Orbit(RationalFunction function, int names) {
    this.function = function;
    this.names = names;
    images = list(LONGEST_LIST);
  }

  /**
   * The orbit of an expression in the names of n roots.
   *
   * @throws IllegalArgumentException if the expression uses more than n names
   */
  public static Orbit of(RationalFunction expression, int names) {
    RationalFunction reduced = expression.lowestTerms();
    if (reduced.unknowns() > names) {
      throw new IllegalArgumentException(
          "the expression uses root name number " + reduced.unknowns() + " of only " + names);
    }
    return new Orbit(reduced, names);
  }

  /**
   * The number of distinct images of an expression in the names of n roots. A single term is not
   * renamed for that: its images are the ways to deal out its exponents.
   *
   * @throws IllegalArgumentException if the expression uses more than n names
   */
  public static BigInteger sizeOf(RationalFunction expression, int names) {
    if (expression.isPolynomial()
        && expression.numerator().terms().size() == 1
        && expression.unknowns() <= names) {
      return arrangements(expression.numerator().terms().firstKey(), names);
    }
    return of(expression, names).size();
  }

  /**
   * Whether an image is the negative of the expression, as s − r is of r − s: only then has a power
   * of it, the square and every even one, fewer images. (Images of which a power is the same differ
   * by a factor that is a rational root of unity.)
   *
   * @throws IllegalArgumentException if the expression uses more than n names
   */
  public static boolean hasOpposites(RationalFunction expression, int names) {
    return !sizeOf(expression.power(2).lowestTerms(), names).equals(sizeOf(expression, names));
  }

  /** n! over the factorials of how often each exponent occurs, zero included. */
  private static BigInteger arrangements(Monomial monomial, int names) {
    BigInteger arrangements = BigInteger.ONE;
    for (int k = 0; k < names; k++) {
      int alike = 1;
      for (int j = 0; j < k; j++) {
        alike += monomial.exponent(j) == monomial.exponent(k) ? 1 : 0;
      }
      arrangements =
          arrangements.multiply(BigInteger.valueOf(k + 1L)).divide(BigInteger.valueOf(alike));
    }
    return arrangements;
  }

  /** The expression in lowest terms. */
  public RationalFunction function() {
    return function;
  }

  /** The number n of root names. */
  public int names() {
    return names;
  }

  /**
   * Whether no renaming changes the expression. Only two renamings are tried, (1 2) and (1 2 … n),
   * which generate all.
   */
  public boolean isSymmetric() {
    return images.size() == 1;
  }

  /** Whether there are at most {@link #LONGEST_LIST} images. */
  public boolean isListed() {
    return !images.isEmpty();
  }

  /**
   * The distinct images in lowest terms, the expression itself first.
   *
   * @throws IllegalStateException if there are more than {@link #LONGEST_LIST}
   */
  public List<RationalFunction> images() {
    if (!isListed()) {
      throw new IllegalStateException("the orbit has " + size() + " images; they are not listed");
    }
    return images;
  }

  /** The distinct images, however many there are. */
  List<RationalFunction> allImages() {
    return isListed() ? images : list(Integer.MAX_VALUE);
  }

  /**
   * The number of distinct images. Where they are not listed it is the number of ways to choose
   * roots for the k names that occur, n(n−1)…(n−k+1), divided by the number of renamings of those
   * that change nothing.
   */
  public BigInteger size() {
    if (isListed()) {
      return BigInteger.valueOf(images.size());
    }
    RationalFunction packed = packed();
    BigInteger choices = BigInteger.ONE;
    for (int k = 0; k < packed.unknowns(); k++) {
      choices = choices.multiply(BigInteger.valueOf(names - k));
    }
    return choices.divide(new Stabilizer(packed).order());
  }

  /** The expression with the names that occur renumbered without gaps. */
  private RationalFunction packed() {
    int[] to = new int[function.unknowns()];
    int next = 0;
    for (int k = 0; k < to.length; k++) {
      boolean occurs =
          function.numerator().degreeIn(k) > 0 || function.denominator().degreeIn(k) > 0;
      to[k] = occurs ? next++ : 0;
    }
    return image(function, to);
  }

  /** The traces written in power sums, for small orbits; written when they are first asked for. */
  Optional<FormalTraces> traces() {
    if (traces.isEmpty()) {
      traces = List.of(FormalTraces.of(function, names, images.size()));
    }
    return traces.get(0);
  }

  /** The image under the renaming of name k to {@code to[k]}, in lowest terms. */
  static RationalFunction image(RationalFunction reduced, int... to) {
    RationalFunction renamed = reduced.rename(to);
    if (renamed.isPolynomial()) {
      return renamed;
    }
    Rational lead = renamed.denominator().terms().lastEntry().getValue().reciprocal();
    return lead.isOne()
        ? renamed
        : new RationalFunction(renamed.numerator().times(lead), renamed.denominator().times(lead));
  }

  /** The renamings (1 2) and (1 2 … n), which generate all. */
  static List<int[]> generators(int names) {
    int[] swap = new int[names];
    int[] cycle = new int[names];
    for (int k = 0; k < names; k++) {
      swap[k] = k < 2 && names > 1 ? 1 - k : k;
      cycle[k] = (k + 1) % names;
    }
    return List.of(swap, cycle);
  }

  /** The images, or none if there are more than so many. */
  private List<RationalFunction> list(int most) {
    Set<RationalFunction> seen = new LinkedHashSet<>();
    List<RationalFunction> found = new ArrayList<>();
    seen.add(function);
    found.add(function);
    for (int next = 0; next < found.size(); next++) {
      Stop.ifUnwanted();
      for (int[] generator : generators(names)) {
        RationalFunction image = image(found.get(next), generator);
        if (seen.add(image)) {
          found.add(image);
        }
      }
      if (found.size() > most) {
        return List.of();
      }
    }
    return List.copyOf(found);
  }
}
