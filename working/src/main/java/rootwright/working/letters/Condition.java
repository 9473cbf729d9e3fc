package rootwright.working.letters;

import java.util.List;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.algebra.value.ExactValue;
import rootwright.working.step.NumberDomain;
import rootwright.working.step.RootPlace;

/** What is given of the roots or the letters besides the polynomial. */
sealed interface Condition {

  /** The condition as a clause of a sentence: "r = 2s", "the roots are real". */
  String words();

  /** As it is shown in the list of what is given. */
  default Formula shown() {
    return new Formula.Words(words());
  }

  /**
   * Expressions in the roots and letters that are all zero for some naming of the roots.
   *
   * @param words as a clause
   * @param zeros the expressions
   * @param equations the expressions as they were said: {@code r = 2s}
   */
  record Zeros(String words, List<Formula> zeros, List<Formula> equations) implements Condition {
    public Zeros {
      zeros = List.copyOf(zeros);
      equations = List.copyOf(equations);
    }

    @Override
    public Formula shown() {
      return equations.size() == 1 && words.equals(UnicodeWriter.write(equations.get(0)))
          ? equations.get(0)
          : new Formula.Words(words);
    }
  }

  /** A number, or a formula in the letters, is a root. */
  record RootIs(Formula value) implements Condition {
    @Override
    public String words() {
      return UnicodeWriter.write(value) + " is a root";
    }
  }

  /** A polynomial divides the polynomial. */
  record DividedBy(Polynomial divisor, Formula written) implements Condition {
    @Override
    public String words() {
      return UnicodeWriter.write(written) + " is a factor";
    }
  }

  /** All roots have a property. */
  record AllRoots(RootNature nature) implements Condition {
    @Override
    public String words() {
      return "all roots are " + nature.words();
    }
  }

  /**
   * The number of distinct real solutions.
   *
   * @param equation whether it is said of solutions of the equation, so that the lead may vanish
   * @param distinct whether it was said that they are counted once
   */
  record RealCount(int count, boolean equation, boolean distinct) implements Condition {
    @Override
    public String words() {
      return count == 0
          ? "there is no real root"
          : "there %s exactly %d distinct real %s"
              .formatted(
                  count == 1 ? "is" : "are",
                  count,
                  (equation ? "solution" : "root") + (count == 1 ? "" : "s"));
    }
  }

  /**
   * Where roots lie on the real line.
   *
   * @param words as a clause
   * @param cases one of these must hold, and in it everything that it lists
   */
  record Placed(String words, List<List<RootsPlaced>> cases) implements Condition {
    public Placed {
      cases = cases.stream().map(List::copyOf).toList();
    }

    /** Whether it is so for these distinct roots. */
    boolean holdsFor(List<ExactValue> roots) {
      return cases.stream().anyMatch(all -> all.stream().allMatch(one -> one.holdsFor(roots)));
    }

    /** Whether all roots are real in every case. */
    boolean allReal() {
      return cases.stream()
          .allMatch(all -> all.stream().anyMatch(one -> one.amount() == RootsPlaced.Amount.ALL));
    }

    /** The places that are spoken of, each once. */
    List<RootPlace> places() {
      return cases.stream().flatMap(List::stream).map(RootsPlaced::place).distinct().toList();
    }
  }

  /** A letter is from a domain. */
  record LetterIn(String letter, NumberDomain domain) implements Condition {
    @Override
    public String words() {
      return "%s is %s".formatted(letter, LetterDomainWords.one(domain));
    }
  }

  /** A comparison of functions of the letters: k > 0, m ≠ 3. */
  record LetterBound(Formula.Relation relation) implements Condition {
    @Override
    public String words() {
      return UnicodeWriter.write(relation);
    }

    @Override
    public Formula shown() {
      return relation;
    }
  }
}
