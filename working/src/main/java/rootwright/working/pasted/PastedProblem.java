package rootwright.working.pasted;

import java.util.Optional;
import java.util.regex.Pattern;
import rootwright.algebra.notation.Refusal;
import rootwright.algebra.notation.UnreadableException;
import rootwright.working.problem.Statement;

/**
 * What was typed, made plain: a whole sentence as it stands on a sheet becomes a polynomial and an
 * ask, {@code find the value of r^2 + s^2} becomes {@code r^2 + s^2}. Everything else stays as it
 * is. Nothing is computed; what the parts say is for the readers of the parts.
 */
public final class PastedProblem {

  /** Longer texts are no sentence. */
  private static final int LONGEST = 1000;

  private static final Pattern BLANKS = Pattern.compile("[\\s\u00a0]+");
  private static final Pattern FULL_STOP = Pattern.compile("\\s*[.,;]\\s*$");
  private static final Pattern MATH_SIGNS = Pattern.compile("\\$+|\\\\[()\\[\\]]");
  private static final Pattern REAL_NAMED =
      SentenceParts.pattern(
          "(?:be|are|denote)\\s+(?:the\\s+|its\\s+|two\\s+|three\\s+|four\\s+|distinct\\s+)*(?<word>real|positive|negative|integer|rational)\\s+(?:and\\s+\\w+\\s+|distinct\\s+|real\\s+)*(?:roots|zeros|solutions)\\s+(?:of|to)");

  private PastedProblem() {}

  /**
   * The statement without the words of a sentence.
   *
   * @throws UnreadableException if the sentence brings a polynomial although another one is given,
   *     or promises of the roots what cannot be promised here
   */
  public static Statement plain(Statement statement) throws UnreadableException {
    boolean polynomial = !statement.polynomial().isBlank();
    boolean find = !statement.find().isBlank();
    if (polynomial && find) {
      return withPolynomial(statement);
    }
    Optional<Statement> read =
        sentence(polynomial ? statement.polynomial() : statement.find(), statement);
    return bare(read.orElse(statement));
  }

  private static Statement withPolynomial(Statement statement) throws UnreadableException {
    Optional<Statement> whole = sentence(statement.find(), statement);
    if (whole.isEmpty() || whole.get().polynomial().isBlank()) {
      return bare(statement);
    }
    if (!squeezed(whole.get().polynomial()).equals(squeezed(statement.polynomial()))) {
      throw new UnreadableException(
          new Refusal(
              "two-polynomials",
              "The sentence brings a polynomial of its own, “%s”, and “%s” is given beside it."
                  .formatted(whole.get().polynomial(), statement.polynomial()),
              statement.find(),
              Math.max(0, statement.find().indexOf(whole.get().polynomial())),
              "the sentence alone, or the ask alone",
              whole.get().find()));
    }
    return bare(whole.get());
  }

  private static Statement bare(Statement statement) {
    return new Statement(
        FULL_STOP.matcher(statement.polynomial()).replaceFirst(""),
        AskText.plain(statement.find(), !statement.polynomial().isBlank()),
        statement.roots(),
        statement.unknown());
  }

  private static Optional<Statement> sentence(String typed, Statement statement)
      throws UnreadableException {
    if (typed.length() > LONGEST || typed.indexOf(' ') < 0) {
      return Optional.empty();
    }
    String text = BLANKS.matcher(MATH_SIGNS.matcher(typed).replaceAll(" ")).replaceAll(" ").strip();
    var real = REAL_NAMED.matcher(text);
    if (real.find()) {
      String word = real.group("word");
      throw new UnreadableException(
          new Refusal(
              "promised-roots",
              "Names are given to all complex roots; that they are %s is not taken from the sentence."
                  .formatted(word),
              text,
              text.codePointCount(0, real.start("word")),
              "the sentence without “%s”, if all roots are".formatted(word),
              text.substring(0, real.start("word"))
                  + text.substring(real.end("word")).stripLeading()));
    }
    for (SentenceForm form : SentenceForm.ALL) {
      Optional<Statement> read = form.read(text, statement.unknown());
      if (read.isPresent() && looksLikePolynomial(read.get().polynomial())) {
        return read.map(found -> named(found, statement));
      }
    }
    return statement.polynomial().isBlank() || statement.find().isBlank()
        ? GivenValues.read(text, statement.unknown())
        : Optional.empty();
  }

  /** Names that were given beside the sentence go before those in it. */
  private static Statement named(Statement found, Statement given) {
    return given.roots().isEmpty()
        ? found
        : new Statement(found.polynomial(), found.find(), given.roots(), found.unknown());
  }

  private static boolean looksLikePolynomial(String text) {
    return text.matches("(?s).*[0-9²³⁴-⁹=^].*")
        && text.matches("(?s).*[a-zA-Z].*")
        && !text.matches("(?s).*[a-zA-Z]\\s*\\(\\s*[a-zA-Z]\\s*\\(.*");
  }

  private static String squeezed(String text) {
    return text.replaceAll("[\\s$]", "").replaceAll("=0\\.?$", "");
  }
}
