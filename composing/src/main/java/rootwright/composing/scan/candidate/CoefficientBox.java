package rootwright.composing.scan.candidate;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import rootwright.algebra.polynomial.Polynomial;

/**
 * All polynomials of one degree whose integer coefficients lie in given ranges, the lead not being
 * zero, numbered from 0 to {@link #candidates()} − 1.
 *
 * <p>The number counts like a clock: the constant term turns fastest, the lead slowest. Candidates
 * that differ in the constant term only are neighbours and are screened together as a {@link Row};
 * a longer run of constant terms is cut into rows of {@value #LONGEST_ROW}.
 */
public final class CoefficientBox {

  /** The greatest number of candidates in a row. */
  public static final int LONGEST_ROW = 4096;

  private final List<CoefficientRange> ranges;
  private final long leads;
  private final long candidates;
  private final long rowsPerRun;
  private final long rows;

  /**
   * The box with these ranges.
   *
   * @param ascending the range of the coefficient of x^k at place k; at least two
   * @throws IllegalArgumentException if the degree is less than 1, the lead can only be zero, or
   *     there are more than 2⁶³ − 1 candidates
   */
  public CoefficientBox(List<CoefficientRange> ascending) {
    ranges = List.copyOf(ascending);
    if (ranges.size() < 2) {
      throw new IllegalArgumentException("a box of polynomials needs degree 1 at least: " + ranges);
    }
    CoefficientRange lead = ranges.get(degree());
    leads = lead.contains(0) ? lead.size() - 1 : lead.size();
    if (leads == 0) {
      throw new IllegalArgumentException("the lead coefficient can only be zero");
    }
    BigInteger runs = BigInteger.valueOf(leads);
    for (int power = degree() - 1; power > 0; power--) {
      runs = runs.multiply(BigInteger.valueOf(ranges.get(power).size()));
    }
    BigInteger total = runs.multiply(BigInteger.valueOf(ranges.get(0).size()));
    if (total.bitLength() > 63) {
      throw new IllegalArgumentException("too many candidates for one box: " + total);
    }
    candidates = total.longValueExact();
    rowsPerRun = (ranges.get(0).size() - 1) / LONGEST_ROW + 1;
    rows = runs.longValueExact() * rowsPerRun;
  }

  /** The box with these ranges, lead first, as a book prints a polynomial. */
  public static CoefficientBox descending(CoefficientRange... ranges) {
    List<CoefficientRange> ascending = new ArrayList<>(List.of(ranges));
    Collections.reverse(ascending);
    return new CoefficientBox(ascending);
  }

  /** The box in which each coefficient has at most this size. */
  public static CoefficientBox upTo(int degree, long size) {
    return new CoefficientBox(Collections.nCopies(degree + 1, CoefficientRange.upTo(size)));
  }

  /** The box with lead 1 in which each other coefficient has at most this size. */
  public static CoefficientBox monicUpTo(int degree, long size) {
    return upTo(degree, size).with(degree, CoefficientRange.only(1));
  }

  /** This box with another range for the coefficient of x^power. */
  public CoefficientBox with(int power, CoefficientRange range) {
    List<CoefficientRange> changed = new ArrayList<>(ranges);
    changed.set(power, range);
    return new CoefficientBox(changed);
  }

  /** The box that allows sizes greater by {@code step}, as {@link CoefficientRange#widened}. */
  public CoefficientBox widened(long step) {
    return new CoefficientBox(ranges.stream().map(range -> range.widened(step)).toList());
  }

  /** The degree of every candidate. */
  public int degree() {
    return ranges.size() - 1;
  }

  /**
   * The range of the coefficient of x^power; the one of the lead may contain 0, which is left out.
   */
  public CoefficientRange range(int power) {
    return ranges.get(power);
  }

  /** How many candidates there are. */
  public long candidates() {
    return candidates;
  }

  /** How many rows there are; row r + 1 continues where row r ends. */
  public long rows() {
    return rows;
  }

  /** The length of the longest row. */
  public int rowLength() {
    return (int) Math.min(LONGEST_ROW, ranges.get(0).size());
  }

  /** Whether the polynomial with these coefficients, constant term first, is a candidate. */
  public boolean contains(long[] ascending) {
    if (ascending.length != ranges.size() || ascending[degree()] == 0) {
      return false;
    }
    for (int power = 0; power < ascending.length; power++) {
      if (!ranges.get(power).contains(ascending[power])) {
        return false;
      }
    }
    return true;
  }

  /**
   * The coefficients of the candidate with this number, constant term first.
   *
   * @throws IndexOutOfBoundsException if there is no such candidate
   */
  public long[] coefficientsAt(long index) {
    if (index < 0 || index >= candidates) {
      throw new IndexOutOfBoundsException("no candidate " + index + " of " + candidates);
    }
    long[] coefficients = new long[ranges.size()];
    long width = ranges.get(0).size();
    coefficients[0] = ranges.get(0).low() + index % width;
    decodeRun(index / width, coefficients);
    return coefficients;
  }

  /** The candidate with this number. */
  public Polynomial polynomialAt(long index) {
    return polynomial(coefficientsAt(index));
  }

  /** The polynomial with these coefficients, constant term first. */
  public static Polynomial polynomial(long[] ascending) {
    BigInteger[] integers = new BigInteger[ascending.length];
    for (int k = 0; k < integers.length; k++) {
      integers[k] = BigInteger.valueOf(ascending[k]);
    }
    return Polynomial.ofAscending(integers, BigInteger.ONE);
  }

  /** Puts row {@code number} into {@code row}. */
  void decode(long number, Row row) {
    if (number < 0 || number >= rows) {
      throw new IndexOutOfBoundsException("no row " + number + " of " + rows);
    }
    long run = number / rowsPerRun;
    long offset = number % rowsPerRun * LONGEST_ROW;
    long width = ranges.get(0).size();
    decodeRun(run, row.coefficients);
    row.coefficients[0] = ranges.get(0).low() + offset;
    row.place(number, run * width + offset, (int) Math.min(LONGEST_ROW, width - offset));
  }

  private void decodeRun(long run, long[] coefficients) {
    long rest = run;
    for (int power = 1; power < ranges.size() - 1; power++) {
      CoefficientRange range = ranges.get(power);
      long size = range.size();
      long quotient = rest / size;
      coefficients[power] = range.low() + (rest - quotient * size);
      rest = quotient;
    }
    CoefficientRange lead = ranges.get(degree());
    long value = lead.low() + rest;
    coefficients[degree()] = lead.contains(0) && value >= 0 ? value + 1 : value;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof CoefficientBox that && ranges.equals(that.ranges);
  }

  @Override
  public int hashCode() {
    return ranges.hashCode();
  }

  /** The ranges, lead first: {@code 1..1 -3..3 -3..3}. */
  @Override
  public String toString() {
    List<CoefficientRange> descending = new ArrayList<>(ranges);
    Collections.reverse(descending);
    return descending.stream().map(CoefficientRange::toString).collect(Collectors.joining(" "));
  }
}
