package rootwright.working.check.second;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rootwright.algebra.enclosure.ComplexBall;
import rootwright.algebra.enclosure.RealBall;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaCases;
import rootwright.algebra.number.Rational;
import rootwright.algebra.number.RepeatedSquaring;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.stop.Stop;
import rootwright.working.problem.Angle;
import rootwright.working.step.Setting;

/** A ball that holds the value of a formula when balls that hold the roots are put for them. */
final class BallEvaluation implements FormulaCases<ComplexBall> {

  private final Setting setting;
  private final Labelling labelling;
  private final Map<String, Rational> letters;
  private final int bits;
  private final Map<Formula, ComplexBall> nameless;
  private final Map<String, ComplexBall> defined = new HashMap<>();

  /**
   * @param letters numbers put for the free letters
   * @param bits the working precision
   * @param nameless what Σ, Π, S_k, e_k and h_k have come to, shared by evaluations that differ
   *     only in which root has which name
   */
  BallEvaluation(
      Setting setting,
      Labelling labelling,
      Map<String, Rational> letters,
      int bits,
      Map<Formula, ComplexBall> nameless) {
    this.nameless = nameless;
    this.setting = setting;
    this.labelling = labelling;
    this.letters = letters;
    this.bits = bits;
  }

  /** An evaluation that shares nothing with others. */
  BallEvaluation(Setting setting, Labelling labelling, Map<String, Rational> letters, int bits) {
    this(setting, labelling, letters, bits, new HashMap<>());
  }

  ComplexBall of(Formula formula) {
    return formula.choose(this);
  }

  @Override
  public ComplexBall numeral(Formula.Numeral numeral) {
    return ComplexBall.of(numeral.value(), bits);
  }

  @Override
  public ComplexBall name(Formula.Name name) {
    String spelling = name.spelling();
    int root = setting.roots().indexOf(spelling);
    if (root >= 0) {
      return labelling.roots().get(root);
    }
    Rational letter = letters.get(spelling);
    if (letter != null) {
      return ComplexBall.of(letter, bits);
    }
    Formula meaning = setting.definitions().get(spelling);
    if (meaning == null) {
      throw new Unbounded("nothing says what " + spelling + " is");
    }
    ComplexBall known = defined.get(spelling);
    if (known == null) {
      known = of(meaning);
      defined.put(spelling, known);
    }
    return known;
  }

  @Override
  public ComplexBall imaginaryUnit(Formula.ImaginaryUnit imaginaryUnit) {
    return ComplexBall.I;
  }

  @Override
  public ComplexBall negative(Formula.Negative negative) {
    return of(negative.of()).negate();
  }

  @Override
  public ComplexBall sum(Formula.Sum sum) {
    ComplexBall total = of(sum.terms().get(0));
    for (Formula term : sum.terms().subList(1, sum.terms().size())) {
      total = total.plus(of(term));
    }
    return total;
  }

  @Override
  public ComplexBall product(Formula.Product product) {
    ComplexBall total = of(product.factors().get(0));
    for (Formula factor : product.factors().subList(1, product.factors().size())) {
      total = total.times(of(factor));
    }
    return total;
  }

  @Override
  public ComplexBall quotient(Formula.Quotient quotient) {
    return of(quotient.over()).over(of(quotient.under()), bits);
  }

  @Override
  public ComplexBall power(Formula.Power power) {
    BigInteger exponent = wholeNumber(power.exponent());
    return power(of(power.base()), exponent);
  }

  /** Squaring keeps the relative error in proportion to the exponent; rounding keeps it short. */
  private ComplexBall power(ComplexBall base, BigInteger exponent) {
    ComplexBall size =
        RepeatedSquaring.power(
            base, exponent.abs(), ComplexBall.ONE, (left, right) -> left.times(right));
    return exponent.signum() < 0 ? size.reciprocal(bits) : size;
  }

  private BigInteger wholeNumber(Formula formula) {
    if (formula instanceof Formula.Numeral numeral && numeral.value().isInteger()) {
      return numeral.value().numerator();
    } else if (formula instanceof Formula.Negative negative) {
      return wholeNumber(negative.of()).negate();
    } else if (formula instanceof Formula.Power power
        && wholeNumber(power.exponent()).bitLength() < 16) {
      return wholeNumber(power.base()).pow(wholeNumber(power.exponent()).intValueExact());
    }
    throw new Unbounded("the exponent is not written as a whole number");
  }

  @Override
  public ComplexBall radical(Formula.Radical radical) {
    if (radical.index() != 2) {
      throw new Unbounded("a root of index " + radical.index() + " is not enclosed");
    }
    ComplexBall radicand = of(radical.radicand());
    if (!radicand.imaginaryCentre().isZero()) {
      throw new Unbounded("the square root of a number that is not real is not enclosed");
    }
    RealBall real = radicand.real();
    if (real.isPositive()) {
      return ComplexBall.of(real.squareRoot(bits));
    } else if (real.isNegative()) {
      return ComplexBall.of(real.negate().squareRoot(bits)).times(ComplexBall.I);
    }
    throw new Unbounded("a number under a root cannot be told from zero");
  }

