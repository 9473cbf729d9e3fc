package rootwright.working.review.given;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaNames;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.algebra.polynomial.RationalFunction;
import rootwright.working.review.LineFinding;
import rootwright.working.review.LineFindings;
import rootwright.working.review.LineText;
import rootwright.working.review.LineVerdict;
import rootwright.working.review.Review;
import rootwright.working.solve.Solution;
import rootwright.working.solve.TwoChecks;

/**
 * Goes through somebody's working of a problem with open letters, conditions, given values or two
 * polynomials.
 *
 * <p>A line is true if it holds at every solution of what is given; "k = 26" is wrong where −34 is
 * another solution, since it loses that.
 */
public final class GivenReviewer {

  private static final Set<String> DISCRIMINANTS = Set.of("D", "Δ", "disc");

  private final Ground ground;
  private final Truths truths;
  private final Wrong wrong;
  private final Inequalities inequalities;
  private final Notebook notebook;
  private final Judge judge;
  private final Choices choices;
  private final Arrival arrival;
  private Optional<Formula> first = Optional.empty();
  private Optional<Formula> last = Optional.empty();
  private boolean chainTrue = true;

  private GivenReviewer(Ground ground, TwoChecks checks) {
    this.ground = ground;
    this.truths = new Truths(ground, checks);
    this.wrong = new Wrong(ground, truths);
    this.inequalities = new Inequalities(ground, truths);
    this.arrival = new Arrival(ground, wrong);
    this.notebook = new Notebook(ground, truths);
    this.judge = new Judge(ground, truths, wrong, notebook);
    this.choices = new Choices(ground, truths, notebook);
  }

  /**
   * Judges every line that is not blank; empty if the problem is of a kind or size whose lines are
   * not judged.
   *
   * @param solution the problem, worked by us
   * @param lines as they were written
   * @throws rootwright.working.solve.CheckFailedException if the two checks contradict each other
   */
  public static Optional<Review> of(Solution solution, List<String> lines, TwoChecks checks) {
    return GroundReader.of(solution).map(ground -> new GivenReviewer(ground, checks).all(lines));
  }

  private Review all(List<String> lines) {
    List<LineFinding> findings = new ArrayList<>();
    for (int k = 0; k < lines.size(); k++) {
      if (!lines.get(k).isBlank()) {
        findings.add(line(k + 1, lines.get(k)));
      }
    }
    return new Review(ground.solution().given(), arrival.judged(findings), arrival.end());
  }

  private LineFinding line(int number, String text) {
    LineFindings findings = new LineFindings(number, text);
    if (text.length() > LineText.LONGEST) {
      findings.add(LineVerdict.UNDECIDED, "longer than %d characters".formatted(LineText.LONGEST));
      return findings.finding();
    }
    List<Said> all = SpokenReader.read(text, last);
    boolean inCase = truths.supposed().isPresent();
    for (int k = 0; k < all.size(); k++) {
      said(all.get(k), k + 1 < all.size(), findings);
    }
    if (!inCase && all.size() > 1) {
      truths.suppose(Optional.empty());
    }
    return findings.finding();
  }

  private void said(Said said, boolean more, LineFindings findings) {
    if (said instanceof Said.Chain chain) {
      chain(chain, more, findings);
    } else if (said instanceof Said.OneOf one) {
      oneOf(one.alternatives(), findings);
    } else if (said instanceof Said.Case supposed) {
      suppose(supposed.supposed(), findings);
    } else if (said instanceof Said.ThrownOut out) {
      throwOut(out.supposed(), findings);
    } else if (said instanceof Said.RootsCalled called) {
      call(called.roots(), findings);
    } else if (said instanceof Said.Alone alone) {
      alone(alone.values(), findings);
    } else if (said instanceof Said.Nothing) {
      arrival.nothing(findings);
    } else if (said instanceof Said.Unread unread) {
      last = Optional.empty();
      findings.add(
          LineVerdict.UNDECIDED,
          unread.refusal().map(refusal -> refusal.text()).orElse("it begins with = after nothing"));
    } else {
      findings.add(LineVerdict.REMARK, "no equation");
    }
  }

  private void alone(List<Formula> values, LineFindings findings) {
    boolean expression =
        values.size() == 1
            && ground.writing().of(values.get(0)).isPresent()
            && !FormulaNames.in(values.get(0)).isEmpty()
            && !wrong.isAnswer(ground.solution().answer(), values)
            && wrong.ofAnswer(values).isEmpty();
    if (expression) {
      first = Optional.of(values.get(0));
      last = first;
      chainTrue = true;
      findings.add(LineVerdict.REMARK, "an expression, and nothing said of it");
    } else if (ground.find() instanceof Formula.Name name) {
      oneOf(
          values.stream().map(value -> (Formula.Relation) Formula.equation(name, value)).toList(),
          findings);
    } else if (values.size() == 1 && ground.writing().of(ground.find()).isPresent()) {
      equality(List.of(ground.find(), values.get(0)), false, false, findings);
    } else {
      arrival.values(values, findings);
    }
  }

