package rootwright.algebra.notation;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Says which word of a phrase is not known, and which one may have been meant. */
final class PhraseMend {

  private static final Pattern WORD = Pattern.compile("[A-Za-z]+");
  private static final int LONGEST = 200;

  /** The words of the phrases that are read. */
  private static final TreeSet<String> KNOWN =
      new TreeSet<>(
          Arrays.asList(
              ("please find determine compute calculate evaluate what is give the all its their"
                      + " exact value of sum product square squares cube cubes reciprocal"
                      + " reciprocals inverse inverses absolute values root roots zeros solutions"
                      + " moduli power powers fourth fifth sixth seventh eighth ninth tenth"
                      + " eleventh twelfth real number how many are there discriminant products"
                      + " pairs pairwise sums differences squared difference between positive"
                      + " distance triples taken two three at a time polynomial equation quadratic"
                      + " cubic quartic quintic this p th st nd rd over")
                  .split(" ")));

  private PhraseMend() {}

  /** The refusal of a formula, turned into that of a phrase if a phrase was meant. */
  static UnreadableException of(String text, List<String> roots, UnreadableException asFormula) {
    if (!asFormula.refusal().code().equals("unknown-word") || text.length() > LONGEST) {
      return asFormula;
    }
    Matcher words = WORD.matcher(text);
    int count = 0;
    while (words.find()) {
      count++;
      String word = words.group().toLowerCase(Locale.ROOT);
      if (count > 1 && !KNOWN.contains(word)) {
        return refused(text, words, Nearest.of(word, KNOWN), roots);
      }
    }
    return asFormula;
  }

  private static UnreadableException refused(
      String text, Matcher word, String near, List<String> roots) {
    String mended =
        near.isEmpty() ? "" : text.substring(0, word.start()) + near + text.substring(word.end());
    boolean readable = !mended.isEmpty() && PhraseReader.read(mended, roots).isPresent();
    return new UnreadableException(
        new Refusal(
            "unknown-phrase",
            "The word “%s” is not known in such a phrase.".formatted(word.group()),
            text,
            text.codePointCount(0, word.start()),
            near.isEmpty()
                ? "a formula, or a phrase like “sum of the squares of the roots”"
                : "“" + near + "”",
            readable ? mended : ""));
  }
}
