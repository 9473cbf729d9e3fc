package rootwright.lesson.picture;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * What goes and what is new from one line to the next: everything outside a longest common
 * subsequence of their terms.
 *
 * @param kept how many terms with a letter stay
 * @param gone places in the line before
 * @param fresh places in the line after
 */
record Changes(int kept, List<Integer> gone, List<Integer> fresh) {

  Changes {
    gone = List.copyOf(gone);
    fresh = List.copyOf(fresh);
  }

  /** Compares two lines in time proportional to the product of their lengths. */
  static Changes between(List<String> before, List<String> after) {
    int[][] common = new int[before.size() + 1][after.size() + 1];
    for (int i = before.size() - 1; i >= 0; i--) {
      for (int j = after.size() - 1; j >= 0; j--) {
        common[i][j] =
            before.get(i).equals(after.get(j))
                ? common[i + 1][j + 1] + 1
                : Math.max(common[i + 1][j], common[i][j + 1]);
      }
    }
    List<Integer> gone = new ArrayList<>();
    List<Integer> fresh = new ArrayList<>();
    int i = 0;
    int j = 0;
    while (i < before.size() || j < after.size()) {
      if (i < before.size() && j < after.size() && before.get(i).equals(after.get(j))) {
        i++;
        j++;
      } else if (j == after.size() || (i < before.size() && common[i + 1][j] >= common[i][j + 1])) {
        gone.add(i++);
      } else {
        fresh.add(j++);
      }
    }
    Collections.sort(gone);
    int kept = 0;
    for (int k = 0; k < before.size(); k++) {
      // That both lines have a 0 in them says nothing.
      boolean named = before.get(k).chars().anyMatch(Character::isLetter);
      kept += named && !gone.contains(k) ? 1 : 0;
    }
    return new Changes(kept, gone, fresh);
  }

  /** Whether the second line is the first with something changed, rather than another line. */
  boolean isChange() {
    return kept > 0 && !fresh.isEmpty() && kept * 3 >= gone.size();
  }
}
