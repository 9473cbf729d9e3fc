package rootwright.working.answer;

import java.math.BigInteger;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.enclosure.ComplexBall;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.value.ExactValue;
import rootwright.algebra.value.RationalValue;

/** What an ask may come out as. Exact throughout; equality of records is equality of answers. */
public sealed interface Answer {

  /** What stands in the place of an answer where nothing satisfies the condition. */
  Formula NO_SUCH_VALUE = new Formula.Words("no such value");

  /** Stable short name for scripts. */
  String kind();

  /** The answer as it is written; several values are listed. */
  Formula formula();

  /** The single formulas it is made of, to be joined by "or": one, or each possible value. */
  default List<Formula> alternatives() {
    return List.of(formula());
  }

  /** One number, whatever the roots are called. */
  record Exact(ExactValue value) implements Answer {
    @Override
    public String kind() {
      return "exact";
    }

    @Override
    public Formula formula() {
      return value.toFormula();
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

    @Override
    public Formula formula() {
      return values.isEmpty()
          ? Formula.equation(PolynomialFormula.of(orbit, "T"), Formula.number(0))
          : listed(alternatives());
    }

    @Override
    public List<Formula> alternatives() {
      return values.isEmpty()
          ? List.of(formula())
          : values.stream().map(ExactValue::toFormula).toList();
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

    @Override
    public Formula formula() {
      return new Formula.Words("one of %s values".formatted(images));
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

    @Override
    public Formula formula() {
      return values.isEmpty() ? NO_SUCH_VALUE : listed(alternatives());
    }

    @Override
    public List<Formula> alternatives() {
      return values.isEmpty()
          ? List.of(NO_SUCH_VALUE)
          : values.stream().map(ExactValue::toFormula).toList();
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

    @Override
    public Formula formula() {
      return items.isEmpty() ? NO_SUCH_VALUE : listed(items);
    }

    @Override
    public List<Formula> alternatives() {
      return items.isEmpty() ? List.of(NO_SUCH_VALUE) : items;
    }
  }

  /** A polynomial in a letter. */
  record PolynomialIn(Polynomial polynomial, String letter) implements Answer {
    @Override
    public String kind() {
      return "polynomial";
    }

    @Override
    public Formula formula() {
      return PolynomialFormula.of(polynomial, letter);
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

    @Override
    public Formula formula() {
      return Formula.number(number);
    }
  }

  /** Whether something holds. */
  record Truth(boolean holds) implements Answer {
    @Override
    public String kind() {
      return "truth";
    }

    @Override
    public Formula formula() {
      return new Formula.Words(holds ? "true" : "false");
    }
  }

  /** The least non-negative residue for a modulus. */
  record Residue(BigInteger value, BigInteger modulus) implements Answer {
    @Override
    public String kind() {
      return "residue";
    }

    @Override
    public Formula formula() {
      return Formula.number(value);
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

    @Override
    public Formula formula() {
      return condition;
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

    @Override
    public Formula formula() {
      return new Formula.Words(why);
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

    @Override
    public Formula formula() {
      return new Formula.Words(why);
    }
  }

  private static Formula listed(List<Formula> formulas) {
    return formulas.size() == 1 ? formulas.get(0) : new Formula.Listing(formulas);
  }

  /** A rational answer. */
  static Answer exact(Rational value) {
    return new Exact(new RationalValue(value));
  }
}
