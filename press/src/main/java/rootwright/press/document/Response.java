package rootwright.press.document;

import java.util.List;
import java.util.stream.Collectors;

/** How an item is answered on the paper. */
public sealed interface Response {

  /** The answer of the case that fits. */
  <R> R choose(Cases<R> cases);

  /**
   * Room to work, and nothing else: for proofs and longer work.
   *
   * @param lines of handwriting that fit, 0 for none
   */
  record Work(int lines) implements Response {
    /**
     * @throws IllegalArgumentException if the number of lines is negative
     */
    public Work {
      requireNotNegative(lines);
    }

    @Override
    public <R> R choose(Cases<R> cases) {
      return cases.work(this);
    }
  }

  /**
   * Room to work, and a line for the answer.
   *
   * @param lines of handwriting that fit above the line for the answer, 0 for none
   */
  record ShortAnswer(int lines) implements Response {
    /**
     * @throws IllegalArgumentException if the number of lines is negative
     */
    public ShortAnswer {
      requireNotNegative(lines);
    }

    @Override
    public <R> R choose(Cases<R> cases) {
      return cases.shortAnswer(this);
    }
  }

  /** One of several choices. */
  record Choices(List<Choice> choices) implements Response {
    /**
     * @throws IllegalArgumentException if there are fewer than two, or two have the same letter
     */
    public Choices {
      choices = List.copyOf(choices);
      long letters = choices.stream().map(Choice::letter).distinct().count();
      if (choices.size() < 2 || letters < choices.size()) {
        throw new IllegalArgumentException(
            "%d choices under %d letters".formatted(choices.size(), letters));
      }
    }

    /** The letters, for messages: {@code A, B, C}. */
    public String letters() {
      return choices.stream().map(Choice::letter).collect(Collectors.joining(", "));
    }

    @Override
    public <R> R choose(Cases<R> cases) {
      return cases.choices(this);
    }
  }

  /**
   * A choice.
   *
   * @param letter what it is called by ({@code A})
   * @param pieces what it says
   */
  record Choice(String letter, List<Piece> pieces) {
    public Choice {
      pieces = List.copyOf(pieces);
    }
  }

  /**
   * One answer for each kind of response.
   *
   * @param <R> what is answered
   */
  interface Cases<R> {
    /** The answer for {@link Work}. */
    R work(Work work);

    /** The answer for a {@link ShortAnswer}. */
    R shortAnswer(ShortAnswer answer);

    /** The answer for {@link Choices}. */
    R choices(Choices choices);
  }

  private static void requireNotNegative(int lines) {
    if (lines < 0) {
      throw new IllegalArgumentException("room for %d lines".formatted(lines));
    }
  }
}
