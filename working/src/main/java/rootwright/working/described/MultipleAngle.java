package rootwright.working.described;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.factor.Factorisation;
import rootwright.algebra.factor.IrreducibleFactor;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.NormalForm;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.problem.Angle;
import rootwright.working.step.Claim;
import rootwright.working.step.Idea;
import rootwright.working.step.Setting;
import rootwright.working.step.Step;

/**
 * The classroom way from a list of values at angles to their polynomial: some multiple nθ has the
 * same value for all of them, and the multiple-angle formula makes that an equation for one of
 * them. Values of cos by Chebyshev's polynomials, of tan and cot by de Moivre's formula; squares of
 * cos and sin through the double angle.
 */
final class MultipleAngle {

  private static final int HIGHEST_MULTIPLE = 40;

  private final List<AngleNumber> numbers;
  private final AngleField field;
  private final List<Step> steps = new ArrayList<>();

  private MultipleAngle(List<AngleNumber> numbers, AngleField field) {
    this.numbers = numbers;
    this.field = field;
  }

  /**
   * The lines that lead to a polynomial whose roots are these numbers.
   *
   * @return empty if the numbers are not alike, or no multiple below {@value #HIGHEST_MULTIPLE}
   *     serves
   */
  static Optional<List<Step>> lines(
      List<Formula> listed, AngleField field, Polynomial polynomial, String unknown) {
    List<AngleNumber> numbers = new ArrayList<>();
    for (Formula number : listed) {
      Optional<AngleNumber> one = AngleNumber.of(number);
      if (one.isEmpty() || (!numbers.isEmpty() && !one.get().isLike(numbers.get(0)))) {
        return Optional.empty();
      }
      numbers.add(one.get());
    }
    return new MultipleAngle(numbers, field).lines(polynomial, unknown);
  }

  private Optional<List<Step>> lines(Polynomial polynomial, String unknown) {
    AngleNumber first = numbers.get(0);
    boolean written =
        switch (first.function() + first.power()) {
          case "cos1" -> cosine(1, InTerms.multiple(first.factor()), polynomial, unknown);
          case "sec1" -> cosine(1, InTerms.reciprocal(first.factor()), polynomial, unknown);
          case "cos2" -> cosine(2, InTerms.square(first.factor(), 1), polynomial, unknown);
          case "sin2" -> cosine(2, InTerms.square(first.factor(), -1), polynomial, unknown);
          case "sec2" -> cosine(2, InTerms.overSquare(first.factor(), 1), polynomial, unknown);
          case "csc2" -> cosine(2, InTerms.overSquare(first.factor(), -1), polynomial, unknown);
          case "sin1" -> sine(InTerms.multiple(first.factor()), polynomial, unknown);
          case "csc1" -> sine(InTerms.reciprocal(first.factor()), polynomial, unknown);
          default -> tangent(first, polynomial, unknown);
        };
    return written ? Optional.of(steps) : Optional.empty();
  }

  /** cos(nC) = T_n(cos C) for C = θ or 2θ. */
  private boolean cosine(int times, InTerms inTerms, Polynomial polynomial, String unknown) {
    List<Rational> turns = numbers.stream().map(n -> n.turn().times(times)).toList();
    for (int n = 1; n <= HIGHEST_MULTIPLE; n++) {
      Optional<Rational> common = common("cos", turns, n);
      if (common.isPresent()) {
        Polynomial chebyshev = Chebyshev.first(n);
        Formula angle = times == 1 ? Formula.name("θ") : Formula.number(2).times(Formula.name("θ"));
        Formula z = Formula.name("z");
        Setting setting =
            Setting.ofLetters(List.of("z"))
                .withDefinition("c", z.plus(Formula.number(1).over(z)).over(Formula.number(2)));
        write(
            setting,
            times == 1 ? "c = cos θ" : "c = cos 2θ",
            new Formula.Application(
                "cos", List.of(Formula.number((long) n * times).times(Formula.name("θ")))),
            z.power(n).plus(Formula.number(1).over(z.power(n))).over(Formula.number(2)),
            PolynomialFormula.of(chebyshev, "c"));
        sameValue("cos", turns, n, common.get(), angle);
        return finish(
            chebyshev.minus(Polynomial.constant(common.get())),
            base("cos", turns),
            "c",
            inTerms,
            polynomial,
            unknown);
      }
    }
    return false;
  }

