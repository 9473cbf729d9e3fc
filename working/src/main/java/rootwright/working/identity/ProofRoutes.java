package rootwright.working.identity;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.working.answer.Answer;
import rootwright.working.route.Combination;
import rootwright.working.route.NamedForm;
import rootwright.working.route.Working;
import rootwright.working.step.Idea;
import rootwright.working.step.Setting;
import rootwright.working.step.Step;

/** The workings that prove a conjecture. */
final class ProofRoutes {

  private final Conjecture conjecture;
  private final List<Proof> proofs;

  /**
   * @param proofs one for each claim
   */
  ProofRoutes(Conjecture conjecture, List<Proof> proofs) {
    this.conjecture = conjecture;
    this.proofs = List.copyOf(proofs);
  }

  /** The letters and q, the reciprocal of what is not zero. */
  Setting setting() {
    return conjecture.setting().withFree("q_1");
  }

  /** The workings, whose lines are still to be checked. */
  List<Working> workings() {
    List<Working> found = new ArrayList<>();
    eliminated().ifPresent(found::add);
    found.add(combined());
    return found;
  }

  /** How unknown k − 1 is called. */
  private Formula letter(int k) {
    return k <= conjecture.letters().size()
        ? Formula.name(conjecture.letters().get(k - 1))
        : new Formula.Name("q", "1");
  }

  private Formula written(MultivariatePolynomial polynomial) {
    return new NamedForm(polynomial, this::letter).written();
  }

  /** The difference of the sides is a combination of what is zero. */
  private Working combined() {
    List<Step> steps = new ArrayList<>();
    for (int k = 0; k < proofs.size(); k++) {
      Equation claim = conjecture.claims().get(k);
      Proof proof = proofs.get(k);
      for (Equation condition : conjecture.conditions()) {
        cleared(condition, "clear the denominators of the condition", steps);
      }
      cleared(claim, "and of the claim", steps);
      steps.add(identity(claim, proof));
      steps.add(
          Step.argument(
              Idea.ELIMINATE,
              (proof.usesReciprocal(conjecture.conditions().size())
                      ? "q_1 is the reciprocal of what is not zero; "
                      : "")
                  + (conjecture.conditions().isEmpty()
                      ? "so it always holds"
                      : "every factor that the conditions make zero is zero"),
              claim.relation()));
    }
    List<Step> once = steps.stream().distinct().toList();
    return working(
        "reduction",
        "the difference of the sides is made of what is zero",
        "An equation follows from others if its difference is a combination of theirs.",
        once);
  }

  private Step identity(Equation claim, Proof proof) {
    Combination sum = new Combination();
    for (int i = 0; i < proof.factors().size(); i++) {
      if (!proof.factors().get(i).isZero()) {
        sum.plus(product(proof.factors().get(i), equation(proof, i)));
      }
    }
    boolean asTyped = claim.difference().isPolynomial() && proof.power() == 1;
    return Step.equation(
        setting(),
        Idea.REDUCE,
        "multiply out to check: an identity",
        asTyped
            ? claim.shownDifference()
            : Combination.power(written(proof.claim()), proof.power()),
        sum.formula());
  }

  /** The equation as it was typed where it is short, else cleared. */
  private Formula equation(Proof proof, int i) {
    List<Equation> conditions = conjecture.conditions();
    return i < conditions.size() && conditions.get(i).difference().isPolynomial()
        ? conditions.get(i).shownDifference()
        : written(proof.equations().get(i));
  }

  private Formula product(MultivariatePolynomial factor, Formula other) {
    if (factor.isConstant()) {
      Rational number = factor.coefficient(Monomial.ONE);
      return Combination.product(List.of(Formula.number(number), other));
    }
    return written(factor).times(other);
  }

  /** left − right = numerator/denominator, where there is a denominator. */
  private void cleared(Equation equation, String reason, List<Step> steps) {
    if (!equation.difference().isPolynomial()) {
      steps.add(
          Step.equation(
              conjecture.setting(),
              Idea.COMMON_DENOMINATOR,
              reason,
              equation.shownDifference(),
              written(equation.difference().numerator())
                  .over(written(equation.difference().denominator()))));
    }
  }

  /** One letter is found from a condition that is linear in it, and put into the claim. */
  private Optional<Working> eliminated() {
    for (Equation condition : conjecture.conditions()) {
      for (int k = conjecture.letters().size() - 1; k >= 0; k--) {
        MultivariatePolynomial cleared = condition.cleared();
        if (cleared.degreeIn(k) == 1 && cleared.coefficientsIn(k).get(1).isConstant()) {
          return substituted(condition, k, cleared.coefficientsIn(k));
        }
      }
    }
    return Optional.empty();
  }

  private Optional<Working> substituted(
      Equation condition, int k, List<MultivariatePolynomial> parts) {
    Rational lead = parts.get(1).coefficient(Monomial.ONE);
    MultivariatePolynomial image = parts.get(0).times(lead.reciprocal().negate());
    List<MultivariatePolynomial> images = new ArrayList<>();
    for (int i = 0; i < conjecture.letters().size(); i++) {
      images.add(i == k ? image : MultivariatePolynomial.unknown(i));
    }
    boolean enough =
        conjecture.claims().stream().allMatch(claim -> claim.cleared().substitute(images).isZero());
    if (!enough) {
      return Optional.empty();
    }
    Formula name = Formula.name(conjecture.letters().get(k));
    Formula other = written(image);
    List<Step> steps = new ArrayList<>();
    steps.add(
        Step.argument(
            Idea.ELIMINATE,
            "from %s".formatted(UnicodeWriter.write(condition.relation())),
            Formula.equation(name, other)));
    for (Equation claim : conjecture.claims()) {
      steps.add(
          Step.equation(
              conjecture.setting(),
              Idea.REDUCE,
              "put it in and multiply out: an identity",
              put(claim.left(), Map.of(name, other)),
              put(claim.right(), Map.of(name, other))));
    }
    return Optional.of(
        working(
            "eliminate",
            "solve the condition for one letter and put it in",
            "A linear condition makes one letter superfluous.",
            steps));
  }

  static Formula put(Formula formula, Map<Formula, Formula> images) {
    return formula.rewrite(part -> images.getOrDefault(part, part));
  }

  static Working working(String name, String title, String teaches, List<Step> steps) {
    return Working.of(name, title, teaches, steps, new Answer.Truth(true));
  }
}
