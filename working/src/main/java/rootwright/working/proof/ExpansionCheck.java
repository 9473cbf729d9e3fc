package rootwright.working.proof;

import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.working.check.Verdict;

/**
 * Decides an identity exactly: both sides are multiplied out in the polynomial ring of their
 * letters, and the numerator of the difference is zero or it is not. For the chosen number of
 * letters this is a proof.
 */
public final class ExpansionCheck {

  private static final String METHOD = "multiplied out, every letter an unknown";

  private ExpansionCheck() {}

  /** Confirmed, refuted, or undecided where a side has no value or is too long. */
  public static Verdict of(Identity identity) {
    try {
      ExpandedEvaluation evaluation = new ExpandedEvaluation(identity);
      RationalFunction first = evaluation.valueOf(identity.sides().get(0));
      for (int k = 1; k < identity.sides().size(); k++) {
        if (!evaluation.same(first, evaluation.valueOf(identity.sides().get(k)))) {
          return new Verdict.Refuted(
              "%s and %s are different polynomials"
                  .formatted(
                      UnicodeWriter.write(identity.sides().get(0)),
                      UnicodeWriter.write(identity.sides().get(k))));
        }
      }
      return Verdict.confirmed(METHOD);
    } catch (UnsayableException stuck) {
      return new Verdict.Undecided(stuck.why());
    }
  }
}