  /** sin nθ = ±T_n(sin θ) for odd n. */
  private boolean sine(InTerms inTerms, Polynomial polynomial, String unknown) {
    List<Rational> turns = numbers.stream().map(AngleNumber::turn).toList();
    for (int n = 1; n <= HIGHEST_MULTIPLE; n += 2) {
      Optional<Rational> common = common("sin", turns, n);
      if (common.isPresent()) {
        Polynomial power = Chebyshev.first(n);
        Polynomial signed = n % 4 == 1 ? power : power.negate();
        Formula z = Formula.name("z");
        Formula twice = Formula.number(2).times(new Formula.ImaginaryUnit());
        Setting setting =
            Setting.ofLetters(List.of("z"))
                .withDefinition("s", z.minus(Formula.number(1).over(z)).over(twice));
        write(
            setting,
            "s = sin θ",
            new Formula.Application("sin", List.of(Formula.number(n).times(Formula.name("θ")))),
            z.power(n).minus(Formula.number(1).over(z.power(n))).over(twice),
            PolynomialFormula.of(signed, "s"));
        sameValue("sin", turns, n, common.get(), Formula.name("θ"));
        return finish(
            signed.minus(Polynomial.constant(common.get())),
            base("sin", turns),
            "s",
            inTerms,
            polynomial,
            unknown);
      }
    }
    return false;
  }

  /** The imaginary part of (1 + it)^n, or of (t + i)^n for the cotangent, is zero with sin nθ. */
  private boolean tangent(AngleNumber like, Polynomial polynomial, String unknown) {
    List<Rational> turns = numbers.stream().map(AngleNumber::turn).toList();
    BigInteger common = BigInteger.ONE;
    for (Rational turn : turns) {
      BigInteger d = turn.denominator();
      common = common.multiply(d).divide(common.gcd(d));
    }
    if (common.bitLength() > 6 || common.intValueExact() > HIGHEST_MULTIPLE) {
      return false;
    }
    int n = common.intValueExact();
    boolean tangent = like.function().equals("tan");
    String t = tangent ? "t" : "c";
    Polynomial imaginary = tangent ? Chebyshev.tangent(n) : Chebyshev.cotangent(n);
    Formula i = new Formula.ImaginaryUnit();
    Formula name = Formula.name(t);
    Formula plus = tangent ? Formula.number(1).plus(i.times(name)) : name.plus(i);
    Formula minus = tangent ? Formula.number(1).minus(i.times(name)) : name.minus(i);
    Step identity =
        Step.equation(
            Setting.ofLetters(List.of(t)),
            Idea.MULTIPLE_ANGLE,
            "%s = %s θ; de Moivre: this is sin %dθ over a power of %s θ"
                .formatted(t, like.function(), n, tangent ? "cos" : "sin"),
            NormalForm.of(plus.power(n).minus(minus.power(n)).over(Formula.number(2).times(i))),
            PolynomialFormula.of(imaginary, t));
    steps.add(identity);
    sameValue("sin", turns, n, Rational.ZERO, Formula.name("θ"));
    if (like.power() == 1) {
      return finish(
          imaginary,
          base(like.function(), turns),
          t,
          InTerms.multiple(like.factor()),
          polynomial,
          unknown);
    }
    int low = imaginary.coefficient(0).isZero() ? 1 : 0;
    List<Rational> even = new ArrayList<>();
    for (int k = low; k <= imaginary.degree(); k += 2) {
      even.add(imaginary.coefficient(k));
    }
    Polynomial inSquare = Polynomial.ofAscending(even);
    Formula square = PolynomialFormula.of(inSquare, name.power(2));
    steps.add(
        Step.equation(
            Setting.ofLetters(List.of(t)),
            Idea.SUBSTITUTE,
            low == 1
                ? "a polynomial in the square, and %s ≠ 0".formatted(t)
                : "a polynomial in the square",
            PolynomialFormula.of(imaginary, t),
            low == 1 ? NormalForm.of(name.times(square)) : square));
    return finish(
        inSquare,
        squares(like.function(), turns),
        "y",
        InTerms.multiple(like.factor()),
        polynomial,
        unknown);
  }

