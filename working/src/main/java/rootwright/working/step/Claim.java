package rootwright.working.step;

import java.util.List;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.value.ExactValue;

/** What a line of a working asserts, in a form that can be checked. */
public sealed interface Claim {

  /** Does what is to be done with a claim of this sort. */
  <R> R choose(ClaimCases<R> cases);

  /**
   * All sides are equal, whichever root each root name stands for, and identically in the free
   * letters.
   */
  record Equal(Setting setting, List<Formula> sides) implements Claim {
    public Equal {
      sides = List.copyOf(sides);
      requireSides(sides);
    }

    @Override
    public <R> R choose(ClaimCases<R> cases) {
      return cases.equal(this);
    }
  }

  /**
   * All sides are equal, whichever root each root name stands for, for all numbers put for the
   * letters at which the lead coefficient and the denominators are not zero.
   */
  record EqualWithLetters(LetteredSetting setting, List<Formula> sides) implements Claim {
    public EqualWithLetters {
      sides = List.copyOf(sides);
      requireSides(sides);
    }

    @Override
    public <R> R choose(ClaimCases<R> cases) {
      return cases.equalWithLetters(this);
    }
  }

  /**
   * The roots of {@code image}, with multiplicity, are the distinct formal images of {@code map}
   * when the roots are renamed in all ways: {@code map = r − 3} has n images, {@code map = r·s} has
   * n(n − 1)/2.
   */
  record HasRoots(Setting setting, Polynomial image, Formula map) implements Claim {
    @Override
    public <R> R choose(ClaimCases<R> cases) {
      return cases.hasRoots(this);
    }
  }

  /**
   * These values, each listed once, are all numbers of a domain at which a polynomial is zero.
   *
   * @param equation the polynomial, not the zero polynomial
   */
  record SolutionSet(Polynomial equation, NumberDomain domain, List<ExactValue> values)
      implements Claim {
    public SolutionSet {
      values = List.copyOf(values);
      if (equation.isZero()) {
        throw new IllegalArgumentException("every number solves 0 = 0");
      }
    }

    @Override
    public <R> R choose(ClaimCases<R> cases) {
      return cases.solutionSet(this);
    }
  }

  /**
   * Every side is less than the next; the sides are real numbers written with square roots, no name
   * occurs in them.
   */
  record Ascending(List<Formula> sides) implements Claim {
    public Ascending {
      sides = List.copyOf(sides);
      requireSides(sides);
    }

    @Override
    public <R> R choose(ClaimCases<R> cases) {
      return cases.ascending(this);
    }
  }

  /**
   * So many distinct roots of a polynomial lie in a domain.
   *
   * @param polynomial not the zero polynomial
   */
  record CountOfRoots(Polynomial polynomial, NumberDomain domain, int distinct) implements Claim {
    public CountOfRoots {
      if (polynomial.isZero()) {
        throw new IllegalArgumentException("every number is a root of 0");
      }
    }

    @Override
    public <R> R choose(ClaimCases<R> cases) {
      return cases.countOfRoots(this);
    }
  }

  /**
   * So many distinct roots of a polynomial lie in a place on the real line.
   *
   * @param polynomial not the zero polynomial
   */
  record CountInPlace(Polynomial polynomial, RootPlace place, int distinct) implements Claim {
    public CountInPlace {
      if (polynomial.isZero()) {
        throw new IllegalArgumentException("every number is a root of 0");
      }
    }

    @Override
    public <R> R choose(ClaimCases<R> cases) {
      return cases.countInPlace(this);
    }
  }

  /**
   * How many distinct roots of a polynomial with one letter lie in a place, between neighbouring
   * values of the letter at which that can change.
   *
   * @param polynomial its unknown is unknown 0, its letter unknown 1
   * @param boundaries a polynomial in the letter, not zero, whose real roots are the boundaries
   * @param place where they are counted
   * @param counts one more than there are boundaries, from below upwards
   */
  record CountsBetween(
      MultivariatePolynomial polynomial,
      Polynomial boundaries,
      RootPlace place,
      List<Integer> counts)
      implements Claim {
    public CountsBetween {
      counts = List.copyOf(counts);
    }

    @Override
    public <R> R choose(ClaimCases<R> cases) {
      return cases.countsBetween(this);
    }
  }

