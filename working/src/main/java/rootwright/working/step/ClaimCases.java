package rootwright.working.step;

/**
 * What is to be done with each sort of claim. A new sort will not compile until both checks say
 * what they do with it.
 *
 * @param <R> what comes of it
 */
public interface ClaimCases<R> {

  /** Sides that are equal. */
  R equal(Claim.Equal claim);

  /** Sides that are equal whatever the letters are. */
  R equalWithLetters(Claim.EqualWithLetters claim);

  /** A polynomial whose roots are the images of a map. */
  R hasRoots(Claim.HasRoots claim);

  /** All solutions of an equation. */
  R solutionSet(Claim.SolutionSet claim);

  /** Sides in ascending order. */
  R ascending(Claim.Ascending claim);

  /** How many roots there are. */
  R countOfRoots(Claim.CountOfRoots claim);

  /** How many roots lie in a place. */
  R countInPlace(Claim.CountInPlace claim);

  /** How many roots there are for each value of a letter. */
  R countsBetween(Claim.CountsBetween claim);

  /** The sign of a function on a region. */
  R signOn(Claim.SignOn claim);

  /** A greatest or least value. */
  R extreme(Claim.Extreme claim);

  /** An equality over pairs of roots of two polynomials. */
  R equalOverPairs(Claim.EqualOverPairs claim);

  /** All solutions of a system. */
  R systemSolutions(Claim.SystemSolutions claim);

  /** What follows from given equations. */
  R consequence(Claim.Consequence claim);

  /** An argument in words, which no check can decide. */
  R argument(Claim.Argument claim);
}
