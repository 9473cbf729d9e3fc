package rootwright.working.letters;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.working.step.LetteredSetting;

/** Turns the conditions of a problem into equations for the letters. */
final class LetterEquations {

  /** Highest degree in the roots of a product over all namings. */
  private static final int HIGHEST_PRODUCT = 60;

  private final LetteredProblem problem;
  private final LetteredRoots roots;

  LetterEquations(LetteredProblem problem) {
    this.problem = problem;
    roots = new LetteredRoots(problem.polynomial());
  }

  /**
   * The equations, in the order of the conditions.
   *
   * @throws BeyondLettersException if one is too large to be worked out
   */
  List<LetterEquation> all() {
    List<LetterEquation> equations = new ArrayList<>();
    List<Condition.Zeros> named = new ArrayList<>();
    for (Condition condition : problem.conditions()) {
      if (condition instanceof Condition.Zeros zeros) {
        for (Formula zero : zeros.zeros()) {
          Optional<RationalFunction> constant = constant(zero);
          if (constant.isPresent()) {
            equations.add(symmetric(zeros, zero, constant.get()));
          } else {
            named.add(new Condition.Zeros(zeros.words(), List.of(zero), zeros.equations()));
          }
        }
      } else if (condition instanceof Condition.RootIs root) {
        equations.addAll(RootPutIn.equations(root, problem));
      } else if (condition instanceof Condition.DividedBy divided) {
        equations.addAll(remainder(divided));
      }
    }
    if (named.size() == 1) {
      equations.add(product(named.get(0)));
    } else if (named.size() > 1) {
      equations.addAll(joint(named));
    }
    return equations;
  }

  private Optional<RationalFunction> constant(Formula formula) {
    LetteredPolynomial polynomial = problem.polynomial();
    return roots
        .constant(
            new LetteredEvaluation(
                    roots, problem.roots(), polynomial.letters(), problem.polynomial())
                .of(formula))
        .map(roots::outer);
  }

  private LetterEquation symmetric(
      Condition.Zeros condition, Formula zero, RationalFunction value) {
    boolean ofLetters = zero.equals(InLetters.formula(value, problem.polynomial().letters()));
    return new LetterEquation(
        condition,
        ofLetters ? LetterEquation.Shape.LETTERS : LetterEquation.Shape.SYMMETRIC,
        zero,
        value,
        problem.setting());
  }

  private LetterEquation product(Condition.Zeros condition) {
    Formula zero = condition.zeros().get(0);
    // The square of r − s has half as many images, and is zero with it.
    Formula body = isDifferenceOfRoots(zero) ? zero.power(2) : zero;
    Formula product = new Formula.Aggregate(Formula.Aggregate.Operation.PRODUCT, body);
    requireLow(body);
    RationalFunction value =
        constant(product)
            .orElseThrow(() -> new IllegalStateException("a product over all namings varies"));
    return new LetterEquation(
        condition, LetterEquation.Shape.PRODUCT, product, value, problem.setting());
  }

  /** Refuses a product over all namings that nobody would write out. */
  private void requireLow(Formula body) {
    LetteredPolynomial polynomial = problem.polynomial();
    RationalFunction value =
        new LetteredEvaluation(roots, problem.roots(), polynomial.letters(), polynomial).of(body);
    long degree = Math.max(value.numerator().degree(), value.denominator().degree());
    if (degree * roots.countImages(value) > HIGHEST_PRODUCT) {
      throw new BeyondLettersException(
          "the product of the condition over all namings would have a degree above "
              + HIGHEST_PRODUCT);
    }
  }

  private boolean isDifferenceOfRoots(Formula zero) {
    return problem.roots().size() > 1
        && zero.equals(
            Formula.name(problem.roots().get(0)).minus(Formula.name(problem.roots().get(1))));
  }

