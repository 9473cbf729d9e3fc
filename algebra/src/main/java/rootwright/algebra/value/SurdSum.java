package rootwright.algebra.value;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import rootwright.algebra.enclosure.ComplexBall;
import rootwright.algebra.enclosure.RealBall;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;

/**
 * A sum of rational multiples of square roots of different squarefree whole numbers, such as 2 − √3
 * + √−5/2, where √−d is i·√d.
 *
 * <p>Square roots of different squarefree numbers are independent over Q (Besicovitch 1940), so
 * equality of the terms is equality of the numbers.
 *
 * @param terms the factor of each square root, none zero; the key 1 belongs to the rational part
 */
public record SurdSum(SortedMap<BigInteger, Rational> terms) {

  /** Zero. */
  public static final SurdSum ZERO = new SurdSum(new TreeMap<>());

  /** Drops terms that are zero. */
  public SurdSum {
    SortedMap<BigInteger, Rational> kept = new TreeMap<>();
    terms.forEach(
        (under, factor) -> {
          if (!factor.isZero()) {
            kept.put(under, factor);
          }
        });
    terms = Collections.unmodifiableSortedMap(kept);
  }

  /** A rational number. */
  public static SurdSum of(Rational number) {
    return term(BigInteger.ONE, number);
  }

  /** The square root of a rational number, with positive real or imaginary part. */
  public static SurdSum squareRoot(Rational number) {
    if (number.isZero()) {
      return ZERO;
    }
    SquareSplit split = SquareSplit.of(number.numerator().multiply(number.denominator()));
    return term(split.rest(), new Rational(split.root(), number.denominator()));
  }

  private static SurdSum term(BigInteger under, Rational factor) {
    SortedMap<BigInteger, Rational> one = new TreeMap<>();
    one.put(under, factor);
    return new SurdSum(one);
  }

  /** The sum. */
  public SurdSum plus(SurdSum other) {
    SortedMap<BigInteger, Rational> sum = new TreeMap<>(terms);
    other.terms.forEach((under, factor) -> sum.merge(under, factor, Rational::plus));
    return new SurdSum(sum);
  }

  /** The number with the other sign. */
  public SurdSum negate() {
    return times(of(Rational.MINUS_ONE));
  }

  /** The difference. */
  public SurdSum minus(SurdSum other) {
    return plus(other.negate());
  }

  /** The product. */
  public SurdSum times(SurdSum other) {
    SurdSum sum = ZERO;
    for (Map.Entry<BigInteger, Rational> a : terms.entrySet()) {
      for (Map.Entry<BigInteger, Rational> b : other.terms.entrySet()) {
        // √−a·√−b = i²·√a·√b
        boolean bothImaginary = a.getKey().signum() < 0 && b.getKey().signum() < 0;
        SquareSplit split = SquareSplit.of(a.getKey().multiply(b.getKey()));
        Rational factor = a.getValue().times(b.getValue()).times(Rational.of(split.root()));
        sum = sum.plus(term(split.rest(), bothImaginary ? factor.negate() : factor));
      }
    }
    return sum;
  }

  /** A power by repeated squaring; {@code exponent} not negative. */
  public SurdSum power(int exponent) {
    SurdSum result = of(Rational.ONE);
    SurdSum square = this;
    for (int left = exponent; left > 0; left >>= 1) {
      if ((left & 1) == 1) {
        result = result.times(square);
      }
      square = left > 1 ? square.times(square) : square;
    }
    return result;
  }

  /** One over the number; empty for zero. */
  public Optional<SurdSum> reciprocal() {
    if (terms.isEmpty()) {
      return Optional.empty();
    }
    SurdSum others = of(Rational.ONE);
    for (SurdSum conjugate : conjugates()) {
      others = conjugate.equals(this) ? others : others.times(conjugate);
    }
    Rational norm = times(others).rationalPart();
    return Optional.of(others.times(of(norm.reciprocal())));
  }

  /** The rational part. */
  public Rational rationalPart() {
    return factor(BigInteger.ONE);
  }

  /** The rational factor of the square root of a squarefree number. */
  public Rational factor(BigInteger under) {
    return terms.getOrDefault(under, Rational.ZERO);
  }

  /** A disc that holds the number, its square roots enclosed to so many significant bits. */
  ComplexBall enclosure(int bits) {
    RealBall real = RealBall.ZERO;
    RealBall imaginary = RealBall.ZERO;
    for (Map.Entry<BigInteger, Rational> term : terms.entrySet()) {
      RealBall part =
          RealBall.of(Rational.of(term.getKey().abs()), bits)
              .squareRoot(bits)
              .times(RealBall.of(term.getValue(), bits));
      real = term.getKey().signum() > 0 ? real.plus(part) : real;
      imaginary = term.getKey().signum() < 0 ? imaginary.plus(part) : imaginary;
    }
    return ComplexBall.of(real, imaginary);
  }

  /**
   * The number as it is written, over one stroke: the rational part, what is added, what is
   * subtracted, then the same with i.
   */
  public Formula toFormula() {
    BigInteger under = BigInteger.ONE;
    for (Rational factor : terms.values()) {
      under = under.divide(under.gcd(factor.denominator())).multiply(factor.denominator());
    }
    List<Map.Entry<BigInteger, Rational>> ordered = new ArrayList<>(terms.entrySet());
    ordered.sort(
        Comparator.comparing((Map.Entry<BigInteger, Rational> term) -> kind(term))
            .thenComparing(term -> term.getKey().abs()));
    boolean negative = ordered.stream().allMatch(term -> term.getValue().signum() < 0);
    List<Formula> written = new ArrayList<>();
    for (Map.Entry<BigInteger, Rational> term : ordered) {
      Rational factor = term.getValue().times(Rational.of(under));
      Formula size = written(term.getKey(), factor.absolute());
      written.add(factor.signum() < 0 && !negative ? new Formula.Negative(size) : size);
    }
    Formula sum = written.isEmpty() ? Formula.number(0) : Formula.sum(written);
    Formula whole = under.equals(BigInteger.ONE) ? sum : sum.over(Formula.number(under));
    return negative && !written.isEmpty() ? new Formula.Negative(whole) : whole;
  }

