package rootwright.working.inequality;

import java.util.List;

/** Names in a sentence. */
final class LetterNames {

  private LetterNames() {}

  /** “a, b and c”. */
  static String joined(List<String> names) {
    return names.size() < 2
        ? String.join("", names)
        : String.join(", ", names.subList(0, names.size() - 1))
            + " and "
            + names.get(names.size() - 1);
  }
}
