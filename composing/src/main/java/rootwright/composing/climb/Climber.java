package rootwright.composing.climb;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import rootwright.algebra.notation.UnreadableException;
import rootwright.algebra.number.Rational;
import rootwright.composing.blueprint.AskWish;
import rootwright.composing.blueprint.Blueprint;
import rootwright.composing.blueprint.Composed;
import rootwright.composing.blueprint.Composer;
import rootwright.composing.blueprint.ComposingControl;
import rootwright.composing.blueprint.ContradictoryBlueprintException;
import rootwright.composing.blueprint.Effort;
import rootwright.composing.blueprint.PolynomialWish;
import rootwright.composing.blueprint.WorkingWish;
import rootwright.composing.family.AskFamily;
import rootwright.composing.family.Families;
import rootwright.composing.level.Level;
import rootwright.working.kind.Kinds;
import rootwright.working.step.Idea;

/**
 * Composes climbs: a problem for every ask that gives values, and among them the chain whose
 * problems need 0, 1, 2, … ideas, each harder than the one before and bringing something new, with
 * as few new ideas at a time as can be.
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
   * @param seed what chance starts from
   * @param known fingerprints of problems to stay away from
   * @throws ContradictoryBlueprintException if there can be no such polynomials
   */
  public Climb climb(PolynomialWish wish, long seed, Set<String> known, ComposingControl control)
      throws UnreadableException {
    List<List<Candidate>> byIdeas = new ArrayList<>();
    for (int k = 0; k < Climb.STEPS; k++) {
      byIdeas.add(new ArrayList<>());
    }
    for (Candidate candidate : candidates(wish, seed, known, control)) {
      if (candidate.ideas().size() < Climb.STEPS) {
        byIdeas.get(candidate.ideas().size()).add(candidate);
      }
    }
    Chain best = new Search(byIdeas).best();
    return new Climb(best.steps(), missing(best, byIdeas, wish.degree()));
  }

  private static Optional<String> missing(Chain best, List<List<Candidate>> byIdeas, int degree) {
    int reached = best.links().size();
    if (reached == Climb.STEPS) {
      return Optional.empty();
    }
    return Optional.of(
        byIdeas.get(reached).isEmpty()
            ? "no ask of degree %d that was tried needs %d ideas".formatted(degree, reached)
            : "no ask of degree %d that was tried needs %d ideas, a new one among them, and is"
                    .formatted(degree, reached)
                + " harder than the problem before");
  }

  private List<Candidate> candidates(
      PolynomialWish wish, long seed, Set<String> known, ComposingControl control)
      throws UnreadableException {
    List<Candidate> found = new ArrayList<>();
    Blueprint order =
        Blueprint.USUAL
            .withPolynomial(wish)
            .withWorking(WorkingWish.USUAL.withSlips(OptionalInt.of(0)))
            .withMany(1);
    long next = seed;
    for (AskFamily family : Families.ALL) {
      if (!family.kind().equals(Families.VALUE)) {
        continue;
      }
      for (String ask : family.asks(wish.degree())) {
        try {
          composer
              .compose(order.withAsk(new AskWish.Given(ask)).withSeed(next++), known, control)
              .problems()
              .forEach(composed -> Candidate.of(composed).ifPresent(found::add));
        } catch (ContradictoryBlueprintException contradictory) {
          if (!order.contradictions().isEmpty()) {
            throw contradictory;
          }
          // An ask that has no single answer for this degree is left out of the climb.
        }
      }
    }
    return found;
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

    boolean canBeFollowedBy(Candidate next) {
      return links.isEmpty()
          || (next.difficulty().compareTo(last().difficulty()) > 0 && !next.newTo(ideas).isEmpty());
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

  /** The search through all chains, one candidate from each list in turn. */
  private static final class Search {

    private final List<List<Candidate>> byIdeas;
    private Chain best = Chain.EMPTY;

    Search(List<List<Candidate>> byIdeas) {
      this.byIdeas = byIdeas;
    }

    Chain best() {
      extend(Chain.EMPTY);
      return best;
    }

    private void extend(Chain chain) {
      if (chain.isBetterThan(best)) {
        best = chain;
      }
      boolean hopeless = best.links().size() == Climb.STEPS && chain.tooNew() > best.tooNew();
      if (chain.links().size() < Climb.STEPS && !hopeless) {
        for (Candidate next : byIdeas.get(chain.links().size())) {
          if (chain.canBeFollowedBy(next)) {
            extend(chain.with(next));
          }
        }
      }
    }
  }
}
