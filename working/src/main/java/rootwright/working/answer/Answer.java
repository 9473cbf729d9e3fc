package rootwright.working.answer;

import java.math.BigInteger;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.enclosure.ComplexBall;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.RationalValue;

/** What an ask may come out as. Exact throughout; equality of records is equality of answers. */
public sealed interface Answer {

  /** Stable short name for scripts. */
  String kind();

  /** One number, whatever the roots are called. */
  record Exact(ExactValue value) implements Answer {
    @Override
    public String kind() {
      return "exact";
    }
  }

  /**
   * One of several numbers, depending on which root is called what.
   *
   * @param values the distinct possible values, real ones ascending first; empty if there are too
   *     many to list
   * @param orbit the polynomial whose roots are the values
   */
  record Values(List<ExactValue> values, Polynomial orbit) implements Answer {
    public Values {
      values = List.copyOf(values);
    }

    @Override
    public String kind() {
      return "values";
    }
  }

  /**
   * One of more numbers than are told apart exactly, depending on which root is called what.
   *
   * @param images how many forms the expression has under renaming the roots
   * @param shown discs that hold values of it, a few of them; real ones ascending first where all
   *     forms were looked at
   */
  record Enclosed(BigInteger images, List<ComplexBall> shown) implements Answer {
    public Enclosed {
      shown = List.copyOf(shown);
    }

    @Override
    public String kind() {
      return "values";
    }
  }

  /** All numbers that satisfy a condition, possibly none. */
  record Solutions(List<ExactValue> values) implements Answer {
    public Solutions {
      values = List.copyOf(values);
    }

    @Override
    public String kind() {
      return "set";
    }
  }

  /** All things that satisfy a condition and are no single numbers: polynomials, say. */
  record Items(List<Formula> items) implements Answer {
    public Items {
      items = List.copyOf(items);
    }

    @Override
    public String kind() {
      return "set";
    }
  }

  /** A polynomial in a letter. */
  record PolynomialIn(Polynomial polynomial, String letter) implements Answer {
    @Override
    public String kind() {
      return "polynomial";
    }
  }

  /** A formula in letters that stay open. */
  record FunctionOf(Formula formula) implements Answer {
    @Override
    public String kind() {
      return "function";
    }
  }

  /** How many. */
  record Count(BigInteger number) implements Answer {
    @Override
    public String kind() {
      return "count";
    }
  }

  /** Whether something holds. */
  record Truth(boolean holds) implements Answer {
    @Override
    public String kind() {
      return "truth";
    }
  }

  /** The least non-negative residue for a modulus. */
  record Residue(BigInteger value, BigInteger modulus) implements Answer {
    @Override
    public String kind() {
      return "residue";
    }
  }

  /**
   * A range of values.
   *
   * @param condition the range as a formula, such as {@code -2 < k < 2}
   */
  record Interval(Formula condition) implements Answer {
    @Override
    public String kind() {
      return "interval";
    }
  }

  /**
   * No answer exists.
   *
   * @param why one plain sentence
   */
  record None(String why) implements Answer {
    @Override
    public String kind() {
      return "none";
    }
  }

  /**
   * The ask is of a form or a size that is not worked. It is no answer: whoever asked is told.
   *
   * @param code {@code too-large} or {@code unsupported}
   * @param why one plain sentence
   * @param part the smallest part of the ask that stands in the way
   * @param mend an ask near it that would be worked, if one is known
   */
  record Refused(String code, String why, Formula part, Optional<Formula> mend) implements Answer {
    @Override
    public String kind() {
      return "refused";
    }
  }

  /** A rational answer. */
  static Answer exact(Rational value) {
    return new Exact(new RationalValue(value));
  }
}
