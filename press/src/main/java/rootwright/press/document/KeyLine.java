package rootwright.press.document;

import java.util.List;

/** What a paper for the coach says below an item about the right answer. */
public final class KeyLine implements Scoring.Cases<List<Piece>> {

  private final Language language;

  private KeyLine(Language language) {
    this.language = language;
  }

  /** The line for a scoring, in the words of a language. */
  public static List<Piece> of(Scoring scoring, Language language) {
    return scoring.choose(new KeyLine(language));
  }

  @Override
  public List<Piece> byLetter(Scoring.ByLetter scoring) {
    return List.of(key(scoring.letter()));
  }

  @Override
  public List<Piece> byText(Scoring.ByText scoring) {
    Piece key = key(scoring.exact());
    return scoring.alsoAccepted().isEmpty()
        ? List.of(key)
        : List.of(
            key,
            Piece.words(". " + language.word("accepted") + " "),
            Piece.words(printed(String.join("; ", scoring.alsoAccepted()))));
  }

  @Override
  public List<Piece> byHand(Scoring.ByHand scoring) {
    return List.of(Piece.words(language.word("byHand")));
  }

  private Piece key(String answer) {
    return Piece.strong(Piece.words(language.word("key", printed(answer))));
  }

  /** Typed answers have a hyphen for the minus sign. */
  private static String printed(String typed) {
    return typed.replace('-', '−');
  }
}