  /**
   * The real numbers at which a polynomial in a letter has a sign are those of a region, and no
   * others.
   *
   * @param function not the zero polynomial
   * @param sign how it compares with 0: less, at most, greater, at least
   * @param region intervals, apart from one another; empty if there is no such number
   */
  record SignOn(Polynomial function, Formula.Comparison sign, List<LetterInterval> region)
      implements Claim {
    public SignOn {
      region = List.copyOf(region);
    }

    /** Whether a number with this sign compares so with 0. */
    public boolean holdsFor(int signum) {
      return switch (sign) {
        case LESS -> signum < 0;
        case AT_MOST -> signum <= 0;
        case GREATER -> signum > 0;
        case AT_LEAST -> signum >= 0;
        default -> throw new IllegalArgumentException("not an inequality: " + sign);
      };
    }

    @Override
    public <R> R choose(ClaimCases<R> cases) {
      return cases.signOn(this);
    }
  }

  /**
   * A function of a letter is nowhere on a region below a value (or above it) and attains it.
   *
   * @param over the numerator of the function
   * @param under its denominator, not zero on the region
   * @param region intervals of the letter
   * @param value the value, rational or quadratic
   * @param attained where it is attained, in the region
   * @param side the least or the greatest value
   */
  record Extreme(
      Polynomial over,
      Polynomial under,
      List<LetterInterval> region,
      ExactValue value,
      ExactValue attained,
      Side side)
      implements Claim {
    public Extreme {
      region = List.copyOf(region);
    }

    /** Which extreme value it is. */
    public enum Side {
      LEAST,
      GREATEST
    }

    @Override
    public <R> R choose(ClaimCases<R> cases) {
      return cases.extreme(this);
    }
  }

  /**
   * The sum or product of a body over all roots r of one polynomial and all roots s of another is
   * equal to a formula about the first polynomial.
   *
   * @param first the setting of the formula; its polynomial has the roots r
   * @param second the polynomial with the roots s
   * @param names r and s as they are called in the body, no others occur there
   * @param aggregate Σ or Π of the body
   * @param value what it is equal to
   */
  record EqualOverPairs(
      Setting first,
      Polynomial second,
      List<String> names,
      Formula.Aggregate aggregate,
      Formula value)
      implements Claim {
    public EqualOverPairs {
      names = List.copyOf(names);
    }

    @Override
    public <R> R choose(ClaimCases<R> cases) {
      return cases.equalOverPairs(this);
    }
  }

  /**
   * These rows of values are all common solutions of equations in several letters.
   *
   * @param letters how many letters there are
   * @param equations polynomials that must be zero; the k-th letter, counted from 1, is unknown k
   * @param rows the solutions, one rational number for each letter
   */
  record SystemSolutions(
      int letters, List<MultivariatePolynomial> equations, List<List<Rational>> rows)
      implements Claim {
    public SystemSolutions {
      equations = List.copyOf(equations);
      rows = rows.stream().map(List::copyOf).toList();
    }

    @Override
    public <R> R choose(ClaimCases<R> cases) {
      return cases.systemSolutions(this);
    }
  }

  /**
   * A polynomial is zero wherever polynomials are zero, in complex numbers.
   *
   * @param unknowns how many unknowns there are
   * @param equations what is zero
   * @param conclusion what must be zero therefore
   */
  record Consequence(
      int unknowns, List<MultivariatePolynomial> equations, MultivariatePolynomial conclusion)
      implements Claim {
    public Consequence {
      equations = List.copyOf(equations);
    }

    @Override
    public <R> R choose(ClaimCases<R> cases) {
      return cases.consequence(this);
    }
  }

  /** A thought that no computation confirms; shown as such. */
  record Argument() implements Claim {
    @Override
    public <R> R choose(ClaimCases<R> cases) {
      return cases.argument(this);
    }
  }

  /** The claim that the formulas are equal in a setting. */
  static Claim equal(Setting setting, Formula... sides) {
    return new Equal(setting, List.of(sides));
  }

  /** The claim that the formulas are equal for all values of the letters. */
  static Claim equal(LetteredSetting setting, Formula... sides) {
    return new EqualWithLetters(setting, List.of(sides));
  }

  private static void requireSides(List<Formula> sides) {
    if (sides.size() < 2) {
      throw new IllegalArgumentException("an equality of %d sides".formatted(sides.size()));
    }
  }
}
