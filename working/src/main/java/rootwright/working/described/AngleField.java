package rootwright.working.described;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import rootwright.algebra.factor.CyclotomicFactors;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.roots.ResidueAlgebra;
import rootwright.working.check.exact.Valuation;
import rootwright.working.problem.Angle;
import rootwright.working.step.Setting;

/**
 * The field of the N-th roots of unity, in which functions of the angles 2πk/N are polynomials in ζ
 * = cos(2π/N) + i·sin(2π/N). Its automorphisms take ζ to ζ^a with a prime to N (Gauss).
 */
final class AngleField {

  /** The name of the root of unity. */
  static final String ZETA = "ζ";

  /** Above this nothing is worked. */
  static final int LARGEST_ORDER = 400;

  private final int order;
  private final ResidueAlgebra algebra;
  private final Setting setting;

  private AngleField(int order) {
    this.order = order;
    Polynomial cyclotomic = CyclotomicFactors.cyclotomic(order);
    algebra = ResidueAlgebra.of(cyclotomic);
    setting = Setting.of(cyclotomic, List.of(ZETA));
  }

  /**
   * The least such field that holds the formulas, N being a multiple of 4 unless cosines alone
   * occur; empty if it would be too large.
   */
  static Optional<AngleField> of(List<Formula> formulas) {
    Set<BigInteger> orders = new TreeSet<>();
    formulas.forEach(formula -> collect(formula, orders));
    BigInteger order = BigInteger.ONE;
    for (BigInteger one : orders) {
      order = order.multiply(one).divide(order.gcd(one));
      if (order.compareTo(BigInteger.valueOf(LARGEST_ORDER)) > 0) {
        return Optional.empty();
      }
    }
    return Optional.of(new AngleField(order.intValueExact()));
  }

  private static void collect(Formula formula, Set<BigInteger> orders) {
    if (formula instanceof Formula.Application application) {
      Optional<Rational> angle = Angle.argument(application);
      angle.map(Angle::order).ifPresent(orders::add);
      if (angle.isPresent() && !List.of("cos", "sec").contains(application.function())) {
        orders.add(BigInteger.valueOf(4));
      }
    } else if (formula instanceof Formula.ImaginaryUnit) {
      orders.add(BigInteger.valueOf(4));
    }
    formula.parts().forEach(part -> collect(part, orders));
  }

  /** N. */
  int order() {
    return order;
  }

  /** Φ_N. */
  Polynomial cyclotomic() {
    return setting.polynomial();
  }

  /** The formula with every function of an angle, and i, written in ζ. */
  Formula inZeta(Formula formula) {
    return formula.rewrite(
        part -> {
          if (part instanceof Formula.ImaginaryUnit) {
            return power(order / 4);
          }
          return part instanceof Formula.Application application
              ? Angle.argument(application)
                  .map(q -> ofAngle(application.function(), q))
                  .orElse(part)
              : part;
        });
  }

  private Formula ofAngle(String function, Rational q) {
    int k =
        q.over(Rational.TWO)
            .times(order)
            .numerator()
            .mod(BigInteger.valueOf(order))
            .intValueExact();
    int quarter = order / 4;
    return switch (function) {
      case "cos" -> cosine(k);
      case "sin" -> cosine(k - quarter);
      case "tan" -> cosine(k - quarter).over(cosine(k));
      case "cot" -> cosine(k).over(cosine(k - quarter));
      case "sec" -> Formula.number(1).over(cosine(k));
      default -> Formula.number(1).over(cosine(k - quarter));
    };
  }

  private Formula cosine(int k) {
    return power(k).plus(power(-k)).over(Formula.number(2));
  }

  private Formula power(int k) {
    int reduced = Math.floorMod(k, order);
    Formula zeta = Formula.name(ZETA);
    return reduced == 0 ? Formula.number(1) : reduced == 1 ? zeta : zeta.power(reduced);
  }

  /**
   * The polynomial in ζ of lower degree than φ(N) that the formula equals; empty if it has none.
   */
  Optional<Polynomial> residue(Formula formula) {
    Valuation valuation = Valuation.of(inZeta(formula), setting);
    if (valuation instanceof Valuation.Determined determined) {
      return Optional.of(Polynomial.constant(determined.value()));
    }
    return valuation instanceof Valuation.InOneRoot one
        ? Optional.of(one.reduced())
        : Optional.empty();
  }

  /** ∏(x − a) over these elements, if its coefficients are rational. */
  Optional<Polynomial> withRoots(List<Polynomial> elements) {
    List<Polynomial> product = new ArrayList<>(List.of(Polynomial.ONE));
    for (Polynomial element : elements) {
      product.add(0, Polynomial.ZERO);
      for (int k = 0; k + 1 < product.size(); k++) {
        product.set(k, product.get(k).minus(algebra.times(product.get(k + 1), element)));
      }
    }
    return product.stream().allMatch(coefficient -> coefficient.degree() <= 0)
        ? Optional.of(Polynomial.ofAscending(product.stream().map(c -> c.coefficient(0)).toList()))
        : Optional.empty();
  }

  /** The polynomial of lowest degree with rational coefficients that has this element as a root. */
  Polynomial minimalPolynomial(Polynomial element) {
    return algebra.characteristic(element).squarefreePart().primitive();
  }

  /** The numbers below N that are prime to it. */
  private List<Integer> units() {
    List<Integer> units = new ArrayList<>();
    for (int a = 1; a <= order; a++) {
      if (BigInteger.valueOf(a).gcd(BigInteger.valueOf(order)).equals(BigInteger.ONE)) {
        units.add(a);
      }
    }
    return units;
  }

  private Polynomial conjugate(Polynomial element, int a) {
    return algebra.reduce(element.compose(Polynomial.monomial(Rational.ONE, a)));
  }

  /**
   * The conjugates that are missing from a list of numbers, each written as one of them with its
   * angles multiplied and, where need be, another sign.
   */
  List<Formula> missing(List<Formula> numbers, List<Polynomial> elements) {
    Set<Polynomial> known = new LinkedHashSet<>(elements);
    List<Formula> missing = new ArrayList<>();
    for (int k = 0; k < numbers.size(); k++) {
      for (int a : units()) {
        Polynomial conjugate = conjugate(elements.get(k), a);
        if (known.add(conjugate)) {
          missing.add(named(numbers.get(k), a, conjugate));
        }
      }
    }
    return missing;
  }

  private Formula named(Formula number, int a, Polynomial conjugate) {
    Formula turned =
        number.rewrite(
            part ->
                part instanceof Formula.Application application
                    ? Angle.argument(application)
                        .<Formula>map(
                            q ->
                                new Formula.Application(
                                    application.function(),
                                    List.of(Angle.written(Angle.withinOneTurn(q.times(a))))))
                        .orElse(part)
                    : part);
    return residue(turned).equals(Optional.of(conjugate)) ? turned : new Formula.Negative(turned);
  }
}
