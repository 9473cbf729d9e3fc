package rootwright.composing.blueprint;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import rootwright.algebra.notation.UnreadableException;
import rootwright.composing.family.AskFamily;
import rootwright.composing.family.Families;
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
  static List<CompiledAsk> of(Blueprint blueprint, Kinds kinds) throws UnreadableException {
    int degree = blueprint.polynomial().degree();
    if (blueprint.ask() instanceof AskWish.Given given) {
      CompiledAsk ask = CompiledAsk.of(given.text(), degree, kinds);
      List<String> contradictions = ask.contradictions(blueprint);
      if (!contradictions.isEmpty()) {
        throw new ContradictoryBlueprintException(contradictions);
      }
      return List.of(ask);
    }
    List<CompiledAsk> possible = new ArrayList<>();
    List<String> reasons = new ArrayList<>();
    for (String text : drawn(blueprint)) {
      try {
        CompiledAsk ask = CompiledAsk.of(text, degree, kinds);
        List<String> contradictions = ask.contradictions(blueprint);
        if (contradictions.isEmpty()) {
          possible.add(ask);
        } else {
          reasons.addAll(contradictions);
        }
      } catch (ContradictoryBlueprintException never) {
        reasons.addAll(never.contradictions());
      }
    }
    if (possible.isEmpty()) {
      throw new ContradictoryBlueprintException(
          reasons.isEmpty()
              ? List.of("there is no ask of this family for degree " + degree)
              : reasons.stream().distinct().toList());
    }
    return possible;
  }

  private static List<String> drawn(Blueprint blueprint) {
    SplittableRandom chance = new SplittableRandom(blueprint.seed());
    int degree = blueprint.polynomial().degree();
    List<List<String>> families = new ArrayList<>();
    for (AskFamily family : families(blueprint.ask())) {
      families.add(shuffled(family.asks(degree), chance));
    }
    families = shuffled(families, chance);
    List<String> asks = new ArrayList<>();
    int most = families.stream().mapToInt(List::size).max().orElse(0);
    for (int turn = 0; turn < most; turn++) {
      for (List<String> family : families) {
        if (turn < family.size()) {
          asks.add(family.get(turn));
        }
      }
    }
    return asks;
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
