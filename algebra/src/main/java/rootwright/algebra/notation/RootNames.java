package rootwright.algebra.notation;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * How the roots are called.
 *
 * <p>Up to six roots are r, s, t, u, v, w, skipping letters of the polynomial; more are r_1, r_2, …
 * An ask wholly in another family, none of which the polynomial uses, renames them: a, b, c, … or
 * α, β, γ, … or one letter with the indices 1 to n.
 */
public final class RootNames {

  private static final List<String> USUAL = List.of("r", "s", "t", "u", "v", "w");

  /** Families by their letters; one with too few letters goes on with indices. */
  private static final List<List<String>> FAMILIES =
      List.of(
          USUAL,
          List.of("a", "b", "c", "d", "e", "f", "g", "h"),
          List.of("α", "β", "γ", "δ", "ε", "ζ", "η", "θ"),
          List.of("x", "y", "z", "w"),
          List.of("u", "v", "w"),
          List.of("p", "q", "r", "s", "t"),
          List.of("m", "n"));

  /** With an index these are symmetric polynomials of the roots, not roots. */
  private static final Set<String> FAMILY_LETTERS = Set.of("e", "h", "p", "S");

  private RootNames() {}

  /**
   * The names where no ask says otherwise.
   *
   * @param degree how many roots
   * @param letters what the polynomial uses, its unknown included
   */
  public static List<String> usual(int degree, Set<String> letters) {
    List<String> free = USUAL.stream().filter(letter -> !letters.contains(letter)).toList();
    if (degree <= free.size()) {
      return free.subList(0, degree);
    }
    String letter =
        List.of("r", "s", "t", "z").stream()
            .filter(candidate -> !letters.contains(candidate + "_1"))
            .findFirst()
            .orElse("ρ");
    return indexed(letter, degree);
  }

  /**
   * The names that an ask implies.
   *
   * @param ask what is asked
   * @param text what was typed, into which a refusal points
   * @param degree how many roots
   * @param letters what the polynomial uses, its unknown included
   * @throws UnreadableException if the ask names more roots than there are, or a letter that is
   *     neither a root nor of the polynomial
   */
  public static List<String> implied(Formula ask, String text, int degree, Set<String> letters)
      throws UnreadableException {
    List<String> named = new ArrayList<>(FormulaNames.in(ask));
    named.removeAll(letters);
    List<String> usual = usual(degree, letters);
    if (usual.containsAll(named)) {
      return usual;
    }
    for (List<String> family : families(named, degree)) {
      if (family.containsAll(named)
          && family.stream().noneMatch(letters::contains)
          && !isUsualNameMistyped(family, named)) {
        return family;
      }
    }
    if (degree < 1) {
      throw refused(
          "no-roots",
          "The polynomial is a constant, so there are no roots to name.",
          text,
          named.get(0),
          "a polynomial of degree 1 or more");
    }
    List<List<String>> longer = families(named, degree + named.size());
    if (named.size() > degree && longer.stream().anyMatch(family -> family.containsAll(named))) {
      throw refused(
          "too-many-names",
          "The polynomial has %s, but %d %s named: %s."
              .formatted(
                  roots(degree),
                  named.size(),
                  named.size() == 1 ? "is" : "are",
                  String.join(", ", named)),
          text,
          named.get(degree),
          "names for " + roots(degree));
    }
    throw unknown(named, usual, text);
  }

  /**
   * The names that were given; the rest, if some are missing, get the usual ones.
   *
   * @param given names with commas between them: {@code r,s,t}
   * @throws UnreadableException if these are not names, one stands twice or is used by the
   *     polynomial, or there are more than roots
   */
  public static List<String> given(String given, int degree, Set<String> letters)
      throws UnreadableException {
    Formula list = FormulaReader.formula(given);
    List<Formula> items = list instanceof Formula.Listing listing ? listing.items() : List.of(list);
    Set<String> names = new LinkedHashSet<>();
    for (Formula item : items) {
      if (!(item instanceof Formula.Name name)) {
        throw refusedName(
            "“%s” cannot be the name of a root.".formatted(PlainWriter.write(item)), given, item);
      }
      if (letters.contains(name.spelling())) {
        throw refusedName(
            "The letter %s already stands in the polynomial.".formatted(name.spelling()),
            given,
            item);
      }
      if (!names.add(name.spelling())) {
        throw refusedName("The name %s stands twice.".formatted(name.spelling()), given, item);
      }
    }
    if (names.size() > degree) {
      throw refused(
          "too-many-names",
          "The polynomial has %s, but %d names are given.".formatted(roots(degree), names.size()),
          given,
          List.copyOf(names).get(degree),
          "names for " + roots(degree));
    }
    return completed(names, degree, letters);
  }

