package rootwright.algebra.ideal;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.stream.IntStream;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;

/**
 * What follows from polynomial equations: the ideal that their left sides generate, by a standard
 * basis (Buchberger 1965, thesis, Innsbruck) in which every element remembers the factors by which
 * it comes from the generators, so that "it follows" can be shown as an identity.
 *
 * <p>Meant for a handful of equations in a handful of unknowns; the work is bounded, and beyond the
 * bound there is no ideal.
 */
public final class Ideal {

  /** Most products of terms that one question may take. */
  private static final int MOST_PRODUCTS = 60_000;

  /** Longest coefficient, in bits. */
  private static final int LONGEST_NUMBER = 1_500;

  private static final int MOST_ELEMENTS = 60;
  private static final int LONGEST = 400;
  private static final int HIGHEST_DIMENSION = 60;

  private final int generators;
  private final int unknowns;
  private final List<Combined> basis;

  private Ideal(int generators, int unknowns, List<Combined> basis) {
    this.generators = generators;
    this.unknowns = unknowns;
    this.basis = List.copyOf(basis);
  }

  /**
   * The ideal; empty if it takes more work than the bound allows.
   *
   * @param unknowns how many unknowns there are; none of the generators has one with this number or
   *     a higher one
   */
  public static Optional<Ideal> of(List<MultivariatePolynomial> generators, int unknowns) {
    try {
      return Optional.of(new Ideal(generators.size(), unknowns, standardBasis(generators)));
    } catch (TooLong bound) {
      return Optional.empty();
    }
  }

  /** Whether 1 is in the ideal, so that the equations have no common solution. */
  public boolean isEverything() {
    return basis.stream().anyMatch(element -> element.value().isConstant());
  }

  /**
   * The constant to which a polynomial is equal wherever the equations hold, if it is seen to be.
   */
  public Optional<Rational> constant(MultivariatePolynomial polynomial) {
    return rest(polynomial)
        .map(Combined::value)
        .filter(MultivariatePolynomial::isConstant)
        .map(value -> value.coefficient(Monomial.ONE));
  }

  /**
   * What is left of a polynomial when multiples of the basis are taken away: equal to it wherever
   * the equations hold, and the same for all polynomials that are equal modulo the ideal. Empty if
   * it takes more work than the bound allows.
   */
  public Optional<MultivariatePolynomial> remainder(MultivariatePolynomial polynomial) {
    return rest(polynomial).map(Combined::value);
  }

  /** Factors f_k with polynomial = Σ f_k · generator_k; empty if it is not seen to be a member. */
  public Optional<List<MultivariatePolynomial>> factors(MultivariatePolynomial polynomial) {
    return rest(polynomial)
        .filter(rest -> rest.value().isZero())
        .map(rest -> rest.factors().stream().map(MultivariatePolynomial::negate).toList());
  }

  /** Whether the equations have finitely many common complex solutions. */
  public boolean isFinite() {
    return isEverything()
        || IntStream.range(0, unknowns)
            .allMatch(
                k ->
                    basis.stream()
                        .map(element -> TermOrder.lead(element.value()))
                        .anyMatch(lead -> lead.degree() > 0 && lead.exponent(k) == lead.degree()));
  }

  /**
   * The monic polynomial of least degree that a polynomial satisfies modulo the ideal; its roots
   * are the values at the common solutions. Empty if there is none up to degree 60.
   */
  public Optional<Polynomial> minimalPolynomial(MultivariatePolynomial polynomial) {
    try {
      return leastRelation(polynomial);
    } catch (TooLong bound) {
      return Optional.empty();
    }
  }

  private Optional<Polynomial> leastRelation(MultivariatePolynomial polynomial) {
    List<MultivariatePolynomial> rows = new ArrayList<>();
    List<Polynomial> relations = new ArrayList<>();
    MultivariatePolynomial power = reduced(MultivariatePolynomial.ONE);
    for (int k = 0; k <= HIGHEST_DIMENSION; k++) {
      MultivariatePolynomial row = power;
      Polynomial relation = Polynomial.monomial(Rational.ONE, k);
      for (int i = 0; i < rows.size(); i++) {
        Monomial pivot = TermOrder.lead(rows.get(i));
        Rational factor = row.coefficient(pivot).over(rows.get(i).coefficient(pivot));
        row = row.minus(rows.get(i).times(factor));
        relation = relation.minus(relations.get(i).times(factor));
      }
      if (row.isZero()) {
        return Optional.of(relation.monic());
      }
      rows.add(row);
      relations.add(relation);
      power = reduced(power.times(polynomial));
    }
    return Optional.empty();
  }

