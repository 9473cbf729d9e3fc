package rootwright.working.letters;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.solve.Given;

/**
 * A problem about two polynomials.
 *
 * @param first the first, with all letters of both
 * @param second the second, with the same letters
 * @param stated both as they were written
 * @param names how a root of the first and a root of the second are called in the ask
 * @param ask what is wanted
 * @param common how many common roots are demanded, if common roots are
 * @param conditions what else is given, about the letters
 * @param shown the conditions as they are shown
 * @param reading how doubtful notation was understood
 */
record PairProblem(
    LetteredPolynomial first,
    LetteredPolynomial second,
    Formula stated,
    List<String> names,
    Ask ask,
    Optional<CommonRoots> common,
    List<Condition> conditions,
    List<Formula> shown,
    List<String> reading) {

  PairProblem {
    names = List.copyOf(names);
    conditions = List.copyOf(conditions);
    shown = List.copyOf(shown);
    reading = List.copyOf(reading);
  }

  /** What is wanted. */
  sealed interface Ask {
    /** As it is shown. */
    Formula shown();

    /** The resultant. */
    record OfResultant() implements Ask {
      @Override
      public Formula shown() {
        return new Formula.Words("resultant");
      }
    }

    /** The numbers that are roots of both. */
    record OfCommonRoots() implements Ask {
      @Override
      public Formula shown() {
        return new Formula.Words("common roots");
      }
    }

    /** All values of the one letter. */
    record OfLetter(String letter) implements Ask {
      @Override
      public Formula shown() {
        return Formula.name(letter);
      }
    }

    /** Σ or Π over all pairs of a root of the first and a root of the second. */
    record OfPairs(Formula.Aggregate aggregate) implements Ask {
      @Override
      public Formula shown() {
        return aggregate;
      }
    }
  }

  /**
   * How many common roots, counted with multiplicity.
   *
   * @param exactly the number; absent for at least one
   */
  record CommonRoots(Optional<Integer> exactly) {
    String words() {
      return exactly
          .map(
              number ->
                  "they share exactly %d %s".formatted(number, number == 1 ? "root" : "roots"))
          .orElse("they share a root");
    }
  }

  /** The letters of both. */
  List<String> letters() {
    return first.letters();
  }

  /** The first polynomial, which has no letters. */
  Polynomial firstNumeric() {
    return first.at(Map.of());
  }

  /** The second polynomial, which has no letters. */
  Polynomial secondNumeric() {
    return second.at(Map.of());
  }

  Given given() {
    return new Given(
        new Formula.Listing(List.of(first.formula(), second.formula())),
        stated,
        first.unknown(),
        names,
        ask.shown(),
        shown,
        reading);
  }
}
