package rootwright.working.proof;

import java.util.ArrayList;
import java.util.List;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.SomeFormulaCases;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.number.Rational;

/**
 * Walks through a formula in letters; a subclass says in which arithmetic.
 *
 * @param <T> the values
 */
abstract class LetterEvaluation<T> extends SomeFormulaCases<T> {

  private static final int HIGHEST_EXPONENT = 64;

  private final Identity identity;

  LetterEvaluation(Identity identity) {
    this.identity = identity;
  }

  final Identity identity() {
    return identity;
  }

  final T valueOf(Formula formula) {
    return formula.choose(this);
  }

  abstract T number(Rational value);

  abstract T letter(String spelling);

  abstract T plus(T left, T right);

  abstract T negate(T value);

  abstract T times(T left, T right);

  abstract T over(T left, T right);

  abstract T squareRoot(Formula radicand);

  /** A function of x, differentiated so often, at a point. */
  abstract T applied(Formula body, int derivatives, T point);

  @Override
  public T numeral(Formula.Numeral numeral) {
    return number(numeral.value());
  }

  @Override
  public T name(Formula.Name name) {
    return letter(name.spelling());
  }

  @Override
  public T imaginaryUnit(Formula.ImaginaryUnit unit) {
    return squareRoot(Formula.number(-1));
  }

  @Override
  public T radical(Formula.Radical radical) {
    return radical.index() == 2 ? squareRoot(radical.radicand()) : otherwise(radical);
  }

  @Override
  public T negative(Formula.Negative negative) {
    return negate(valueOf(negative.of()));
  }

  @Override
  public T sum(Formula.Sum sum) {
    return sum.terms().stream().map(this::valueOf).reduce(this::plus).orElseThrow();
  }

  @Override
  public T product(Formula.Product product) {
    return product.factors().stream().map(this::valueOf).reduce(this::times).orElseThrow();
  }

  @Override
  public T quotient(Formula.Quotient quotient) {
    return over(valueOf(quotient.over()), valueOf(quotient.under()));
  }

  @Override
  public T power(Formula.Power power) {
    int exponent = whole(power.exponent());
    T base = valueOf(power.base());
    T result = number(Rational.ONE);
    for (int k = 0; k < Math.abs(exponent); k++) {
      result = times(result, base);
    }
    return exponent < 0 ? over(number(Rational.ONE), result) : result;
  }

  @Override
  public T aggregate(Formula.Aggregate aggregate) {
    boolean sum = aggregate.operation() == Formula.Aggregate.Operation.SUM;
    return images(aggregate.body()).stream()
        .map(this::valueOf)
        .reduce(sum ? this::plus : this::times)
        .orElseThrow();
  }

  /** What Σ and Π run over. */
  List<Formula> images(Formula body) {
    return FormalImages.of(body, identity);
  }

  @Override
  public T family(Formula.Family family) {
    int index = whole(family.index());
    if (index < 0) {
      return otherwise(family);
    }
    List<T> roots = identity.letters().roots().stream().map(this::letter).toList();
    return switch (family.letter()) {
      case "e" -> elementary(roots, index);
      case "h" -> complete(roots, index);
      case "p", "S" -> powerSum(roots, index);
      default -> otherwise(family);
    };
  }

  @Override
  public T application(Formula.Application application) {
    String bare = application.function().replace("'", "");
    Formula body = identity.functions().get(bare);
    if (body == null || application.arguments().size() != 1) {
      return otherwise(application);
    }
    return applied(
        body,
        application.function().length() - bare.length(),
        valueOf(application.arguments().get(0)));
  }

  @Override
  protected T otherwise(Formula formula) {
    throw new UnsayableException(
        UnicodeWriter.write(formula) + " has no value for letters in general");
  }

  private T powerSum(List<T> roots, int index) {
    T sum = number(Rational.ZERO);
    for (T root : roots) {
      T power = number(Rational.ONE);
      for (int k = 0; k < index; k++) {
        power = times(power, root);
      }
      sum = plus(sum, power);
    }
    return sum;
  }

  /** The coefficient of yᵏ in (1 + r·y)(1 + s·y)…, one factor at a time. */
  private T elementary(List<T> roots, int index) {
    List<T> row = row(index);
    for (T root : roots) {
      for (int k = index; k >= 1; k--) {
        row.set(k, plus(row.get(k), times(root, row.get(k - 1))));
      }
    }
    return row.get(index);
  }

  /** The coefficient of yᵏ in 1/((1 − r·y)(1 − s·y)…), one factor at a time. */
  private T complete(List<T> roots, int index) {
    List<T> row = row(index);
    for (T root : roots) {
      for (int k = 1; k <= index; k++) {
        row.set(k, plus(row.get(k), times(root, row.get(k - 1))));
      }
    }
    return row.get(index);
  }

  private List<T> row(int index) {
    List<T> row = new ArrayList<>();
    for (int k = 0; k <= index; k++) {
      row.add(number(k == 0 ? Rational.ONE : Rational.ZERO));
    }
    return row;
  }

  private static int whole(Formula formula) {
    if (formula instanceof Formula.Numeral numeral
        && numeral.value().isInteger()
        && numeral.value().absolute().compareTo(Rational.of(HIGHEST_EXPONENT)) <= 0) {
      return numeral.value().numerator().intValueExact();
    }
    throw new UnsayableException(
        UnicodeWriter.write(formula) + " is not a whole number of at most " + HIGHEST_EXPONENT);
  }
}
