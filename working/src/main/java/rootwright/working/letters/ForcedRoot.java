package rootwright.working.letters;

import java.util.List;
import java.util.Optional;
import rootwright.algebra.factor.RationalRoot;
import rootwright.algebra.factor.RationalRoots;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Monomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.algebra.value.ExactRoot;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.ExactValues;
import rootwright.working.route.Attempt;
import rootwright.working.route.RouteOn;
import rootwright.working.step.Idea;

/** One root of a cubic follows from the condition and a known e_k; it is put into P. */
final class ForcedRoot implements RouteOn<LettersAsked> {

  @Override
  public String name() {
    return "forced-root";
  }

  @Override
  public String title() {
    return "find the root that the condition forces and put it into P";
  }

  @Override
  public String teaches() {
    return "Three terms of an arithmetic progression have three times the middle one for sum; of a geometric one, its cube for product.";
  }

  @Override
  public Attempt attempt(LettersAsked asked) {
    LetteredProblem problem = asked.problem();
    List<Condition.Zeros> zeros = problem.conditions(Condition.Zeros.class);
    if (problem.polynomial().degree() != 3
        || zeros.size() != 1
        || zeros.get(0).zeros().size() != 1
        || asked.solution().equations().size() != 1) {
      return new Attempt.Declined("it needs a cubic and one condition on its roots");
    }
    Formula zero = zeros.get(0).zeros().get(0);
    Vieta vieta = new Vieta(problem);
    for (Forcing forcing : Forcing.values()) {
      if (forcing.matches(zero, problem.roots()) && vieta.isNumber(forcing.known())) {
        return worked(asked, vieta, forcing);
      }
    }
    return new Attempt.Declined("the condition and the known coefficients force no single root");
  }

  private Attempt worked(LettersAsked asked, Vieta vieta, Forcing forcing) {
    LetteredProblem problem = asked.problem();
    LetterLines lines = new LetterLines();
    vieta.write(lines, forcing.known());
    Rational e = number(vieta.elementary(forcing.known()));
    Optional<Rational> root = forcing.root(e);
    if (root.isEmpty()) {
      return new Attempt.Declined("the forced root is not rational");
    }
    String name = problem.roots().get(forcing.which());
    lines.argue(
        Idea.SUBSTITUTE,
        forcing.reason(),
        Formula.equation(Formula.name(name), Formula.number(root.get())));
    Formula value = new Formula.Application("P", List.of(Formula.number(root.get())));
    RationalFunction at =
        FunctionAsked.valueOf(value, problem.polynomial(), problem.roots()).orElseThrow();
    lines.add(
        problem.setting(),
        Idea.EVALUATE,
        "put it into P: must be 0",
        value,
        InLetters.formula(at, problem.polynomial().letters()));
    Polynomial equation = InLetters.inOne(at.numerator(), 1);
    if (equation.degree() < 1) {
      return new Attempt.Declined("the forced root does not settle the condition here");
    }
    List<ExactValue> all = ExactValues.rootsOf(equation).stream().map(ExactRoot::value).toList();
    // Other cube roots of the product give values of the letter that are not real.
    List<ExactValue> wanted =
        ConditionInLetter.all(asked.solution()).stream().filter(ExactValue::isReal).toList();
    if (!all.equals(wanted)) {
      return new Attempt.Declined("the forced root does not settle the condition here");
    }
    JudgedLines.solve(lines, asked.letter(), equation, all);
    return JudgedLines.end(lines, title(), asked);
  }

  private static Rational number(RationalFunction value) {
    return value.numerator().coefficient(Monomial.ONE);
  }

  /** Which condition forces which root. */
  private enum Forcing {
    ARITHMETIC(1, 1, "three times the middle root is the sum"),
    GEOMETRIC(3, 1, "the cube of the middle root is the product"),
    OPPOSITE(1, 2, "the two opposite roots leave the third as the sum"),
    SUM_OF_OTHERS(1, 0, "the sum of all is twice that root"),
    RECIPROCAL(3, 2, "the two reciprocal roots leave the third as the product");

    private final int known;
    private final int which;
    private final String reason;

    Forcing(int known, int which, String reason) {
      this.known = known;
      this.which = which;
      this.reason = reason;
    }

    int known() {
      return known;
    }

    int which() {
      return which;
    }

    String reason() {
      return reason;
    }

    boolean matches(Formula zero, List<String> roots) {
      String shape = UnicodeWriter.write(zero).replace(" ", "");
      String r = UnicodeWriter.write(Formula.name(roots.get(0)));
      String s = UnicodeWriter.write(Formula.name(roots.get(1)));
      String t = UnicodeWriter.write(Formula.name(roots.get(2)));
      return switch (this) {
        case ARITHMETIC -> shape.equals(r + "+" + t + "−2" + s);
        case GEOMETRIC -> shape.equals(r + t + "−" + s + "²") || shape.equals(s + "²−" + r + t);
        case OPPOSITE ->
            shape.equals(r + "+" + s)
                || shape.equals(r + "−−" + s)
                || shape.equals(r + "−(−" + s + ")");
        case SUM_OF_OTHERS -> shape.equals(r + "−(" + s + "+" + t + ")");
        case RECIPROCAL -> shape.equals(r + s + "−1") || shape.equals(r + "−1/" + s);
      };
    }

    Optional<Rational> root(Rational e) {
      return switch (this) {
        case ARITHMETIC -> Optional.of(e.over(Rational.of(3)));
        case SUM_OF_OTHERS -> Optional.of(e.over(Rational.TWO));
        case OPPOSITE, RECIPROCAL -> Optional.of(e);
        case GEOMETRIC ->
            RationalRoots.of(Polynomial.X.power(3).minus(Polynomial.constant(e))).stream()
                .map(RationalRoot::value)
                .findFirst();
      };
    }
  }
}