  private void suppose(Formula.Relation supposed, LineFindings findings) {
    Optional<MultivariatePolynomial> zero = zero(supposed.sides().get(0), supposed.sides().get(1));
    truths.suppose(zero);
    findings.add(supposed, LineVerdict.FOLLOWS, "a case to look at");
  }

  private void throwOut(Formula.Relation supposed, LineFindings findings) {
    Optional<MultivariatePolynomial> zero = zero(supposed.sides().get(0), supposed.sides().get(1));
    List<MultivariatePolynomial> with = truths.equations(true);
    zero.ifPresent(with::add);
    if (zero.isPresent() && truths.isPossible(with)) {
      findings.wrong(supposed, "this one is allowed by the statement", List.of());
    } else {
      zero.ifPresent(notebook::throwOut);
      findings.add(supposed, LineVerdict.FOLLOWS, "the statement does not allow it");
    }
  }

  /** Names for all roots at once: equations between the names of the statement and new letters. */
  private void call(List<Formula> called, LineFindings findings) {
    List<String> roots =
        ground.polynomials().isEmpty() ? List.of() : ground.polynomials().get(0).roots();
    if (called.size() != roots.size()) {
      findings.add(LineVerdict.UNDECIDED, "as many names as there are roots are expected");
      return;
    }
    called.forEach(
        formula -> FormulaNames.in(formula).forEach(name -> ground.names().number(name)));
    List<MultivariatePolynomial> zeros = new ArrayList<>();
    for (int k = 0; k < called.size(); k++) {
      zero(Formula.name(roots.get(k)), called.get(k))
          .filter(zero -> !zero.isZero())
          .ifPresent(zeros::add);
    }
    List<MultivariatePolynomial> equations = truths.equations(true);
    equations.addAll(zeros);
    Formula shown = new Formula.Listing(called);
    if (!truths.isPossible(equations)) {
      findings.wrong(shown, "the roots cannot be of this form", List.of());
      return;
    }
    zeros.forEach(truths::choose);
    zeros.forEach(zero -> notebook.remember(zero, findings.number(), true));
    findings.add(shown, LineVerdict.FOLLOWS, "names for the roots");
  }

  private void chain(Said.Chain chain, boolean more, LineFindings findings) {
    List<Formula.Comparison> signs = chain.relation().comparisons();
    List<Formula> sides = chain.relation().sides();
    if (signs.stream().allMatch(sign -> sign == Formula.Comparison.EQUAL)) {
      equality(sides, chain.continued(), more, findings);
      return;
    }
    sides.forEach(this::name);
    for (int k = 1; k < sides.size(); k++) {
      if (signs.get(k - 1) == Formula.Comparison.EQUAL) {
        equality(sides.subList(k - 1, k + 1), k > 1, false, findings);
      }
    }
    truths.supposed().ifPresent(notebook::throwOut);
    inequalities.judge(List.of(chain.relation()), findings);
    if (inequalities.isAnswer(List.of(chain.relation()))) {
      arrival.arrives();
    }
  }

  private void equality(
      List<Formula> sides, boolean continued, boolean more, LineFindings findings) {
    if (!continued) {
      first = Optional.of(sides.get(0));
      chainTrue = true;
    }
    boolean named = !continued && name(sides.get(0), sides.get(1), findings);
    for (int k = 1; k < sides.size(); k++) {
      Formula left = sides.get(k - 1);
      Formula right = sides.get(k);
      if (!(named && k == 1)) {
        pair(left, right, sides.size() == 2 && more, findings);
      }
      Formula start = first.orElse(left);
      if (!start.equals(left)) {
        zero(start, right).ifPresent(zero -> notebook.remember(zero, findings.number(), chainTrue));
      }
      if (!chainTrue) {
        notebook.wrong(start, right, findings.number());
      }
      arrival.chosen(start, right);
      arrival.equality(start, right, chainTrue, findings.number());
      if (!start.equals(left)) {
        arrival.equality(left, right, chainTrue, findings.number());
      }
    }
    last = Optional.of(sides.get(sides.size() - 1));
  }

  /** "D" is the discriminant unless it is a letter of the problem. */
  private void name(Formula left) {
    boolean few = ground.polynomials().stream().anyMatch(p -> p.degree() == 2 || p.degree() == 3);
    FormulaNames.in(left).stream()
        .filter(name -> few && DISCRIMINANTS.contains(name) && !ground.names().isKnown(name))
        .forEach(
            name ->
                ground
                    .writing()
                    .of(new Formula.Application("discriminant", List.of()))
                    .ifPresent(value -> ground.names().define(name, value)));
  }

