package rootwright.press.document;

import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ItemTest {

  private static final Response CHOICES =
      new Response.Choices(
          List.of(
              new Response.Choice("A", Piece.line("3")),
              new Response.Choice("B", Piece.line("5"))));

  @Test
  void aKeyThatIsNoChoiceIsRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> item(CHOICES, new Scoring.ByLetter("C")))
        .withMessageContaining("C");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> item(new Response.Work(3), new Scoring.ByLetter("A")));
  }

  @Test
  void aTypedAnswerCannotScoreChoices() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> item(CHOICES, new Scoring.ByText("5", List.of())))
        .withMessageContaining("A, B");
  }

  @Test
  void twoChoicesOfOneLetterAreRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                new Response.Choices(
                    List.of(
                        new Response.Choice("A", Piece.line("3")),
                        new Response.Choice("A", Piece.line("5")))));
  }

  private static Block.Item item(Response response, Scoring scoring) {
    return new Block.Item(1, Optional.empty(), List.of(), response, Optional.of(scoring));
  }
}
