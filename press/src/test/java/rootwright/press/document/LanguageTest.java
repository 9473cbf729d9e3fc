package rootwright.press.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;

class LanguageTest {

  private static final Piece.Enumeration VALUES =
      new Piece.Enumeration(
          List.of(
              List.of(new Piece.Decimal(new BigDecimal("6.75"))),
              List.of(new Piece.Decimal(new BigDecimal("-0.50")))));

  @Test
  void decimalsHaveTheMarkOfTheLanguageAndATrueMinus() {
    assertThat(Language.ENGLISH.decimal(new BigDecimal("-6.750"))).isEqualTo("−6.750");
    assertThat(Language.of("de").decimal(new BigDecimal("-6.750"))).isEqualTo("−6,750");
    assertThat(Language.of("de-CH").decimal(new BigDecimal("6.75"))).isEqualTo("6.75");
  }

  @Test
  void listsOfDecimalsArePartedBySemicolonsWhereTheCommaIsTaken() {
    assertThat(Language.of("fr").separator(VALUES)).isEqualTo("; ");
    assertThat(Language.ENGLISH.separator(VALUES)).isEqualTo(", ");
    Piece.Enumeration names = new Piece.Enumeration(List.of(Piece.line("r"), Piece.line("s")));
    assertThat(Language.of("fr").separator(names)).isEqualTo(", ");
  }

  @Test
  void aLanguageWithoutWordsOfOursSpeaksEnglishAndKeepsItsTag() {
    Language finnish = Language.of("fi");
    assertThat(finnish.word("answer")).isEqualTo("Answer:");
    assertThat(finnish.tag()).isEqualTo("fi");
    assertThat(finnish.decimalMark()).isEqualTo(',');
  }

  @Test
  void everyLanguageHasEveryWord() {
    for (String tag : List.of("en", "de", "fr")) {
      Language language = Language.of(tag);
      assertThat(language.word("page", "1", "3")).contains("1").contains("3");
      assertThat(language.points(1)).contains("1");
      assertThat(language.points(4)).contains("4").isNotEqualTo(language.word("point", 4));
    }
  }

  @Test
  void aTagThatNamesNoLanguageIsRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Language.of("?"))
        .withMessageContaining("?");
  }
}
