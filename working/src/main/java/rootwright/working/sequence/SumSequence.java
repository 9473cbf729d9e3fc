package rootwright.working.sequence;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.NormalForm;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.roots.PowerSums;
import rootwright.working.problem.Problem;
import rootwright.working.step.Idea;
import rootwright.working.step.Step;

/** The power sums of a problem's polynomial with the lines that many asks about them share. */
record SumSequence(Problem problem) {

  /** Places after which a period of parities is not told. */
  private static final int LONGEST_PATTERN = 15;

  Polynomial polynomial() {
    return problem.polynomial();
  }

  int degree() {
    return problem.degree();
  }

  /** c_j in S_k = c_1·S_(k−1) + … + c_n·S_(k−n). */
  Rational factor(int j) {
    return polynomial().coefficient(degree() - j).over(polynomial().lead()).negate();
  }

  /** Whether lead 1 and whole coefficients make every power sum whole. */
  boolean isWhole() {
    Polynomial monic = polynomial().monic();
    return monic.denominator().equals(BigInteger.ONE);
  }

  List<Rational> upTo(int last) {
    return PowerSums.of(polynomial()).upTo(last);
  }

  static Formula name(int k) {
    return new Formula.Family("S", Formula.number(k));
  }

  /** S_(k−j). */
  private static Formula behind(int j) {
    Formula k = Formula.name("k");
    return new Formula.Family("S", j == 0 ? k : k.minus(Formula.number(j)));
  }

  /** S_k = c_1·S_(k−1) + …. */
  Formula recurrence() {
    return recurrence(IntStream.rangeClosed(1, degree()).mapToObj(this::factor).toList());
  }

  /** The recurrence with other factors. */
  static Formula recurrence(List<Rational> factors) {
    List<Formula> terms = new ArrayList<>();
    for (int j = 1; j <= factors.size(); j++) {
      Rational c = factors.get(j - 1);
      if (!c.isZero()) {
        Formula size =
            c.absolute().isOne() ? behind(j) : Formula.number(c.absolute()).times(behind(j));
        terms.add(c.signum() < 0 ? new Formula.Negative(size) : size);
      }
    }
    return NormalForm.of(Formula.equation(behind(0), Formula.sum(terms)));
  }

  /** r^n by lower powers. */
  Step vanishing() {
    String root = problem.roots().get(0);
    Polynomial rest = Polynomial.monomial(Rational.ONE, degree()).minus(polynomial().monic());
    Formula power = degree() == 1 ? Formula.name(root) : Formula.name(root).power(degree());
    return Step.equation(
        problem.setting(),
        Idea.VANISHING,
        "P(%s) = 0".formatted(root),
        power,
        PolynomialFormula.of(rest, root));
  }

  /** S_0, S_1, …, S_last, each by Newton's identity from those before. */
  List<Step> newton(int last) {
    List<Rational> sums = upTo(last);
    List<Step> steps = new ArrayList<>();
    steps.add(
        Step.equation(
            problem.setting(),
            Idea.STATE,
            "one for every root",
            name(0),
            Formula.number(degree())));
    for (int k = 1; k <= last; k++) {
      List<Formula> terms = new ArrayList<>();
      for (int j = 1; j <= Math.min(k, degree()); j++) {
        Rational c = factor(j);
        Rational times = j == k ? Rational.of(k) : sums.get(k - j);
        if (!c.isZero() && !times.isZero()) {
          terms.add(Formula.number(c).times(Formula.number(times)));
        }
      }
      List<Formula> sides = new ArrayList<>(List.of(name(k)));
      if (!terms.isEmpty()) {
        sides.add(NormalForm.of(Formula.sum(terms)));
      }
      sides.add(Formula.number(sums.get(k)));
      steps.add(
          Step.equation(
              problem.setting(),
              k <= degree() ? Idea.NEWTON : Idea.RECURRENCE,
              k <= degree() ? "Newton" : "the recurrence",
              sides.toArray(Formula[]::new)));
    }
    return steps;
  }

  /** Closed facts that hold for every k, one sentence each. */
  List<String> facts() {
    List<String> facts = new ArrayList<>();
    if (isWhole()) {
      facts.add(
          "every S_k with k ≥ 0 is a whole number, since the lead is 1 and the coefficients are"
              + " whole");
      facts.add("S_p − S_1 is divisible by p for every prime p");
      parities().ifPresent(facts::add);
      if (polynomial().monic().coefficient(0).absolute().isOne()) {
        facts.add("S_k is whole for negative k too, since the product of the roots is 1 or −1");
      }
    }
    return facts;
  }

  private Optional<String> parities() {
    ModularCycle cycle =
        ModularCycle.of(this, BigInteger.TWO, LONGEST_PATTERN).orElse(ModularCycle.NONE);
    if (cycle.length() == 0 || cycle.before() > 0) {
      return Optional.empty();
    }
    List<String> words =
        cycle.remainders().stream()
            .map(remainder -> remainder.signum() == 0 ? "even" : "odd")
            .toList();
    return Optional.of(
        cycle.length() == 1
            ? "every S_k is " + words.get(0)
            : "from S_0 on the power sums are %s, and so on in this order"
                .formatted(String.join(", ", words)));
  }
}
