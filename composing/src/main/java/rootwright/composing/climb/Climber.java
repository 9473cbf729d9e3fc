package rootwright.composing.climb;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.composing.blueprint.AskWish;
import rootwright.composing.blueprint.Blueprint;
import rootwright.composing.blueprint.Composed;
import rootwright.composing.blueprint.Composer;
import rootwright.composing.blueprint.ComposingControl;
import rootwright.composing.blueprint.ContradictoryBlueprintException;
import rootwright.composing.blueprint.Effort;
import rootwright.composing.blueprint.KnownNames;
import rootwright.composing.blueprint.PolynomialWish;
import rootwright.composing.blueprint.WorkingWish;
import rootwright.composing.family.AskFamily;
import rootwright.composing.family.Families;
import rootwright.composing.level.Level;
import rootwright.composing.pattern.Pattern;
import rootwright.composing.pattern.Patterns;
import rootwright.working.kind.Kinds;
import rootwright.working.step.Idea;

/**
 * Composes climbs: a problem for every ask that gives values, and among them a chain that begins
 * with a read-off and in which each problem is harder than the one before and needs one idea that
 * none before it needed; more new ideas at once only where there is no such chain. Of several the
 * one that ends hardest.
 */
public final class Climber {

  /** So many candidates are worked for each ask. */
  private static final Effort LITTLE = new Effort(6, 6);

  private final Composer composer;

  /** With the kinds of ask to work candidates by. */
  public Climber(Kinds kinds) {
    composer = new Composer(kinds, LITTLE);
  }

  /**
   * Composes a climb.
   *
   * @param wish what the polynomials are to be like
   * @param kinds the kinds of ask that may come up after the read-off; empty for values
   * @param seed what chance starts from
   * @param known fingerprints of problems to stay away from
   * @throws ContradictoryBlueprintException if there can be no such polynomials
   */
  public Climb climb(
      PolynomialWish wish,
      Set<String> kinds,
      long seed,
      Set<String> known,
      ComposingControl control)
      throws UnreadableException {
    Set<String> unknown = new TreeSet<>(kinds);
    unknown.removeAll(KnownNames.kinds());
    if (!unknown.isEmpty()) {
      throw new ContradictoryBlueprintException(
          unknown.stream()
              .map(
                  kind ->
                      "there is no kind of ask “%s”; the nearest is %s"
                          .formatted(kind, KnownNames.nearest(kind, KnownNames.kinds())))
              .toList());
    }
    Chain best = new Search(candidates(wish, kinds, seed, known, control)).best();
    return new Climb(best.steps(), missing(best, wish.degree()));
  }

  private static Optional<String> missing(Chain best, int degree) {
    return best.links().size() == Climb.STEPS
        ? Optional.empty()
        : Optional.of(
            "no problem of degree %d that was tried is harder and adds an idea to those before it"
                .formatted(degree));
  }

  private List<Candidate> candidates(
      PolynomialWish wish,
      Set<String> kinds,
      long seed,
      Set<String> known,
      ComposingControl control)
      throws UnreadableException {
    List<Candidate> found = new ArrayList<>();
    Blueprint order =
        Blueprint.USUAL
            .withPolynomial(wish)
            .withWorking(WorkingWish.USUAL.withSlips(OptionalInt.of(0)))
            .withMany(1);
    long next = seed;
    for (AskWish ask : asks(wish.degree(), kinds)) {
      try {
        composer
            .compose(order.withAsk(ask).withSeed(next++), known, control)
            .problems()
            .forEach(composed -> Candidate.of(composed).ifPresent(found::add));
      } catch (ContradictoryBlueprintException contradictory) {
        if (!order.contradictions().isEmpty()) {
          throw contradictory;
        }
        // An ask that has no single answer for this degree is left out of the climb.
      }
    }
    return found;
  }