  /** Whether the first equation of a line gives a new letter a meaning. */
  private boolean name(Formula left, Formula right, LineFindings findings) {
    name(left);
    boolean again =
        left instanceof Formula.Name local
            && DISCRIMINANTS.contains(local.spelling())
            && FormulaNames.in(right).isEmpty();
    if (left instanceof Formula.Name letter
        && (again || !ground.names().isKnown(letter.spelling()))
        && !(again && truths.isTrue(left, right))) {
      Optional<RationalFunction> meaning = ground.writing().of(right);
      meaning.ifPresent(value -> ground.names().define(letter.spelling(), value));
      if (meaning.isPresent()) {
        findings.add(
            Formula.equation(left, right),
            LineVerdict.FOLLOWS,
            "a name for " + UnicodeWriter.write(right));
        return true;
      }
    }
    return false;
  }

  private void pair(Formula left, Formula right, boolean leads, LineFindings findings) {
    Formula shown = Formula.equation(left, right);
    Optional<MultivariatePolynomial> zero = zero(left, right);
    if (zero.isEmpty()) {
      findings.add(shown, LineVerdict.UNDECIDED, unknown(left, right));
      chainTrue = false;
      return;
    }
    Truths.Truth truth = truths.of(shown, zero.get());
    if (truth == Truths.Truth.REFUTED
        && choices.isChoice(left, right, zero.get(), leads, findings)) {
      return;
    }
    judge.equation(first.orElse(left), shown, zero.get(), truth, chainTrue, findings);
    if (truth == Truths.Truth.REFUTED) {
      chainTrue = false;
    }
    notebook.remember(zero.get(), findings.number(), truth != Truths.Truth.REFUTED);
  }

  private void oneOf(List<Formula.Relation> alternatives, LineFindings findings) {
    boolean equations =
        alternatives.stream()
            .allMatch(
                a -> a.sides().size() == 2 && a.comparisons().get(0) == Formula.Comparison.EQUAL);
    Formula shown =
        alternatives.size() == 1
            ? alternatives.get(0)
            : new Formula.Listing(List.copyOf(alternatives));
    MultivariatePolynomial product = MultivariatePolynomial.ONE;
    for (Formula.Relation alternative : alternatives) {
      Optional<MultivariatePolynomial> zero =
          equations
              ? zero(alternative.sides().get(0), alternative.sides().get(1))
              : Optional.empty();
      if (zero.isEmpty()) {
        inequalities.judge(alternatives, findings);
        if (inequalities.isAnswer(alternatives)) {
          arrival.arrives();
        }
        return;
      }
      product = product.times(zero.get());
    }
    Formula left = alternatives.get(0).sides().get(0);
    List<Formula> values = alternatives.stream().map(a -> a.sides().get(1)).toList();
    if (left.equals(ground.find())) {
      truths.suppose(Optional.empty());
    }
    Truths.Truth truth = truths.of(shown, product);
    if (truth == Truths.Truth.REFUTED && choices.isFreeUnknown(left)) {
      findings.add(
          shown, LineVerdict.REMARK, "values of %s to look at".formatted(ground.unknown()));
      return;
    } else if (truth == Truths.Truth.REFUTED) {
      Optional<String> step = judge.fromWrong(product);
      if (step.isPresent()) {
        findings.add(shown, LineVerdict.FOLLOWS_FROM_WRONG, step.get());
      } else {
        boolean asked = left.equals(ground.find());
        findings.wrong(
            shown,
            wrong.truth(left, values.size() == 1 ? values.get(0) : new Formula.Listing(values)),
            asked ? wrong.ofAnswer(values) : List.of());
      }
    } else {
      Formula equation = Formula.equation(left, values.get(0));
      LineFindings one = new LineFindings(findings.number(), "");
      judge.equation(left, equation, product, truth, true, one);
      LineFinding found = one.finding();
      findings.add(shown, found.verdict(), found.reason());
    }
    notebook.remember(product, findings.number(), truth != Truths.Truth.REFUTED);
    if (left.equals(ground.find())) {
      arrival.values(values, truth != Truths.Truth.REFUTED, findings.number());
    }
    last = Optional.empty();
  }

  private Optional<MultivariatePolynomial> zero(Formula left, Formula right) {
    return ground.writing().difference(left, right);
  }

  private String unknown(Formula left, Formula right) {
    List<String> names = new ArrayList<>(FormulaNames.in(left));
    names.addAll(FormulaNames.in(right));
    return names.stream()
        .filter(name -> !ground.names().isKnown(name))
        .findFirst()
        .map("nothing above says what %s is"::formatted)
        .orElse("it is no equation between functions of the letters and roots");
  }
}
