package rootwright.lesson.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaNames;
import rootwright.algebra.notation.FormulaReader;
import rootwright.algebra.notation.PlainWriter;
import rootwright.algebra.notation.Refusal;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.notation.UnreadableException;
import rootwright.lesson.text.Phrase;
import rootwright.working.check.Verdict;
import rootwright.working.step.Idea;

/** Looks at one line of a plan: is every formula in it read, known and true? */
final class LineCheck {

  private final LineJudge judge;
  private final List<Complaint> complaints;

  LineCheck(LineJudge judge, List<Complaint> complaints) {
    this.judge = judge;
    this.complaints = complaints;
  }

  /** A line with the idea behind it, if it is a line of a route. */
  record Looked(LessonLine line, Optional<Idea> idea) {}

  Looked look(PlanLine line) {
    Phrase words = phrase(line.words(), line);
    Phrase because = line.because().isEmpty() ? Phrase.EMPTY : reason(line);
    Optional<LineJudge.Known> formula = Optional.empty();
    if (!line.write().isEmpty()) {
      formula = formula(line, line.write());
    } else if (!line.think().isEmpty()) {
      formula = thought(line);
    }
    LessonLine.Standing standing =
        formula.isEmpty()
            ? LessonLine.Standing.STATED
            : formula.get().argument() ? LessonLine.Standing.ARGUMENT : LessonLine.Standing.CHECKED;
    Optional<Formula> shown = formula.map(LineJudge.Known::formula);
    Phrase said = line.say().isEmpty() ? said(words, shown, because) : phrase(line.say(), line);
    return new Looked(
        new LessonLine(words, shown, because, said, standing, Optional.empty()),
        formula.flatMap(LineJudge.Known::idea));
  }

  /** What is said where the plan does not say it: words, reason, formula. */
  private static Phrase said(Phrase words, Optional<Formula> shown, Phrase because) {
    Phrase before = words.then(" ", because).capitalised();
    if (shown.isEmpty()) {
      return before;
    }
    String plain = before.plain().strip();
    String between = plain.endsWith(".") ? " That is, " : plain.matches(".*[,:;?!]") ? " " : ": ";
    return before.then(between, Phrase.of(shown.get())).then("", Phrase.words("."));
  }

  /** A phrase of the plan; its equations in known letters must hold. */
  Phrase phrase(String typed, PlanLine line) {
    try {
      Phrase phrase = Phrase.read(typed);
      for (Formula formula : phrase.formulas()) {
        if (formula instanceof Formula.Relation relation && isDecidable(relation)) {
          judged(relation, line, typed);
        }
      }
      return phrase.scanned();
    } catch (UnreadableException unreadable) {
      complaints.add(unreadable(unreadable.refusal(), line.place(), typed));
      return Phrase.words(typed);
    }
  }

  private Phrase reason(PlanLine line) {
    return line.because().indexOf('`') >= 0
        ? phrase(line.because(), line)
        : Phrase.scanned(line.because());
  }

  /** Whether nothing but known letters and numbers stands in it, and it is no definition. */
  private boolean isDecidable(Formula.Relation relation) {
    boolean open =
        relation.contains(
            part ->
                part instanceof Formula.Words
                    || (part instanceof Formula.Name name
                        && !judge.roots().contains(name.spelling()))
                    || (part instanceof Formula.Family family
                        && !(family.index() instanceof Formula.Numeral)));
    return !open && relation.comparisons().stream().allMatch(Formula.Comparison.EQUAL::equals);
  }

  private Optional<LineJudge.Known> formula(PlanLine line, String written) {
    Optional<LineJudge.Known> ours = judge.known(written);
    if (ours.isPresent()) {
      return ours;
    }
    try {
      Formula formula = FormulaReader.formula(written);
      Optional<LineJudge.Known> same = judge.known(PlainWriter.write(formula));
      if (same.isPresent()) {
        return same;
      }
      if (hasUnknownLetter(formula, line, written)) {
        return Optional.of(new LineJudge.Known(formula, Optional.empty(), true));
      }
      relations(formula).forEach(relation -> judged(relation, line, written));
      return Optional.of(new LineJudge.Known(formula, Optional.empty(), false));
    } catch (UnreadableException unreadable) {
      complaints.add(unreadable(unreadable.refusal(), line.place(), written));
      return Optional.empty();
    }
  }

  private Optional<LineJudge.Known> thought(PlanLine line) {
    Optional<LineJudge.Known> ours = judge.known(line.think());
    if (ours.isPresent()) {
      return ours;
    }
    try {
      Formula formula = FormulaReader.formula(line.think());
      hasUnknownLetter(formula, line, line.think());
      return Optional.of(new LineJudge.Known(formula, Optional.empty(), true));
    } catch (UnreadableException unreadable) {
      complaints.add(unreadable(unreadable.refusal(), line.place(), line.think()));
      return Optional.empty();
    }
  }

  private boolean hasUnknownLetter(Formula formula, PlanLine line, String written) {
    for (String name : FormulaNames.in(formula)) {
      if (!judge.letters().contains(name)) {
        complaints.add(
            new Complaint(
                line.place(),
                "There is no root called %s.".formatted(name),
                written,
                "the roots are " + String.join(", ", judge.roots())));
        return true;
      }
    }
    return false;
  }

  private static List<Formula.Relation> relations(Formula formula) {
    List<Formula.Relation> relations = new ArrayList<>();
    if (formula instanceof Formula.Relation relation) {
      relations.add(relation);
    } else if (formula instanceof Formula.Listing listing) {
      listing.items().forEach(item -> relations.addAll(relations(item)));
    }
    return relations;
  }

  private void judged(Formula.Relation relation, PlanLine line, String written) {
    boolean different =
        relation.comparisons().size() == 1
            && relation.comparisons().get(0) == Formula.Comparison.NOT_EQUAL;
    boolean equal = relation.comparisons().stream().allMatch(Formula.Comparison.EQUAL::equals);
    Verdict verdict =
        equal || different
            ? judge.equal(relation)
            : new Verdict.Undecided("only = and ≠ can be confirmed");
    if (verdict instanceof Verdict.Undecided undecided) {
      complaints.add(
          new Complaint(
              line.place(),
              "This cannot be confirmed: %s.".formatted(undecided.why()),
              written,
              "write it after think: in place of write:, and it is marked as an argument"));
    } else if (verdict.isConfirmed() == different) {
      complaints.add(
          new Complaint(
              line.place(),
              "This formula no longer follows.",
              written,
              sidesInstead(relation, different)));
    }
  }

  private static String sidesInstead(Formula.Relation relation, boolean different) {
    String left = UnicodeWriter.write(relation.sides().get(0));
    String right = UnicodeWriter.write(relation.sides().get(relation.sides().size() - 1));
    return different
        ? "%s and %s are the same".formatted(left, right)
        : "%s and %s are not the same".formatted(left, right);
  }

  private static Complaint unreadable(Refusal refusal, int place, String typed) {
    return new Complaint(
        place,
        refusal.text(),
        typed,
        refusal.mend().isEmpty()
            ? refusal.expected().isEmpty() ? "" : "expected " + refusal.expected()
            : "perhaps: " + refusal.mend());
  }
}
