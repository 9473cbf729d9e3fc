package rootwright.working.check.exact;

import java.math.BigInteger;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaCases;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.working.problem.Angle;
import rootwright.working.step.Setting;

/**
 * The value of a formula in a setting as a rational function of the roots; what is symmetric by its
 * form (Σ, Π, S_k, e_k, h_k) becomes a number at once.
 */
class ExactEvaluation implements FormulaCases<RationalFunction> {

  private final Setting setting;
  private final Map<String, Rational> letters;
  private final Unknowns unknowns;
  private final PowersOfRoots powers;
  private final FamilyValues families;
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
    powers = new PowersOfRoots(setting.polynomial(), unknowns);
    families = new FamilyValues(setting.polynomial());
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
        powers.of(upright.numerator(), size), powers.of(upright.denominator(), size));
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
    if (aggregate.contains(part -> part instanceof Formula.Application)) {
      // What P(r) means depends on the setting.
      return overImages(aggregate);
    }
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
          case "S", "p" -> families.powerSum(k);
          case "e" -> families.elementary(k);
          case "h" -> families.complete(k);
          default -> throw Unevaluable.form("nothing says what " + family.letter() + "_k is");
        });
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
