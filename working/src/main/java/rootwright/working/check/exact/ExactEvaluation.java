package rootwright.working.check.exact;

import java.math.BigInteger;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaCases;
import rootwright.algebra.number.Rational;
import rootwright.algebra.number.RepeatedSquaring;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.algebra.roots.PowerSum;
import rootwright.algebra.roots.PowerSums;
import rootwright.algebra.roots.ResidueAlgebra;
import rootwright.algebra.roots.RootTower;
import rootwright.working.problem.Angle;
import rootwright.working.step.Setting;

/**
 * The value of a formula in a setting as a rational function of the roots; what is symmetric by its
 * form (Σ, Π, S_k, e_k, h_k) becomes a number at once.
 */
class ExactEvaluation implements FormulaCases<RationalFunction> {

  /** Longest sum that multiplying out a power may give. */
  private static final long MOST_TERMS = 5_000;

  /** Largest dimension of an algebra of roots in which powers are reduced as they grow. */
  private static final BigInteger LARGEST_TOWER = BigInteger.valueOf(120);

  /** The number of bits of a power in one root has at most so many bits itself. */
  private static final int LONGEST_POWER_BITS = 22;

  /** Highest exponent of a sum in several roots. */
  private static final int HIGHEST_POWER = 10_000;

  private final Setting setting;
  private final Map<String, Rational> letters;
  private final Unknowns unknowns;
  private final Map<Formula, RationalFunction> nameless;
  private final Map<String, RationalFunction> defined = new HashMap<>();

  /** Evaluates with numbers put for the free letters. */
  ExactEvaluation(Setting setting, Unknowns unknowns, Map<String, Rational> letters) {
    this(setting, unknowns, letters, new HashMap<>());
  }

  /**
   * Evaluates with numbers put for the free letters.
   *
   * @param nameless what Σ, Π, S_k, e_k and h_k are known to be, numbers all of them
   */
  ExactEvaluation(
      Setting setting,
      Unknowns unknowns,
      Map<String, Rational> letters,
      Map<Formula, RationalFunction> nameless) {
    this.nameless = nameless;
    this.setting = setting;
    this.unknowns = unknowns;
    this.letters = letters;
  }

  RationalFunction of(Formula formula) {
    return formula.choose(this);
  }

  /** The value of a formula that must come out as a rational number. */
  Rational number(Formula formula) {
    RationalFunction value = of(formula);
    if (value.numerator().isConstant() && value.isPolynomial()) {
      return value.numerator().coefficient(Monomial.ONE);
    }
    throw Unevaluable.form("a number is needed where an expression in the roots stands");
  }

  @Override
  public RationalFunction numeral(Formula.Numeral numeral) {
    return RationalFunction.of(numeral.value());
  }

  @Override
  public RationalFunction name(Formula.Name name) {
    String spelling = name.spelling();
    int root = setting.roots().indexOf(spelling);
    if (root >= 0) {
      return RationalFunction.of(MultivariatePolynomial.unknown(root));
    }
    Rational letter = letters.get(spelling);
    if (letter != null) {
      return RationalFunction.of(letter);
    }
    Formula meaning = setting.definitions().get(spelling);
    if (meaning == null) {
      throw Unevaluable.form("nothing says what " + spelling + " is");
    }
    RationalFunction known = defined.get(spelling);
    if (known == null) {
      known = of(meaning);
      defined.put(spelling, known);
    }
    return known;
  }

  @Override
  public RationalFunction imaginaryUnit(Formula.ImaginaryUnit imaginaryUnit) {
    return RationalFunction.of(unknowns.squareRootOf(Rational.MINUS_ONE));
  }

  @Override
  public RationalFunction negative(Formula.Negative negative) {
    return of(negative.of()).negate();
  }

  @Override
  public RationalFunction sum(Formula.Sum sum) {
    return sum.terms().stream().map(this::of).reduce(RationalFunction.ZERO, RationalFunction::plus);
  }

  @Override
  public RationalFunction product(Formula.Product product) {
    return product.factors().stream()
        .map(this::of)
        .reduce(RationalFunction.ONE, RationalFunction::times);
  }

  @Override
  public RationalFunction quotient(Formula.Quotient quotient) {
    RationalFunction under = of(quotient.under());
    if (under.numerator().isZero()) {
      throw Unevaluable.zeroDenominator("a denominator is zero whatever the roots are");
    }
    return of(quotient.over()).over(under);
  }

  @Override
  public RationalFunction power(Formula.Power power) {
    Rational exponent = number(power.exponent());
    if (!exponent.isInteger()) {
      throw Unevaluable.form("a power with the exponent " + exponent + " has several values");
    }
    RationalFunction base = of(power.base());
    if (exponent.signum() < 0 && base.numerator().isZero()) {
      throw Unevaluable.zeroDenominator("zero has no negative power");
    }
    BigInteger size = exponent.numerator().abs();
    RationalFunction upright = exponent.signum() < 0 ? RationalFunction.ONE.over(base) : base;
    return new RationalFunction(
        power(upright.numerator(), size), power(upright.denominator(), size));
  }

