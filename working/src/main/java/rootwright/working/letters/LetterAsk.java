package rootwright.working.letters;

import java.util.List;
import rootwright.algebra.notation.Formula;

/** What is wanted of a polynomial with letters. */
sealed interface LetterAsk {

  /** As it is shown. */
  Formula shown();

  /** The value of an expression in the roots and the letters. */
  record Value(Formula expression) implements LetterAsk {
    @Override
    public Formula shown() {
      return expression;
    }
  }

  /** All values of these letters that satisfy the conditions. */
  record Letters(List<String> wanted) implements LetterAsk {
    public Letters {
      wanted = List.copyOf(wanted);
    }

    @Override
    public Formula shown() {
      List<Formula> names = wanted.stream().map(Formula::name).toList();
      return names.size() == 1 ? names.get(0) : new Formula.Listing(names);
    }
  }

  /** How many values of a letter satisfy the conditions. */
  record NumberOf(String letter) implements LetterAsk {
    @Override
    public Formula shown() {
      return new Formula.Words("number of " + letter);
    }
  }

  /** The least or greatest value of an expression in the roots and the letters. */
  record Extreme(Side side, Formula expression) implements LetterAsk {
    /** Which of the two. */
    enum Side {
      LEAST,
      GREATEST
    }

    String word() {
      return side == Side.LEAST ? "least" : "greatest";
    }

    @Override
    public Formula shown() {
      return new Formula.Application(word(), List.of(expression));
    }
  }

  /** The relation between the letters that the conditions amount to. */
  record Relation() implements LetterAsk {
    @Override
    public Formula shown() {
      return new Formula.Words("condition");
    }
  }
}
