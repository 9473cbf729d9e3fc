package rootwright.working.review;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.number.Rational;
import rootwright.working.ask.Asked;
import rootwright.working.ask.AskedReader;
import rootwright.working.check.exact.Valuation;
import rootwright.working.problem.Problem;
import rootwright.working.slip.Slip;
import rootwright.working.slip.Slips;

/** Says of a wrong equality what is true instead, and which wrong turning leads to it. */
public final class Diagnosis {

  private final Problem problem;

  /** Of lines about this problem. */
  public Diagnosis(Problem problem) {
    this.problem = problem;
  }

  /** What is true of the left side, as a sentence without its full stop. */
  String truth(Formula left, Formula right) {
    String name = UnicodeWriter.write(left);
    Valuation valuation = valuation(left);
    if (left instanceof Formula.Numeral) {
      return name + " is not " + UnicodeWriter.write(right);
    } else if (valuation instanceof Valuation.Determined determined) {
      Optional<Rational> written = number(right);
      String value = UnicodeWriter.write(Formula.number(determined.value()));
      String not =
          written
              .map(number -> ", not " + UnicodeWriter.write(Formula.number(number)))
              .orElse("; the other side is not");
      String factor = written.map(number -> factor(determined.value(), number)).orElse("");
      return name + " is " + value + not + factor;
    } else if (valuation instanceof Valuation.Several
        || valuation instanceof Valuation.InOneRoot
        || valuation instanceof Valuation.TooMany) {
      return "the two sides differ for at least one naming of the roots";
    }
    return "the two sides are not equal";
  }

  /** The slips that lead from one of these formulas to the wrong value, likeliest first. */
  public List<SlipMatch> slips(Set<Formula> asked, Formula wrong) {
    Optional<Rational> value = number(wrong);
    if (value.isEmpty()) {
      return List.of();
    }
    Set<Slip> found = new LinkedHashSet<>();
    for (Formula formula : asked) {
      Asked views = AskedReader.read(problem.asking(formula));
      Slips.ALL.stream()
          .filter(slip -> slip.on(views).contains(value.get()))
          .sorted((one, other) -> other.weight() - one.weight())
          .forEach(found::add);
    }
    List<SlipMatch> matches = new ArrayList<>();
    found.forEach(slip -> matches.add(new SlipMatch(slip.name(), slip.text())));
    return matches;
  }

  /**
   * The slips that lead to what follows for the ask of the problem from a wrong equality between
   * expressions in the roots: what is missing in the equality is missing in the ask, or too much.
   */
  List<SlipMatch> slipsOfIdentity(Formula left, Formula right) {
    Optional<Rational> ask = number(problem.ask());
    Optional<Rational> one = number(left);
    Optional<Rational> other = number(right);
    if (ask.isEmpty() || one.isEmpty() || other.isEmpty()) {
      return List.of();
    }
    Rational difference = one.get().minus(other.get());
    Set<SlipMatch> found = new LinkedHashSet<>();
    for (Rational wrong : List.of(ask.get().plus(difference), ask.get().minus(difference))) {
      found.addAll(slips(Set.of(problem.ask()), Formula.number(wrong)));
    }
    return List.copyOf(found);
  }

  /** How the two numbers differ, where that says something: by the sign, the lead, the degree. */
  private String factor(Rational right, Rational written) {
    if (right.isZero() || written.isZero()) {
      return "";
    }
    Rational ratio = written.over(right);
    Rational lead = problem.polynomial().lead();
    if (ratio.equals(Rational.MINUS_ONE)) {
      return ": the sign is turned";
    } else if (!lead.absolute().isOne() && ratio.equals(lead)) {
      return ": it was not divided by the leading coefficient " + lead;
    } else if (ratio.equals(Rational.of(problem.degree()))) {
      return ": it was counted once for every root";
    } else if (ratio.equals(Rational.of(2)) || ratio.equals(Rational.ONE.over(Rational.of(2)))) {
      return ": a factor 2 is too much or missing";
    }
    return "";
  }

  private Optional<Rational> number(Formula formula) {
    return valuation(formula) instanceof Valuation.Determined determined
        ? Optional.of(determined.value())
        : Optional.empty();
  }

  private Valuation valuation(Formula formula) {
    return Valuation.of(formula, problem.setting());
  }
}
