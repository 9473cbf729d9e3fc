package rootwright.working.letters;

import java.util.List;
import java.util.Optional;
import rootwright.algebra.value.ExactValue;
import rootwright.working.gate.Warning;
import rootwright.working.gate.WarningCode;

/** What a coach should know of values of a letter that fill intervals. */
final class RegionWarnings {

  private RegionWarnings() {}

  /** At the ends a root is repeated, so that the count depends on how it is meant. */
  static Optional<Warning> ends(RegionAsked asked) {
    boolean counted =
        !asked.problem().conditions(Condition.RealCount.class).isEmpty()
            || asked.problem().conditions(Condition.Placed.class).stream()
                .flatMap(placed -> placed.cases().stream())
                .flatMap(List::stream)
                .anyMatch(one -> one.amount() != RootsPlaced.Amount.ALL && one.number() > 1);
    boolean distinct =
        asked.problem().says(RootNature.DISTINCT)
            || asked.problem().conditions(Condition.RealCount.class).stream()
                .anyMatch(Condition.RealCount::distinct);
    if (asked.region().isFinite() || !counted || distinct) {
      return Optional.empty();
    }
    List<String> ends =
        asked.region().ends().stream()
            .filter(end -> !asked.region().leadZeros().contains(end))
            .map((ExactValue end) -> LetterSolution.text(end))
            .toList();
    return ends.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Warning(
                WarningCode.DOMAIN_OPEN,
                "For %s = %s a root is repeated: say whether roots are counted with multiplicity; here they are counted once."
                    .formatted(asked.letter(), String.join(" and ", ends))));
  }
}
