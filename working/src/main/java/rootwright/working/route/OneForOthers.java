package rootwright.working.route;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import rootwright.algebra.factor.RationalRoot;
import rootwright.algebra.factor.RationalRoots;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.symmetric.ElementaryValues;
import rootwright.working.ask.Asked;
import rootwright.working.problem.Problem;
import rootwright.working.problem.RootFunction;
import rootwright.working.step.Claim;
import rootwright.working.step.Idea;
import rootwright.working.step.Setting;

/** The lines that put one root for the others in each term and then add up or multiply. */
final class OneForOthers {

  private final Asked asked;
  private final Problem problem;
  private final Polynomial polynomial;
  private final Formula term;
  private final RootFunction f;
  private final OthersReplaced replaced;
  private final Formula root;
  private final List<String> others;
  private final List<Rational> elementary;
  private final Lines lines;

  /**
   * @param term the first term of the ask
   * @param replaced what it turns into
   */
  OneForOthers(Asked asked, Formula term, OthersReplaced replaced) {
    this.asked = asked;
    this.problem = asked.problem();
    this.polynomial = problem.polynomial();
    this.term = term;
    this.f = replaced.f();
    this.replaced = replaced;
    this.root = Formula.name(problem.roots().get(replaced.root()));
    this.others = new ArrayList<>(problem.roots());
    this.others.remove(replaced.root());
    this.elementary = ElementaryValues.of(polynomial);
    this.lines = new Lines(problem.setting());
  }

  /** The ask as a sum. */
  Attempt sum() {
    Optional<Laurent> powers = Laurent.of(f);
    if (powers.isPresent()) {
      return LaurentTotal.isWithinReach(powers.get())
          ? sumOfPowers(powers.get())
          : new Attempt.Declined("the powers of the root that is left are too high or too low");
    }
    Polynomial bottom = f.denominator().squarefreePart();
    if (bottom.degree() > 1) {
      return new Attempt.Declined("the denominator is no power of one linear expression");
    }
    Rational pole = bottom.coefficient(0).negate();
    boolean down = pole.equals(elementary.get(1));
    Polynomial back =
        Polynomial.ofAscending(List.of(pole, down ? Rational.MINUS_ONE : Rational.ONE));
    Optional<Laurent> shifted =
        Laurent.of(new RootFunction(f.numerator().compose(back), f.denominator().compose(back)));
    Polynomial image = polynomial.compose(back).primitive();
    if (shifted.isEmpty() || !LaurentTotal.isWithinReach(shifted.get())) {
      return new Attempt.Declined("the powers of the root that is left are too high or too low");
    } else if (image.coefficient(0).isZero()) {
      return Reasons.ZERO_DENOMINATOR;
    }
    return sumShifted(shifted.get(), image, pole, down);
  }

  private Attempt sumOfPowers(Laurent powers) {
    if (!powers.terms().isEmpty()
        && powers.terms().firstKey() < 0
        && elementary.get(problem.degree()).isZero()) {
      return Reasons.ZERO_DENOMINATOR;
    }
    others();
    lines.add(Idea.SUBSTITUTE, "one root is left", term, powers.written(root));
    LaurentTotal total =
        new LaurentTotal(
            polynomial, problem.roots(), problem.unknown(), PowerSumLines.letter(asked));
    Rational value = total.write(lines, powers, problem.ask());
    return Attempt.Worked.of(SubstituteForOthers.TITLE, lines.steps(), value);
  }

  private Attempt sumShifted(Laurent powers, Polynomial image, Rational pole, boolean down) {
    String letter = FreshNames.letter(problem);
    Formula map =
        down
            ? Formula.number(pole).minus(root)
            : new Combination().plus(root).plus(pole.negate()).formula();
    Formula moved =
        down
            ? Formula.number(pole).minus(Formula.name(letter))
            : new Combination().plus(Formula.name(letter)).plus(pole).formula();
    others();
    Setting named = problem.setting().withDefinition(letter, map);
    lines.in(named).add(Idea.SUBSTITUTE, "give it a name", Formula.name(letter), map);
    lines
        .in(named)
        .add(Idea.SUBSTITUTE, "one letter is left", term, powers.written(Formula.name(letter)));
    lines.addRoots(
        Idea.SHIFT,
        "P(%s) = 0".formatted(UnicodeWriter.write(moved)),
        Formula.equation(PolynomialFormula.of(image, letter), Formula.number(0)),
        new Claim.HasRoots(problem.setting(), image, map));
    List<String> names = FreshNames.indexed(letter, problem.degree());
    Formula sum =
        new Formula.Aggregate(
            Formula.Aggregate.Operation.SUM, powers.written(Formula.name(names.get(0))));
    Rational value =
        new LaurentTotal(image, names, letter, PowerSumLines.letter(asked))
            .write(lines.in(Setting.of(image, names)), powers, sum);
    lines.add(Idea.STATE, "which was asked", problem.ask(), Formula.number(value));
    return Attempt.Worked.of(SubstituteForOthers.TITLE, lines.steps(), value);
  }