  private static int kind(Map.Entry<BigInteger, Rational> term) {
    if (term.getKey().equals(BigInteger.ONE)) {
      return 0;
    }
    return (term.getKey().signum() > 0 ? 1 : 3) + (term.getValue().signum() > 0 ? 0 : 1);
  }

  /** factor·√under, with i for the root of a negative number. */
  private static Formula written(BigInteger under, Rational factor) {
    List<Formula> factors = new ArrayList<>();
    BigInteger size = under.abs();
    if (!size.equals(BigInteger.ONE)) {
      factors.add(new Formula.Radical(Formula.number(size), 2));
    }
    if (under.signum() < 0) {
      factors.add(new Formula.ImaginaryUnit());
    }
    if (!factor.isOne() || factors.isEmpty()) {
      factors.add(0, Formula.number(factor));
    }
    return factors.size() == 1 ? factors.get(0) : Formula.product(factors);
  }

  /** Whether no square root is in it. */
  public boolean isRational() {
    return terms.size() == (rationalPart().isZero() ? 0 : 1);
  }

  /** Whether no square root of a negative number is in it. */
  public boolean isReal() {
    return terms.isEmpty() || terms.firstKey().signum() > 0;
  }

  /**
   * All numbers that the automorphisms make of this one, itself first: the signs of the square
   * roots of −1 and of the primes changed in all ways.
   */
  public List<SurdSum> conjugates() {
    Set<SurdSum> found = new LinkedHashSet<>(List.of(this));
    for (BigInteger generator : generators()) {
      for (SurdSum known : List.copyOf(found)) {
        SortedMap<BigInteger, Rational> changed = new TreeMap<>();
        known.terms.forEach(
            (under, factor) ->
                changed.put(under, holds(under, generator) ? factor.negate() : factor));
        found.add(new SurdSum(changed));
      }
    }
    return List.copyOf(found);
  }

  private static boolean holds(BigInteger under, BigInteger generator) {
    return generator.signum() < 0 ? under.signum() < 0 : under.mod(generator).signum() == 0;
  }

  /** −1 and numbers prime to one another of which all radicands are products. */
  private Set<BigInteger> generators() {
    Set<BigInteger> generators = new TreeSet<>();
    for (BigInteger under : terms.keySet()) {
      if (under.signum() < 0) {
        generators.add(BigInteger.ONE.negate());
      }
      refine(generators, under.abs());
    }
    return generators;
  }

  /** Adds a squarefree number, cut so that the members stay prime to one another. */
  private static void refine(Set<BigInteger> generators, BigInteger number) {
    BigInteger rest = number;
    for (BigInteger known : List.copyOf(generators)) {
      BigInteger common = known.gcd(rest);
      if (known.signum() > 0 && !common.equals(BigInteger.ONE)) {
        generators.remove(known);
        generators.add(common);
        if (!known.equals(common)) {
          generators.add(known.divide(common));
        }
        rest = rest.divide(common);
      }
    }
    if (!rest.equals(BigInteger.ONE)) {
      generators.add(rest);
    }
  }

  /** The irreducible primitive polynomial with positive lead that has this number as a root. */
  public Polynomial minimalPolynomial() {
    return withRoots(conjugates()).primitive();
  }

  /**
   * ∏(x − a) over these numbers.
   *
   * @throws IllegalArgumentException if its coefficients are not rational
   */
  public static Polynomial withRoots(List<SurdSum> roots) {
    List<SurdSum> product = new ArrayList<>(List.of(of(Rational.ONE)));
    for (SurdSum root : roots) {
      product.add(0, ZERO);
      for (int k = 0; k + 1 < product.size(); k++) {
        product.set(k, product.get(k).minus(product.get(k + 1).times(root)));
      }
    }
    for (SurdSum coefficient : product) {
      if (!coefficient.isRational()) {
        throw new IllegalArgumentException("the conjugates are not complete: " + roots);
      }
    }
    return Polynomial.ofAscending(product.stream().map(SurdSum::rationalPart).toList());
  }

  /**
   * −1, 0 or 1, exactly: of A + B·√g the signs of A and B decide, or A² against B²·g.
   *
   * @throws IllegalArgumentException if the number is not real
   */
  public int signum() {
    if (!isReal()) {
      throw new IllegalArgumentException(terms + " is not real and has no sign");
    }
    if (isRational()) {
      return rationalPart().signum();
    }
    BigInteger g = generators().iterator().next();
    SortedMap<BigInteger, Rational> without = new TreeMap<>();
    SortedMap<BigInteger, Rational> with = new TreeMap<>();
    terms.forEach(
        (under, factor) -> {
          if (holds(under, g)) {
            with.put(under.divide(g), factor);
          } else {
            without.put(under, factor);
          }
        });
    SurdSum a = new SurdSum(without);
    SurdSum b = new SurdSum(with);
    int signA = a.signum();
    int signB = b.signum();
    if (signA == signB || signB == 0) {
      return signA;
    }
    if (signA == 0) {
      return signB;
    }
    SurdSum squares = a.times(a).minus(b.times(b).times(of(Rational.of(g))));
    return signA * squares.signum();
  }
}
