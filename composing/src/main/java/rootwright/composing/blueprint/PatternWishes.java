package rootwright.composing.blueprint;

import java.util.ArrayList;
import java.util.List;
import rootwright.composing.pattern.AnswerSort;
import rootwright.composing.pattern.Pattern;

/** What an order wishes and a pattern can never give. */
final class PatternWishes {

  private PatternWishes() {}

  /** One sentence for each such wish. */
  static List<String> contradictions(Pattern pattern, Blueprint blueprint) {
    List<String> found = new ArrayList<>();
    PolynomialWish usual = PolynomialWish.USUAL;
    PolynomialWish wish = blueprint.polynomial();
    if (wish.degree() != usual.degree() && !pattern.degrees().contains(wish.degree())) {
      found.add(
          pattern.degrees().isEmpty()
              ? "the family %s has no degree to choose, so it cannot be %d"
                  .formatted(pattern.name(), wish.degree())
              : "problems of the family %s have degree %s, not %d"
                  .formatted(pattern.name(), degrees(pattern), wish.degree()));
    }
    if (wish.roots() != usual.roots() || !wish.real().equals(usual.real())) {
      found.add(
          "the roots cannot be chosen for the family %s: they follow from what is asked"
              .formatted(pattern.name()));
    }
    if (wish.leastLead() > 1) {
      found.add(
          "the lead cannot be chosen for the family %s: it follows from what is asked"
              .formatted(pattern.name()));
    }
    answer(pattern, blueprint.answer(), found);
    return found;
  }

  private static void answer(Pattern pattern, AnswerWish wish, List<String> found) {
    boolean open = wish instanceof AnswerWish.Any || wish instanceof AnswerWish.Whole;
    if (!open && !pattern.answers().isNumber()) {
      found.add(
          "the answers of the family %s are %s, so none is as wished, “%s”"
              .formatted(pattern.name(), pattern.answers().words(), wish.text()));
    }
    if (pattern.answers() == AnswerSort.WHOLE
        && wish instanceof AnswerWish.Wanted wanted
        && !wanted.number().isInteger()) {
      found.add(
          "the answers of the family %s are whole numbers, so none is %s"
              .formatted(pattern.name(), wanted.number()));
    }
  }

  private static String degrees(Pattern pattern) {
    List<String> all =
        pattern.degrees().stream().sorted().map(degree -> Integer.toString(degree)).toList();
    int last = all.size() - 1;
    return last == 0
        ? all.get(0)
        : String.join(", ", all.subList(0, last)) + " or " + all.get(last);
  }
}