  /** E₁ = E₂ = … = 0 for one naming: ∏(E₁ + T·E₂ + T²·E₃ + …) is zero for every T. */
  private List<LetterEquation> joint(List<Condition.Zeros> named) {
    String fresh = fresh();
    Formula t = Formula.name(fresh);
    Formula sum = named.get(0).zeros().get(0);
    for (int k = 1; k < named.size(); k++) {
      Formula power = k == 1 ? t : t.power(k);
      sum = sum.plus(power.times(named.get(k).zeros().get(0)));
    }
    List<String> letters = new ArrayList<>(problem.polynomial().letters());
    letters.add(fresh);
    LetteredPolynomial with =
        new LetteredPolynomial(
            problem.polynomial().polynomial(), problem.polynomial().unknown(), letters);
    LetteredRoots wider = new LetteredRoots(with);
    Formula product = new Formula.Aggregate(Formula.Aggregate.Operation.PRODUCT, sum);
    RationalFunction value =
        wider
            .constant(new LetteredEvaluation(wider, problem.roots(), letters, with).of(product))
            .map(wider::outer)
            .orElseThrow(() -> new IllegalStateException("a product over all namings varies"));
    LetteredSetting setting = with.setting(problem.roots());
    List<LetterEquation> equations = new ArrayList<>();
    equations.add(
        new LetterEquation(named.get(0), LetterEquation.Shape.JOINT, product, value, setting));
    return equations;
  }

  private String fresh() {
    for (String letter : List.of("T", "U", "V", "W", "T_1", "T_2")) {
      boolean taken =
          problem.polynomial().letters().contains(letter)
              || problem.roots().contains(letter)
              || problem.polynomial().unknown().equals(letter);
      if (!taken) {
        return letter;
      }
    }
    return "T_9";
  }

  /** P = D·Q + R with D monic: every coefficient of R is zero. */
  private List<LetterEquation> remainder(Condition.DividedBy divided) {
    Polynomial monic = divided.divisor().monic();
    int d = monic.degree();
    LetteredPolynomial polynomial = problem.polynomial();
    List<MultivariatePolynomial> rest = new ArrayList<>();
    for (int power = 0; power <= polynomial.degree(); power++) {
      rest.add(polynomial.coefficient(power));
    }
    MultivariatePolynomial quotient = MultivariatePolynomial.ZERO;
    for (int power = polynomial.degree(); power >= d; power--) {
      MultivariatePolynomial lead = rest.get(power);
      quotient = quotient.plus(lead.times(MultivariatePolynomial.unknown(0).power(power - d)));
      for (int k = 0; k <= d; k++) {
        int at = power - d + k;
        rest.set(at, rest.get(at).minus(lead.times(monic.coefficient(k))));
      }
    }
    LetteredSetting setting =
        problem
            .setting()
            .withLetter(polynomial.unknown())
            .withFunction("D", MultivariatePolynomial.of(monic, 0))
            .withFunction("Q", quotient);
    List<LetterEquation> equations = new ArrayList<>();
    for (int power = Math.min(d, rest.size()) - 1; power >= 0; power--) {
      equations.add(
          new LetterEquation(
              divided,
              LetterEquation.Shape.REMAINDER,
              remainderCoefficient(rest, power, polynomial, monic),
              RationalFunction.of(rest.get(power)),
              setting));
    }
    return equations;
  }

  /** (P − D·Q − the other terms of R)/x^k, which is the coefficient of x^k in R. */
  private static Formula remainderCoefficient(
      List<MultivariatePolynomial> rest,
      int power,
      LetteredPolynomial polynomial,
      Polynomial monic) {
    Formula x = Formula.name(polynomial.unknown());
    Formula difference =
        new Formula.Application("P", List.of(x))
            .minus(
                PolynomialFormula.of(monic, polynomial.unknown())
                    .times(new Formula.Application("Q", List.of(x))));
    for (int k = 0; k < monic.degree() && k < rest.size(); k++) {
      if (k != power && !rest.get(k).isZero()) {
        Formula term = InLetters.term(rest.get(k), polynomial.letters(), polynomial.unknown(), k);
        difference = difference.minus(term);
      }
    }
    return power == 0 ? difference : difference.over(power == 1 ? x : x.power(power));
  }

  /** Whether an expression mentions a name. */
  static boolean mentions(Formula formula, Set<String> names) {
    return formula.contains(
        part -> part instanceof Formula.Name name && names.contains(name.spelling()));
  }
}
