package rootwright.composing.blueprint;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import rootwright.algebra.notation.PlainWriter;
import rootwright.algebra.notation.PolynomialFormula;
import rootwright.composing.option.Choices;
import rootwright.composing.option.KeyPlaces;
import rootwright.working.kind.Kinds;
import rootwright.working.problem.Problem;
import rootwright.working.problem.Statement;
import rootwright.working.route.ClassProfile;
import rootwright.working.solve.Given;

/**
 * Works the candidates of one order in turn and picks the good ones. Belongs to one thread at a
 * time.
 */
final class Picker {

  private final Kinds kinds;
  private final KeyPlaces places;
  private final ComposingListener listener;
  private final Remembered remembered;
  private final List<Composed> picked = new ArrayList<>();
  private final Map<String, Integer> rejected = new LinkedHashMap<>();

  Picker(Kinds kinds, int choices, Set<String> known, ComposingListener listener) {
    this.kinds = kinds;
    this.places = new KeyPlaces(choices);
    this.remembered = new Remembered(known);
    this.listener = listener;
  }

  /** Works a candidate by all routes and both checks, and picks it unless something is wrong. */
  void offer(Problem candidate, Judge judge) {
    Statement statement =
        new Statement(
            PlainWriter.write(PolynomialFormula.of(candidate.polynomial(), candidate.unknown())),
            PlainWriter.write(candidate.ask()),
            candidate.roots(),
            Optional.of(candidate.unknown()));
    offer(
        statement,
        Given.of(candidate),
        judge,
        () -> Worked.of(kinds.solve(candidate, ClassProfile.EVERYTHING)));
  }

  /** Picks a candidate unless something is wrong; it is worked only if it is new. */
  void offer(Statement statement, Given given, Judge judge, Supplier<Worked> working) {
    Optional<String> twin = remembered.against(given);
    if (twin.isPresent()) {
      reject(twin.get());
      return;
    }
    Worked worked = working.get();
    if (worked.solution().isEmpty()) {
      reject(worked.failure());
      return;
    }
    Judgement judgement = judge.of(worked.solution().get());
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
            statement,
            judgement.solution(),
            choices,
            judgement.good(),
            Conditions.of(judgement.solution()),
            remembered.shifts(given));
    picked.add(composed);
    listener.found(composed);
  }

  /** Whether a candidate was neither looked at before nor is to be kept away from. */
  boolean isNew(Given given) {
    return remembered.isNew(given);
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
