package rootwright.composing.blueprint;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import rootwright.algebra.notation.UnreadableException;
import rootwright.composing.family.AskFamily;
import rootwright.composing.family.Families;
import rootwright.composing.pattern.Pattern;
import rootwright.composing.pattern.Patterns;
import rootwright.working.Subjects;
import rootwright.working.kind.Kinds;

/** The asks of an order, in the order in which problems are composed for them. */
final class AskList {

  private AskList() {}

  /**
   * Reads the asks; those of a family in an order drawn from the seed, those of a surprise a
   * different family each time as far as they go. Of those drawn, the ones that cannot be as wished
   * are left out.
   *
   * @throws UnreadableException if the one ask given cannot be read
   * @throws ContradictoryBlueprintException if no ask can be as wished
   */
  static List<OrderedAsk> of(Blueprint blueprint, Kinds kinds, Subjects subjects)
      throws UnreadableException {
    if (blueprint.ask() instanceof AskWish.Given given) {
      return List.of(one(given.text(), blueprint, kinds, subjects));
    }
    List<OrderedAsk> possible = new ArrayList<>();
    List<String> reasons = new ArrayList<>();
    for (Entry entry : drawn(blueprint)) {
      try {
        List<String> contradictions = new ArrayList<>();
        OrderedAsk ask = entry.ask(blueprint, kinds, subjects, contradictions);
        if (contradictions.isEmpty()) {
          possible.add(ask);
        }
        reasons.addAll(contradictions);
      } catch (ContradictoryBlueprintException never) {
        reasons.addAll(never.contradictions());
      }
    }
    if (possible.isEmpty()) {
      throw new ContradictoryBlueprintException(
          reasons.isEmpty()
              ? List.of(
                  "there is no ask of this family for degree " + blueprint.polynomial().degree())
              : reasons.stream().distinct().toList());
    }
    return possible;
  }

  /** The one ask of an order, whatever it is about. */
  private static OrderedAsk one(String text, Blueprint blueprint, Kinds kinds, Subjects subjects)
      throws UnreadableException {
    try {
      CompiledAsk ask = CompiledAsk.of(text, blueprint.polynomial().degree(), kinds);
      List<String> contradictions = ask.contradictions(blueprint);
      if (!contradictions.isEmpty()) {
        throw new ContradictoryBlueprintException(contradictions);
      }
      return ask;
    } catch (UnreadableException notOfNumbersAlone) {
      Optional<StatementAsk> other = new GivenAsk(text, blueprint, subjects).ask();
      if (other.isEmpty()) {
        throw notOfNumbersAlone;
      }
      return other.get();
    }
  }

  /** An ask of a family, or a pattern, before it is made ready. */
  private interface Entry {

    /** The ask; what it can never be as wished is added to the contradictions. */
    OrderedAsk ask(Blueprint blueprint, Kinds kinds, Subjects subjects, List<String> contradictions)
        throws UnreadableException;
  }

  private static Entry entry(String text) {
    return (blueprint, kinds, subjects, contradictions) -> {
      CompiledAsk ask = CompiledAsk.of(text, blueprint.polynomial().degree(), kinds);
      contradictions.addAll(ask.contradictions(blueprint));
      return ask;
    };
  }

  private static Entry entry(Pattern pattern) {
    return (blueprint, kinds, subjects, contradictions) -> {
      contradictions.addAll(PatternWishes.contradictions(pattern, blueprint));
      return StatementAsk.of(pattern, blueprint, subjects);
    };
  }

  private static List<Entry> drawn(Blueprint blueprint) {
    SplittableRandom chance = new SplittableRandom(blueprint.seed());
    int degree = blueprint.polynomial().degree();
    List<List<Entry>> families = new ArrayList<>();
    for (AskFamily family : families(blueprint.ask())) {
      families.add(shuffled(family.asks(degree).stream().map(AskList::entry).toList(), chance));
    }
    for (Pattern pattern : patterns(blueprint.ask())) {
      families.add(List.of(entry(pattern)));
    }
    families = shuffled(families, chance);
    List<Entry> asks = new ArrayList<>();
    int most = families.stream().mapToInt(List::size).max().orElse(0);
    for (int turn = 0; turn < most; turn++) {
      for (List<Entry> family : families) {
        if (turn < family.size()) {
          asks.add(family.get(turn));
        }
      }
    }
    return asks;
  }

  /** A surprise that does not say of what kinds is one about the roots of one polynomial. */
  private static List<Pattern> patterns(AskWish wish) {
    if (wish instanceof AskWish.OfFamily one) {
      return Patterns.named(one.name()).stream().toList();
    }
    return Patterns.ALL.stream()
        .filter(
            pattern ->
                wish instanceof AskWish.Surprise surprise
                    && surprise.kinds().contains(pattern.kind()))
        .toList();
  }

  private static List<AskFamily> families(AskWish wish) {
    if (wish instanceof AskWish.OfFamily one) {
      return Families.named(one.name()).stream().toList();
    }
    return Families.ALL.stream()
        .filter(
            family ->
                (wish instanceof AskWish.Surprise surprise && !surprise.kinds().isEmpty())
                    ? surprise.kinds().contains(family.kind())
                    : family.kind().equals(Families.VALUE))
        .toList();
  }

  private static <T> List<T> shuffled(List<T> list, SplittableRandom chance) {
    List<T> shuffled = new ArrayList<>(list);
    for (int k = shuffled.size() - 1; k > 0; k--) {
      Collections.swap(shuffled, k, chance.nextInt(k + 1));
    }
    return shuffled;
  }
}
