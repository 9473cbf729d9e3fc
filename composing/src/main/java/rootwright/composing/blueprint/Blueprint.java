package rootwright.composing.blueprint;

import java.util.ArrayList;
import java.util.List;
import rootwright.composing.option.Choices;

/**
 * What a coach orders.
 *
 * @param ask what is to be asked
 * @param polynomial what the polynomials are to be like
 * @param answer what the answer is to look like
 * @param working what working the problems is to be like
 * @param choices the number of choices of a multiple-choice item, 3 to 5
 * @param many how many problems
 * @param seed what chance starts from; part of every result
 * @param avoid names of files with problems to stay away from, twins included; the composer itself
 *     reads no file and is given their fingerprints
 */
public record Blueprint(
    AskWish ask,
    PolynomialWish polynomial,
    AnswerWish answer,
    WorkingWish working,
    int choices,
    int many,
    long seed,
    List<String> avoid) {

  /** Most problems of one order. */
  public static final int MOST = 500;

  /** The order of a coach who says nothing: five problems on sums of squares. */
  public static final Blueprint USUAL =
      new Blueprint(
          new AskWish.Given("Σ r^2"),
          PolynomialWish.USUAL,
          new AnswerWish.Whole(),
          WorkingWish.USUAL,
          Choices.USUAL,
          5,
          1,
          List.of());

  /** Keeps its own copy. */
  public Blueprint {
    avoid = List.copyOf(avoid);
  }

  /** The usual order for one ask: monic or not, whole answer, no rational root, four choices. */
  public static Blueprint of(String ask, int degree, int many, long seed) {
    return USUAL
        .withAsk(new AskWish.Given(ask))
        .withPolynomial(PolynomialWish.USUAL.withDegree(degree))
        .withMany(many)
        .withSeed(seed);
  }

  /**
   * What is contradictory or out of range in the order itself, one sentence each; empty if nothing.
   * What only shows once the ask is read is found by {@link Composer}.
   */
  public List<String> contradictions() {
    List<String> found = new ArrayList<>(polynomial.contradictions());
    found.addAll(answer.contradictions());
    found.addAll(working.contradictions());
    if (many < 1 || many > MOST) {
      found.add("the number must be from 1 to %d: %d".formatted(MOST, many));
    }
    if (choices < Choices.FEWEST || choices > Choices.MOST) {
      found.add("choices must be three to five: " + choices);
    }
    rationalRoots(found);
    if (polynomial.isMonic()) {
      for (String slip : List.of("lead-forgotten", "lead-half-forgotten")) {
        if (working.traps().contains(slip)) {
          found.add("with lead 1 the slip %s gives the right answer".formatted(slip));
        }
      }
    }
    found.addAll(KnownNames.contradictions(this));
    return found;
  }

  private void rationalRoots(List<String> found) {
    boolean wanted = working.with().contains("rational-root");
    if (wanted && polynomial.roots() == RootsWish.IRREDUCIBLE) {
      found.add("an irreducible polynomial has no rational root to split off");
    } else if (wanted && polynomial.roots() == RootsWish.NO_RATIONAL_ROOT) {
      found.add("without a rational root the route rational-root cannot go through");
    }
  }

  /** The same order with another ask. */
  public Blueprint withAsk(AskWish other) {
    return new Blueprint(other, polynomial, answer, working, choices, many, seed, avoid);
  }

  /** The same order for other polynomials. */
  public Blueprint withPolynomial(PolynomialWish other) {
    return new Blueprint(ask, other, answer, working, choices, many, seed, avoid);
  }

  /** The same order for other answers. */
  public Blueprint withAnswer(AnswerWish other) {
    return new Blueprint(ask, polynomial, other, working, choices, many, seed, avoid);
  }

  /** The same order with other wishes about the working. */
  public Blueprint withWorking(WorkingWish other) {
    return new Blueprint(ask, polynomial, answer, other, choices, many, seed, avoid);
  }

  /** The same order with another number of choices. */
  public Blueprint withChoices(int other) {
    return new Blueprint(ask, polynomial, answer, working, other, many, seed, avoid);
  }

  /** The same order for another number of problems. */
  public Blueprint withMany(int other) {
    return new Blueprint(ask, polynomial, answer, working, choices, other, seed, avoid);
  }

  /** The same order with another seed. */
  public Blueprint withSeed(long other) {
    return new Blueprint(ask, polynomial, answer, working, choices, many, other, avoid);
  }

  /** The same order staying away from other files. */
  public Blueprint withAvoid(List<String> other) {
    return new Blueprint(ask, polynomial, answer, working, choices, many, seed, other);
  }
}
