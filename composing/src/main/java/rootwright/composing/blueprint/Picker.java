package rootwright.composing.blueprint;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rootwright.composing.option.Choices;
import rootwright.composing.option.KeyPlaces;
import rootwright.working.kind.Kinds;
import rootwright.working.problem.Problem;
import rootwright.working.route.ClassProfile;

/**
 * Works the candidates of one order in turn and picks the good ones. Belongs to one thread at a
 * time.
 */
final class Picker {

  private final Kinds kinds;
  private final Judge judge;
  private final KeyPlaces places;
  private final ComposingListener listener;
  private final Remembered remembered;
  private final List<Composed> picked = new ArrayList<>();
  private final Map<String, Integer> rejected = new LinkedHashMap<>();

  Picker(Kinds kinds, Judge judge, int choices, Set<String> known, ComposingListener listener) {
    this.kinds = kinds;
    this.judge = judge;
    this.places = new KeyPlaces(choices);
    this.remembered = new Remembered(known);
    this.listener = listener;
  }

  /** Works a candidate by all routes and both checks, and picks it unless something is wrong. */
  void offer(Problem candidate) {
    Optional<String> twin = remembered.against(candidate);
    if (twin.isPresent()) {
      reject(twin.get());
      return;
    }
    Judgement judgement = judge.of(kinds.solve(candidate, ClassProfile.EVERYTHING));
    Optional<String> refusal = judgement.refusal();
    if (refusal.isPresent()) {
      reject(refusal.get());
      return;
    }
    Choices choices = places.best(judgement.solution());
    Optional<String> against = judge.against(judgement.solution(), choices);
    if (against.isPresent()) {
      reject(against.get());
      return;
    }
    places.take(choices);
    Composed composed =
        new Composed(
            candidate,
            judgement.solution(),
            choices,
            judgement.good(),
            Conditions.of(candidate, judgement.solution()),
            remembered.shifts(candidate));
    picked.add(composed);
    listener.found(composed);
  }

  private void reject(String reason) {
    rejected.merge(reason, 1, Integer::sum);
  }

  /** What is picked so far. */
  List<Composed> picked() {
    return picked;
  }

  /** How many were turned away, by reason. */
  Map<String, Integer> rejected() {
    return rejected;
  }
}
