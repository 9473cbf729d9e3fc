package rootwright.working.review.given;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.polynomial.MultivariatePolynomial;
import rootwright.working.review.LineFindings;
import rootwright.working.review.LineVerdict;
import rootwright.working.review.SlipMatch;
import rootwright.working.review.Together;

/** Says of an equation whether it follows, and of a wrong one where it comes from. */
final class Judge {

  private final Ground ground;
  private final Truths truths;
  private final Wrong wrong;
  private final Notebook notebook;

  Judge(Ground ground, Truths truths, Wrong wrong, Notebook notebook) {
    this.ground = ground;
    this.truths = truths;
    this.wrong = wrong;
    this.notebook = notebook;
  }

  /**
   * Judges an equation of which it is known whether it is true.
   *
   * @param start the left side of the chain that it stands in
   * @param chainTrue whether the chain was true so far
   */
  void equation(
      Formula start,
      Formula shown,
      MultivariatePolynomial zero,
      Truths.Truth truth,
      boolean chainTrue,
      LineFindings findings) {
    List<Formula> sides = ((Formula.Relation) shown).sides();
    switch (truth) {
      case ALWAYS, WHERE_ALLOWED, AT_ROOTS -> {
        Optional<String> step =
            notebook
                .steps()
                .to(zero)
                .or(() -> rootStep(zero, truth))
                .or(() -> cases(zero))
                .or(() -> left(zero))
                .or(() -> notebook.steps().onlyReal(zero))
                .or(
                    () ->
                        isBare(sides.get(1)) ? Optional.empty() : notebook.steps().together(zero));
        if (!chainTrue && step.isPresent()) {
          findings.add(shown, LineVerdict.FOLLOWS_FROM_WRONG, step.get() + ", after what is wrong");
        } else if (step.isPresent()) {
          findings.add(shown, LineVerdict.FOLLOWS, step.get());
        } else if (truth == Truths.Truth.WHERE_ALLOWED) {
          findings.add(
              shown,
              LineVerdict.UNEXPLAINED,
              "true of what the statement allows; nothing above says why the rest is left out");
        } else {
          findings.add(
              shown, LineVerdict.UNEXPLAINED, "no single step from what stands above leads to it");
        }
      }
      case UNDECIDED ->
          findings.add(shown, LineVerdict.UNDECIDED, "both checks together cannot decide it");
      default -> {
        Optional<String> step = fromWrong(zero).or(() -> replaced(shown));
        if (step.isPresent()) {
          findings.add(shown, LineVerdict.FOLLOWS_FROM_WRONG, step.get());
        } else {
          notebook.wrong(start, sides.get(1), findings.number());
          findings.wrong(shown, wrong.truth(sides.get(0), sides.get(1)), slips(start, sides));
        }
      }
    }
  }

  /** A number, a letter or such with a sign shows nothing of how it was found. */
  private static boolean isBare(Formula side) {
    return side.parts().isEmpty()
        || (side instanceof Formula.Negative negative && isBare(negative.of()))
        || (side instanceof Formula.Quotient quotient
            && isBare(quotient.over())
            && isBare(quotient.under()));
  }

  private List<SlipMatch> slips(Formula start, List<Formula> sides) {
    List<SlipMatch> found = new ArrayList<>();
    if (start.equals(ground.find()) || sides.get(0).equals(ground.find())) {
      found.addAll(wrong.ofAnswer(List.of(sides.get(1))));
    }
    found.addAll(wrong.ofPolynomial(sides.get(0).minus(sides.get(1))));
    for (SlipMatch slip : wrong.ofFormula(start, sides.get(1))) {
      if (found.stream().noneMatch(other -> other.name().equals(slip.name()))) {
        found.add(slip);
      }
    }
    return found;
  }

  /** P(x) = 0 is what x being a root means. */
  private Optional<String> rootStep(MultivariatePolynomial zero, Truths.Truth truth) {
    return truth == Truths.Truth.AT_ROOTS
        ? notebook.steps().to(zero).or(() -> Optional.of("true of the roots x of the polynomial"))
        : Optional.empty();
  }

  /** Alternatives each of which was found in a case of its own. */
  private Optional<String> cases(MultivariatePolynomial zero) {
    return notebook.casesDone().stream().anyMatch(zero::equals)
        ? Optional.of("the cases taken together")
        : Optional.empty();
  }

  /** What is left when the cases that were looked at are thrown out. */
  private Optional<String> left(MultivariatePolynomial zero) {
    MultivariatePolynomial product = zero;
    for (MultivariatePolynomial out : notebook.thrownOut()) {
      product = product.times(out);
    }
    return notebook.thrownOut().isEmpty()
        ? Optional.empty()
        : notebook
            .steps()
            .to(product)
            .map(step -> "what is left when the other case is thrown out");
  }

  /** The step if what is wrong above leads to this. */
  Optional<String> fromWrong(MultivariatePolynomial zero) {
    List<Known> wrongOnes = notebook.facts().stream().filter(fact -> !fact.sound()).toList();
    List<MultivariatePolynomial> equations = new ArrayList<>(ground.names().signs());
    wrongOnes.forEach(fact -> equations.add(fact.zero()));
    if (!wrongOnes.isEmpty() && Together.leadTo(equations, zero, ground.names().size())) {
      return Optional.of("from " + wrongOnes.get(0).source());
    }
    for (Known fact : notebook.facts()) {
      if (!fact.sound()) {
        Optional<String> found = notebook.steps().fromPair(zero, fact);
        if (found.isPresent()) {
          return found;
        }
      }
    }
    return Optional.empty();
  }

  /** Whether the line becomes true if a wrong value gives way to what it was found for. */
  private Optional<String> replaced(Formula shown) {
    for (Notebook.WrongEquation equation : notebook.wrong()) {
      boolean holds =
          PutBack.everyWay(shown, equation.right(), equation.left()).stream()
              .map(back -> ((Formula.Relation) back).sides())
              .anyMatch(sides -> truths.isTrue(sides.get(0), sides.get(1)));
      if (holds) {
        return Optional.of("line " + equation.line() + " put in");
      }
    }
    return Optional.empty();
  }
}