  private MultivariatePolynomial power(MultivariatePolynomial base, BigInteger exponent) {
    if (base.isConstant() && base.coefficient(Monomial.ONE).absolute().isOne()) {
      return base.power(exponent.testBit(0) ? 1 : 2);
    }
    List<Integer> roots = unknowns.rootsIn(base);
    boolean inRoots = unknowns.isInRootsAlone(base);
    if (inRoots && roots.size() == 1 && exponent.bitLength() > 3) {
      requireWritable(exponent);
      Polynomial reduced =
          ResidueAlgebra.of(setting.polynomial())
              .power(Unknowns.inOne(base, roots.get(0)), exponent);
      return MultivariatePolynomial.of(reduced, roots.get(0));
    }
    if (exponent.bitLength() > 31 || exponent.intValue() > HIGHEST_POWER) {
      throw Unevaluable.tooLarge("the exponent " + exponent + " is above " + HIGHEST_POWER);
    }
    int e = exponent.intValue();
    if (termsOfPower(base.terms().size(), e) <= MOST_TERMS) {
      return base.power(e);
    }
    if (inRoots && !roots.isEmpty()) {
      RootTower tower = RootTower.of(setting.polynomial(), roots.get(roots.size() - 1) + 1);
      if (tower.dimension().compareTo(LARGEST_TOWER) <= 0) {
        return towerPower(tower, base, e);
      }
    }
    throw Unevaluable.tooLarge("multiplied out, the power would have too many terms");
  }

  /** Refuses a power whose coefficients would be longer than anyone wants to see. */
  private void requireWritable(BigInteger exponent) {
    // Every root is at most 1 + max |a_k/a_n| by size (Cauchy 1829).
    Polynomial p = setting.polynomial();
    Rational largest = Rational.ONE;
    for (Rational coefficient : p.monic().ascending()) {
      Rational size = coefficient.absolute().plus(Rational.ONE);
      largest = largest.compareTo(size) < 0 ? size : largest;
    }
    int bits =
        largest.numerator().bitLength()
            - largest.denominator().bitLength()
            + 1
            + p.denominator().bitLength()
            + p.primitive().lead().numerator().bitLength();
    if (exponent.multiply(BigInteger.valueOf(bits)).bitLength() > LONGEST_POWER_BITS) {
      throw Unevaluable.tooLarge(
          "written out, the power has too many digits; ask for it modulo a number");
    }
  }

  private static MultivariatePolynomial towerPower(
      RootTower tower, MultivariatePolynomial base, int exponent) {
    return RepeatedSquaring.power(
        tower.normalForm(base), exponent, MultivariatePolynomial.ONE, tower::times);
  }

  /** Number of monomials of degree e in t letters, or a number above the limit. */
  static long termsOfPower(int t, int e) {
    long terms = 1;
    for (int k = 1; k < t; k++) {
      terms = terms * (e + k) / k;
      if (terms > MOST_TERMS) {
        return terms;
      }
    }
    return terms;
  }

  @Override
  public RationalFunction radical(Formula.Radical radical) {
    if (radical.index() != 2) {
      throw Unevaluable.form("a root of index " + radical.index() + " is no rational expression");
    }
    return RationalFunction.of(unknowns.squareRootOf(number(radical.radicand())));
  }

  @Override
  public RationalFunction plusMinus(Formula.PlusMinus plusMinus) {
    throw Unevaluable.form("± stands for two values");
  }

  @Override
  public RationalFunction aggregate(Formula.Aggregate aggregate) {
    RationalFunction known = nameless.get(aggregate);
    if (known == null) {
      known = overImages(aggregate);
      nameless.put(aggregate, known);
    }
    return known;
  }

  private RationalFunction overImages(Formula.Aggregate aggregate) {
    Optional<RationalFunction> formal = formal(aggregate.body());
    // A function of one root is met n times, however short it becomes when its powers are reduced.
    boolean inOneRoot = formal.isEmpty() || unknowns.rootsIn(formal.get()).size() == 1;
    RationalFunction reduced = of(aggregate.body());
    RationalFunction body = inOneRoot ? reduced : formal.get();
    if (!unknowns.isInRootsAlone(body.numerator())
        || !unknowns.isInRootsAlone(body.denominator())) {
      throw Unevaluable.form("square roots under Σ or Π are not supported");
    }
    boolean sum = aggregate.operation() == Formula.Aggregate.Operation.SUM;
    Aggregation aggregation = new Aggregation(setting.polynomial());
    if (unknowns.rootsIn(reduced).size() == 1) {
      // (2r + 2)/(r + 1) is one image, 2; but there is none where −1 is a root.
      aggregation.requireDefined(reduced);
    }
    if (inOneRoot) {
      return RationalFunction.of(
          sum ? aggregation.sumOverRoots(body) : aggregation.productOverRoots(body));
    }
    return RationalFunction.of(sum ? aggregation.sum(body) : aggregation.product(body));
  }