  @Override
  public ComplexBall plusMinus(Formula.PlusMinus plusMinus) {
    throw new Unbounded("± stands for two values");
  }

  @Override
  public ComplexBall aggregate(Formula.Aggregate aggregate) {
    if (aggregate.contains(part -> part instanceof Formula.Application)) {
      // What P(r) means depends on the setting.
      return overImages(aggregate);
    }
    ComplexBall known = nameless.get(aggregate);
    if (known == null) {
      known = overImages(aggregate);
      nameless.put(aggregate, known);
    }
    return known;
  }

  private ComplexBall overImages(Formula.Aggregate aggregate) {
    boolean sum = aggregate.operation() == Formula.Aggregate.Operation.SUM;
    Optional<MonomialImages> term =
        sum ? MonomialImages.of(aggregate.body(), setting) : Optional.empty();
    if (term.isPresent()) {
      return term.get().sum(labelling.roots(), bits, this::power);
    }
    ComplexBall total = sum ? ComplexBall.ZERO : ComplexBall.ONE;
    for (int[] image : Images.of(aggregate.body(), setting)) {
      Stop.ifUnwanted();
      ComplexBall value =
          new BallEvaluation(setting, labelling.permuted(image), letters, bits, nameless)
              .of(aggregate.body());
      total = (sum ? total.plus(value) : total.times(value));
    }
    return total;
  }

  @Override
  public ComplexBall family(Formula.Family family) {
    ComplexBall known = nameless.get(family);
    if (known == null) {
      known = member(family);
      nameless.put(family, known);
    }
    return known;
  }

  private ComplexBall member(Formula.Family family) {
    BigInteger index = wholeNumber(family.index());
    return switch (family.letter()) {
      case "S", "p" -> powerSum(index);
      case "e" -> elementary(index);
      case "h" -> complete(index);
      default -> throw new Unbounded("nothing says what " + family.letter() + "_k is");
    };
  }

  private ComplexBall powerSum(BigInteger k) {
    return labelling.roots().stream()
        .map(root -> power(root, k))
        .reduce(ComplexBall.ZERO, ComplexBall::plus);
  }

  /** Coefficient of x^k in ∏(1 + r·x), multiplied out. */
  private ComplexBall elementary(BigInteger k) {
    int n = labelling.roots().size();
    if (k.signum() < 0 || k.compareTo(BigInteger.valueOf(n)) > 0) {
      return ComplexBall.ZERO;
    }
    ComplexBall[] e = new ComplexBall[n + 1];
    Arrays.fill(e, ComplexBall.ZERO);
    e[0] = ComplexBall.ONE;
    for (ComplexBall root : labelling.roots()) {
      for (int j = n; j >= 1; j--) {
        e[j] = e[j].plus(e[j - 1].times(root));
      }
    }
    return e[k.intValue()];
  }

  /** Coefficient of x^k in ∏ 1/(1 − r·x), one root taken in after another. */
  private ComplexBall complete(BigInteger k) {
    if (k.signum() < 0) {
      return ComplexBall.ZERO;
    }
    if (k.bitLength() > 12) {
      throw new Unbounded("h_k is enclosed up to k = 4095");
    }
    ComplexBall[] h = new ComplexBall[k.intValue() + 1];
    Arrays.fill(h, ComplexBall.ZERO);
    h[0] = ComplexBall.ONE;
    for (ComplexBall root : labelling.roots()) {
      for (int j = 1; j < h.length; j++) {
        h[j] = h[j].plus(h[j - 1].times(root));
      }
    }
    return h[k.intValue()];
  }

  @Override
  public ComplexBall application(Formula.Application application) {
    Optional<Rational> angle = Angle.argument(application);
    if (angle.isPresent()) {
      return new Circle(bits).of(application.function(), angle.get());
    }
    String name = application.function();
    int primes = (int) name.chars().filter(c -> c == '\'').count();
    Polynomial function = setting.functions().get(name.substring(0, name.length() - primes));
    if (function == null || application.arguments().size() != 1) {
      throw new Unbounded("nothing says what " + name + "(…) is");
    }
    for (int k = 0; k < primes; k++) {
      function = function.derivative();
    }
    ComplexBall point = of(application.arguments().get(0));
    ComplexBall value = ComplexBall.ZERO;
    for (int k = function.degree(); k >= 0; k--) {
      value = value.times(point).plus(ComplexBall.of(function.coefficient(k), bits));
    }
    return value;
  }

  @Override
  public ComplexBall modulo(Formula.Modulo modulo) {
    throw new Unbounded("a residue has no enclosure");
  }

  @Override
  public ComplexBall relation(Formula.Relation relation) {
    throw new Unbounded("an equation has no value");
  }

  @Override
  public ComplexBall listing(Formula.Listing listing) {
    List<Formula> items = listing.items();
    throw new Unbounded("a list of " + items.size() + " has no single value");
  }

  @Override
  public ComplexBall words(Formula.Words words) {
    throw new Unbounded("words have no value");
  }
}
