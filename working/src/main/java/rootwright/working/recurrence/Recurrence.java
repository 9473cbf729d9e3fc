package rootwright.working.recurrence;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.roots.ResidueAlgebra;

/**
 * u_{k+d} = c₁u_{k+d−1} + … + c_d·u_k + c with d first members.
 *
 * @param letter how the sequence is called
 * @param index how its running index is called
 * @param coefficients c₁, …, c_d; the last is not 0
 * @param constant c
 * @param start the index of the first of the given members
 * @param first the d members from there on
 */
record Recurrence(
    String letter,
    String index,
    List<Rational> coefficients,
    Rational constant,
    int start,
    List<Rational> first) {

  Recurrence {
    coefficients = List.copyOf(coefficients);
    first = List.copyOf(first);
    if (coefficients.isEmpty() || first.size() != coefficients.size()) {
      throw new IllegalArgumentException(
          "order %d and %d first members".formatted(coefficients.size(), first.size()));
    }
  }

  /** How many members the next one is made of. */
  int order() {
    return coefficients.size();
  }

  /** The same sequence without a constant, which takes one member more. */
  Recurrence homogeneous() {
    if (constant.isZero()) {
      return this;
    }
    // u_{k+d+1} − u_{k+d} is the recurrence at two neighbouring places, subtracted.
    List<Rational> more = new ArrayList<>();
    for (int k = 0; k <= order(); k++) {
      Rational here = k < order() ? coefficients.get(k) : Rational.ZERO;
      Rational before = k == 0 ? Rational.MINUS_ONE : coefficients.get(k - 1);
      more.add(here.minus(before));
    }
    return new Recurrence(letter, index, more, Rational.ZERO, start, members(order() + 1));
  }

  /** The members from the first on. */
  List<Rational> members(int count) {
    List<Rational> members = new ArrayList<>(first);
    while (members.size() < count) {
      Rational next = constant;
      for (int k = 0; k < order(); k++) {
        next = next.plus(coefficients.get(k).times(members.get(members.size() - 1 - k)));
      }
      members.add(next);
    }
    return List.copyOf(members.subList(0, count));
  }

  /** The same sequence with its first member moved to index 0, backwards if need be. */
  Recurrence fromZero() {
    Recurrence plain = homogeneous();
    List<Rational> members = new ArrayList<>(plain.first());
    if (start < 0) {
      members = new ArrayList<>(plain.members(plain.order() - start));
      members = members.subList(-start, members.size());
    }
    for (int k = 0; k < start; k++) {
      Rational last = members.get(plain.order() - 1);
      for (int j = 0; j + 1 < plain.order(); j++) {
        last = last.minus(plain.coefficients().get(j).times(members.get(plain.order() - 2 - j)));
      }
      members.add(0, last.over(plain.coefficients().get(plain.order() - 1)));
    }
    return new Recurrence(
        letter, index, plain.coefficients(), Rational.ZERO, 0, members.subList(0, plain.order()));
  }

  /** x^d − c₁x^{d−1} − … − c_d; with a constant, that of the sequence without one. */
  Polynomial characteristic() {
    Recurrence plain = homogeneous();
    Polynomial p = Polynomial.monomial(Rational.ONE, plain.order());
    for (int k = 0; k < plain.order(); k++) {
      p = p.minus(Polynomial.monomial(plain.coefficients().get(k), plain.order() - 1 - k));
    }
    return p;
  }

  /** The member of an index at least {@link #start}, through x^N modulo the polynomial. */
  Rational at(BigInteger wanted) {
    Recurrence plain = homogeneous();
    ResidueAlgebra algebra = ResidueAlgebra.of(characteristic());
    Polynomial power =
        algebra.power(algebra.reduce(Polynomial.X), wanted.subtract(BigInteger.valueOf(start)));
    Rational value = Rational.ZERO;
    for (int k = 0; k < plain.order(); k++) {
      value = value.plus(power.coefficient(k).times(plain.first().get(k)));
    }
    return value;
  }

  /** Whether all members are whole because coefficients and first members are. */
  boolean isWhole() {
    return constant.isInteger()
        && coefficients.stream().allMatch(Rational::isInteger)
        && first.stream().allMatch(Rational::isInteger);
  }
}