  /** The body as it stands; empty if it is too long for that but has only one root in it. */
  private Optional<RationalFunction> formal(Formula body) {
    try {
      return Optional.of(new FormalEvaluation(setting, unknowns, letters).of(body).lowestTerms());
    } catch (Unevaluable stuck) {
      boolean named =
          body.contains(
              part ->
                  part instanceof Formula.Name name
                      && setting.definitions().containsKey(name.spelling()));
      long roots =
          setting.roots().stream()
              .filter(
                  root ->
                      body.contains(
                          part ->
                              part instanceof Formula.Name name && name.spelling().equals(root)))
              .count();
      if (stuck.reason() != Unevaluable.Cause.TOO_LARGE || named || roots != 1) {
        throw stuck;
      }
      return Optional.empty();
    }
  }

  @Override
  public RationalFunction family(Formula.Family family) {
    RationalFunction known = nameless.get(family);
    if (known == null) {
      known = member(family);
      nameless.put(family, known);
    }
    return known;
  }

  private RationalFunction member(Formula.Family family) {
    Rational index = number(family.index());
    if (!index.isInteger()) {
      throw Unevaluable.form("the index " + index + " is not a whole number");
    }
    BigInteger k = index.numerator();
    return RationalFunction.of(
        switch (family.letter()) {
          case "S", "p" -> powerSum(k);
          case "e" -> elementary(k);
          case "h" -> complete(k);
          default -> throw Unevaluable.form("nothing says what " + family.letter() + "_k is");
        });
  }

  private Rational powerSum(BigInteger k) {
    PowerSum sum = PowerSums.of(setting.polynomial()).exact(k);
    if (sum instanceof PowerSum.Exact known) {
      return known.value();
    } else if (sum instanceof PowerSum.ZeroRoot) {
      throw Unevaluable.zeroDenominator("0 is a root, so a sum of negative powers is undefined");
    }
    throw Unevaluable.tooLarge("the power sum has too many digits to write out");
  }

  private Rational elementary(BigInteger k) {
    int n = setting.polynomial().degree();
    if (k.signum() < 0 || k.compareTo(BigInteger.valueOf(n)) > 0) {
      return Rational.ZERO;
    }
    Polynomial p = setting.polynomial();
    Rational size = p.coefficient(n - k.intValue()).over(p.lead());
    return k.testBit(0) ? size.negate() : size;
  }

  /** h_k = e_1·h_{k−1} − e_2·h_{k−2} + …, with h_0 = 1. */
  private Rational complete(BigInteger k) {
    if (k.signum() < 0) {
      return Rational.ZERO;
    }
    if (k.bitLength() > 12) {
      throw Unevaluable.tooLarge("h_k is worked out up to k = 4095");
    }
    Rational[] h = new Rational[k.intValue() + 1];
    h[0] = Rational.ONE;
    for (int m = 1; m < h.length; m++) {
      Rational sum = Rational.ZERO;
      for (int j = 1; j <= Math.min(m, setting.polynomial().degree()); j++) {
        Rational term = elementary(BigInteger.valueOf(j)).times(h[m - j]);
        sum = j % 2 == 1 ? sum.plus(term) : sum.minus(term);
      }
      h[m] = sum;
    }
    return h[k.intValue()];
  }

  @Override
  public RationalFunction application(Formula.Application application) {
    Optional<Rational> angle = Angle.argument(application);
    if (angle.isPresent()) {
      return ofAngle(application.function(), angle.get());
    }
    String name = application.function();
    int primes = 0;
    while (name.endsWith("'")) {
      name = name.substring(0, name.length() - 1);
      primes++;
    }
    Polynomial function = setting.functions().get(name);
    if (function == null || application.arguments().size() != 1) {
      throw Unevaluable.form(
          application.function().length() > 1
              ? application.function() + "(…) is no rational expression in the roots"
              : "nothing says what " + application.function() + "(…) is");
    }
    for (int k = 0; k < primes; k++) {
      function = function.derivative();
    }
    RationalFunction point = of(application.arguments().get(0));
    RationalFunction value = RationalFunction.ZERO;
    for (int k = function.degree(); k >= 0; k--) {
      value = value.times(point).plus(RationalFunction.of(function.coefficient(k)));
    }
    return value;
  }

  private RationalFunction ofAngle(String function, Rational q) {
    Turns turns =
        unknowns
            .turns()
            .orElseThrow(() -> Unevaluable.form("functions of angles are not supported here"));
    boolean pole =
        switch (function) {
          case "tan", "sec" -> q.minus(Rational.of(1).over(Rational.of(2))).isInteger();
          case "cot", "csc" -> q.isInteger();
          default -> false;
        };
    if (pole) {
      throw Unevaluable.zeroDenominator(function + " has no value at this angle");
    }
    return turns.of(function, q);
  }

  @Override
  public RationalFunction modulo(Formula.Modulo modulo) {
    throw Unevaluable.form("a residue is not an expression in the roots");
  }

  @Override
  public RationalFunction relation(Formula.Relation relation) {
    throw Unevaluable.form("an equation has no value");
  }

  @Override
  public RationalFunction listing(Formula.Listing listing) {
    throw Unevaluable.form("a list has no single value");
  }

  @Override
  public RationalFunction words(Formula.Words words) {
    throw Unevaluable.form("words have no value");
  }
}
