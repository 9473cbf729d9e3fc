package rootwright.composing.blueprint;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import rootwright.working.answer.Answer;
import rootwright.working.solve.Solution;

/**
 * The wrong answers of named slips on one problem.
 *
 * @param answers for each slip the wrong answers it can lead to, none if it is silent
 */
record TrapAnswers(List<Set<Answer>> answers) {

  static TrapAnswers of(Solution solution, Set<String> slips) {
    List<Set<Answer>> found = new ArrayList<>();
    for (String name : new TreeSet<>(slips)) {
      Set<Answer> here = new HashSet<>();
      solution.slips().stream()
          .filter(slip -> slip.name().equals(name))
          .forEach(slip -> here.add(slip.value()));
      found.add(here);
    }
    return new TrapAnswers(List.copyOf(found));
  }

  /** Whether one wrong answer can be picked for each slip so that no two are equal. */
  boolean areDistinct() {
    Map<Answer, Integer> taken = new HashMap<>();
    for (int slip = 0; slip < answers.size(); slip++) {
      if (!place(slip, taken, new HashSet<>())) {
        return false;
      }
    }
    return true;
  }

  /** Finds an answer for a slip, moving others on where they have another (Kuhn 1955). */
  private boolean place(int slip, Map<Answer, Integer> taken, Set<Answer> tried) {
    for (Answer answer : answers.get(slip)) {
      if (tried.add(answer)) {
        Integer holder = taken.get(answer);
        if (holder == null || place(holder, taken, tried)) {
          taken.put(answer, slip);
          return true;
        }
      }
    }
    return false;
  }
}
