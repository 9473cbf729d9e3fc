package rootwright.composing.scan.candidate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The values of an {@link IntegerForm} along a row, stepped by finite differences: a form of degree
 * g in the constant term costs g additions a candidate.
 *
 * <p>All sums and products are taken modulo 2⁶⁴. That is exact whenever the value itself is known
 * to fit, whatever happens on the way; {@link #fits} proves it once for the whole box where it can,
 * otherwise row by row. Belongs to one thread.
 */
public final class RowForm {

  private final IntegerForm form;
  private final boolean fitsBox;
  private final long[] sizes;
  private final long[][] factors;
  private final int[][][] exponents;
  private final int[] highest;
  private final long[][] powers;
  private final long[] inner;
  private final long[] differences;
  private final long[] values;
  private long seededRow = -1;
  private int valued;
  private long fittedRow = -1;
  private boolean fitsRow;

  /** The form along the rows of a box. */
  public RowForm(IntegerForm form, CoefficientBox box) {
    this.form = form;
    sizes = new long[box.degree() + 1];
    for (int power = 0; power <= box.degree(); power++) {
      sizes[power] = box.range(power).largest();
    }
    fitsBox = form.fits(sizes);
    int degree = form.degreeInConstant();
    inner = new long[degree + 1];
    differences = new long[degree + 1];
    values = new long[box.rowLength()];
    highest = new int[box.degree() + 1];
    List<List<IntegerForm.Term>> groups = new ArrayList<>();
    for (int k = 0; k <= degree; k++) {
      groups.add(new ArrayList<>());
    }
    for (IntegerForm.Term term : form.terms()) {
      groups.get(term.monomial().exponent(0)).add(term);
      for (int power = 0; power < term.monomial().length(); power++) {
        highest[power] = Math.max(highest[power], term.monomial().exponent(power));
      }
    }
    factors = new long[degree + 1][];
    exponents = new int[degree + 1][][];
    for (int k = 0; k <= degree; k++) {
      List<IntegerForm.Term> group = groups.get(k);
      factors[k] = group.stream().mapToLong(term -> term.coefficient().longValue()).toArray();
      exponents[k] = group.stream().map(RowForm::exponents).toArray(int[][]::new);
    }
    powers = new long[box.degree() + 1][];
    for (int power = 1; power < powers.length; power++) {
      powers[power] = new long[highest[power] + 1];
      powers[power][0] = 1;
    }
  }

  private static int[] exponents(IntegerForm.Term term) {
    int[] exponents = new int[term.monomial().length()];
    for (int power = 0; power < exponents.length; power++) {
      exponents[power] = term.monomial().exponent(power);
    }
    return exponents;
  }

  /** Whether every value in this row is proved to be at most 2⁶² in size. */
  public boolean fits(Row row) {
    if (fitsBox) {
      return true;
    }
    if (fittedRow != row.number()) {
      fittedRow = row.number();
      sizes[0] = row.largestConstant();
      for (int power = 1; power < sizes.length; power++) {
        sizes[power] = Math.abs(row.coefficient(power));
      }
      fitsRow = form.fits(sizes);
    }
    return fitsRow;
  }

  /** Whether the value is the same along every row, the constant term not occurring. */
  public boolean isConstant() {
    return inner.length == 1;
  }

  /** The value of the first candidate. The row must {@linkplain #fits fit}. */
  public long first(Row row) {
    return values(row, 1)[0];
  }

  /** The values along the row. The row must {@linkplain #fits fit}. */
  public long[] values(Row row) {
    return values(row, row.length());
  }

  /**
   * The values of the first {@code count} candidates, in an array that the next call may overwrite.
   * The row must {@linkplain #fits fit}.
   */
  public long[] values(Row row, int count) {
    if (seededRow != row.number()) {
      seededRow = row.number();
      valued = 0;
      seed(row);
    }
    if (valued < count) {
      step(valued, count);
      valued = count;
    }
    return values;
  }

  /** Continues the stepping; {@code differences} stand at place {@code from}. */
  private void step(int from, int count) {
    switch (differences.length) {
      case 1 -> Arrays.fill(values, from, count, differences[0]);
      case 2 -> {
        long value = differences[0];
        long first = differences[1];
        for (int place = from; place < count; place++) {
          values[place] = value;
          value += first;
        }
        differences[0] = value;
      }
      case 3 -> {
        long value = differences[0];
        long first = differences[1];
        long second = differences[2];
        for (int place = from; place < count; place++) {
          values[place] = value;
          value += first;
          first += second;
        }
        differences[0] = value;
        differences[1] = first;
      }
      default -> {
        for (int place = from; place < count; place++) {
          values[place] = differences[0];
          for (int k = 0; k + 1 < differences.length; k++) {
            differences[k] += differences[k + 1];
          }
        }
      }
    }
  }

  private void seed(Row row) {
    for (int power = 1; power < powers.length; power++) {
      long[] table = powers[power];
      long base = row.coefficient(power);
      for (int k = 1; k < table.length; k++) {
        table[k] = table[k - 1] * base;
      }
    }
    for (int k = 0; k < inner.length; k++) {
      long sum = 0;
      for (int term = 0; term < factors[k].length; term++) {
        long product = factors[k][term];
        int[] exponent = exponents[k][term];
        for (int power = 1; power < exponent.length; power++) {
          product *= powers[power][exponent[power]];
        }
        sum += product;
      }
      inner[k] = sum;
    }
    for (int k = 0; k < differences.length; k++) {
      long constant = row.firstConstant() + k;
      long value = 0;
      for (int j = inner.length - 1; j >= 0; j--) {
        value = value * constant + inner[j];
      }
      differences[k] = value;
    }
    for (int order = 1; order < differences.length; order++) {
      for (int k = differences.length - 1; k >= order; k--) {
        differences[k] -= differences[k - 1];
      }
    }
  }
}