  /** The ask as a product: P at the zeros of the factors. */
  Attempt product() {
    List<RationalRoot> zeros = RationalRoots.of(f.numerator());
    List<RationalRoot> poles = RationalRoots.of(f.denominator());
    if (count(zeros) < f.numerator().degree() || count(poles) < f.denominator().degree()) {
      return new Attempt.Declined("the factors are not linear in the root that is left");
    } else if (poles.stream().anyMatch(pole -> polynomial.at(pole.value()).isZero())) {
      return Reasons.ZERO_DENOMINATOR;
    }
    others();
    Rational scale = f.numerator().lead().over(f.denominator().lead());
    for (RationalRoot zero : zeros) {
      scale = scale.times(turned(zero));
    }
    for (RationalRoot pole : poles) {
      scale = scale.times(turned(pole));
    }
    lines.add(
        Idea.SUBSTITUTE,
        "one root is left",
        term,
        fraction(scale, zeros, poles, zero -> linear(zero.value())));
    boolean bare =
        scale.isOne() && poles.isEmpty() && zeros.size() == 1 && zeros.get(0).multiplicity() == 1;
    for (RationalRoot zero : zeros) {
      evaluate(zero.value(), bare ? List.of(problem.ask()) : List.of());
    }
    for (RationalRoot pole : poles) {
      evaluate(pole.value(), List.of());
    }
    Rational value = scale.power(problem.degree());
    for (RationalRoot zero : zeros) {
      value = value.times(product(zero.value()).power(zero.multiplicity()));
    }
    for (RationalRoot pole : poles) {
      value = value.over(product(pole.value()).power(pole.multiplicity()));
    }
    if (!bare) {
      lines.add(
          Idea.ARITHMETIC,
          "all factors together",
          problem.ask(),
          fraction(
              scale.power(problem.degree()),
              zeros,
              poles,
              zero -> Formula.number(product(zero.value()))),
          Formula.number(value));
    }
    return Attempt.Worked.of(SubstituteForOthers.TITLE, lines.steps(), value);
  }

  /** The sign that turning r − k into k − r takes, as often as the factor occurs. */
  private static Rational turned(RationalRoot zero) {
    return Rational.of(zero.value().signum() > 0 && zero.multiplicity() % 2 == 1 ? -1 : 1);
  }

  /** k − r for positive k, r + |k| for negative, r for 0. */
  private Formula linear(Rational k) {
    return k.signum() > 0
        ? Formula.number(k).minus(root)
        : new Combination().plus(root).plus(k.negate()).formula();
  }

  /** The product over all roots of what {@link #linear} writes. */
  private Rational product(Rational k) {
    Rational value = polynomial.at(k).over(polynomial.lead());
    return k.signum() <= 0 && problem.degree() % 2 == 1 ? value.negate() : value;
  }

  private void evaluate(Rational k, List<Formula> called) {
    List<Formula> sides = new ArrayList<>(called);
    sides.add(new Formula.Aggregate(Formula.Aggregate.Operation.PRODUCT, linear(k)));
    boolean minus = k.signum() <= 0 && problem.degree() % 2 == 1;
    Formula applied = new Formula.Application("P", List.of(Formula.number(k)));
    for (Formula over : List.of(applied, PutIn.of(polynomial, k))) {
      Formula quotient =
          polynomial.lead().isOne() ? over : over.over(Formula.number(polynomial.lead()));
      sides.add(minus ? new Formula.Negative(quotient) : quotient);
    }
    sides.add(Formula.number(product(k)));
    lines.add(
        Idea.EVALUATE,
        minus ? "P in linear factors; an odd number of signs changes" : "P in linear factors",
        sides);
  }

  private static Formula fraction(
      Rational scale,
      List<RationalRoot> zeros,
      List<RationalRoot> poles,
      Function<RationalRoot, Formula> written) {
    Formula over = factors(zeros, written);
    Formula above = new Combination().plus(scale, over).formula();
    return poles.isEmpty() ? above : above.over(factors(poles, written));
  }

  private static Formula factors(
      List<RationalRoot> zeros, Function<RationalRoot, Formula> written) {
    return Combination.product(
        zeros.stream()
            .map(zero -> Combination.power(written.apply(zero), zero.multiplicity()))
            .toList());
  }

  private static int count(List<RationalRoot> roots) {
    return roots.stream().mapToInt(RationalRoot::multiplicity).sum();
  }

  /** One line for each elementary polynomial of the others that is replaced. */
  private void others() {
    int n = problem.degree();
    for (int k : replaced.used()) {
      Formula ofOthers = CoefficientLines.inRoots(others, k);
      Formula product = Formula.number(elementary.get(n));
      if (replaced.productAs() == OthersReplaced.ProductAs.QUOTIENT
          && k == n - 1
          && !elementary.get(n).isZero()) {
        lines.add(
            Idea.SUBSTITUTE,
            "all roots multiply to " + UnicodeWriter.write(product),
            ofOthers,
            product.over(root));
      } else if (k == 1) {
        Formula sum = Formula.number(elementary.get(1));
        lines.add(
            Idea.SUBSTITUTE,
            "all roots add up to " + UnicodeWriter.write(sum),
            ofOthers,
            new Combination().plus(elementary.get(1)).plus(Rational.MINUS_ONE, root).formula());
      } else {
        Polynomial inRoot = Polynomial.ZERO;
        for (int j = 0; j <= k; j++) {
          Rational e = elementary.get(k - j);
          inRoot = inRoot.plus(Polynomial.monomial(j % 2 == 0 ? e : e.negate(), j));
        }
        lines.add(
            Idea.SUBSTITUTE,
            "divide P by x − %s".formatted(problem.roots().get(replaced.root())),
            ofOthers,
            PolynomialFormula.of(inRoot, problem.roots().get(replaced.root())));
      }
    }
  }
}
