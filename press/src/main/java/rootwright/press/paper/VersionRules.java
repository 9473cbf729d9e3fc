package rootwright.press.paper;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import rootwright.working.problem.Statement;
import rootwright.working.solve.Solution;

/**
 * What versions of one paper must have in common.
 *
 * <p>Versions are either re-ordered, holding the same problems, or re-numbered, holding at each
 * place a problem of the same kind with another key. They are never mixed.
 */
final class VersionRules {

  /** Two siblings may differ by this much in estimated level, in logits. */
  private static final BigDecimal NEAR = new BigDecimal("0.3");

  private VersionRules() {}

  /** What is wrong between the versions; every key must be current. */
  static List<Complaint> complaints(Content content) {
    List<Complaint> complaints = new ArrayList<>();
    List<Version> versions = content.versions();
    for (int k = 1; k < versions.size(); k++) {
      for (int j = 0; j < k; j++) {
        compare(versions.get(j), versions.get(k), complaints);
      }
    }
    return complaints;
  }

  private static void compare(Version one, Version other, List<Complaint> complaints) {
    if (one.items().size() != other.items().size()) {
      complaints.add(
          new Complaint(
              other.mark(),
              0,
              "It has %d items, version %s has %d."
                  .formatted(other.items().size(), one.mark(), one.items().size())));
    } else if (!statements(one).equals(statements(other))) {
      for (int k = 0; k < one.items().size(); k++) {
        siblings(one, other, k, complaints);
      }
    }
  }

  private static Set<Statement> statements(Version version) {
    return version.items().stream()
        .map(PaperItem::task)
        .filter(Task.Find.class::isInstance)
        .map(task -> ((Task.Find) task).statement())
        .collect(Collectors.toSet());
  }

  private static void siblings(Version one, Version other, int place, List<Complaint> complaints) {
    PaperItem first = one.items().get(place);
    PaperItem second = other.items().get(place);
    if (!(first.task() instanceof Task.Find a) || !(second.task() instanceof Task.Find b)) {
      return;
    }
    List<String> wrongs = new ArrayList<>();
    Solution left = a.current().solution();
    Solution right = b.current().solution();
    if (!a.form().name().equals(b.form().name())) {
      wrongs.add("It is answered in another form than in version " + one.mark() + ".");
    }
    if (left.answer().equals(right.answer())) {
      wrongs.add("The key is the same as in version " + one.mark() + ".");
    }
    if (first.points() != second.points()) {
      wrongs.add("It is worth other points than in version " + one.mark() + ".");
    }
    if (tooFar(first.level(), second.level())) {
      wrongs.add("Its level is more than 0.3 from that in version " + one.mark() + ".");
    }
    if (!slips(left).equals(slips(right))) {
      wrongs.add(
          "Other slips show than in version %s: %s against %s."
              .formatted(one.mark(), difference(right, left), difference(left, right)));
    }
    if (a.form() instanceof Form.Choice ours
        && b.form() instanceof Form.Choice theirs
        && KeyClash.between(ours, left.answer(), theirs, right.answer())) {
      wrongs.add(
          "An option stands at the letter at which it is the key of the other version (%s)."
              .formatted(one.mark()));
    }
    wrongs.forEach(wrong -> complaints.add(new Complaint(other.mark(), place + 1, wrong)));
  }

  private static boolean tooFar(Optional<BigDecimal> one, Optional<BigDecimal> other) {
    return one.isPresent()
        && other.isPresent()
        && one.get().subtract(other.get()).abs().compareTo(NEAR) > 0;
  }

  private static Set<String> slips(Solution solution) {
    return solution.slips().stream().map(Solution.WrongTurning::name).collect(Collectors.toSet());
  }

  private static String difference(Solution of, Solution without) {
    Set<String> names = new HashSet<>(slips(of));
    names.removeAll(slips(without));
    return names.isEmpty() ? "none" : names.stream().sorted().collect(Collectors.joining(", "));
  }
}
