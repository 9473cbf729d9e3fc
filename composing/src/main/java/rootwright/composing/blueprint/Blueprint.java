package rootwright.composing.blueprint;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;

/**
 * What a coach orders.
 *
 * @param ask the expression in the roots, as it would be typed
 * @param degree the degree of the polynomials
 * @param size the largest coefficient by size
 * @param largestLead the largest lead; 1 for monic polynomials
 * @param answer what the answer is to look like
 * @param roots what the roots are to be like
 * @param realRoots how many real roots, if that matters
 * @param mustHave names of routes that must go through
 * @param mustLack names of routes that must not
 * @param slips the least number of different wrong answers that slips give
 * @param level the estimated level, 1 to 5, if that matters
 * @param choices the number of choices of a multiple-choice item, 3 to 5
 * @param many how many problems
 * @param seed what chance starts from; part of every result
 */
public record Blueprint(
    String ask,
    int degree,
    int size,
    int largestLead,
    AnswerWish answer,
    RootsWish roots,
    OptionalInt realRoots,
    Set<String> mustHave,
    Set<String> mustLack,
    int slips,
    OptionalInt level,
    int choices,
    int many,
    long seed) {

  public Blueprint {
    mustHave = Set.copyOf(mustHave);
    mustLack = Set.copyOf(mustLack);
  }

  /** The usual order: monic or not, whole answer, no rational root, three slips, four choices. */
  public static Blueprint of(String ask, int degree, int many, long seed) {
    return new Blueprint(
        ask,
        degree,
        12,
        3,
        new AnswerWish.Whole(),
        RootsWish.NO_RATIONAL_ROOT,
        OptionalInt.empty(),
        Set.of(),
        Set.of(),
        3,
        OptionalInt.empty(),
        4,
        many,
        seed);
  }

  /**
   * What is contradictory or out of range in the order itself, one sentence each; empty if nothing.
   */
  public List<String> contradictions() {
    List<String> found = new ArrayList<>();
    require(found, degree >= 2 && degree <= 8, "the degree must be from 2 to 8: " + degree);
    require(found, size >= 1 && size <= 10_000, "the size must be from 1 to 10000: " + size);
    require(
        found,
        largestLead >= 1 && largestLead <= size,
        "the largest lead %d must be from 1 to the size %d".formatted(largestLead, size));
    require(found, many >= 1 && many <= 500, "the number must be from 1 to 500: " + many);
    require(found, choices >= 3 && choices <= 5, "choices must be three to five: " + choices);
    level.ifPresent(
        wanted -> require(found, wanted >= 1 && wanted <= 5, "levels go from 1 to 5: " + wanted));
    realRoots.ifPresent(count -> realRoots(found, count));
    for (String route : mustHave) {
      require(
          found,
          !mustLack.contains(route),
          "the route %s is both required and forbidden".formatted(route));
    }
    require(
        found,
        !(roots == RootsWish.IRREDUCIBLE && mustHave.contains("rational-root")),
        "an irreducible polynomial has no rational root to split off");
    require(
        found,
        !(roots == RootsWish.NO_RATIONAL_ROOT && mustHave.contains("rational-root")),
        "without a rational root the route rational-root cannot go through");
    return found;
  }

  private void realRoots(List<String> found, int count) {
    require(
        found,
        count >= 0 && count <= degree && (degree - count) % 2 == 0,
        "a real polynomial of degree %d cannot have %d real roots counted with multiplicity"
            .formatted(degree, count));
  }

  private static void require(List<String> found, boolean holds, String otherwise) {
    if (!holds) {
      found.add(otherwise);
    }
  }

  /** The same order with another seed. */
  public Blueprint withSeed(long other) {
    return new Blueprint(
        ask,
        degree,
        size,
        largestLead,
        answer,
        roots,
        realRoots,
        mustHave,
        mustLack,
        slips,
        level,
        choices,
        many,
        other);
  }
}
