package rootwright.web.endpoint;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rootwright.algebra.notation.Formula;
import rootwright.algebra.notation.FormulaReader;
import rootwright.algebra.notation.UnreadableException;
import rootwright.desk.Desk;
import rootwright.working.problem.Statement;
import rootwright.working.solve.Given;

/**
 * Reads what stands in one blank, so that it can be set while the others are still being typed.
 *
 * @param desk who reads
 * @param statement the whole statement
 * @param given the statement as it was read, if it could be
 */
record BlankReader(Desk desk, Statement statement, Optional<Given> given) {

  /** An ask that says nothing about root names, to read a polynomial alone. */
  private static final String ANY_ASK = "discriminant";

  /** The blanks that are read as polynomials: equations and lists of coefficients among them. */
  private static final Set<String> POLYNOMIALS = Set.of("polynomial", "other");

  /** The blank whose text stands behind the word "if". */
  private static final String CONDITION = "condition";

  /** The blanks that may hold words. */
  private static final Set<String> MAY_BE_WORDS =
      Set.of(CONDITION, "numbers", "what", "claim", "find");

  /** Two words at least: no product of letters that somebody means. */
  private static final Pattern WORDS = Pattern.compile("\\p{L}{3,}( \\p{L}{2,})+");

  /** Words that a formula may follow. */
  private static final Pattern BEFORE =
      Pattern.compile(
          "((?:the )?(?:least|greatest|smallest|largest|minimum|maximum|min|max)"
              + "(?: possible)?(?: value of)?|prove(?: or refute)?(?: that)?|show that) (.+)",
          Pattern.CASE_INSENSITIVE);

  /** What stands in a blank: words before it, mostly none, and a formula. */
  record Read(String before, Formula formula) {}

  /**
   * The formula, and the words before it.
   *
   * @throws UnreadableException if the text is none; says where
   */
  Read words(String blank, String text) throws UnreadableException {
    Matcher before = BEFORE.matcher(text.strip());
    return before.matches()
        ? new Read(before.group(1), read(blank, before.group(2)))
        : new Read("", read(blank, text));
  }

  /**
   * The formula.
   *
   * @throws UnreadableException if the text is none; says where
   */
  Formula read(String blank, String text) throws UnreadableException {
    Optional<Formula> known = fromWhole(blank, text);
    if (known.isPresent()) {
      return known.get();
    }
    if (MAY_BE_WORDS.contains(blank)) {
      return formulaOrWords(text);
    }
    return POLYNOMIALS.contains(blank) ? polynomial(text) : FormulaReader.formula(text);
  }

  private Optional<Formula> fromWhole(String blank, String text) {
    if (text.strip().equals(statement.polynomial().strip())) {
      return given.map(Given::stated);
    }
    if (text.strip().equals(statement.find().strip())) {
      return given.map(Given::find);
    }
    return blank.equals(CONDITION)
        ? given.map(Given::conditions).filter(some -> !some.isEmpty()).map(BlankReader::listed)
        : Optional.empty();
  }

  private static Formula listed(List<Formula> formulas) {
    return formulas.size() == 1 ? formulas.get(0) : new Formula.Listing(formulas);
  }

  private Formula polynomial(String text) throws UnreadableException {
    try {
      return desk.given(Statement.of(text, ANY_ASK)).stated();
    } catch (UnreadableException noNumbers) {
      try {
        return FormulaReader.formula(text);
      } catch (UnreadableException noFormula) {
        throw noNumbers;
      }
    }
  }

  /** What is half typed may still be words, so nothing is refused here. */
  private static Formula formulaOrWords(String text) throws UnreadableException {
    if (WORDS.matcher(text.strip()).matches()) {
      return new Formula.Words(text.strip());
    }
    try {
      return FormulaReader.formula(text);
    } catch (UnreadableException words) {
      if (text.isBlank() || !text.strip().matches("(?s).*\\p{L}{3,}.*")) {
        throw words;
      }
      return new Formula.Words(text.strip());
    }
  }
}
