package rootwright.working.review;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaNames;
import rootwright.algebra.notation.FormulaReader;
import rootwright.algebra.notation.PolynomialReader;
import rootwright.algebra.notation.Refusal;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.working.ask.AskLimits;
import rootwright.working.problem.Problem;

/** Reads what a line says about a problem. */
final class LineReader {

  private final Problem problem;

  LineReader(Problem problem) {
    this.problem = problem;
  }

  /**
   * What one piece of a line says.
   *
   * @param piece without the words round it
   * @param before the last side of the line above, which a line beginning with = goes on from
   * @param letters those that lines above have given a meaning
   */
  LinePiece read(String piece, Optional<Formula> before, Set<String> letters) {
    boolean continued = piece.startsWith("=");
    String text = continued ? piece.substring(1).strip() : piece;
    if (continued && before.isEmpty()) {
      return new LinePiece.Unread(
          new Refusal(
              "nothing-before",
              "The line begins with =, but nothing that could be read stands above it.",
              piece,
              0,
              "a left side",
              ""));
    }
    Optional<LinePiece.Alternatives> values =
        continued ? Optional.empty() : ValueAlternatives.read(text);
    if (values.isPresent()) {
      return values.get();
    }
    try {
      Formula formula = DiscriminantWord.replaced(FormulaReader.formula(text), problem);
      List<Formula> sides = new ArrayList<>();
      if (continued) {
        sides.add(before.orElseThrow());
      }
      if (formula instanceof Formula.Relation relation) {
        if (relation.comparisons().stream().anyMatch(sign -> sign != Formula.Comparison.EQUAL)) {
          return ascending(relation);
        }
        sides.addAll(relation.sides());
      } else {
        sides.add(formula);
      }
      return meaning(text, sides, continued, letters);
    } catch (UnreadableException unreadable) {
      return LineText.hasEquation(piece)
          ? new LinePiece.Unread(unreadable.refusal())
          : new LinePiece.Remark();
    }
  }

  private LinePiece meaning(
      String text, List<Formula> sides, boolean continued, Set<String> letters)
      throws UnreadableException {
    Formula first = sides.get(0);
    if (sides.size() == 2 && first instanceof Formula.Name name && !continued) {
      String spelling = name.spelling();
      if (problem.roots().contains(spelling) && isNumber(sides.get(1))) {
        return new LinePiece.RootValue(spelling, sides.get(1));
      }
      if (isNew(spelling, letters)) {
        requireKnown(text, List.of(sides.get(1)), letters);
        return new LinePiece.Naming(spelling, sides.get(1));
      }
    }
    if (sides.size() == 2 && isGivenEquation(text)) {
      return new LinePiece.Restated(Formula.equation(sides.get(0), sides.get(1)));
    }
    requireKnown(text, sides, letters);
    for (Formula side : sides) {
      AskLimits.require(problem.asking(side), text);
    }
    if (sides.size() == 1) {
      return isWordOnly(first) ? new LinePiece.Remark() : new LinePiece.Alone(first);
    }
    return new LinePiece.Equality(sides, continued);
  }

  /** Numbers compared by one sign all along, the smaller first; words where there is more to it. */
  private static LinePiece ascending(Formula.Relation relation) {
    boolean numbers = relation.sides().stream().allMatch(LineReader::isNumber);
    List<Formula> sides = new ArrayList<>(relation.sides());
    if (numbers && relation.comparisons().stream().allMatch(s -> s == Formula.Comparison.LESS)) {
      return new LinePiece.Ascending(sides);
    } else if (numbers
        && relation.comparisons().stream().allMatch(s -> s == Formula.Comparison.GREATER)) {
      Collections.reverse(sides);
      return new LinePiece.Ascending(sides);
    }
    return new LinePiece.Remark();
  }

  private boolean isNew(String spelling, Set<String> letters) {
    return !problem.roots().contains(spelling)
        && !spelling.equals(problem.unknown())
        && !letters.contains(spelling);
  }

  private static boolean isNumber(Formula formula) {
    return FormulaNames.in(formula).isEmpty()
        && !formula.contains(
            part ->
                part instanceof Formula.Family
                    || part instanceof Formula.Aggregate
                    || part instanceof Formula.PlusMinus);
  }

  /** One letter alone is more often a word or a label than a formula. */
  private static boolean isWordOnly(Formula formula) {
    return formula instanceof Formula.Name || formula instanceof Formula.Words;
  }

  /** Whether this is the equation of the problem, possibly multiplied or turned round. */
  private boolean isGivenEquation(String text) {
    try {
      Polynomial read = PolynomialReader.read(text, problem.unknown()).polynomial();
      return !read.isZero()
          && read.degree() == problem.degree()
          && read.monic().equals(problem.polynomial().monic());
    } catch (UnreadableException other) {
      return false;
    }
  }

  private void requireKnown(String text, List<Formula> sides, Set<String> letters)
      throws UnreadableException {
    for (Formula side : sides) {
      for (String name : FormulaNames.in(side)) {
        if (isNew(name, letters)) {
          throw new UnreadableException(
              new Refusal(
                  "unknown-letter",
                  "Nothing above says what %s is.".formatted(name),
                  text,
                  text.codePointCount(0, Math.max(0, text.indexOf(name))),
                  "one of %s, or a line such as “%s = …” before"
                      .formatted(String.join(", ", problem.roots()), name),
                  ""));
        }
      }
    }
  }
}
