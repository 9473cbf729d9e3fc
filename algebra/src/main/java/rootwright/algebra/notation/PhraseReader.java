package rootwright.algebra.notation;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Reads the commonest asks in plain English: “sum of the squares of the roots”, “product of the
 * reciprocals”, “the number of real roots”. What it does not know it leaves to others.
 */
public final class PhraseReader {

  private static final Pattern FRONT =
      Pattern.compile("^(please |find |determine |compute |calculate |evaluate |what is |give )+");
  private static final Pattern SMALL = Pattern.compile("\\b(the|all|its|their|exact|value of)\\b");
  private static final Pattern OWNER =
      Pattern.compile(
          " of (this |a )?(polynomial|equation|quadratic|cubic|quartic|quintic|p|p\\(x\\))$");
  private static final Pattern BLANKS = Pattern.compile("\\s+");
  private static final int LONGEST = 200;

  private PhraseReader() {}

  /**
   * The formula that a phrase asks for, with the reading said; empty if the phrase is not known.
   *
   * @param roots the spelling of each root's name; a phrase about pairs needs two
   */
  public static Optional<ReadFormula> read(String text, List<String> roots) {
    if (text.length() > LONGEST || roots.isEmpty()) {
      return Optional.empty();
    }
    Optional<Formula> formula = value(simplified(text), roots);
    return formula.map(
        found -> {
          String written = PlainWriter.write(found);
          return new ReadFormula(
              found,
              written.equals(text.strip())
                  ? List.of()
                  : List.of(Reading.readAs(text.strip(), written)));
        });
  }

  /** Lower case, without the words that carry nothing and without the owner of the roots. */
  private static String simplified(String text) {
    String words = text.toLowerCase(Locale.ROOT).strip();
    while (words.endsWith(".") || words.endsWith("?") || words.endsWith("!")) {
      words = words.substring(0, words.length() - 1).strip();
    }
    String spaced = BLANKS.matcher(words).replaceAll(" ");
    String bare = SMALL.matcher(FRONT.matcher(spaced).replaceAll("")).replaceAll(" ");
    String joined = BLANKS.matcher(bare).replaceAll(" ").strip();
    return OWNER.matcher(joined).replaceAll("");
  }

  private static Optional<Formula> value(String phrase, List<String> roots) {
    Optional<Formula> whole = WholePhrases.value(phrase, roots);
    if (whole.isPresent()) {
      return whole;
    }
    for (PhraseElements.Change change : PhraseElements.singular()) {
      Optional<String> rest = change.rest(phrase);
      if (rest.isPresent()) {
        return value(rest.get(), roots).map(change.change());
      }
    }
    if (phrase.startsWith("polynomial with roots ")) {
      return PhraseElements.read(phrase.substring("polynomial with roots ".length()), roots)
          .map(root -> new Formula.Application("polynomial with roots", List.of(root)));
    }
    if (phrase.startsWith("sum of ")) {
      return PhraseElements.read(phrase.substring("sum of ".length()), roots)
          .map(body -> new Formula.Aggregate(Formula.Aggregate.Operation.SUM, body));
    }
    if (phrase.startsWith("product of ")) {
      return PhraseElements.read(phrase.substring("product of ".length()), roots)
          .map(body -> new Formula.Aggregate(Formula.Aggregate.Operation.PRODUCT, body));
    }
    for (String mean : List.of("average of ", "mean of ", "arithmetic mean of ")) {
      if (phrase.startsWith(mean)) {
        return PhraseElements.read(phrase.substring(mean.length()), roots)
            .filter(body -> FormulaNames.in(body).size() == 1)
            .map(body -> new Formula.Aggregate(Formula.Aggregate.Operation.SUM, body))
            .map(sum -> sum.over(Formula.number(roots.size())));
      }
    }
    return Optional.empty();
  }
}
