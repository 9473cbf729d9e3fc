package rootwright.working.letters;

import java.util.ArrayList;
import java.util.List;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.working.step.NumberDomain;

/** A problem with letters as a sheet would print it. */
final class LetterStatement {

  private LetterStatement() {}

  /** What the names mean, what is given, what to find. */
  static String of(LetteredProblem problem) {
    LetteredPolynomial polynomial = problem.polynomial();
    String equation =
        UnicodeWriter.write(Formula.equation(polynomial.formula(), Formula.number(0)));
    List<String> names =
        problem.roots().stream().map(name -> UnicodeWriter.write(Formula.name(name))).toList();
    String roots =
        names.size() == 1
            ? "Let %s be the root of %s".formatted(names.get(0), equation)
            : "Let %s be the roots of %s, complex roots counted with multiplicity"
                .formatted(String.join(", ", names), equation);
    List<String> where = new ArrayList<>();
    for (NumberDomain domain : NumberDomain.values()) {
      List<String> of =
          polynomial.letters().stream()
              .filter(letter -> problem.domain(letter).orElse(NumberDomain.REAL) == domain)
              .toList();
      if (of.size() == 1) {
        where.add("%s is %s".formatted(of.get(0), LetterDomainWords.one(domain)));
      } else if (of.size() > 1) {
        where.add("%s are %s".formatted(joined(of), domain.words()));
      }
    }
    if (!polynomial.lead().isConstant()
        && problem.conditions(Condition.RealCount.class).isEmpty()) {
      where.add(
          UnicodeWriter.write(InLetters.formula(polynomial.lead(), polynomial.letters()))
              + " is not 0");
    }
    return "%s, where %s. %s".formatted(roots, joined(where), wanted(problem));
  }

  private static String wanted(LetteredProblem problem) {
    List<String> given =
        problem.conditions().stream()
            .filter(condition -> !(condition instanceof Condition.LetterIn))
            .map(condition -> clause(condition, problem))
            .toList();
    String find = UnicodeWriter.write(problem.ask().shown());
    if (problem.ask() instanceof LetterAsk.Letters letters) {
      return letters.wanted().size() == 1
          ? "Find all values of %s for which %s.".formatted(find, joined(given))
          : "Find all values of %s for which %s."
              .formatted(String.join(", ", letters.wanted()), joined(given));
    } else if (problem.ask() instanceof LetterAsk.NumberOf number) {
      return "Find the number of values of %s for which %s."
          .formatted(number.letter(), joined(given));
    } else if (problem.ask() instanceof LetterAsk.Relation) {
      return "Find the relation between the letters that holds exactly when %s."
          .formatted(joined(given));
    } else if (problem.ask() instanceof LetterAsk.Extreme extreme) {
      return "Find the %s value of %s%s."
          .formatted(
              extreme.word(),
              UnicodeWriter.write(extreme.expression()),
              given.isEmpty() ? "" : " given that " + joined(given));
    }
    return given.isEmpty()
        ? "Express %s in terms of %s.".formatted(find, joined(problem.polynomial().letters()))
        : "Find all possible values of %s given that %s.".formatted(find, joined(given));
  }

  /** A condition that exchanging two roots changes is meant for some naming of them. */
  private static String clause(Condition condition, LetteredProblem problem) {
    boolean named =
        condition instanceof Condition.Zeros zeros
            && zeros.equations().size() == 1
            && zeros.words().equals(UnicodeWriter.write(zeros.equations().get(0)))
            && zeros.zeros().stream().anyMatch(zero -> changes(zero, problem));
    return named ? condition.words() + " for some naming of the roots" : condition.words();
  }

  private static boolean changes(Formula zero, LetteredProblem problem) {
    return FunctionAsked.valueOf(zero, problem.polynomial(), problem.roots()).isEmpty();
  }

  static String joined(List<String> clauses) {
    return clauses.size() < 2
        ? String.join("", clauses)
        : String.join(", ", clauses.subList(0, clauses.size() - 1))
            + " and "
            + clauses.get(clauses.size() - 1);
  }
}