  private void write(Setting setting, String reason, Formula shown, Formula meant, Formula value) {
    steps.add(
        new Step(
            NormalForm.of(Formula.equation(shown, value)),
            reason,
            Idea.MULTIPLE_ANGLE,
            new Claim.Equal(setting, List.of(meant, value))));
  }

  /** The rational value that f(n·q·π) has for every q; empty if there is none. */
  private static Optional<Rational> common(String function, List<Rational> turns, int n) {
    Optional<Rational> common = Optional.empty();
    for (Rational turn : turns) {
      Optional<Rational> value =
          function.equals("cos")
              ? Chebyshev.rationalSine(turn.times(n).plus(Rational.of(1, 2)))
              : Chebyshev.rationalSine(turn.times(n));
      if (value.isEmpty() || (common.isPresent() && !common.equals(value))) {
        return Optional.empty();
      }
      common = value;
    }
    return common;
  }

  private void sameValue(
      String function, List<Rational> turns, int n, Rational value, Formula angle) {
    List<Formula> sides = new ArrayList<>();
    for (Rational turn : turns) {
      Formula side = applied(function, turn.times(n));
      if (!sides.contains(side)) {
        sides.add(side);
      }
    }
    sides.add(Formula.number(value));
    steps.add(
        Step.equation(
            Setting.ofLetters(List.of()),
            Idea.MULTIPLE_ANGLE,
            "%d times each of the angles".formatted(angle instanceof Formula.Product ? 2 * n : n),
            sides.toArray(Formula[]::new)));
  }

  private static Formula applied(String function, Rational turn) {
    return new Formula.Application(function, List.of(Angle.written(turn)));
  }

  private Polynomial base(String function, List<Rational> turns) {
    return withRoots(turns.stream().map(turn -> applied(function, turn)).toList());
  }

  private Polynomial squares(String function, List<Rational> turns) {
    return withRoots(turns.stream().map(turn -> applied(function, turn).power(2)).toList());
  }

  private Polynomial withRoots(List<Formula> values) {
    return field
        .withRoots(values.stream().map(value -> field.residue(value).orElseThrow()).toList())
        .orElse(Polynomial.ZERO);
  }

  /** Splits the wanted factor off and passes from the base value to the number itself. */
  private boolean finish(
      Polynomial master,
      Polynomial base,
      String letter,
      InTerms inTerms,
      Polynomial polynomial,
      String unknown) {
    if (base.isZero() || !master.remainder(base.squarefreePart()).isZero()) {
      return false;
    }
    Formula product = factored(master, letter);
    Formula written = PolynomialFormula.of(master, letter);
    if (!product.equals(written)) {
      steps.add(
          Step.equation(
              Setting.ofLetters(List.of(letter)),
              Idea.MULTIPLE_ANGLE,
              "in factors; those that none of the angles makes zero are left",
              written,
              product));
    }
    Polynomial primitive = base.primitive();
    if (!(inTerms.isIdentity() && primitive.equals(polynomial))) {
      steps.add(
          Step.equation(
              Setting.ofLetters(List.of(unknown)),
              Idea.SUBSTITUTE,
              inTerms.reason(letter, unknown),
              inTerms.cleared(primitive, polynomial, letter, unknown),
              PolynomialFormula.of(polynomial, unknown)));
    }
    return true;
  }

  private static Formula factored(Polynomial polynomial, String letter) {
    List<Formula> factors = new ArrayList<>();
    Polynomial product = Polynomial.ONE;
    for (IrreducibleFactor factor : Factorisation.of(polynomial).factors()) {
      Formula one = PolynomialFormula.of(factor.polynomial(), letter);
      factors.add(factor.multiplicity() == 1 ? one : one.power(factor.multiplicity()));
      product = product.times(factor.polynomial().power(factor.multiplicity()));
    }
    Rational content = polynomial.lead().over(product.lead());
    if (content.equals(Rational.MINUS_ONE)) {
      return NormalForm.of(new Formula.Negative(Formula.product(factors)));
    }
    if (factors.size() == 1 && content.isOne()) {
      return NormalForm.of(factors.get(0));
    }
    if (!content.isOne()) {
      factors.add(0, Formula.number(content));
    }
    return NormalForm.of(Formula.product(factors));
  }
}
