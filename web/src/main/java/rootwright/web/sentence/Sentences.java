package rootwright.web.sentence;

import java.util.List;
import java.util.stream.Stream;

/** All sentences, the commonest first; a kind of ask joins the page by joining one of the lists. */
public final class Sentences {

  /** The sentences in the order of the list on the page. */
  public static final List<Sentence> ALL =
      Stream.of(
              AskSentences.ALL,
              SequenceSentences.ALL,
              RootSentences.ALL,
              LetterSentences.ALL,
              PairSentences.ALL,
              DescribedSentences.ALL,
              ClothingSentences.ALL,
              GivenSentences.ALL)
          .flatMap(List::stream)
          .toList();

  private Sentences() {}
}
