package rootwright.algebra.notation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads an ask, a plain phrase or a formula, and settles how the roots are called. */
public final class AskReader {

  private static final Pattern SUM_OF =
      Pattern.compile(
          "\\s*(?:the\\s+)?(?<sign>sum|product)\\s+(?:over\\s+(?:all\\s+)?(?:the\\s+)?roots\\s+)?"
              + "of\\s+(?<body>.*)",
          Pattern.CASE_INSENSITIVE | Pattern.DOTALL);

  private AskReader() {}

  /**
   * The ask with the usual names of the roots, or those it implies ({@link RootNames}).
   *
   * @param degree how many roots
   * @param letters what the polynomial uses, its unknown included
   * @throws UnreadableException if the text is neither a known phrase nor a formula, or names a
   *     letter that is neither a root nor of the polynomial
   */
  public static ReadAsk read(String text, int degree, Set<String> letters)
      throws UnreadableException {
    Optional<ReadFormula> phrase = PhraseReader.read(text, RootNames.usual(degree, letters));
    if (phrase.isPresent()) {
      return ask(phrase.get(), RootNames.usual(degree, letters));
    }
    ReadFormula read = formula(text, RootNames.usual(degree, letters));
    List<String> roots = RootNames.implied(read.formula(), text, degree, letters);
    return ask(oneForm(read, text, roots), roots);
  }

  /**
   * The ask where the roots have these names.
   *
   * @throws UnreadableException as {@link #read(String, int, Set)}
   */
  public static ReadAsk read(String text, List<String> roots, Set<String> letters)
      throws UnreadableException {
    Optional<ReadFormula> phrase = PhraseReader.read(text, roots);
    if (phrase.isPresent()) {
      return ask(phrase.get(), roots);
    }
    ReadFormula read = formula(text, roots);
    RootNames.requireKnown(read.formula(), text, roots, letters);
    return ask(oneForm(read, text, roots), roots);
  }

  /**
   * One expression for a list of all its forms, which asks for the same polynomial; cyclic sums
   * written out.
   */
  private static ReadFormula oneForm(ReadFormula read, String text, List<String> roots)
      throws UnreadableException {
    if (TurnedRound.occursIn(read.formula())) {
      Formula whole = TurnedRound.writtenOut(read.formula(), roots);
      List<Reading> readings = new ArrayList<>(read.readings());
      readings.add(Reading.readAs(text.strip(), PlainWriter.write(whole)));
      return new ReadFormula(whole, readings);
    }
    if (!(read.formula() instanceof Formula.Application application)
        || !application.function().equals("polynomial with roots")
        || application.arguments().size() < 2) {
      return read;
    }
    List<Formula> listed = application.arguments();
    Optional<Formula> one = Forms.single(listed, roots);
    if (one.isEmpty()) {
      String forms =
          Forms.of(listed.get(0), roots)
              .filter(all -> all.size() <= roots.size() * 2)
              .map(all -> String.join(", ", all.stream().map(PlainWriter::write).toList()))
              .orElse(PlainWriter.write(listed.get(0)));
      throw new UnreadableException(
          new Refusal(
              "listed-roots",
              "The new roots that are listed are not one expression in all its forms.",
              text,
              PartPlace.in(text, PlainWriter.write(listed.get(0))),
              "one expression, or all its forms",
              "polynomial with roots " + forms));
    }
    return new ReadFormula(
        new Formula.Application(application.function(), List.of(one.get())), List.of());
  }

  /** The formula, also after “sum of” or “sum over the roots of”. */
  private static ReadFormula formula(String text, List<String> roots) throws UnreadableException {
    try {
      return FormulaReader.read(text);
    } catch (UnreadableException unreadable) {
      Matcher matcher = SUM_OF.matcher(text);
      if (matcher.matches()) {
        try {
          return FormulaReader.read(matcher.group("sign") + " " + matcher.group("body"));
        } catch (UnreadableException still) {
          throw PhraseMend.of(text, roots, unreadable);
        }
      }
      throw PhraseMend.of(text, roots, unreadable);
    }
  }

  private static ReadAsk ask(ReadFormula read, List<String> roots) {
    return new ReadAsk(read.formula(), roots, read.readings());
  }
}