  /** The asks of these kinds, and in any case those that are read off, to begin with. */
  private static List<AskWish> asks(int degree, Set<String> kinds) {
    List<AskWish> asks = new ArrayList<>();
    for (AskFamily family : Families.ALL) {
      boolean wished =
          kinds.isEmpty() ? family.kind().equals(Families.VALUE) : kinds.contains(family.kind());
      if (wished || family.equals(Families.ALL.get(0))) {
        family.asks(degree).forEach(ask -> asks.add(new AskWish.Given(ask)));
      }
    }
    for (Pattern pattern : Patterns.ALL) {
      if (kinds.contains(pattern.kind())) {
        asks.add(new AskWish.OfFamily(pattern.name()));
      }
    }
    return asks;
  }

  /** A problem that may stand in a climb. */
  private record Candidate(Composed composed, Set<Idea> ideas, Rational difficulty) {

    static Optional<Candidate> of(Composed composed) {
      Set<Idea> ideas = EnumSet.noneOf(Idea.class);
      composed
          .solution()
          .routes()
          .get(0)
          .steps()
          .forEach(
              step -> {
                if (!step.idea().routine()) {
                  ideas.add(step.idea());
                }
              });
      return Level.of(composed.solution())
          .map(level -> new Candidate(composed, ideas, level.difficulty()));
    }

    Set<Idea> newTo(Set<Idea> before) {
      Set<Idea> fresh = EnumSet.noneOf(Idea.class);
      fresh.addAll(ideas);
      fresh.removeAll(before);
      return fresh;
    }
  }

  /** The beginning of a climb. */
  private record Chain(List<Candidate> links, Set<Idea> ideas, int tooNew) {

    static final Chain EMPTY = new Chain(List.of(), EnumSet.noneOf(Idea.class), 0);

    Chain with(Candidate next) {
      List<Candidate> longer = new ArrayList<>(links);
      longer.add(next);
      Set<Idea> all = EnumSet.copyOf(ideas);
      all.addAll(next.ideas());
      int fresh = next.newTo(ideas).size();
      return new Chain(longer, all, tooNew + Math.max(0, fresh - 1));
    }

    boolean canBeFollowedBy(Candidate next, int mostTooNew) {
      if (links.isEmpty()) {
        return next.ideas().isEmpty();
      }
      int fresh = next.newTo(ideas).size();
      return fresh > 0
          && tooNew + fresh - 1 <= mostTooNew
          && next.difficulty().compareTo(last().difficulty()) > 0;
    }

    Candidate last() {
      return links.get(links.size() - 1);
    }

    /** Longer, then fewer ideas at once, then harder at the end. */
    boolean isBetterThan(Chain other) {
      if (links.size() != other.links.size()) {
        return links.size() > other.links.size();
      }
      if (tooNew != other.tooNew) {
        return tooNew < other.tooNew;
      }
      return !links.isEmpty() && last().difficulty().compareTo(other.last().difficulty()) > 0;
    }

    List<ClimbStep> steps() {
      List<ClimbStep> steps = new ArrayList<>();
      Set<Idea> before = EnumSet.noneOf(Idea.class);
      for (Candidate link : links) {
        steps.add(
            new ClimbStep(
                link.composed(), List.copyOf(link.ideas()), List.copyOf(link.newTo(before))));
        before.addAll(link.ideas());
      }
      return steps;
    }
  }

  /** The search through all chains, those that add one idea at a time first. */
  private static final class Search {

    /** With more ideas at once it would be no climb. */
    private static final int MOST_TOO_NEW = 3;

    private final List<Candidate> candidates;
    private Chain best = Chain.EMPTY;

    Search(List<Candidate> candidates) {
      this.candidates = candidates;
    }

    Chain best() {
      for (int tooNew = 0; tooNew <= MOST_TOO_NEW && best.links().size() < Climb.STEPS; tooNew++) {
        extend(Chain.EMPTY, tooNew);
      }
      return best;
    }

    private void extend(Chain chain, int mostTooNew) {
      if (chain.isBetterThan(best)) {
        best = chain;
      }
      if (chain.links().size() < Climb.STEPS) {
        for (Candidate next : candidates) {
          if (chain.canBeFollowedBy(next, mostTooNew)) {
            extend(chain.with(next), mostTooNew);
          }
        }
      }
    }
  }
}
