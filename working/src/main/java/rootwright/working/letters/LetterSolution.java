package rootwright.working.letters;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.factor.Factorisation;
import rootwright.algebra.factor.IrreducibleFactor;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.NormalForm;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.value.ExactRoot;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.ExactValues;
import rootwright.working.step.NumberDomain;

/**
 * The values of the one letter at which all equations hold, each judged by the other conditions.
 *
 * @param equations what the conditions say of the letter
 * @param common the greatest common divisor of their numerators, as a polynomial in the letter;
 *     zero if the equations hold for every value
 * @param candidates its distinct roots
 */
record LetterSolution(
    List<LetterEquation> equations, Polynomial common, List<Candidate> candidates) {

  LetterSolution {
    equations = List.copyOf(equations);
    candidates = List.copyOf(candidates);
  }

  /** Solves a problem with one letter. */
  static LetterSolution of(LetteredProblem problem) {
    List<LetterEquation> equations = new LetterEquations(problem).all();
    Polynomial common = Polynomial.ZERO;
    for (LetterEquation equation : equations) {
      for (Polynomial numerator : numerators(equation)) {
        common = common.isZero() ? numerator : numerator.isZero() ? common : common.gcd(numerator);
      }
    }
    List<Candidate> candidates = new ArrayList<>();
    if (!common.isZero() && common.degree() > 0) {
      for (ExactRoot root : ExactValues.rootsOf(common)) {
        candidates.add(judged(root.value(), equations, problem));
      }
    }
    return new LetterSolution(equations, common.isZero() ? common : common.primitive(), candidates);
  }

  /**
   * What must vanish: the numerator, or all its coefficients in the letter of a joint condition.
   */
  private static List<Polynomial> numerators(LetterEquation equation) {
    if (equation.shape() != LetterEquation.Shape.JOINT) {
      return List.of(InLetters.inOne(equation.value().numerator(), 1));
    }
    return equation.value().numerator().coefficientsIn(2).stream()
        .map(part -> InLetters.inOne(part, 1))
        .toList();
  }

  private static Candidate judged(
      ExactValue value, List<LetterEquation> equations, LetteredProblem problem) {
    String letter = problem.polynomial().letters().get(0);
    NumberAt at = new NumberAt(problem.polynomial(), value);
    String here = "%s = %s".formatted(letter, text(value));
    NumberDomain domain = problem.domain(letter).orElse(NumberDomain.REAL);
    if (!domain.contains(value)) {
      return thrownOut(
          value,
          List.of(),
          Candidate.Objection.Sort.LETTER,
          "%s is not %s".formatted(here, LetterDomainWords.one(domain)));
    }
    for (Condition.LetterBound bound : problem.conditions(Condition.LetterBound.class)) {
      if (!BoundAt.holds(bound.relation(), letter, value)) {
        return thrownOut(
            value,
            List.of(),
            Candidate.Objection.Sort.LETTER,
            "%s does not satisfy %s".formatted(here, bound.words()));
      }
    }
    if (at.leadVanishes()) {
      return thrownOut(
          value,
          List.of(),
          Candidate.Objection.Sort.LEAD,
          "for %s the lead coefficient is 0, so there are fewer roots".formatted(here));
    }
    for (LetterEquation equation : equations) {
      if (NumberAt.isZero(InLetters.inOne(equation.value().denominator(), 1), value)
          && !equation.value().denominator().isConstant()) {
        return thrownOut(
            value,
            List.of(),
            Candidate.Objection.Sort.DENOMINATOR,
            "for %s a denominator is 0".formatted(here));
      }
    }
    List<ExactValue> roots = at.distinctRoots();
    Optional<String> failed = RootsJudged.objection(problem, roots, here);
    return failed.isPresent()
        ? thrownOut(value, roots, Candidate.Objection.Sort.ROOTS, failed.get())
        : new Candidate(value, roots, Optional.empty());
  }

  private static Candidate thrownOut(
      ExactValue value, List<ExactValue> roots, Candidate.Objection.Sort sort, String words) {
    return new Candidate(value, roots, Optional.of(new Candidate.Objection(sort, words)));
  }

  /** Whether the equations hold for every value of the letter. */
  boolean isAlwaysTrue() {
    return common.isZero();
  }

  /** The values that are kept, in the order of values. */
  List<ExactValue> kept() {
    return candidates.stream().filter(Candidate::kept).map(Candidate::value).toList();
  }

  /** The candidates that are thrown out. */
  List<Candidate> thrownOut() {
    return candidates.stream().filter(candidate -> !candidate.kept()).toList();
  }

  /** A value in a sentence. */
  static String text(ExactValue value) {
    return UnicodeWriter.write(value.toFormula());
  }

  /** The polynomial c·(k − k₁)^m₁·…, where all its roots are rational. */
  static Optional<Formula> factored(Polynomial polynomial, String letter) {
    if (polynomial.degree() < 1) {
      return Optional.empty();
    }
    List<Formula> factors = new ArrayList<>();
    Rational lead = polynomial.lead();
    for (IrreducibleFactor factor : Factorisation.of(polynomial).factors()) {
      Polynomial primitive = factor.polynomial().primitive();
      lead = lead.over(primitive.lead().power(factor.multiplicity()));
      Formula written = PolynomialFormula.of(primitive, letter);
      factors.add(factor.multiplicity() == 1 ? written : written.power(factor.multiplicity()));
    }
    if (factors.size() == 1 && polynomial.primitive().equals(polynomial)) {
      return Optional.empty();
    }
    if (lead.equals(Rational.MINUS_ONE)) {
      return Optional.of(NormalForm.of(new Formula.Negative(Formula.product(factors))));
    } else if (!lead.isOne()) {
      factors.add(0, Formula.number(lead));
    }
    return Optional.of(NormalForm.of(Formula.product(factors)));
  }
}
