package rootwright.working.check;

import rootwright.working.step.Claim;

/** One way to find out whether a claim is true, independent of how it was arrived at. */
public interface ClaimCheck {

  /** What this check says of the claim; an argument in words is undecided. */
  Verdict of(Claim claim);

  /**
   * The same check for the claims of one problem: it may keep what one claim was found out by for
   * the next. The result is for one thread.
   */
  default ClaimCheck forOneProblem() {
    return this;
  }
}
