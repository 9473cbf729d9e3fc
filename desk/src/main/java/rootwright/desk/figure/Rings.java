package rootwright.desk.figure;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PlainWriter;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.roots.PowerSums;

/** Pictures of whole numbers that follow a recurrence, by their remainders. */
final class Rings {

  /** Longer rings are not seen as rings. */
  private static final int LONGEST = 96;

  private static final Pattern MODULUS = Pattern.compile("mod(?:ulo)? (\\d{1,6})$");

  private Rings() {}

  /** The power sums of a monic polynomial with whole coefficients for the modulus of the ask. */
  static Optional<RingPicture> ofSums(Polynomial polynomial, Formula ask) {
    Matcher modulus = MODULUS.matcher(PlainWriter.write(ask));
    if (!modulus.find() || polynomial.degree() < 1) {
      return Optional.empty();
    }
    int m = Integer.parseInt(modulus.group(1));
    return whole(polynomial)
        .filter(recurrence -> m > 1)
        .flatMap(recurrence -> ring("S_k", recurrence, sums(polynomial, m), m));
  }

  /**
   * The numbers a^n + b^n for a = whole + √ and b its conjugate, for the modulus of an ask about
   * the whole part of a^n.
   */
  static Optional<RingPicture> ofWholePart(Formula ask) {
    if (!(ask instanceof Formula.Modulo modulo)
        || !(modulo.of() instanceof Formula.Application part)
        || part.arguments().size() != 1
        || !(part.arguments().get(0) instanceof Formula.Power power)
        || !(power.base() instanceof Formula.Sum base)
        || base.terms().size() != 2
        || !(modulo.modulus() instanceof Formula.Numeral modulus)
        || !(power.exponent() instanceof Formula.Numeral exponent)) {
      return Optional.empty();
    }
    double whole = Sampled.of(base.terms().get(0));
    double surd = Sampled.of(base.terms().get(1));
    if (whole != Math.rint(whole)) {
      double swapped = whole;
      whole = surd;
      surd = swapped;
    }
    double square = Math.rint(surd * surd);
    if (whole != Math.rint(whole) || Math.abs(surd * surd - square) > 1e-6) {
      return Optional.empty();
    }
    int m = modulus.value().intValueExact();
    long sum = Math.round(2 * whole);
    List<Integer> start = List.of(2 % m, (int) Math.floorMod(sum, (long) m));
    List<Long> recurrence = List.of(sum, -Math.round(whole * whole - square));
    BigInteger n = exponent.value().numerator();
    return ring("a^n + b^n", recurrence, start, m).map(ring -> ring.asking(n));
  }

  /** How each member comes from those before it, the nearest first; empty unless whole. */
  private static Optional<List<Long>> whole(Polynomial polynomial) {
    Polynomial monic = polynomial.monic();
    List<Long> recurrence = new ArrayList<>();
    for (int power = monic.degree() - 1; power >= 0; power--) {
      if (!monic.coefficient(power).isInteger()
          || monic.coefficient(power).numerator().bitLength() > 31) {
        return Optional.empty();
      }
      recurrence.add(-monic.coefficient(power).numerator().longValueExact());
    }
    return Optional.of(recurrence);
  }

  private static List<Integer> sums(Polynomial polynomial, int modulus) {
    return PowerSums.of(polynomial).upTo(polynomial.degree() - 1).stream()
        .map(sum -> sum.numerator().mod(BigInteger.valueOf(modulus)).intValueExact())
        .toList();
  }

  /** The remainders from the first on that comes again, if that is soon enough. */
  private static Optional<RingPicture> ring(
      String name, List<Long> recurrence, List<Integer> start, int modulus) {
    List<Integer> members = new ArrayList<>(start);
    int order = recurrence.size();
    for (int last = 1; last < 2 * LONGEST; last++) {
      long next = 0;
      for (int k = 0; k < order; k++) {
        next =
            Math.floorMod(
                next + recurrence.get(k) % modulus * members.get(members.size() - 1 - k),
                (long) modulus);
      }
      members.add((int) next);
      List<Integer> state = members.subList(last, last + order);
      for (int first = Math.max(0, last - LONGEST); first < last; first++) {
        if (members.subList(first, first + order).equals(state)) {
          return Optional.of(
              new RingPicture(name, modulus, first, members.subList(first, last), -1));
        }
      }
    }
    return Optional.empty();
  }
}
