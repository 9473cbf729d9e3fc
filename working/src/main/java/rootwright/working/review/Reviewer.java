package rootwright.working.review;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.working.check.Verdict;
import rootwright.working.problem.Problem;
import rootwright.working.solve.Given;
import rootwright.working.solve.TwoChecks;
import rootwright.working.step.Claim;
import rootwright.working.step.Setting;

/**
 * Goes through somebody's working line by line.
 *
 * <p>Whether a line is true is decided by both checks, as for our own lines. Whether it follows is
 * a judgement: one step of algebra, of putting in, or of adding known equations must lead to it.
 */
public final class Reviewer {

  private final Problem problem;
  private final TwoChecks checks;
  private final Facts facts;
  private final Diagnosis diagnosis;
  private final Map<String, Formula> rootValues = new HashMap<>();
  private Setting setting;
  private Derivation derivation;
  private Optional<Formula> first = Optional.empty();
  private Optional<Formula> last = Optional.empty();
  private boolean chainTrue = true;
  private Review.End end = Review.End.OPEN;

  private Reviewer(Problem problem, TwoChecks checks) {
    this.problem = problem.asking(DiscriminantWord.replaced(problem.ask(), problem));
    this.checks = checks;
    this.facts = new Facts(problem);
    this.diagnosis = new Diagnosis(problem);
    this.setting = problem.setting();
    this.derivation = new Derivation(problem, setting);
  }

  /**
   * Judges every line that is not blank.
   *
   * @param problem about the roots of a polynomial of degree 1 or more
   * @param lines as they were written; a line beginning with = goes on from the one above
   * @throws rootwright.working.solve.CheckFailedException if the two checks contradict each other
   */
  public static Review of(Problem problem, List<String> lines, TwoChecks checks) {
    Reviewer reviewer = new Reviewer(problem, checks);
    LineReader reader = new LineReader(problem);
    List<LineFinding> findings = new ArrayList<>();
    for (int k = 0; k < lines.size(); k++) {
      if (!lines.get(k).isBlank()) {
        findings.add(reviewer.line(k + 1, lines.get(k), reader));
      }
    }
    return new Review(Given.of(problem), findings, reviewer.end);
  }

  private LineFinding line(int number, String text, LineReader reader) {
    LineFindings findings = new LineFindings(number, text);
    if (text.length() > LineText.LONGEST) {
      last = Optional.empty();
      findings.add(LineVerdict.UNDECIDED, "longer than %d characters".formatted(LineText.LONGEST));
      return findings.finding();
    }
    for (String part : LineText.parts(text)) {
      LineText.pieces(part).forEach(piece -> piece(piece, reader, findings));
    }
    return findings.finding();
  }

  private void piece(String piece, LineReader reader, LineFindings findings) {
    LinePiece read = reader.read(piece, last, setting.definitions().keySet());
    if (read instanceof LinePiece.Equality equality) {
      equality(equality.sides(), equality.continued(), findings);
    } else if (read instanceof LinePiece.Alone alone) {
      alone(alone.formula(), findings);
    } else if (read instanceof LinePiece.Restated restated) {
      findings.add(restated.equation(), LineVerdict.FOLLOWS, "the given equation");
    } else if (read instanceof LinePiece.Naming naming) {
      name(naming, findings);
    } else if (read instanceof LinePiece.Alternatives values) {
      alternatives(values, findings);
    } else if (read instanceof LinePiece.Ascending ascending) {
      ascending(ascending.sides(), findings);
    } else if (read instanceof LinePiece.RootValue value) {
      rootValue(value, findings);
    } else if (read instanceof LinePiece.Unread unread) {
      last = Optional.empty();
      findings.add(LineVerdict.UNDECIDED, unread.refusal().text());
    } else {
      findings.add(LineVerdict.REMARK, "no equation");
    }
  }

  /** Values of a root, each of which must be one, or all values of an expression. */
  private void alternatives(LinePiece.Alternatives piece, LineFindings findings) {
    Formula left = withRootValues(piece.left().orElse(problem.ask()));
    boolean asked = derivation.isSame(left, problem.ask());
    Formula shown =
        new Formula.Listing(
            piece.values().stream().map(value -> Formula.equation(left, value)).toList());
    Alternatives found = Alternatives.of(left, piece.values(), problem, setting, checks);
    switch (found) {
      case ROOTS -> findings.add(shown, LineVerdict.FOLLOWS, "roots of P: put in, they give 0");
      case ALL -> findings.add(shown, LineVerdict.UNEXPLAINED, "these are all values it can have");
      case NONE_SUCH -> findings.wrong(shown, "not all of these are values it can have", List.of());
      case MORE -> findings.wrong(shown, "there are other values as well", List.of());
      default ->
          findings.add(shown, LineVerdict.UNDECIDED, "both checks together cannot decide it");
    }
    if (asked) {
      end = found == Alternatives.ALL ? Review.End.ARRIVES : Review.End.ELSEWHERE;
    }
  }

  private void ascending(List<Formula> sides, LineFindings findings) {
    Formula shown =
        new Formula.Relation(sides, Collections.nCopies(sides.size() - 1, Formula.Comparison.LESS));
    Verdict verdict = checks.verdict(shown, new Claim.Ascending(sides));
    if (verdict.isConfirmed()) {
      findings.add(shown, LineVerdict.FOLLOWS, "arithmetic");
    } else if (verdict instanceof Verdict.Undecided undecided) {
      findings.add(shown, LineVerdict.UNDECIDED, undecided.why());
    } else {
      findings.wrong(shown, "the numbers are the other way round", List.of());
    }
  }

