package rootwright.algebra.notation;

import java.math.BigInteger;
import java.util.Collections;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import rootwright.algebra.number.Rational;

/**
 * A formula as it is written: a tree that keeps the shape a person chose. {@code 1/(r*s)} and
 * {@code (1/r)*(1/s)} are different formulas with the same value.
 *
 * <p>A formula has no meaning of its own. What a name stands for is decided by whoever evaluates
 * it.
 */
public sealed interface Formula {

  /** What {@code cases} says about this kind of formula. */
  <R> R choose(FormulaCases<R> cases);

  /** The formulas of which this one is directly made, in reading order; none for a leaf. */
  default List<Formula> parts() {
    return List.of();
  }

  /**
   * The same kind of formula made of other parts.
   *
   * @param parts as many as {@link #parts()} has
   */
  default Formula withParts(List<Formula> parts) {
    return choose(new PartsReplaced(parts));
  }

  /** Whether a formula with this property occurs anywhere in this one, itself included. */
  default boolean contains(Predicate<Formula> property) {
    return property.test(this) || parts().stream().anyMatch(part -> part.contains(property));
  }

  /** The formula with a change made everywhere, innermost parts first. */
  default Formula rewrite(UnaryOperator<Formula> change) {
    return change.apply(withParts(parts().stream().map(part -> part.rewrite(change)).toList()));
  }

  /** A number written out; negative numbers are allowed and print with their sign. */
  record Numeral(Rational value) implements Formula {
    @Override
    public <R> R choose(FormulaCases<R> cases) {
      return cases.numeral(this);
    }
  }

  /**
   * A name: a root, an unknown, a letter of the coefficients.
   *
   * @param letter one letter, Latin or Greek ({@code r}, {@code α}), or a short word with prime
   * @param index what stands below it, empty if nothing ({@code 1} in r₁)
   */
  record Name(String letter, String index) implements Formula {
    /** A name without index. */
    public Name(String letter) {
      this(letter, "");
    }

    /** {@code r} or {@code r_1}: the spelling by which a name is looked up. */
    public String spelling() {
      return index.isEmpty() ? letter : letter + "_" + index;
    }

    @Override
    public <R> R choose(FormulaCases<R> cases) {
      return cases.name(this);
    }
  }

  /** The imaginary unit. */
  record ImaginaryUnit() implements Formula {
    @Override
    public <R> R choose(FormulaCases<R> cases) {
      return cases.imaginaryUnit(this);
    }
  }

  /** The formula with a minus in front. */
  record Negative(Formula of) implements Formula {
    @Override
    public List<Formula> parts() {
      return List.of(of);
    }

    @Override
    public <R> R choose(FormulaCases<R> cases) {
      return cases.negative(this);
    }
  }

  /** Terms added; a subtracted term is a {@link Negative}. At least two terms. */
  record Sum(List<Formula> terms) implements Formula {
    public Sum {
      terms = List.copyOf(terms);
      Parts.requireAtLeastTwo(terms, "sum");
    }

    @Override
    public List<Formula> parts() {
      return terms;
    }

    @Override
    public <R> R choose(FormulaCases<R> cases) {
      return cases.sum(this);
    }
  }

  /** Factors multiplied. At least two factors. */
  record Product(List<Formula> factors) implements Formula {
    public Product {
      factors = List.copyOf(factors);
      Parts.requireAtLeastTwo(factors, "product");
    }

    @Override
    public List<Formula> parts() {
      return factors;
    }

    @Override
    public <R> R choose(FormulaCases<R> cases) {
      return cases.product(this);
    }
  }

  /** A fraction. */
  record Quotient(Formula over, Formula under) implements Formula {
    @Override
    public List<Formula> parts() {
      return List.of(over, under);
    }

    @Override
    public <R> R choose(FormulaCases<R> cases) {
      return cases.quotient(this);
    }
  }

  /** A power. */
  record Power(Formula base, Formula exponent) implements Formula {
    @Override
    public List<Formula> parts() {
      return List.of(base, exponent);
    }

    @Override
    public <R> R choose(FormulaCases<R> cases) {
      return cases.power(this);
    }
  }

  /**
   * The principal root of this index: 2 for the square root, 3 for the cube root.
   *
   * @param index at least 2
   */
  record Radical(Formula radicand, int index) implements Formula {
    public Radical {
      if (index < 2) {
        throw new IllegalArgumentException("a root of index " + index);
      }
    }

    @Override
    public List<Formula> parts() {
      return List.of(radicand);
    }

    @Override
    public <R> R choose(FormulaCases<R> cases) {
      return cases.radical(this);
    }
  }

  /**
   * Both {@code before + after} and {@code before − after}; {@code before} is 0 if nothing stands
   * there.
   */
  record PlusMinus(Formula before, Formula after) implements Formula {
    @Override
    public List<Formula> parts() {
      return List.of(before, after);
    }

    @Override
    public <R> R choose(FormulaCases<R> cases) {
      return cases.plusMinus(this);
    }
  }

  /**
   * A textbook Σ or Π over all distinct images of the body under renaming the roots, images
   * distinct as formal expressions.
   */
  record Aggregate(Operation operation, Formula body) implements Formula {
    /** What is done with the images. */
    public enum Operation {
      SUM,
      PRODUCT
    }

