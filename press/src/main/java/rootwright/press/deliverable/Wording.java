package rootwright.press.deliverable;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import rootwright.algebra.notation.Forms;
import rootwright.algebra.notation.Formula;
import rootwright.press.document.Piece;
import rootwright.press.paper.Form;
import rootwright.press.paper.Task;
import rootwright.press.paper.WholeNumberRule;
import rootwright.working.answer.Answer;
import rootwright.working.solve.Given;
import rootwright.working.solve.Solution;

/** A problem as a sentence on a paper. */
final class Wording {

  /**
   * What a letter with an index k stands for: the words before and after that k.
   *
   * @param letter the letter
   * @param before words before k
   * @param after words after it
   */
  private record Meaning(String letter, String before, String after) {}

  private static final List<Meaning> FAMILIES =
      List.of(
          new Meaning("S", "the sum of the ", "th powers of the roots"),
          new Meaning("p", "the sum of the ", "th powers of the roots"),
          new Meaning("e", "the sum of all products of ", " different roots"),
          new Meaning("h", "the sum of all products of ", " roots, repetitions allowed"));

  /** Words of an ask that this class has a sentence for. */
  private static final Set<String> WORDED =
      Set.of("discriminant", "roots", "real roots", "reduce", "polynomial with roots");

  /** More new roots are described, not listed. */
  private static final int MOST_LISTED = 6;

  private Wording() {}

  /** What is given and asked, as one paragraph. */
  static List<Piece> of(Task task) {
    if (task instanceof Task.Prove prove) {
      return prove.claim();
    }
    Task.Find find = (Task.Find) task;
    Solution solution = find.current().solution();
    List<Piece> sentence = new ArrayList<>(of(solution));
    if (find.form() instanceof Form.WholeNumber) {
      WholeNumberRule.of(solution.answer()).ifPresent(rule -> sentence.addAll(rule.sentence()));
    }
    return sentence;
  }

  /** The problem of a solution. */
  static List<Piece> of(Solution solution) {
    Given given = solution.given();
    if (!isAboutRootsAlone(given)) {
      // Conditions, letters and whatever else is given must not be lost on the way to the paper.
      return StatementPieces.of(solution);
    }
    Formula equation = Formula.equation(given.polynomial(), Formula.number(0));
    List<Piece> sentence = new ArrayList<>();
    if (given.roots().isEmpty() || isWord(given.find())) {
      sentence.addAll(Piece.line("Given is ", equation, ". "));
    } else {
      sentence.addAll(
          Piece.line(
              "Let ",
              names(given.roots()),
              given.roots().size() == 1 ? " be the root of " : " be the roots of ",
              equation,
              ". "));
    }
    sentence.addAll(asked(given, solution.answer()));
    families(given.find(), sentence);
    return sentence;
  }

  /**
   * Whether the polynomial and an ask in its roots, or a word known here, are all that is given.
   */
  private static boolean isAboutRootsAlone(Given given) {
    return given.problem().isPresent()
        && !given.find().contains(Formula.Words.class::isInstance)
        && !given
            .find()
            .contains(
                part ->
                    part instanceof Formula.Application application
                        && !application.function().replace("'", "").equals("P")
                        && !(part == given.find() && WORDED.contains(application.function())));
  }

  /** Says what S₉ or e₂ means, once for each letter. */
  private static void families(Formula find, List<Piece> sentence) {
    for (Meaning family : FAMILIES) {
      if (find.contains(part -> isOf(part, family.letter()))) {
        Formula k = Formula.name("k");
        Formula member = new Formula.Family(family.letter(), k);
        sentence.addAll(
            Piece.line(" Here ", member, " is " + family.before(), k, family.after() + "."));
      }
    }
  }

  private static boolean isOf(Formula part, String letter) {
    return part instanceof Formula.Family family && family.letter().equals(letter);
  }

  private static Piece names(List<String> roots) {
    return new Piece.Enumeration(
        roots.stream().map(root -> Piece.line(Formula.name(root))).toList());
  }

  /** An ask that is a word speaks of the polynomial, not of single roots. */
  private static boolean isWord(Formula find) {
    return find instanceof Formula.Application application && application.arguments().isEmpty();
  }

  private static List<Piece> asked(Given given, Answer answer) {
    Formula find = given.find();
    if (!(find instanceof Formula.Application application)) {
      return found(find, answer);
    }
    Formula argument = application.arguments().isEmpty() ? find : application.arguments().get(0);
    return switch (application.function()) {
      case "discriminant" -> Piece.line("Find the discriminant.");
      case "roots" -> Piece.line("Find all its roots.");
      case "real roots" -> Piece.line("How many different real roots does it have?");
      case "reduce" ->
          Piece.line("Write ", argument, " as a polynomial of lower degree in the root.");
      case "polynomial with roots" -> newRoots(argument, given.roots());
      default -> found(find, answer);
    };
  }

  /** The new roots one by one, or in words if they are many. */
  private static List<Piece> newRoots(Formula root, List<String> roots) {
    return Forms.of(root, roots)
        .filter(forms -> forms.size() <= MOST_LISTED)
        .map(
            forms ->
                Piece.line(
                    forms.size() == 1
                        ? "Find the polynomial whose root is "
                        : "Find the polynomial whose roots are ",
                    new Piece.Enumeration(forms.stream().map(form -> Piece.line(form)).toList()),
                    "."))
        .orElseGet(
            () ->
                Piece.line(
                    "Find the polynomial whose roots are all values that ",
                    root,
                    " takes when the roots are renamed."));
  }

  private static List<Piece> found(Formula find, Answer answer) {
    return answer instanceof Answer.Values
        ? Piece.line("Find all possible values of ", find, ".")
        : Piece.line("Find ", find, ".");
  }
}
