package rootwright.working.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaNames;
import rootwright.algebra.notation.FormulaReader;
import rootwright.algebra.notation.UnreadableException;

/** Reads numbers with "or" or ± between them. */
final class ValueAlternatives {

  private static final Pattern OR = Pattern.compile("\\s+or\\s+|\\s*∨\\s*|\\s*\\\\lor\\s*");

  private ValueAlternatives() {}

  /** The numbers and what they are values of; empty if the text is of another kind. */
  static Optional<LinePiece.Alternatives> read(String text) {
    List<Formula> values = new ArrayList<>();
    Optional<Formula> left = Optional.empty();
    for (String part : OR.split(text)) {
      Optional<Formula> read = formula(part);
      if (read.isEmpty()) {
        return Optional.empty();
      }
      Formula value = read.get();
      if (value instanceof Formula.Relation relation) {
        boolean other = left.isPresent() && !left.get().equals(relation.sides().get(0));
        if (relation.sides().size() != 2
            || relation.comparisons().get(0) != Formula.Comparison.EQUAL
            || other) {
          return Optional.empty();
        }
        left = Optional.of(relation.sides().get(0));
        value = relation.sides().get(1);
      }
      if (!isNumber(value)) {
        return Optional.empty();
      }
      values.addAll(signs(value));
    }
    return values.size() > 1
        ? Optional.of(new LinePiece.Alternatives(left, values))
        : Optional.empty();
  }

  private static boolean isNumber(Formula formula) {
    return FormulaNames.in(formula).isEmpty()
        && !formula.contains(
            part ->
                part instanceof Formula.Family
                    || part instanceof Formula.Aggregate
                    || part instanceof Formula.Listing
                    || part instanceof Formula.Words);
  }

  private static List<Formula> signs(Formula value) {
    boolean two = value.contains(part -> part instanceof Formula.PlusMinus);
    return two ? List.of(withSign(value, true), withSign(value, false)) : List.of(value);
  }

  private static Formula withSign(Formula value, boolean plus) {
    return value.rewrite(
        part ->
            part instanceof Formula.PlusMinus both
                ? plus ? both.before().plus(both.after()) : both.before().minus(both.after())
                : part);
  }

  private static Optional<Formula> formula(String text) {
    try {
      return Optional.of(FormulaReader.formula(text.strip()));
    } catch (UnreadableException other) {
      return Optional.empty();
    }
  }
}
