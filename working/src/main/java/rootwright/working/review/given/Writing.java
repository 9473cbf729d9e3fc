package rootwright.working.review.given;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PlainWriter;
import rootwright.algebra.notation.SomeFormulaCases;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.RationalFunction;

/** Formulas as rational functions of the unknowns; nothing used but what the names stand for. */
final class Writing extends SomeFormulaCases<RationalFunction> {

  /** Highest power that is multiplied out. */
  private static final int HIGHEST = 24;

  private static final int MOST_TERMS = 2_000;

  private final Names names;
  private final List<Applied> polynomials;

  Writing(Names names, List<Applied> polynomials) {
    this.names = names;
    this.polynomials = List.copyOf(polynomials);
  }

  /** The function; empty if the formula has none or it is too long. */
  Optional<RationalFunction> of(Formula formula) {
    try {
      return Optional.of(formula.choose(this));
    } catch (Unwritten stuck) {
      return Optional.empty();
    }
  }

  /** A polynomial that is zero exactly if the two are equal, wherever both have a value. */
  Optional<MultivariatePolynomial> difference(Formula left, Formula right) {
    return of(left)
        .flatMap(one -> of(right).map(one::minus))
        .map(RationalFunction::lowestTerms)
        .map(RationalFunction::numerator);
  }

  @Override
  public RationalFunction numeral(Formula.Numeral numeral) {
    return RationalFunction.of(numeral.value());
  }

  @Override
  public RationalFunction name(Formula.Name name) {
    return names.meaning(name.spelling()).orElseThrow(Unwritten::new);
  }

  @Override
  public RationalFunction imaginaryUnit(Formula.ImaginaryUnit imaginaryUnit) {
    return names.root(RationalFunction.of(Rational.MINUS_ONE), 2);
  }

  @Override
  public RationalFunction negative(Formula.Negative negative) {
    return negative.of().choose(this).negate();
  }

  @Override
  public RationalFunction sum(Formula.Sum sum) {
    RationalFunction total = RationalFunction.ZERO;
    for (Formula term : sum.terms()) {
      total = total.plus(term.choose(this));
    }
    return total;
  }

  @Override
  public RationalFunction product(Formula.Product product) {
    RationalFunction total = RationalFunction.ONE;
    for (Formula factor : product.factors()) {
      total = bounded(total.times(factor.choose(this)));
    }
    return total;
  }

  @Override
  public RationalFunction quotient(Formula.Quotient quotient) {
    RationalFunction under = quotient.under().choose(this);
    if (under.numerator().isZero()) {
      throw new Unwritten();
    }
    return quotient.over().choose(this).over(under);
  }

  @Override
  public RationalFunction power(Formula.Power power) {
    RationalFunction exponent = power.exponent().choose(this);
    if (exponent.isPolynomial() && exponent.numerator().degree() == 1) {
      return Exponential.of(power.base().choose(this), exponent.numerator(), names)
          .orElseThrow(Unwritten::new);
    }
    if (!exponent.isPolynomial() || !exponent.numerator().isConstant()) {
      throw new Unwritten();
    }
    Rational number = exponent.numerator().coefficient(Monomial.ONE);
    RationalFunction base = power.base().choose(this);
    int over = number.numerator().bitLength() > 8 ? HIGHEST + 1 : number.numerator().intValue();
    boolean flat = base.numerator().terms().size() + base.denominator().terms().size() <= 2;
    if (Math.abs(over) > (flat ? 8 * HIGHEST : HIGHEST)
        || number.denominator().bitLength() > 4
        || (over < 0 && base.numerator().isZero())) {
      throw new Unwritten();
    }
    int root = number.denominator().intValueExact();
    RationalFunction radicand = root == 1 ? base : names.root(base, root);
    RationalFunction result = RationalFunction.ONE;
    for (int k = 0; k < Math.abs(over); k++) {
      result = bounded(result.times(radicand));
    }
    return over < 0 ? RationalFunction.ONE.over(result) : result;
  }

  @Override
  public RationalFunction radical(Formula.Radical radical) {
    return names.root(radical.radicand().choose(this), radical.index());
  }

