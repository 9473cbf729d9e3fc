package rootwright.composing.hint;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.algebra.notation.Formula;
import rootwright.working.route.Working;
import rootwright.working.step.Idea;
import rootwright.working.step.Step;

/** Makes a ladder from a working, putting words for whatever would say too much. */
final class LadderBuilder {

  /** A shorter reason, such as "so", tells nothing about what is to be done. */
  private static final int SHORTEST_TOLD = 5;

  private final List<Step> steps;
  private final Secret secret;
  private final List<Formula> shown = new ArrayList<>();
  private Optional<String> said = Optional.empty();

  LadderBuilder(Working working, Secret secret) {
    this.steps = working.steps();
    this.secret = secret;
  }

  HintLadder build() {
    Step key =
        steps.stream().filter(step -> !step.idea().routine()).findFirst().orElse(steps.get(0));
    IdeaHint idea = IdeaHint.of(key.idea());
    return new HintLadder(
        List.of(
            Rung.of(idea.question()),
            Rung.of(idea.name()),
            inLetters(key),
            withNumbers(),
            allButTheLast()));
  }

  private Rung inLetters(Step key) {
    Optional<Formula> line =
        steps.stream()
            .filter(step -> step.idea() == key.idea())
            .map(step -> Sides.open(step.shown()))
            .flatMap(Optional::stream)
            .filter(secret::allows)
            .findFirst();
    if (line.isPresent()) {
      return show("Write down in letters:", line.get());
    }
    if (secret.allows(key.reason())) {
      said = Optional.of(key.reason());
      return Rung.of("Begin like this: %s.".formatted(key.reason()));
    }
    return Rung.of("Write the first line in letters only, before any number goes in.");
  }

  private Rung withNumbers() {
    Optional<Formula> line =
        beforeTheLast().stream()
            .map(Step::shown)
            .filter(Sides::hasNumbers)
            .filter(this::isNew)
            .filter(secret::allows)
            .findFirst();
    return line.map(formula -> show("Now with numbers:", formula))
        .orElseGet(() -> Rung.of("Now put the numbers of this problem in."));
  }

  private Rung allButTheLast() {
    Step last = steps.get(steps.size() - 1);
    String left =
        last.reason().length() >= SHORTEST_TOLD
                && secret.allows(last.reason())
                && !said.equals(Optional.of(last.reason()))
            ? "One operation is left: %s.".formatted(last.reason())
            : last.idea() == Idea.ARITHMETIC
                ? "Only the arithmetic is left."
                : "One operation is left; mind its sign.";
    List<Step> before = beforeTheLast();
    for (int k = before.size() - 1; k >= 0; k--) {
      Formula line = before.get(k).shown();
      if (isNew(line) && secret.allows(line)) {
        return show(left + " You have:", line);
      }
    }
    return Rung.of(left);
  }

  private List<Step> beforeTheLast() {
    return steps.subList(0, steps.size() - 1);
  }

  private boolean isNew(Formula line) {
    return !shown.contains(line);
  }

  private Rung show(String words, Formula line) {
    shown.add(line);
    return new Rung(words, Optional.of(line));
  }
}