    @Override
    public List<Formula> parts() {
      return List.of(body);
    }

    @Override
    public <R> R choose(FormulaCases<R> cases) {
      return cases.aggregate(this);
    }
  }

  /**
   * A member of a family of symmetric polynomials of the roots: S_k or p_k (power sum), e_k
   * (elementary), h_k (complete).
   */
  record Family(String letter, Formula index) implements Formula {
    @Override
    public List<Formula> parts() {
      return List.of(index);
    }

    @Override
    public <R> R choose(FormulaCases<R> cases) {
      return cases.family(this);
    }
  }

  /** A function applied: {@code P(3)}, {@code P'(3)}, {@code reduce(r^6)}, {@code log(2)}. */
  record Application(String function, List<Formula> arguments) implements Formula {
    public Application {
      arguments = List.copyOf(arguments);
    }

    @Override
    public List<Formula> parts() {
      return arguments;
    }

    @Override
    public <R> R choose(FormulaCases<R> cases) {
      return cases.application(this);
    }
  }

  /** The residue of a formula for a modulus. */
  record Modulo(Formula of, Formula modulus) implements Formula {
    @Override
    public List<Formula> parts() {
      return List.of(of, modulus);
    }

    @Override
    public <R> R choose(FormulaCases<R> cases) {
      return cases.modulo(this);
    }
  }

  /** A chain of formulas with a comparison between neighbours: {@code a = b = c}. */
  record Relation(List<Formula> sides, List<Comparison> comparisons) implements Formula {
    public Relation {
      sides = List.copyOf(sides);
      comparisons = List.copyOf(comparisons);
      if (comparisons.isEmpty() || sides.size() != comparisons.size() + 1) {
        throw new IllegalArgumentException(
            "a relation of %d sides has %d comparisons"
                .formatted(sides.size(), comparisons.size()));
      }
    }

    @Override
    public List<Formula> parts() {
      return sides;
    }

    @Override
    public <R> R choose(FormulaCases<R> cases) {
      return cases.relation(this);
    }
  }

  /** Formulas with commas between them: {@code r, s, t}. */
  record Listing(List<Formula> items) implements Formula {
    public Listing {
      items = List.copyOf(items);
    }

    @Override
    public List<Formula> parts() {
      return items;
    }

    @Override
    public <R> R choose(FormulaCases<R> cases) {
      return cases.listing(this);
    }
  }

  /** A few words that stand in a formula: "or", "for every root". */
  record Words(String text) implements Formula {
    @Override
    public <R> R choose(FormulaCases<R> cases) {
      return cases.words(this);
    }
  }

  /** What may stand between the sides of a {@link Relation}. */
  enum Comparison {
    EQUAL,
    NOT_EQUAL,
    LESS,
    AT_MOST,
    GREATER,
    AT_LEAST,
    CONGRUENT
  }

  /** A whole number. */
  static Formula number(long value) {
    return new Numeral(Rational.of(value));
  }

  /** A whole number. */
  static Formula number(BigInteger value) {
    return new Numeral(Rational.of(value));
  }

  /** A rational number. */
  static Formula number(Rational value) {
    return new Numeral(value);
  }

  /** A name by its spelling: {@code r} or {@code r_1}. */
  static Formula name(String spelling) {
    int bar = spelling.indexOf('_');
    return bar < 0
        ? new Name(spelling)
        : new Name(spelling.substring(0, bar), spelling.substring(bar + 1));
  }

  /** The sum of any number of formulas: 0 for none, the formula itself for one. */
  static Formula sum(List<? extends Formula> terms) {
    return switch (terms.size()) {
      case 0 -> number(0);
      case 1 -> terms.get(0);
      default -> new Sum(List.copyOf(terms));
    };
  }

  /** The product of any number of formulas: 1 for none, the formula itself for one. */
  static Formula product(List<? extends Formula> factors) {
    return switch (factors.size()) {
      case 0 -> number(1);
      case 1 -> factors.get(0);
      default -> new Product(List.copyOf(factors));
    };
  }

  /** The equation chain {@code sides[0] = sides[1] = …}. */
  static Formula equation(Formula... sides) {
    List<Formula> all = List.of(sides);
    return new Relation(all, Collections.nCopies(all.size() - 1, Comparison.EQUAL));
  }

  /** The sum of this and another formula; a sum is lengthened by one term. */
  default Formula plus(Formula other) {
    return new Sum(Parts.appended(this instanceof Sum sum ? sum.terms() : List.of(this), other));
  }

  /** The difference of this and another formula; a sum is lengthened by one subtracted term. */
  default Formula minus(Formula other) {
    return plus(new Negative(other));
  }

  /** The product of this and another formula; a product is lengthened by one factor. */
  default Formula times(Formula other) {
    return new Product(
        Parts.appended(this instanceof Product product ? product.factors() : List.of(this), other));
  }

  /** This formula over another. */
  default Formula over(Formula other) {
    return new Quotient(this, other);
  }

  /** A whole power of this formula. */
  default Formula power(long exponent) {
    return new Power(this, number(exponent));
  }
}
