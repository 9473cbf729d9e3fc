package rootwright.working.subject;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import rootwright.working.step.NumberDomain;

/**
 * The conditions of an inquiry, sorted: those that hold signs, and those in words such as “x, y, z
 * real”, which name numbers and say what kind they are.
 *
 * @param formulas the texts to be read as formulas
 * @param names the names that stand alone or beside a quality, in the order typed
 * @param qualities what is said of the numbers
 */
public record Conditions(List<String> formulas, List<String> names, Set<Quality> qualities) {

  private static final Pattern NAME = Pattern.compile("\\p{L}(_?\\{?\\d{1,3}}?)?");
  private static final Pattern BLANKS = Pattern.compile("\\s+");
  private static final Set<String> SMALL =
      Set.of("are", "is", "be", "all", "numbers", "number", "for", "let", "the", "in", "that");

  public Conditions {
    formulas = List.copyOf(formulas);
    names = List.copyOf(names);
    qualities = Set.copyOf(qualities);
  }

  /** Sorts the conditions of an inquiry. */
  public static Conditions of(Inquiry inquiry) {
    List<String> formulas = new ArrayList<>();
    Set<String> names = new LinkedHashSet<>();
    Set<Quality> qualities = EnumSet.noneOf(Quality.class);
    for (String condition : inquiry.conditions()) {
      List<String> found = new ArrayList<>();
      Set<Quality> said = EnumSet.noneOf(Quality.class);
      if (isInWords(condition, found, said)) {
        names.addAll(found);
        qualities.addAll(said);
      } else {
        formulas.add(condition);
      }
    }
    return new Conditions(formulas, List.copyOf(names), qualities);
  }

  /** What kind of numbers are meant, if it is said. */
  public Optional<NumberDomain> domain() {
    return Quality.domain(qualities);
  }

  private static boolean isInWords(String condition, List<String> names, Set<Quality> qualities) {
    for (String word : BLANKS.split(condition.strip())) {
      Optional<Quality> quality = Quality.of(word);
      if (quality.isPresent()) {
        qualities.add(quality.get());
      } else if (NAME.matcher(word).matches()) {
        names.add(word.replace("{", "").replace("}", ""));
      } else if (!SMALL.contains(word.toLowerCase(Locale.ROOT))) {
        return false;
      }
    }
    return true;
  }
}
