package rootwright.working.letters;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaExpansion;
import rootwright.algebra.notation.UnicodeWriter;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.working.step.RootPlace;

/**
 * Comparisons of single roots with numbers, collected: {@code r > 0, s > 0} for a quadratic says
 * that both roots are positive, {@code r < 2 < s} that 2 lies between them, {@code r > 2} alone
 * that some root is greater than 2.
 */
final class RootComparisons {

  private final List<String> roots;
  private final Map<String, RootPlace> places = new LinkedHashMap<>();
  private final List<String> words = new ArrayList<>();

  RootComparisons(List<String> roots) {
    this.roots = roots;
  }

  /** Takes a relation over if it is one of roots and rational numbers with “less” or “greater”. */
  boolean take(Formula formula) {
    if (!(formula instanceof Formula.Relation relation)) {
      return false;
    }
    Map<String, RootPlace> found = new LinkedHashMap<>(places);
    for (int k = 0; k < relation.comparisons().size(); k++) {
      boolean less = relation.comparisons().get(k) == Formula.Comparison.LESS;
      if (!less && relation.comparisons().get(k) != Formula.Comparison.GREATER) {
        return false;
      }
      Formula low = relation.sides().get(less ? k : k + 1);
      Formula high = relation.sides().get(less ? k + 1 : k);
      Optional<Rational> below = number(low);
      Optional<Rational> above = number(high);
      boolean narrowed =
          (below.isPresent() && isRoot(high))
              ? narrow(found, high, below, Optional.empty())
              : (above.isPresent() && isRoot(low) && narrow(found, low, Optional.empty(), above));
      if (!narrowed) {
        return false;
      }
    }
    places.putAll(found);
    words.add(UnicodeWriter.write(relation));
    return true;
  }

  private static boolean narrow(
      Map<String, RootPlace> places,
      Formula root,
      Optional<Rational> low,
      Optional<Rational> high) {
    String name = ((Formula.Name) root).spelling();
    RootPlace before = places.getOrDefault(name, RootPlace.REAL);
    Optional<Rational> from = low.or(before::low);
    Optional<Rational> to = high.or(before::high);
    if (from.isPresent() && to.isPresent() && from.get().compareTo(to.get()) >= 0) {
      return false;
    }
    places.put(name, new RootPlace(from, to));
    return true;
  }

  private static Predicate<RootPlace> overlaps(RootPlace one) {
    return other -> !liesBelow(one, other) && !liesBelow(other, one);
  }

  private static boolean liesBelow(RootPlace one, RootPlace other) {
    return one.high().isPresent()
        && other.low().isPresent()
        && one.high().get().compareTo(other.low().get()) <= 0;
  }

  private boolean isRoot(Formula formula) {
    return formula instanceof Formula.Name name && roots.contains(name.spelling());
  }

  private static Optional<Rational> number(Formula formula) {
    try {
      return Optional.of(FormulaExpansion.polynomial(formula, "x"))
          .filter(value -> value.degree() < 1)
          .map(value -> value.coefficient(0));
    } catch (UnreadableException letters) {
      return Optional.empty();
    }
  }

  /**
   * What the comparisons say together; two roots in different places are meant to lie one in each.
   */
  List<Condition> conditions() {
    if (places.isEmpty()) {
      return List.of();
    }
    List<RootPlace> distinct = places.values().stream().distinct().toList();
    for (int k = 1; k < distinct.size(); k++) {
      if (distinct.subList(0, k).stream().anyMatch(overlaps(distinct.get(k)))) {
        throw new BeyondLettersException(
            "the places of the roots overlap, so it is not clear how many lie in each");
      }
    }
    List<RootsPlaced> placed = new ArrayList<>();
    for (RootPlace place : distinct) {
      long named = places.values().stream().filter(place::equals).count();
      boolean all = distinct.size() == 1 && named == roots.size();
      placed.add(
          all
              ? RootsPlaced.all(place)
              : places.size() == roots.size()
                  ? new RootsPlaced(place, RootsPlaced.Amount.EXACTLY, (int) named)
                  : new RootsPlaced(place, RootsPlaced.Amount.AT_LEAST, (int) named));
    }
    return List.of(new Condition.Placed(LetterStatement.joined(words), List.of(placed)));
  }
}
