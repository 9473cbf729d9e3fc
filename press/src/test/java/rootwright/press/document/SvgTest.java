package rootwright.press.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SvgTest {

  private static final String BEGIN =
      "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 40 30\">";

  @Test
  void aPlainDrawingIsAccepted() {
    assertThat(new Svg(BEGIN + "<path d=\"M0 0L40 30\"/></svg>").heightToWidth()).isEqualTo(0.75);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<script>alert(1)</script>",
        "<path d=\"M0 0\" onclick=\"alert(1)\"/>",
        "<image href=\"http://example.org/a.png\"/>",
        "<a href=\"#x\"><path d=\"M0 0\"/></a>",
        "<path d=\"M0 0\" fill=\"url(http://example.org/x)\"/>",
        "<path d=\"M0 0\" style=\"background:url(x)\"/>",
        "<foreignObject/>",
        "<path d='M0 0'>"
      })
  void aDrawingWithMoreThanShapesIsRefused(String content) {
    assertThatIllegalArgumentException().isThrownBy(() -> new Svg(BEGIN + content + "</svg>"));
  }

  @Test
  void aDrawingWithAnEntityIsRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                new Svg(
                    "<!DOCTYPE svg [<!ENTITY a SYSTEM 'file:///etc/passwd'>]>"
                        + BEGIN
                        + "&a;</svg>"));
  }
}
