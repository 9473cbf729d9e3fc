package rootwright.press.text;

import java.nio.charset.StandardCharsets;
import rootwright.press.document.Document;
import rootwright.press.formula.FormulaScripts;
import rootwright.press.output.Output;

/** Plain text in UTF-8, formulas in one line each, lines of at most 76 signs. */
public final class TextOutput implements Output {

  private static final int WIDTH = 76;

  private final FormulaScripts scripts;

  /** With the ways to write formulas. */
  public TextOutput(FormulaScripts scripts) {
    this.scripts = scripts;
  }

  @Override
  public String name() {
    return "text";
  }

  @Override
  public String title() {
    return "Plain text";
  }

  @Override
  public String extension() {
    return "txt";
  }

  @Override
  public String mediaType() {
    return "text/plain";
  }

  @Override
  public byte[] print(Document document) {
    TextLines lines = new TextLines(WIDTH);
    lines.wrapped(document.title());
    lines.full('=');
    String code = document.identity().paperCode();
    String version = document.identity().version();
    String identity = code.isEmpty() ? document.language().word("draft") : code;
    lines.wrapped(
        version.isEmpty()
            ? identity
            : identity + " · " + document.language().word("version", version));
    new TextBlocks(document.language(), scripts, lines).all(document.blocks());
    return lines.finished().getBytes(StandardCharsets.UTF_8);
  }
}
