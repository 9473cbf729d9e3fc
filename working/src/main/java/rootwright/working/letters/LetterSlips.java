package rootwright.working.letters;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.value.ExactValue;
import rootwright.working.answer.Answer;
import rootwright.working.slip.SlipOn;
import rootwright.working.step.Idea;

/** The wrong turnings where a letter is looked for. */
final class LetterSlips {

  static final List<SlipOn<LettersAsked>> ALL =
      List.of(
          new Kept(
              "existence-unchecked",
              "Every value must be put back: the roots there may not be what the condition says.",
              15,
              List.of(Candidate.Objection.Sort.ROOTS)),
          new Kept(
              "extraneous-kept",
              "A value at which the lead or a denominator is 0, or that the letter may not have, is no solution.",
              10,
              List.of(
                  Candidate.Objection.Sort.LEAD,
                  Candidate.Objection.Sort.DENOMINATOR,
                  Candidate.Objection.Sort.LETTER)),
          new OneKept(),
          new SignsUnmoved(),
          new LeadLost());

  private LetterSlips() {}

  /** Some of what must be thrown out is kept. */
  private record Kept(String name, String text, int weight, List<Candidate.Objection.Sort> sorts)
      implements SlipOn<LettersAsked> {
    @Override
    public Idea spot() {
      return Idea.DOMAIN;
    }

    @Override
    public List<? extends Answer> answers(LettersAsked asked) {
      List<ExactValue> kept =
          asked.solution().candidates().stream()
              .filter(
                  candidate ->
                      candidate.kept()
                          || candidate
                              .objection()
                              .filter(objection -> sorts.contains(objection.sort()))
                              .isPresent())
              .filter(candidate -> candidate.kept() || candidate.value().isReal())
              .map(Candidate::value)
              .toList();
      return kept.size() == asked.solution().kept().size()
          ? List.of()
          : List.of(new Answer.Solutions(kept));
    }
  }

  /** One solution is found and the search ends. */
  private static final class OneKept implements SlipOn<LettersAsked> {
    @Override
    public String name() {
      return "second-solution-lost";
    }

    @Override
    public String text() {
      return "The first value that works is not the answer: solve the equation to the end.";
    }

    @Override
    public Idea spot() {
      return Idea.CASES;
    }

    @Override
    public int weight() {
      return 15;
    }

    @Override
    public List<? extends Answer> answers(LettersAsked asked) {
      List<ExactValue> kept = asked.solution().kept();
      return kept.size() < 2
          ? List.of()
          : kept.stream().map(value -> new Answer.Solutions(List.of(value))).toList();
    }
  }

  /** e_k taken with the sign of the coefficient: the roots change their signs. */
  private static final class SignsUnmoved implements SlipOn<LettersAsked> {
    @Override
    public String name() {
      return "sign-slip";
    }

    @Override
    public String text() {
      return "The signs alternate: e₁ is minus the second coefficient over the lead.";
    }

    @Override
    public Idea spot() {
      return Idea.READ_COEFFICIENTS;
    }

    @Override
    public int weight() {
      return 20;
    }

    @Override
    public List<? extends Answer> answers(LettersAsked asked) {
      LetteredPolynomial polynomial = asked.problem().polynomial();
      return solved(asked.problem(), mirrored(polynomial));
    }
  }

  /** The coefficients are taken as if the lead were 1. */
  private static final class LeadLost implements SlipOn<LettersAsked> {
    @Override
    public String name() {
      return "lead-forgotten";
    }

    @Override
    public String text() {
      return "Divide by the lead coefficient before you read e₁, e₂, … off.";
    }

    @Override
    public Idea spot() {
      return Idea.READ_COEFFICIENTS;
    }

    @Override
    public int weight() {
      return 20;
    }

    @Override
    public List<? extends Answer> answers(LettersAsked asked) {
      return monic(asked.problem().polynomial())
          .map(polynomial -> solved(asked.problem(), polynomial))
          .orElse(List.of());
    }
  }

  /** P(−x), made to have the lead of P. */
  static LetteredPolynomial mirrored(LetteredPolynomial polynomial) {
    MultivariatePolynomial mirrored = MultivariatePolynomial.ZERO;
    for (int power = 0; power <= polynomial.degree(); power++) {
      MultivariatePolynomial coefficient = polynomial.coefficient(power);
      boolean even = (polynomial.degree() - power) % 2 == 0;
      mirrored =
          mirrored.plus(
              (even ? coefficient : coefficient.negate())
                  .times(MultivariatePolynomial.unknown(0).power(power)));
    }
    return new LetteredPolynomial(mirrored, polynomial.unknown(), polynomial.letters());
  }

  /** The polynomial with 1 for its lead; empty if that is its lead. */
  static Optional<LetteredPolynomial> monic(LetteredPolynomial polynomial) {
    if (polynomial.lead().equals(MultivariatePolynomial.ONE)) {
      return Optional.empty();
    }
    MultivariatePolynomial power = MultivariatePolynomial.unknown(0).power(polynomial.degree());
    return Optional.of(
        new LetteredPolynomial(
            polynomial.polynomial().minus(polynomial.lead().times(power)).plus(power),
            polynomial.unknown(),
            polynomial.letters()));
  }

  private static List<Answer> solved(LetteredProblem problem, LetteredPolynomial polynomial) {
    List<Condition> onRoots = new ArrayList<>();
    for (Condition condition : problem.conditions()) {
      if (condition instanceof Condition.RootIs || condition instanceof Condition.DividedBy) {
        // Nothing is read off for these, so nothing can be misread.
        return List.of();
      }
      onRoots.add(condition);
    }
    try {
      LetterSolution solution =
          LetterSolution.of(
              new LetteredProblem(
                  polynomial,
                  problem.stated(),
                  problem.roots(),
                  problem.ask(),
                  onRoots,
                  problem.reading()));
      return solution.isAlwaysTrue() ? List.of() : List.of(new Answer.Solutions(solution.kept()));
    } catch (BeyondLettersException beyond) {
      return List.of();
    }
  }
}
