package rootwright.working.route;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.answer.Answer;
import rootwright.working.ask.Asked;
import rootwright.working.problem.Problem;
import rootwright.working.step.Claim;
import rootwright.working.step.Idea;
import rootwright.working.step.Setting;

/**
 * The polynomial with the roots f(r) for a fraction f of linear expressions: solve y = f(r) for r,
 * put that into P and clear the denominators.
 */
final class InvertMap implements Route {

  private final Optional<String> letter;

  /** With the letter of the answer; absent for that of the problem. */
  InvertMap(Optional<String> letter) {
    this.letter = letter;
  }

  @Override
  public String name() {
    return "invert-map";
  }

  @Override
  public String title() {
    return "solve for the old root and put it into P";
  }

  @Override
  public String teaches() {
    return "The old root, written by the new one, satisfies the old equation.";
  }

  @Override
  public Attempt attempt(Asked asked) {
    List<OneRootMap> maps = OneRootMap.of(asked);
    if (maps.isEmpty()) {
      return OneRootMap.SEVERAL_ROOTS;
    }
    return maps.stream()
        .filter(OneRootMap::isInvertible)
        .findFirst()
        .<Attempt>map(this::worked)
        .orElseGet(
            () ->
                new Attempt.Declined(
                    "the new root is no fraction of linear expressions in the old one"));
  }

  private Attempt worked(OneRootMap map) {
    Problem problem = map.problem();
    Polynomial p = problem.polynomial();
    Setting setting = problem.setting();
    Lines lines = new Lines(setting);
    String y = FreshNames.letter(problem);
    Inverse inverse = Inverse.of(map.f().numerator(), map.f().denominator());
    map.write(lines);
    Lines named = lines.in(setting.withDefinition(y, problem.ask()));
    named.add(Idea.SUBSTITUTE, "the new root", Formula.name(y), map.written());
    named.add(
        Idea.SUBSTITUTE, "solved for " + map.root(), Formula.name(map.root()), inverse.written(y));
    Polynomial raw = inverse.putInto(p);
    Polynomial image = raw.primitive();
    Rational factor = image.lead().over(raw.lead());
    lines
        .in(setting.withFree(y))
        .add(
            Idea.SUBSTITUTE,
            inverse.under().degree() == 0 && factor.isOne()
                ? "put in and multiply out"
                : "put in, clear the denominators, multiply out",
            inverse.cleared(p.degree(), factor, y),
            inverse.termByTerm(p, factor, y),
            PolynomialFormula.of(image, y));
    String shownIn = letter.orElse(problem.unknown());
    lines.addRoots(
        Idea.STATE,
        "its roots are " + UnicodeWriter.write(problem.ask()),
        Formula.equation(PolynomialFormula.of(image, shownIn), Formula.number(0)),
        new Claim.HasRoots(setting, image, problem.ask()));
    return new Attempt.Worked(
        "put %s = %s into P".formatted(problem.unknown(), UnicodeWriter.write(inverse.written(y))),
        lines.steps(),
        new Answer.PolynomialIn(image, shownIn),
        List.of());
  }

  /** r = over(y)/under(y), whole coefficients without a common factor. */
  private record Inverse(Polynomial over, Polynomial under) {

    /** y = (αr + β)/(γr + δ) means r = (δy − β)/(α − γy). */
    static Inverse of(Polynomial numerator, Polynomial denominator) {
      Polynomial over = line(denominator.coefficient(0), numerator.coefficient(0).negate());
      Polynomial under = line(denominator.coefficient(1).negate(), numerator.coefficient(1));
      Polynomial both = over.plus(under.times(Polynomial.monomial(Rational.ONE, 2)));
      Rational scale = both.primitive().lead().over(both.lead());
      return new Inverse(over.times(scale), under.times(scale));
    }

    private static Polynomial line(Rational slope, Rational constant) {
      return Polynomial.ofAscending(List.of(constant, slope));
    }

    Formula written(String y) {
      return OneRootMap.fraction(over, under, y);
    }

    /** Σ a_k·over^k·under^(n−k). */
    Polynomial putInto(Polynomial p) {
      Polynomial sum = Polynomial.ZERO;
      Polynomial power = Polynomial.ONE;
      for (int k = p.degree(); k >= 0; k--) {
        sum = sum.times(over).plus(power.times(p.coefficient(k)));
        power = power.times(under);
      }
      return sum;
    }

    /** factor·under^n·P(over/under). */
    Formula cleared(int n, Rational factor, String y) {
      Formula applied = new Formula.Application("P", List.of(written(y)));
      return new Combination()
          .plus(
              under.degree() == 0 ? factor.times(under.coefficient(0).power(n)) : factor,
              under.degree() == 0
                  ? applied
                  : Combination.power(PolynomialFormula.of(under, y), n).times(applied))
          .formula();
    }

    Formula termByTerm(Polynomial p, Rational factor, String y) {
      Combination sum = new Combination();
      int n = p.degree();
      for (int k = n; k >= 0; k--) {
        Rational coefficient = p.coefficient(k).times(factor);
        List<Formula> factors = new ArrayList<>();
        if (over.degree() == 0) {
          coefficient = coefficient.times(over.coefficient(0).power(k));
        } else if (k > 0) {
          factors.add(Combination.power(PolynomialFormula.of(over, y), k));
        }
        if (under.degree() == 0) {
          coefficient = coefficient.times(under.coefficient(0).power(n - k));
        } else if (k < n) {
          factors.add(Combination.power(PolynomialFormula.of(under, y), n - k));
        }
        if (factors.isEmpty()) {
          sum.plus(coefficient);
        } else {
          sum.plus(coefficient, Combination.product(factors));
        }
      }
      return sum.formula();
    }
  }
}