  private Optional<Combined> rest(MultivariatePolynomial polynomial) {
    try {
      return Optional.of(reduce(start(polynomial), basis, new int[1]));
    } catch (TooLong bound) {
      return Optional.empty();
    }
  }

  private MultivariatePolynomial reduced(MultivariatePolynomial polynomial) {
    return reduce(start(polynomial), basis, new int[1]).value();
  }

  private Combined start(MultivariatePolynomial polynomial) {
    return new Combined(polynomial, Collections.nCopies(generators, MultivariatePolynomial.ZERO));
  }

  private static List<Combined> standardBasis(List<MultivariatePolynomial> generators) {
    List<Combined> basis = new ArrayList<>();
    PriorityQueue<Pair> pairs = new PriorityQueue<>(Pair.ORDER);
    int[] steps = new int[1];
    for (int k = 0; k < generators.size(); k++) {
      List<MultivariatePolynomial> factors =
          new ArrayList<>(Collections.nCopies(generators.size(), MultivariatePolynomial.ZERO));
      factors.set(k, MultivariatePolynomial.ONE);
      add(reduce(new Combined(generators.get(k), factors), basis, steps), basis, pairs);
    }
    while (!pairs.isEmpty()) {
      Pair pair = pairs.remove();
      steps[0] += pair.one().size() + pair.other().size();
      if (!pair.isCoprime()) {
        Combined rest = reduce(pair.difference(), basis, steps);
        add(rest, basis, pairs);
        if (rest.value().isConstant() && !rest.value().isZero()) {
          return List.of(basis.get(basis.size() - 1));
        }
      }
    }
    return basis;
  }

  private static void add(Combined element, List<Combined> basis, PriorityQueue<Pair> pairs) {
    if (element.value().isZero()) {
      return;
    } else if (basis.size() >= MOST_ELEMENTS) {
      throw new TooLong();
    }
    Monomial lead = TermOrder.lead(element.value());
    Combined monic = element.times(element.value().coefficient(lead).reciprocal());
    basis.forEach(other -> pairs.add(Pair.of(other, monic)));
    basis.add(monic);
  }

  /** Every term that a leading monomial of the basis divides is taken away. */
  private static Combined reduce(Combined element, List<Combined> basis, int[] steps) {
    Combined rest = element;
    MultivariatePolynomial settled = MultivariatePolynomial.ZERO;
    while (true) {
      MultivariatePolynomial open = rest.value().minus(settled);
      if (open.isZero()) {
        return rest;
      }
      Monomial lead = TermOrder.lead(open);
      Optional<Combined> divisor =
          basis.stream()
              .filter(b -> TermOrder.divides(TermOrder.lead(b.value()), lead))
              .findFirst();
      if (divisor.isPresent()) {
        steps[0] += divisor.get().size() + rest.size() / 8;
        if (steps[0] > MOST_PRODUCTS
            || rest.value().terms().size() > LONGEST
            || open.coefficient(lead).numerator().bitLength() > LONGEST_NUMBER) {
          throw new TooLong();
        }
        Monomial by = TermOrder.quotient(lead, TermOrder.lead(divisor.get().value()));
        rest = rest.minus(open.coefficient(lead), by, divisor.get());
      } else {
        settled = settled.plus(MultivariatePolynomial.term(open.coefficient(lead), lead));
      }
    }
  }

  /** Two monic elements of a basis whose leads are to be cancelled. */
  private record Pair(Combined one, Combined other, Monomial common) {

    static final Comparator<Pair> ORDER = Comparator.comparing(Pair::common, TermOrder.GRADED);

    static Pair of(Combined one, Combined other) {
      return new Pair(
          one,
          other,
          TermOrder.leastCommonMultiple(
              TermOrder.lead(one.value()), TermOrder.lead(other.value())));
    }

    /** Leads without a common unknown give nothing new (Buchberger's first criterion). */
    boolean isCoprime() {
      return TermOrder.lead(one.value()).times(TermOrder.lead(other.value())).equals(common);
    }

    Combined difference() {
      Monomial left = TermOrder.quotient(common, TermOrder.lead(one.value()));
      Monomial right = TermOrder.quotient(common, TermOrder.lead(other.value()));
      return one.times(left).minus(Rational.ONE, right, other);
    }
  }

  /** Ends a computation that goes beyond the bound. */
  private static final class TooLong extends RuntimeException {
    private static final long serialVersionUID = 1L;

    TooLong() {
      super("an ideal beyond the bound", null, false, false);
    }
  }
}
