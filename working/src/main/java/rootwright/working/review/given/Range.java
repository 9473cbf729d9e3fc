package rootwright.working.review.given;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import rootwright.algebra.factor.RationalRoots;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.algebra.real.IsolatedRoot;
import rootwright.algebra.real.RealRootIsolation;

/**
 * The numbers at which one of several lists of inequalities holds as a whole.
 *
 * @param unknown the number of the unknown
 * @param anyOf the lists
 */
record Range(int unknown, List<List<Signs>> anyOf) {

  Range {
    anyOf = anyOf.stream().map(List::copyOf).toList();
  }

  /** The range that these relations describe together; empty if they are not in one unknown. */
  static Optional<Range> of(List<Formula.Relation> alternatives, Writing writing) {
    List<List<Signs>> anyOf = new ArrayList<>();
    Optional<Integer> unknown = Optional.empty();
    for (Formula.Relation relation : alternatives) {
      List<Signs> all = new ArrayList<>();
      for (int k = 1; k < relation.sides().size(); k++) {
        Formula right = relation.sides().get(k);
        Optional<MultivariatePolynomial> difference =
            writing
                .of(relation.sides().get(k - 1))
                .flatMap(l -> writing.of(right).map(l::minus))
                .filter(RationalFunction::isPolynomial)
                .map(RationalFunction::numerator);
        List<Integer> occurring = difference.map(Steps::unknownsIn).orElse(List.of());
        if (occurring.size() != 1
            || (unknown.isPresent() && !unknown.get().equals(occurring.get(0)))) {
          return Optional.empty();
        }
        unknown = Optional.of(occurring.get(0));
        all.add(
            new Signs(
                Steps.inOne(difference.orElseThrow(), occurring.get(0)),
                relation.comparisons().get(k - 1)));
      }
      anyOf.add(all);
    }
    return unknown.map(k -> new Range(k, anyOf));
  }

  private boolean holdsAt(Rational point) {
    return anyOf.stream().anyMatch(all -> all.stream().allMatch(sign -> sign.holdsAt(point)));
  }

  /** Whether every number of this range is in the other, irrational ends left aside. */
  boolean isWithin(Range other) {
    return unknown == other.unknown
        && points(other).stream().filter(this::holdsAt).allMatch(other::holdsAt);
  }

  /** Points in every interval between zeros of all the polynomials, and the rational zeros. */
  private List<Rational> points(Range other) {
    TreeSet<Rational> ends = new TreeSet<>(List.of(Rational.ZERO));
    Polynomial product = Polynomial.ONE;
    List<Signs> signs = new ArrayList<>();
    anyOf.forEach(signs::addAll);
    other.anyOf.forEach(signs::addAll);
    for (Signs sign : signs) {
      product = product.times(sign.difference());
    }
    if (product.degree() > 0) {
      for (IsolatedRoot root : RealRootIsolation.of(product)) {
        ends.add(root.low());
        ends.add(root.high());
      }
      RationalRoots.of(product).forEach(root -> ends.add(root.value()));
    }
    TreeSet<Rational> points = new TreeSet<>(ends);
    Rational before = ends.first().minus(Rational.ONE);
    points.add(before);
    for (Rational end : ends) {
      for (int k = 1; k < 8; k++) {
        points.add(before.plus(end.minus(before).times(Rational.of(k, 8))));
      }
      before = end;
    }
    points.add(ends.last().plus(Rational.ONE));
    return List.copyOf(points);
  }
}
