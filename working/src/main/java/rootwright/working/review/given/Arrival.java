package rootwright.working.review.given;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.working.answer.Answer;
import rootwright.working.review.LineFinding;
import rootwright.working.review.LineFindings;
import rootwright.working.review.LineVerdict;
import rootwright.working.review.Review;
import rootwright.working.review.SlipMatch;

/** Watches for the answer: what a working says last of what was asked for. */
final class Arrival {

  private final Ground ground;
  private final Wrong wrong;
  private Review.End end = Review.End.OPEN;
  private int line;
  private List<Formula> values = List.of();
  private final Map<Formula, Formula> chosen = new HashMap<>();

  Arrival(Ground ground, Wrong wrong) {
    this.ground = ground;
    this.wrong = wrong;
  }

  Review.End end() {
    return end;
  }

  private Answer answer() {
    return ground.solution().answer();
  }

  /** An equation whose left side may be what was asked for. */
  void equality(Formula left, Formula right, boolean sound, int number) {
    if (answer() instanceof Answer.PolynomialIn in) {
      if (Wrong.isMultiple(in, left.minus(right))) {
        end = Review.End.ARRIVES;
      }
    } else if (left.equals(ground.find())
        || (!(ground.find() instanceof Formula.Name) && wrong.isSame(left, ground.find()))) {
      values(List.of(right), sound, number);
    } else if (ground.find() instanceof Formula.Relation relation
        && relation.sides().size() == 2
        && left.equals(relation.sides().get(0))
        && right.equals(relation.sides().get(1))
        && answer() instanceof Answer.Truth truth) {
      end = truth.holds() == sound ? Review.End.ARRIVES : Review.End.ELSEWHERE;
    }
  }

  /** Values for what was asked for. */
  void values(List<Formula> said, boolean sound, int number) {
    boolean arrives = wrong.isAnswer(answer(), said);
    boolean number_ = said.stream().allMatch(value -> ground.writing().of(value).isPresent());
    if (arrives) {
      end = Review.End.ARRIVES;
    } else if (number_ && (!sound || answer() instanceof Answer.Solutions)) {
      end = Review.End.ELSEWHERE;
    }
    line = number;
    values = said;
  }

  /** A value for one of several names, all of which were asked for. */
  void chosen(Formula name, Formula value) {
    if (ground.find() instanceof Formula.Listing list && list.items().contains(name)) {
      chosen.put(name, value);
      boolean all = chosen.keySet().containsAll(list.items());
      if (all && wrong.isAnswer(answer(), List.copyOf(chosen.values()))) {
        end = Review.End.ARRIVES;
      }
    }
  }

  /** Values alone, where what was asked for is said in words. */
  void values(List<Formula> said, LineFindings findings) {
    Formula shown = said.size() == 1 ? said.get(0) : new Formula.Listing(said);
    if (wrong.isAnswer(answer(), said)) {
      findings.add(shown, LineVerdict.UNEXPLAINED, "the answer, as our own working finds it");
      end = Review.End.ARRIVES;
    } else if (said.stream().allMatch(value -> ground.writing().of(value).isPresent())) {
      findings.wrong(shown, "the answer is another one", wrong.ofAnswer(said));
      end = Review.End.ELSEWHERE;
    } else {
      findings.add(LineVerdict.REMARK, "no equation");
    }
  }

  /** That there is no answer. */
  void nothing(LineFindings findings) {
    boolean none =
        answer() instanceof Answer.None
            || (answer() instanceof Answer.Solutions s && s.values().isEmpty())
            || (answer() instanceof Answer.Items items && items.items().isEmpty());
    if (none) {
      findings.add(LineVerdict.UNEXPLAINED, "there is none, as our own working finds");
      end = Review.End.ARRIVES;
    } else {
      findings.add(LineVerdict.WRONG, "there is an answer");
      end = Review.End.ELSEWHERE;
    }
  }

  /** That what was asked for has just been said. */
  void arrives() {
    end = Review.End.ARRIVES;
  }

  /**
   * The findings, the last values for the ask called wrong if they keep what must be thrown out:
   * every line may follow, and the answer is wrong all the same.
   */
  List<LineFinding> judged(List<LineFinding> findings) {
    if (end != Review.End.ELSEWHERE || values.isEmpty()) {
      return findings;
    }
    List<LineFinding> all = new ArrayList<>();
    for (LineFinding finding : findings) {
      boolean keeps = finding.number() == line && finding.verdict().isTrue();
      all.add(keeps ? kept(finding) : finding);
    }
    return all;
  }

  private LineFinding kept(LineFinding finding) {
    List<SlipMatch> slips = wrong.ofAnswer(values);
    String answer = UnicodeWriter.write(answer().formula());
    return new LineFinding(
        finding.number(),
        finding.text(),
        Optional.of(finding.shown().orElse(ground.find())),
        LineVerdict.WRONG,
        "as the answer this is not all that is allowed and nothing else: that is " + answer,
        slips);
  }
}
