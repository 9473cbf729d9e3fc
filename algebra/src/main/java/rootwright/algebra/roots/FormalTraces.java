package rootwright.algebra.roots;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.polynomial.RationalFunction;

/**
 * The power sums of the images of a polynomial expression, written once in the power sums of n
 * roots and then evaluated for one polynomial P after another. For small orbits of short
 * expressions.
 *
 * <p>The j-th power of the expression is multiplied out; the sum of a monomial r^a s^b … over all
 * ways to name the roots is found by letting one name run over all n roots and taking off the terms
 * in which it meets another: Σ r^a s^b = p_a p_b − p_(a+b).
 */
final class FormalTraces {

  /** Monomials that may be formed while the powers are multiplied out. */
  private static final long MOST_MONOMIALS = 300;

  /** Sums over distinct roots that may be needed. */
  private static final long MOST_NODES = 10_000;

  /** In how many ways the roots of a monomial can meet: the numbers of partitions of a set. */
  private static final long[] BELL = {1, 1, 2, 5, 15, 52, 203, 877, 4140};

  /**
   * One sum over distinct roots: that of the node before times a power sum, less other nodes.
   *
   * @param before the node with the last exponent left out; −1 for the empty product
   * @param exponent the exponent left out
   * @param met the nodes in which that root has met another
   * @param weight the sum of all exponents
   */
  private record Node(int before, int exponent, List<Integer> met, int weight) {}

  /** A rational share of a node. */
  private record Share(Rational factor, int node) {}

  private final int names;
  private final List<Node> nodes = new ArrayList<>();
  private final Map<Monomial, Integer> numbers = new HashMap<>();
  private final List<List<Share>> powers = new ArrayList<>();

  private FormalTraces(int names) {
    this.names = names;
  }

  /** The traces, if the expression is a polynomial and multiplying out is cheap. */
  static Optional<FormalTraces> of(RationalFunction expression, int names, int images) {
    int terms = expression.numerator().terms().size();
    int occurring = expression.unknowns();
    // The power holds at most C(terms + images − 1, images) monomials.
    long monomials = 1;
    for (int k = 1; k <= images && monomials <= MOST_MONOMIALS; k++) {
      monomials = monomials * (terms + k - 1) / k;
    }
    if (images == 0
        || !expression.isPolynomial()
        || occurring >= BELL.length
        || monomials > MOST_MONOMIALS
        || monomials * BELL[occurring] > MOST_NODES) {
      return Optional.empty();
    }
    FormalTraces traces = new FormalTraces(names);
    MultivariatePolynomial power = MultivariatePolynomial.ONE;
    for (int j = 1; j <= images; j++) {
      power = power.times(expression.numerator());
      traces.powers.add(traces.shares(power, images));
    }
    return Optional.of(traces);
  }

  private List<Share> shares(MultivariatePolynomial power, int images) {
    Map<Monomial, Rational> byShape = new TreeMap<>();
    power
        .terms()
        .forEach((monomial, value) -> byShape.merge(shape(monomial), value, Rational::plus));
    List<Share> shares = new ArrayList<>();
    byShape.forEach(
        (shape, value) -> {
          // A choice of roots for the names that occur stands for images/(n(n−1)…) of the orbit.
          Rational choices = Rational.ONE;
          for (int k = 0; k < shape.length(); k++) {
            choices = choices.times(names - k);
          }
          if (!value.isZero()) {
            shares.add(new Share(value.times(images).over(choices), node(shape)));
          }
        });
    return shares;
  }

  /** The positive exponents, largest first. */
  private static Monomial shape(Monomial monomial) {
    int[] negated = new int[monomial.length()];
    Arrays.setAll(negated, k -> -monomial.exponent(k));
    Arrays.sort(negated);
    return Monomial.of(Arrays.stream(negated).map(e -> -e).toArray());
  }

  private int node(Monomial shape) {
    if (shape.length() == 0) {
      return -1;
    }
    Integer known = numbers.get(shape);
    if (known != null) {
      return known;
    }
    int last = shape.length() - 1;
    int exponent = shape.exponent(last);
    int[] rest = new int[last];
    Arrays.setAll(rest, shape::exponent);
    int before = node(Monomial.of(rest));
    List<Integer> met = new ArrayList<>(last);
    for (int k = 0; k < last; k++) {
      rest[k] += exponent;
      met.add(node(shape(Monomial.of(rest))));
      rest[k] -= exponent;
    }
    nodes.add(new Node(before, exponent, met, shape.degree()));
    numbers.put(shape, nodes.size() - 1);
    return nodes.size() - 1;
  }

  /** The monic polynomial of the images for the roots of P. */
  Polynomial polynomial(Polynomial polynomial) {
    MonicPowers scaled = new MonicPowers(polynomial);
    int reach = 0;
    for (Node node : nodes) {
      reach = Math.max(reach, node.weight());
    }
    BigInteger[] sums = scaled.upTo(reach);
    BigInteger[] values = new BigInteger[nodes.size()];
    for (int k = 0; k < values.length; k++) {
      Node node = nodes.get(k);
      BigInteger value = sums[node.exponent()];
      if (node.before() >= 0) {
        value = value.multiply(values[node.before()]);
      }
      for (int met : node.met()) {
        value = value.subtract(values[met]);
      }
      values[k] = value;
    }
    List<Rational> imageSums = new ArrayList<>();
    for (List<Share> shares : powers) {
      Rational sum = Rational.ZERO;
      for (Share share : shares) {
        sum = sum.plus(share.node() < 0 ? share.factor() : part(share, values, scaled.scale()));
      }
      imageSums.add(sum);
    }
    return FromPowerSums.polynomial(imageSums);
  }

  private Rational part(Share share, BigInteger[] values, BigInteger scale) {
    Rational value =
        scale.equals(BigInteger.ONE)
            ? Rational.of(values[share.node()])
            : new Rational(values[share.node()], scale.pow(nodes.get(share.node()).weight()));
    return share.factor().times(value);
  }
}
