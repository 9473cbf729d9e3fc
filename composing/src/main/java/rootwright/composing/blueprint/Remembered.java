package rootwright.composing.blueprint;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rootwright.algebra.number.Rational;
import rootwright.algebra.polynomial.Polynomial;
import rootwright.composing.twin.Fingerprint;
import rootwright.composing.twin.Twin;
import rootwright.working.problem.Problem;
import rootwright.working.solve.Given;

/**
 * The problems that were looked at or are to be kept away from, and how a new one is related to
 * them. Belongs to one composition.
 */
final class Remembered {

  private final Set<String> known;
  private final Map<String, Given> seen = new HashMap<>();
  private final Map<Polynomial, List<Problem>> picked = new HashMap<>();

  Remembered(Set<String> known) {
    this.known = Set.copyOf(known);
  }

  /** Why a candidate is no new problem, the relation named; it is remembered if it is one. */
  Optional<String> against(Given candidate) {
    String fingerprint = Fingerprint.of(candidate).text();
    if (known.contains(fingerprint)) {
      return Optional.of("a twin of a problem to stay away from");
    }
    Given earlier = seen.putIfAbsent(fingerprint, candidate);
    return Optional.ofNullable(earlier)
        .map(
            there ->
                "a twin of one that was looked at before: "
                    + Twin.relation(there, candidate)
                        .map(twin -> twin.relation().words())
                        .orElse("the same in other clothes"));
  }

  /** Whether {@link #against} would find nothing; remembers nothing. */
  boolean isNew(Given candidate) {
    String fingerprint = Fingerprint.of(candidate).text();
    return !known.contains(fingerprint) && !seen.containsKey(fingerprint);
  }

  /** Reports problems picked before whose roots are those of a new one, moved; and remembers it. */
  List<String> shifts(Given given) {
    return given.problem().map(this::shifts).orElse(List.of());
  }

  private List<String> shifts(Problem problem) {
    List<Problem> alike =
        picked.computeIfAbsent(centred(problem.polynomial()), key -> new ArrayList<>());
    List<String> found = new ArrayList<>();
    for (Problem earlier : alike) {
      Twin.relation(earlier, problem).ifPresent(twin -> found.add(twin.words()));
    }
    alike.add(problem);
    return found;
  }

  /** The monic polynomial with the roots moved so that their sum is 0: the same for all shifts. */
  private static Polynomial centred(Polynomial polynomial) {
    int n = polynomial.degree();
    Rational mean =
        polynomial.coefficient(n - 1).negate().over(polynomial.lead()).over(Rational.of(n));
    return polynomial.compose(Polynomial.ofAscending(List.of(mean, Rational.ONE))).monic();
  }
}