  /**
   * Makes sure that an ask names only roots and letters of the polynomial.
   *
   * @throws UnreadableException naming the first letter that is neither
   */
  public static void requireKnown(Formula ask, String text, List<String> roots, Set<String> letters)
      throws UnreadableException {
    List<String> named = new ArrayList<>(FormulaNames.in(ask));
    named.removeAll(letters);
    if (!roots.containsAll(named)) {
      throw unknown(named, roots, text);
    }
  }

  /** The names p, q, r, … share r, s, t with the usual ones: without p, a q beside r is a slip. */
  private static boolean isUsualNameMistyped(List<String> family, List<String> named) {
    return family.get(0).equals("p")
        && !named.contains("p")
        && named.stream().anyMatch(USUAL::contains);
  }

  private static List<String> completed(Set<String> names, int degree, Set<String> letters) {
    Set<String> taken = new HashSet<>(letters);
    taken.addAll(names);
    List<String> all = new ArrayList<>(names);
    all.addAll(usual(degree - names.size(), taken));
    return List.copyOf(all);
  }

  /** The families that might be meant, each with as many members as there are roots. */
  private static List<List<String>> families(List<String> named, int degree) {
    List<List<String>> families = new ArrayList<>();
    for (List<String> letters : FAMILIES) {
      if (degree <= letters.size()) {
        families.add(letters.subList(0, degree));
      } else if (!FAMILY_LETTERS.contains(letters.get(0))) {
        List<String> longer = new ArrayList<>(letters);
        longer.addAll(indexed(letters.get(0), degree - letters.size()));
        families.add(List.copyOf(longer));
      }
    }
    Optional<String> first = named.stream().filter(name -> name.indexOf('_') > 0).findFirst();
    first.ifPresent(name -> families.add(indexed(name.substring(0, name.indexOf('_')), degree)));
    return families;
  }

  private static List<String> indexed(String letter, int count) {
    return IntStream.rangeClosed(1, count).mapToObj(index -> letter + "_" + index).toList();
  }

  private static String roots(int degree) {
    return degree == 0 ? "no root" : degree == 1 ? "1 root" : degree + " roots";
  }

  private static UnreadableException unknown(List<String> named, List<String> roots, String text) {
    String letter =
        named.stream().filter(name -> !roots.contains(name)).findFirst().orElse(named.get(0));
    String powers = powers(letter, roots, text);
    if (!powers.isEmpty()) {
      return new UnreadableException(
          new Refusal(
              "unknown-letter",
              "“%s” is %s with an index; a power has the sign ^."
                  .formatted(letter.replace("_", ""), letter.substring(0, letter.indexOf('_'))),
              text,
              PartPlace.in(text, letter),
              "^",
              powers));
    }
    String known = roots.size() > 8 ? roots.get(0) + ", …" : String.join(", ", roots);
    return refused(
        "unknown-letter",
        "The letter %s is neither a root (%s) nor a letter of the polynomial."
            .formatted(letter, known),
        text,
        letter,
        roots.isEmpty() ? "no root" : "one of " + known);
  }

  /** The text with {@code r^2} for {@code r2} wherever a root has an index; empty if none has. */
  private static String powers(String letter, List<String> roots, String text) {
    int index = letter.indexOf('_');
    if (index < 0 || !roots.contains(letter.substring(0, index))) {
      return "";
    }
    String mended = text;
    for (String root : roots) {
      mended = mended.replaceAll(Pattern.quote(root) + "(?=\\d)", root + "^");
    }
    return mended.equals(text) ? "" : mended;
  }

  private static UnreadableException refusedName(String sentence, String text, Formula item) {
    return refused("root-name", sentence, text, PlainWriter.write(item), "names with commas");
  }

  private static UnreadableException refused(
      String code, String sentence, String text, String spelling, String expected) {
    return new UnreadableException(
        new Refusal(code, sentence, text, PartPlace.in(text, spelling), expected, ""));
  }
}