  /** The sum or product over all different forms that renaming the roots gives the body. */
  @Override
  public RationalFunction aggregate(Formula.Aggregate aggregate) {
    boolean sum = aggregate.operation() == Formula.Aggregate.Operation.SUM;
    List<RationalFunction> images = new ArrayList<>();
    for (Formula image : Renamings.of(aggregate.body(), polynomials)) {
      RationalFunction value = image.choose(this);
      if (images.stream().noneMatch(value::isSameFunction)) {
        images.add(value);
      }
    }
    RationalFunction total = sum ? RationalFunction.ZERO : RationalFunction.ONE;
    for (RationalFunction value : images) {
      total = bounded(sum ? total.plus(value) : total.times(value));
    }
    return total;
  }

  @Override
  public RationalFunction family(Formula.Family family) {
    Optional<RationalFunction> named = names.meaning(PlainWriter.write(family));
    if (named.isPresent()) {
      return named.get();
    }
    if (!(family.index() instanceof Formula.Numeral numeral)
        || !numeral.value().isInteger()
        || numeral.value().absolute().compareTo(Rational.of(HIGHEST)) > 0
        || polynomials.isEmpty()
        || polynomials.get(0).roots().isEmpty()) {
      throw new Unwritten();
    }
    int k = numeral.value().intValueExact();
    List<RationalFunction> roots =
        polynomials.get(0).roots().stream().map(root -> Formula.name(root).choose(this)).toList();
    return switch (family.letter()) {
      case "S", "p" ->
          roots.stream()
              .map(root -> k < 0 ? RationalFunction.ONE.over(root).power(-k) : root.power(k))
              .reduce(RationalFunction.ZERO, RationalFunction::plus);
      case "e" -> elementary(roots, k);
      default -> throw new Unwritten();
    };
  }

  private static RationalFunction elementary(List<RationalFunction> roots, int k) {
    List<RationalFunction> e = new ArrayList<>(List.of(RationalFunction.ONE));
    for (RationalFunction root : roots) {
      e.add(RationalFunction.ZERO);
      for (int j = e.size() - 1; j >= 1; j--) {
        e.set(j, e.get(j).plus(e.get(j - 1).times(root)));
      }
    }
    return k < 0 || k >= e.size() ? RationalFunction.ZERO : e.get(k);
  }

  @Override
  public RationalFunction application(Formula.Application application) {
    String name = application.function();
    int primes = (int) name.chars().filter(c -> c == '\'').count();
    String bare = name.substring(0, name.length() - primes);
    if (bare.equals("discriminant") && application.arguments().isEmpty()) {
      return discriminant();
    }
    Applied function =
        polynomials.stream()
            .filter(p -> p.name().equals(bare))
            .findFirst()
            .orElseThrow(Unwritten::new);
    if (application.arguments().size() != 1) {
      throw new Unwritten();
    }
    RationalFunction at = application.arguments().get(0).choose(this);
    List<MultivariatePolynomial> ascending = function.derivative(primes);
    RationalFunction value = RationalFunction.ZERO;
    for (int k = ascending.size() - 1; k >= 0; k--) {
      value = bounded(value.times(at).plus(RationalFunction.of(ascending.get(k))));
    }
    return value;
  }

  /** lead^(2n − 2)·∏(r − s)² over the pairs. */
  RationalFunction discriminant() {
    if (polynomials.isEmpty() || polynomials.get(0).roots().size() < 2) {
      throw new Unwritten();
    }
    Applied p = polynomials.get(0);
    if (p.degree() <= 3) {
      return RationalFunction.of(p.discriminant());
    }
    RationalFunction value = RationalFunction.of(p.lead().power(2 * p.degree() - 2));
    for (int i = 0; i < p.roots().size(); i++) {
      for (int j = i + 1; j < p.roots().size(); j++) {
        Formula gap = Formula.name(p.roots().get(i)).minus(Formula.name(p.roots().get(j)));
        value = bounded(value.times(gap.choose(this).power(2)));
      }
    }
    return value;
  }

  @Override
  protected RationalFunction otherwise(Formula formula) {
    throw new Unwritten();
  }

  private static RationalFunction bounded(RationalFunction value) {
    if (value.numerator().terms().size() + value.denominator().terms().size() > MOST_TERMS) {
      throw new Unwritten();
    }
    return value;
  }

  /** Ends the writing of a formula that is no function of the unknowns. */
  private static final class Unwritten extends RuntimeException {
    private static final long serialVersionUID = 1L;

    Unwritten() {
      super("no function of the unknowns", null, false, false);
    }
  }
}
