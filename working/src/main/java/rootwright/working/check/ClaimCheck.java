package rootwright.working.check;

import rootwright.working.step.Claim;

/** One way to find out whether a claim is true, independent of how it was arrived at. */
public interface ClaimCheck {

  /** What this check says of the claim; an argument in words is undecided. */
  Verdict of(Claim claim);
}
