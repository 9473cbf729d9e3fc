package rootwright.composing.blueprint;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;

/**
 * What working the problems is to be like.
 *
 * @param with names of routes that must go through
 * @param without names of routes that must not
 * @param shorter which routes must be shorter than which
 * @param slips the least number of different wrong answers that slips give; empty for as many as is
 *     usual for the kind of ask
 * @param traps names of slips each of which must give a wrong answer of its own
 * @param level the estimated level, 1 to 5, if that matters
 */
public record WorkingWish(
    Set<String> with,
    Set<String> without,
    List<ShorterRoute> shorter,
    OptionalInt slips,
    Set<String> traps,
    OptionalInt level) {

  /** Nothing in particular. */
  public static final WorkingWish USUAL =
      new WorkingWish(
          Set.of(), Set.of(), List.of(), OptionalInt.empty(), Set.of(), OptionalInt.empty());

  /** Keeps its own copies. */
  public WorkingWish {
    with = Set.copyOf(with);
    without = Set.copyOf(without);
    shorter = List.copyOf(shorter);
    traps = Set.copyOf(traps);
  }

  /** What cannot be together, one sentence each, in a settled order. */
  List<String> contradictions() {
    List<String> found = new ArrayList<>();
    for (String route : new TreeSet<>(with)) {
      if (without.contains(route)) {
        found.add("the route %s is both required and forbidden".formatted(route));
      }
    }
    for (ShorterRoute wish : shorter) {
      found.addAll(wish.contradictions());
      for (String route : List.of(wish.route(), wish.than())) {
        if (without.contains(route)) {
          found.add(
              "the route %s is forbidden and must go through to be compared".formatted(route));
        }
      }
    }
    slips.ifPresent(
        count -> {
          if (count < 0 || count > 20) {
            found.add(
                "the number of wrong answers from slips must be from 0 to 20: %d".formatted(count));
          }
        });
    level.ifPresent(
        wanted -> {
          if (wanted < 1 || wanted > 5) {
            found.add("levels go from 1 to 5: " + wanted);
          }
        });
    return found;
  }

  /** The same wish with routes that must go through. */
  public WorkingWish withRoutes(Set<String> required) {
    return new WorkingWish(required, without, shorter, slips, traps, level);
  }

  /** The same wish with routes that must not go through. */
  public WorkingWish withoutRoutes(Set<String> forbidden) {
    return new WorkingWish(with, forbidden, shorter, slips, traps, level);
  }

  /** The same wish with comparisons of routes. */
  public WorkingWish withShorter(List<ShorterRoute> comparisons) {
    return new WorkingWish(with, without, comparisons, slips, traps, level);
  }

  /** The same wish with a least number of different wrong answers. */
  public WorkingWish withSlips(OptionalInt least) {
    return new WorkingWish(with, without, shorter, least, traps, level);
  }

  /** The same wish with slips that must show. */
  public WorkingWish withTraps(Set<String> names) {
    return new WorkingWish(with, without, shorter, slips, names, level);
  }

  /** The same wish with a level. */
  public WorkingWish withLevel(OptionalInt wanted) {
    return new WorkingWish(with, without, shorter, slips, traps, wanted);
  }
}
