package rootwright.working.route;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.step.Idea;

/** A way in which roots come in pairs, with one number for each pair. */
sealed interface Pairing {

  /** The polynomial of half the degree whose roots are the numbers of the pairs. */
  Polynomial pairs();

  /** The number of the pair of a root. */
  Formula numberOf(Formula root);

  /** f of the partner of r, as a sum of powers of r. */
  Laurent atPartner(Laurent f);

  /** f of the partner of r, as it is written before anything is worked out. */
  Formula written(Laurent f, Formula root);

  /** The polynomial in the number of the pair that f(r) + f(partner) is; empty if there is none. */
  Optional<Polynomial> together(Laurent f);

  /** Writes the line that shows the pairs. */
  void show(Lines lines, Formula unknown);

  /** The pairings of the roots of a polynomial of degree at least 4. */
  static List<Pairing> of(Polynomial polynomial) {
    List<Pairing> found = new ArrayList<>();
    int degree = polynomial.degree();
    if (degree >= 4 && degree % 2 == 0) {
      if (polynomial.compose(Polynomial.ofDescending(-1, 0)).equals(polynomial)) {
        found.add(new Opposite(polynomial));
      }
      if (polynomial.reversed().equals(polynomial)) {
        found.add(new Reciprocal(polynomial));
      }
    }
    return found;
  }

  /** With r also −r is a root; the number of the pair is r². */
  record Opposite(Polynomial polynomial) implements Pairing {
    @Override
    public Polynomial pairs() {
      List<Rational> ascending = new ArrayList<>();
      for (int k = 0; k <= polynomial.degree(); k += 2) {
        ascending.add(polynomial.coefficient(k));
      }
      return Polynomial.ofAscending(ascending);
    }

    @Override
    public Formula numberOf(Formula root) {
      return root.power(2);
    }

    @Override
    public Laurent atPartner(Laurent f) {
      return f.mirrored();
    }

    @Override
    public Formula written(Laurent f, Formula root) {
      return f.written(new Formula.Negative(root));
    }

    @Override
    public Optional<Polynomial> together(Laurent f) {
      Laurent sum = f.plus(atPartner(f));
      if (!sum.terms().isEmpty() && sum.terms().firstKey() < 0) {
        return Optional.empty();
      }
      Polynomial inSquares = Polynomial.ZERO;
      for (int k : sum.terms().keySet()) {
        inSquares = inSquares.plus(Polynomial.monomial(sum.coefficient(k), k / 2));
      }
      return Optional.of(inSquares);
    }

    @Override
    public void show(Lines lines, Formula unknown) {
      Combination regrouped = new Combination();
      Polynomial pairs = pairs();
      for (int k = pairs.degree(); k >= 1; k--) {
        regrouped.plus(pairs.coefficient(k), Combination.power(numberOf(unknown), k));
      }
      lines.add(
          Idea.CONJUGATE,
          "only even powers: with a root also its opposite",
          new Formula.Application("P", List.of(new Formula.Negative(unknown))),
          new Formula.Application("P", List.of(unknown)),
          regrouped.plus(pairs.coefficient(0)).formula());
    }
  }

  /** With r also 1/r is a root; the number of the pair is r + 1/r. */
  record Reciprocal(Polynomial polynomial) implements Pairing {
    @Override
    public Polynomial pairs() {
      int half = polynomial.degree() / 2;
      Polynomial sum = Polynomial.constant(polynomial.coefficient(half));
      for (int k = 1; k <= half; k++) {
        sum = sum.plus(powers(k).times(polynomial.coefficient(half + k)));
      }
      return sum;
    }

    /** x^k + x^(−k) as a polynomial in u = x + 1/x: D_k = u·D_(k−1) − D_(k−2). */
    private static Polynomial powers(int k) {
      Polynomial before = Polynomial.constant(Rational.TWO);
      Polynomial now = Polynomial.X;
      if (k == 0) {
        return before;
      }
      for (int step = 1; step < k; step++) {
        Polynomial next = now.times(Polynomial.X).minus(before);
        before = now;
        now = next;
      }
      return now;
    }

    @Override
    public Formula numberOf(Formula root) {
      return root.plus(Formula.number(1).over(root));
    }

    @Override
    public Laurent atPartner(Laurent f) {
      return f.reversed();
    }

    @Override
    public Formula written(Laurent f, Formula root) {
      return atPartner(f).written(root);
    }

    @Override
    public Optional<Polynomial> together(Laurent f) {
      Polynomial sum = Polynomial.ZERO;
      for (int k : f.terms().keySet()) {
        sum = sum.plus(powers(Math.abs(k)).times(f.coefficient(k)));
      }
      return Optional.of(sum);
    }

    @Override
    public void show(Lines lines, Formula unknown) {
      int half = polynomial.degree() / 2;
      Polynomial pairs = pairs();
      Combination regrouped = new Combination();
      for (int k = half; k >= 1; k--) {
        regrouped.plus(pairs.coefficient(k), Combination.power(numberOf(unknown), k));
      }
      regrouped.plus(pairs.coefficient(0));
      lines.add(
          Idea.CONJUGATE,
          "the coefficients read the same backwards: with a root also its reciprocal",
          new Formula.Application("P", List.of(unknown)).over(Combination.power(unknown, half)),
          regrouped.formula());
    }
  }
}
