package rootwright.press.document;

import java.util.List;

/** What is right, so that a program can score an answer. Never on a paper for students. */
public sealed interface Scoring {

  /** The answer of the case that fits. */
  <R> R choose(Cases<R> cases);

  /**
   * Says whether an item answered this way can be scored so.
   *
   * @throws IllegalArgumentException if not
   */
  void requireFit(Response response);

  /** The right choice. */
  record ByLetter(String letter) implements Scoring {
    @Override
    public void requireFit(Response response) {
      if (!(response instanceof Response.Choices choices)
          || choices.choices().stream().noneMatch(choice -> choice.letter().equals(letter))) {
        throw new IllegalArgumentException(
            "the key %s is not among the choices of %s".formatted(letter, response));
      }
    }

    @Override
    public <R> R choose(Cases<R> cases) {
      return cases.byLetter(this);
    }
  }

  /**
   * The right text.
   *
   * @param exact the answer as it should be typed
   * @param alsoAccepted other spellings of the same answer, all worth the same
   */
  record ByText(String exact, List<String> alsoAccepted) implements Scoring {
    /**
     * @throws IllegalArgumentException if a text is blank
     */
    public ByText {
      alsoAccepted = alsoAccepted.stream().filter(text -> !text.equals(exact)).distinct().toList();
      if (exact.isBlank() || alsoAccepted.stream().anyMatch(String::isBlank)) {
        throw new IllegalArgumentException("a blank cannot be a right answer");
      }
    }

    @Override
    public void requireFit(Response response) {
      if (response instanceof Response.Choices choices) {
        throw new IllegalArgumentException(
            "the text '%s' cannot score the choices %s".formatted(exact, choices.letters()));
      }
    }

    @Override
    public <R> R choose(Cases<R> cases) {
      return cases.byText(this);
    }
  }

  /** A person reads and scores the work. */
  record ByHand() implements Scoring {
    @Override
    public void requireFit(Response response) {}

    @Override
    public <R> R choose(Cases<R> cases) {
      return cases.byHand(this);
    }
  }

  /**
   * One answer for each kind of scoring.
   *
   * @param <R> what is answered
   */
  interface Cases<R> {
    /** The answer for {@link ByLetter}. */
    R byLetter(ByLetter scoring);

    /** The answer for {@link ByText}. */
    R byText(ByText scoring);

    /** The answer for {@link ByHand}. */
    R byHand(ByHand scoring);
  }
}
