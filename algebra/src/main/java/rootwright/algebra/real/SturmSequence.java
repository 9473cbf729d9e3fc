package rootwright.algebra.real;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToIntFunction;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;

/**
 * The signed remainder sequence of a polynomial and its derivative, which counts distinct real
 * roots in any interval (Sturm 1829, Bulletin de Férussac 11, pp 419–422).
 *
 * <p>The sequence is that of the squarefree part, so repeated roots count once and may lie at an
 * end of the interval.
 */
public final class SturmSequence {

  private final List<Polynomial> sequence;

  private SturmSequence(List<Polynomial> sequence) {
    this.sequence = List.copyOf(sequence);
  }

  /**
   * Builds the sequence, in O(n²) operations on coefficients that grow to O(n) times their length.
   *
   * @throws IllegalArgumentException for the zero polynomial
   */
  public static SturmSequence of(Polynomial polynomial) {
    if (polynomial.isZero()) {
      throw new IllegalArgumentException("every number is a root of the zero polynomial");
    }
    List<Polynomial> sequence = new ArrayList<>();
    Polynomial before = polynomial.squarefreePart().primitive();
    Polynomial last = before.derivative();
    sequence.add(before);
    while (!last.isZero()) {
      last = withoutContent(last);
      sequence.add(last);
      Polynomial next = before.remainder(last).negate();
      before = last;
      last = next;
    }
    return new SturmSequence(sequence);
  }

  /** Divided by its positive content, so that no sign changes. */
  private static Polynomial withoutContent(Polynomial polynomial) {
    Polynomial primitive = polynomial.primitive();
    return polynomial.lead().signum() < 0 ? primitive.negate() : primitive;
  }

  /** The members of the sequence, the squarefree part first. */
  public List<Polynomial> members() {
    return sequence;
  }

  /** The number of distinct real roots. */
  public int count() {
    return changes(SturmSequence::signAtMinusInfinity) - changes(SturmSequence::signAtInfinity);
  }

  /**
   * The number of distinct real roots r with {@code low < r ≤ high}.
   *
   * @throws IllegalArgumentException if {@code low > high}
   */
  public int countIn(Rational low, Rational high) {
    if (low.compareTo(high) > 0) {
      throw new IllegalArgumentException("no interval from %s to %s".formatted(low, high));
    }
    return changesAt(low) - changesAt(high);
  }

  /** The number of distinct real roots r with {@code r ≤ high}. */
  public int countUpTo(Rational high) {
    return changes(SturmSequence::signAtMinusInfinity) - changesAt(high);
  }

  /** The number of distinct real roots r with {@code r > low}. */
  public int countAbove(Rational low) {
    return changesAt(low) - changes(SturmSequence::signAtInfinity);
  }

  /** The number of changes of sign of the sequence at a number, zeros left out. */
  public int changesAt(Rational point) {
    return changes(member -> signAt(member, point));
  }

  private int changes(ToIntFunction<Polynomial> sign) {
    int changes = 0;
    int last = 0;
    for (Polynomial member : sequence) {
      int next = sign.applyAsInt(member);
      if (next != 0) {
        changes += last * next < 0 ? 1 : 0;
        last = next;
      }
    }
    return changes;
  }

  private static int signAtInfinity(Polynomial member) {
    return member.lead().signum();
  }

  private static int signAtMinusInfinity(Polynomial member) {
    return member.degree() % 2 == 0 ? member.lead().signum() : -member.lead().signum();
  }

  /** The sign of a polynomial at a number, by Horner's rule on whole numbers. */
  static int signAt(Polynomial polynomial, Rational point) {
    BigInteger value = BigInteger.ZERO;
    BigInteger scale = BigInteger.ONE;
    for (int k = polynomial.degree(); k >= 0; k--) {
      value = value.multiply(point.numerator()).add(polynomial.numerator(k).multiply(scale));
      scale = scale.multiply(point.denominator());
    }
    return value.signum();
  }
}