  private void alone(Formula formula, LineFindings findings) {
    Formula value = withRootValues(formula);
    if (derivation.isInRoots(value)) {
      findings.add(LineVerdict.REMARK, "an expression, and nothing said of it");
      first = Optional.of(value);
      last = first;
      chainTrue = true;
    } else {
      equality(List.of(problem.ask(), value), false, findings);
    }
  }

  private void name(LinePiece.Naming naming, LineFindings findings) {
    Formula meaning = withRootValues(naming.meaning());
    setting = setting.withDefinition(naming.letter(), meaning);
    derivation = new Derivation(problem, setting);
    findings.add(
        Formula.equation(Formula.name(naming.letter()), meaning),
        LineVerdict.FOLLOWS,
        "a name for " + UnicodeWriter.write(meaning));
  }

  /** A named root may be any root of P, but not one that another name stands for already. */
  private void rootValue(LinePiece.RootValue piece, LineFindings findings) {
    Formula shown = Formula.equation(Formula.name(piece.root()), piece.value());
    boolean root = isTrue(applied("P", piece.value()), Formula.number(0));
    boolean taken = rootValues.values().stream().anyMatch(other -> isTrue(other, piece.value()));
    boolean simple = !isTrue(applied("P'", piece.value()), Formula.number(0));
    if (!root) {
      findings.wrong(shown, "put into P it does not give 0", List.of());
    } else if (taken && simple) {
      findings.wrong(shown, "another name stands for this root, and it is a simple one", List.of());
    } else {
      rootValues.put(piece.root(), piece.value());
      findings.add(shown, LineVerdict.FOLLOWS, "a root of P: put in, it gives 0");
    }
  }

  private static Formula applied(String function, Formula at) {
    return new Formula.Application(function, List.of(at));
  }

  private void equality(List<Formula> read, boolean continued, LineFindings findings) {
    List<Formula> sides = read.stream().map(this::withRootValues).toList();
    if (!continued) {
      first = Optional.of(sides.get(0));
      chainTrue = true;
    }
    for (int k = 1; k < sides.size(); k++) {
      Formula left = sides.get(k - 1);
      Formula right = sides.get(k);
      LineVerdict verdict = pair(left, right, !chainTrue && (k > 1 || continued), findings);
      boolean true_ = verdict.isTrue();
      chainTrue &= true_;
      remember(left, right, findings.number(), true_);
      Formula start = first.orElse(left);
      if (!start.equals(left)) {
        remember(start, right, findings.number(), chainTrue);
      }
      arrive(left, right, true_);
      arrive(start, right, chainTrue);
    }
    last = Optional.of(sides.get(sides.size() - 1));
  }

  /**
   * Judges one equality.
   *
   * @param afterWrong whether the left side was reached by a wrong equality
   */
  private LineVerdict pair(Formula left, Formula right, boolean afterWrong, LineFindings findings) {
    Formula shown = Formula.equation(left, right);
    Verdict verdict = checks.verdict(shown, claim(left, right));
    if (verdict.isConfirmed()) {
      Optional<String> step =
          derivation.isNumber(left) && derivation.isNumber(right)
              ? Optional.of("arithmetic")
              : derivation.of(left, right, facts.sound());
      if (step.isPresent() && afterWrong) {
        return findings.add(
            shown, LineVerdict.FOLLOWS_FROM_WRONG, step.get() + ", after what is wrong");
      }
      return step.isPresent()
          ? findings.add(shown, LineVerdict.FOLLOWS, step.get())
          : findings.add(
              shown, LineVerdict.UNEXPLAINED, "no single step from what stands above leads to it");
    } else if (verdict instanceof Verdict.Undecided undecided) {
      return findings.add(shown, LineVerdict.UNDECIDED, undecided.why());
    }
    Optional<String> step = derivation.ofWrong(left, right, facts.asWritten());
    if (step.isPresent()) {
      return findings.add(shown, LineVerdict.FOLLOWS_FROM_WRONG, step.get());
    }
    Set<Formula> asked = new LinkedHashSet<>(List.of(left));
    first.ifPresent(asked::add);
    List<SlipMatch> slips = diagnosis.slips(asked, right);
    boolean identity = slips.isEmpty() && derivation.isInRoots(left) && derivation.isInRoots(right);
    return findings.wrong(
        shown,
        diagnosis.truth(left, right),
        identity ? diagnosis.slipsOfIdentity(left, right) : slips);
  }

  private Claim claim(Formula left, Formula right) {
    boolean free = derivation.hasUnknown(left) || derivation.hasUnknown(right);
    return Claim.equal(free ? setting.withFree(problem.unknown()) : setting, left, right);
  }

  private boolean isTrue(Formula left, Formula right) {
    return checks.verdict(Formula.equation(left, right), claim(left, right)).isConfirmed();
  }

  private void remember(Formula left, Formula right, int number, boolean sound) {
    String source = "line " + number;
    if (derivation.isInRoots(left)) {
      facts.add(new Fact(left, right, source, sound));
    } else if (derivation.isInRoots(right)) {
      facts.add(new Fact(right, left, source, sound));
    }
  }

  private void arrive(Formula left, Formula right, boolean true_) {
    boolean answers = derivation.isSame(left, problem.ask()) && !derivation.isInRoots(right);
    if (answers) {
      end = true_ ? Review.End.ARRIVES : Review.End.ELSEWHERE;
    }
  }

  /** Names of roots whose values were given stand for these, except under Σ and Π. */
  private Formula withRootValues(Formula formula) {
    if (formula instanceof Formula.Aggregate || rootValues.isEmpty()) {
      return formula;
    } else if (formula instanceof Formula.Name name) {
      return rootValues.getOrDefault(name.spelling(), formula);
    }
    return formula.withParts(formula.parts().stream().map(this::withRootValues).toList());
  }
}
