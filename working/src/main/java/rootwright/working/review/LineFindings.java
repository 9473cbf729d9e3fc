package rootwright.working.review;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rootwright.algebra.notation.Formula;

/** Gathers what is found of the equations of one line; the gravest verdict is the line's. */
public final class LineFindings {

  private static final List<LineVerdict> GRAVEST_FIRST =
      List.of(
          LineVerdict.WRONG,
          LineVerdict.FOLLOWS_FROM_WRONG,
          LineVerdict.UNDECIDED,
          LineVerdict.UNEXPLAINED,
          LineVerdict.FOLLOWS,
          LineVerdict.REMARK);

  private final int number;
  private final String text;
  private final List<Formula> shown = new ArrayList<>();
  private final Set<String> reasons = new LinkedHashSet<>();
  private final Set<SlipMatch> slips = new LinkedHashSet<>();
  private LineVerdict verdict = LineVerdict.REMARK;

  /** Nothing found yet of this line. */
  public LineFindings(int number, String text) {
    this.number = number;
    this.text = text;
  }

  /** The number of the line. */
  public int number() {
    return number;
  }

  /** What was found of one of its equations. */
  public LineVerdict add(Formula equation, LineVerdict found, String reason) {
    shown.add(equation);
    return add(found, reason);
  }

  /** The reasons of a graver verdict replace those of a lighter one. */
  public LineVerdict add(LineVerdict found, String reason) {
    int gravity = GRAVEST_FIRST.indexOf(found) - GRAVEST_FIRST.indexOf(verdict);
    if (gravity < 0) {
      reasons.clear();
      verdict = found;
    }
    if (gravity <= 0) {
      reasons.add(reason);
    }
    return found;
  }

  /** That one of its equations is wrong, and the wrong turnings that lead there. */
  public LineVerdict wrong(Formula equation, String reason, List<SlipMatch> matches) {
    slips.addAll(matches);
    return add(equation, LineVerdict.WRONG, reason);
  }

  /** All of it as one finding. */
  public LineFinding finding() {
    Optional<Formula> read =
        shown.isEmpty()
            ? Optional.empty()
            : Optional.of(shown.size() == 1 ? shown.get(0) : new Formula.Listing(shown));
    return new LineFinding(
        number, text.strip(), read, verdict, String.join("; ", reasons), List.copyOf(slips));
  }
}
