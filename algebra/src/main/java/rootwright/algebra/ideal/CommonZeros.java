package rootwright.algebra.ideal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import rootwright.algebra.enclosure.ComplexBall;
import rootwright.algebra.enclosure.EnclosedRoot;
import rootwright.algebra.enclosure.RootEnclosures;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.stop.Stop;

/**
 * Discs round the common zeros of polynomials: each coordinate is a root of the polynomial of least
 * degree that it satisfies, and whatever a disc shows to miss one of the equations is left out.
 *
 * <p>Where there are infinitely many zeros, numbers are put for as many unknowns as it takes to
 * leave finitely many, so that the points found are samples.
 *
 * @param points one disc for each unknown
 * @param complete whether these are all common zeros
 */
public record CommonZeros(List<List<ComplexBall>> points, boolean complete) {

  /** Most combinations of coordinates that are tried. */
  private static final int MOST_TRIED = 20_000;

  private static final int LARGEST_SAMPLE = 40;

  public CommonZeros {
    points = points.stream().map(List::copyOf).toList();
  }

  /**
   * The zeros; empty if there are none that are found within the bounds.
   *
   * @param unknowns how many unknowns there are
   * @param digits of the discs
   * @param seed of the samples
   */
  public static Optional<CommonZeros> of(
      List<MultivariatePolynomial> equations, int unknowns, int digits, long seed) {
    Optional<Ideal> whole = Ideal.of(equations, unknowns);
    if (whole.isEmpty() || whole.get().isEverything()) {
      return Optional.empty();
    }
    List<MultivariatePolynomial> narrowed = new ArrayList<>(equations);
    Ideal ideal = whole.get();
    boolean complete = ideal.isFinite();
    SplittableRandom random = new SplittableRandom(seed);
    for (int k = unknowns - 1; k >= 0 && !ideal.isFinite(); k--) {
      Rational number = Rational.of(random.nextLong(-LARGEST_SAMPLE, LARGEST_SAMPLE + 1L), 8);
      List<MultivariatePolynomial> more = new ArrayList<>(narrowed);
      more.add(MultivariatePolynomial.unknown(k).minus(MultivariatePolynomial.constant(number)));
      Optional<Ideal> tried = Ideal.of(more, unknowns);
      if (tried.isPresent() && !tried.get().isEverything()) {
        narrowed = more;
        ideal = tried.get();
      }
    }
    return ideal.isFinite()
        ? new Search(narrowed, unknowns, digits).zeros(ideal, complete)
        : Optional.empty();
  }

  /** Tries the coordinates one after another. */
  private static final class Search {

    private final List<MultivariatePolynomial> equations;
    private final int unknowns;
    private final int bits;
    private final int digits;
    private final List<List<ComplexBall>> found = new ArrayList<>();
    private int tried;

    Search(List<MultivariatePolynomial> equations, int unknowns, int digits) {
      this.equations = equations;
      this.unknowns = unknowns;
      this.digits = digits;
      this.bits = digits * 10 / 3 + 32;
    }

    Optional<CommonZeros> zeros(Ideal ideal, boolean complete) {
      List<List<ComplexBall>> coordinates = new ArrayList<>();
      for (int k = 0; k < unknowns; k++) {
        Optional<Polynomial> least = ideal.minimalPolynomial(MultivariatePolynomial.unknown(k));
        if (least.isEmpty() || least.get().degree() < 1) {
          return Optional.empty();
        }
        coordinates.add(
            RootEnclosures.of(least.get(), digits).stream().map(EnclosedRoot::disc).toList());
      }
      extend(new ArrayList<>(), coordinates);
      return found.isEmpty() || tried > MOST_TRIED
          ? Optional.empty()
          : Optional.of(new CommonZeros(found, complete));
    }

    private void extend(List<ComplexBall> point, List<List<ComplexBall>> coordinates) {
      if (point.size() == unknowns) {
        found.add(List.copyOf(point));
        return;
      }
      for (ComplexBall coordinate : coordinates.get(point.size())) {
        Stop.ifUnwanted();
        if (++tried > MOST_TRIED) {
          return;
        }
        point.add(coordinate);
        if (mayBeZero(point)) {
          extend(point, coordinates);
        }
        point.remove(point.size() - 1);
      }
    }

    /** Whether no equation that is fixed by the coordinates so far is shown to be missed. */
    private boolean mayBeZero(List<ComplexBall> point) {
      return equations.stream()
          .filter(equation -> equation.unknowns() == point.size())
          .allMatch(equation -> value(equation, point, bits).containsZero());
    }
  }

  /** A disc that holds the value of a polynomial at a point. */
  public static ComplexBall value(
      MultivariatePolynomial polynomial, List<ComplexBall> point, int bits) {
    ComplexBall total = ComplexBall.ZERO;
    for (var term : polynomial.terms().entrySet()) {
      ComplexBall product = ComplexBall.of(term.getValue(), bits);
      Monomial monomial = term.getKey();
      for (int k = 0; k < monomial.length(); k++) {
        if (monomial.exponent(k) > 0) {
          product = product.times(point.get(k).power(monomial.exponent(k)));
        }
      }
      total = total.plus(product);
    }
    return total;
  }
}
