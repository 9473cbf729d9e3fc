package rootwright.working.letters;

import java.util.regex.Pattern;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.UnreadableException;
import rootwright.working.route.ClassProfile;
import rootwright.working.solve.Given;
import rootwright.working.solve.Solution;
import rootwright.working.solve.TwoChecks;
import rootwright.working.subject.Inquiry;
import rootwright.working.subject.Subject;

/**
 * A polynomial with letters where an equation in the roots already leaves finitely many values, so
 * that "roots integers" beside it only throws some of them out.
 */
public final class LetterFixedByEquation implements Subject {

  private static final Pattern FIXING =
      Pattern.compile(
          ".*\\b(?:progression|another|divides|double root|repeated root|is a root)\\b.*",
          Pattern.CASE_INSENSITIVE);

  private final UnknownCoefficients letters;

  /** With the checks that confirm what is shown. */
  public LetterFixedByEquation(TwoChecks checks) {
    letters = new UnknownCoefficients(checks);
  }

  @Override
  public boolean recognises(Inquiry inquiry) {
    return inquiry.conditions().stream().anyMatch(LetterFixedByEquation::fixes)
        && letters.recognises(inquiry);
  }

  private static boolean fixes(String condition) {
    boolean equation =
        ConditionReader.relation(condition)
            .filter(Formula.Relation.class::isInstance)
            .map(Formula.Relation.class::cast)
            .filter(
                relation ->
                    relation.comparisons().stream()
                        .allMatch(sign -> sign == Formula.Comparison.EQUAL))
            .isPresent();
    return equation || FIXING.matcher(condition).matches();
  }

  @Override
  public Given read(Inquiry inquiry) throws UnreadableException {
    return letters.read(inquiry);
  }

  @Override
  public Solution work(Inquiry inquiry, ClassProfile profile) throws UnreadableException {
    return letters.work(inquiry, profile);
  }
}
