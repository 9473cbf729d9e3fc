package rootwright.composing.scan.filter;

import java.util.Arrays;
import java.util.function.IntPredicate;
import rootwright.composing.scan.candidate.Row;
import rootwright.composing.scan.candidate.Survivors;

/**
 * What is known of every monic polynomial of one degree modulo a small prime: of which degrees up
 * to n/2 it has divisors, and whether it is squarefree.
 *
 * <p>For P over Z with p not dividing the lead, a factor of degree j over Q leaves one of degree j
 * modulo p, and a square factor leaves a square factor. So a missing degree modulo one prime proves
 * that degree missing over Q, and squarefree modulo one prime proves squarefree. The converse does
 * not hold and is never used.
 */
final class ResidueTable {

  private static final int SQUAREFREE = 1 << 15;

  private final int prime;
  private final int degree;
  private final int[] inverses;
  private final short[] entries;

  /** Fills the table in about n·pⁿ products of polynomials. */
  ResidueTable(int prime, int degree) {
    this.prime = prime;
    this.degree = degree;
    inverses = new int[prime];
    for (int a = 1; a < prime; a++) {
      for (int b = 1; b < prime; b++) {
        if (a * b % prime == 1) {
          inverses[a] = b;
        }
      }
    }
    entries = new short[count(degree)];
    Arrays.fill(entries, (short) SQUAREFREE);
    for (int part = 1; 2 * part <= degree; part++) {
      for (int divisor = 0; divisor < count(part); divisor++) {
        int[] factor = digits(divisor, part);
        for (int rest = 0; rest < count(degree - part); rest++) {
          entries[number(times(factor, digits(rest, degree - part)))] |= (short) (1 << part);
        }
        int[] square = times(factor, factor);
        for (int rest = 0; rest < count(degree - 2 * part); rest++) {
          entries[number(times(square, digits(rest, degree - 2 * part)))] &= (short) ~SQUAREFREE;
        }
      }
    }
  }

  private int count(int size) {
    int count = 1;
    for (int k = 0; k < size; k++) {
      count *= prime;
    }
    return count;
  }

  /** The monic polynomial with this number: its digits in base p are its lower coefficients. */
  private int[] digits(int number, int size) {
    int[] ascending = new int[size + 1];
    int rest = number;
    for (int k = 0; k < size; k++) {
      ascending[k] = rest % prime;
      rest /= prime;
    }
    ascending[size] = 1;
    return ascending;
  }

  private int number(int[] monic) {
    int number = 0;
    for (int k = monic.length - 2; k >= 0; k--) {
      number = number * prime + monic[k];
    }
    return number;
  }

  private int[] times(int[] left, int[] right) {
    int[] product = new int[left.length + right.length - 1];
    for (int i = 0; i < left.length; i++) {
      for (int j = 0; j < right.length; j++) {
        product[i + j] = (product[i + j] + left[i] * right[j]) % prime;
      }
    }
    return product;
  }

  /** Whether the prime divides the lead, so that the table says nothing. */
  boolean isSilentOn(long[] ascending) {
    return ascending[degree] % prime == 0;
  }

  /** The entry of a polynomial on which the table is not silent. */
  int entry(long[] ascending) {
    int inverse = inverses[(int) Math.floorMod(ascending[degree], (long) prime)];
    int number = 0;
    for (int k = degree - 1; k >= 0; k--) {
      int digit = (int) Math.floorMod(ascending[k], (long) prime) * inverse % prime;
      number = number * prime + digit;
    }
    return entries[number];
  }

  /** Marks the candidates of a row whose entry has a property, if the prime says anything. */
  void mark(Row row, IntPredicate property, Survivors marked) {
    int inverse = inverses[(int) Math.floorMod(row.lead(), (long) prime)];
    if (inverse == 0) {
      return;
    }
    int number = 0;
    for (int k = degree - 1; k > 0; k--) {
      int digit = (int) Math.floorMod(row.coefficient(k), (long) prime) * inverse % prime;
      number = number * prime + digit;
    }
    number *= prime;
    int digit = (int) Math.floorMod(row.firstConstant(), (long) prime) * inverse % prime;
    for (int start = 0; start < prime && start < row.length(); start++) {
      if (property.test(entries[number + digit])) {
        for (int place = start; place < row.length(); place += prime) {
          marked.add(place);
        }
      }
      digit += inverse;
      digit -= digit >= prime ? prime : 0;
    }
  }

  /** The degrees j up to n/2 with a divisor modulo the prime: bit j of the result. */
  static int divisorDegrees(int entry) {
    return entry & (SQUAREFREE - 1);
  }

  /** Whether the polynomial is squarefree modulo the prime. */
  static boolean isSquarefree(int entry) {
    return (entry & SQUAREFREE) != 0;
  }
}
