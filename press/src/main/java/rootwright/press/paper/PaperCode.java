package rootwright.press.paper;

import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import rootwright.algebra.notation.PlainWriter;
import rootwright.composing.option.Option;

/**
 * The code of a frozen paper: ten letters and digits from a digest of everything it says, keys
 * included, but not of sheet and size of print. Letters that are taken for others (I, L, O, U) do
 * not occur.
 */
final class PaperCode {

  private static final String SIGNS = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
  private static final int LENGTH = 10;

  private PaperCode() {}

  static String of(Content content, int edition) {
    BigInteger digest = new BigInteger(1, digest(canonical(content, edition)));
    StringBuilder code = new StringBuilder();
    for (int k = 0; k < LENGTH; k++) {
      code.append(SIGNS.charAt(digest.shiftRight(5 * k).intValue() & 31));
    }
    return code.insert(LENGTH / 2, '-').toString();
  }

  /** Everything the paper says, one thing a line. */
  private static String canonical(Content content, int edition) {
    StringBuilder text = new StringBuilder("paper 1\n");
    line(text, "edition", String.valueOf(edition));
    line(text, "title", content.title());
    line(text, "language", content.language().tag());
    line(text, "instruction", content.instruction());
    line(text, "date", content.date().toString());
    for (Version version : content.versions()) {
      line(text, "version", version.mark());
      version.items().forEach(item -> item(item, text));
    }
    return text.toString();
  }

  private static void item(PaperItem item, StringBuilder text) {
    line(text, "points", String.valueOf(item.points()));
    item.hints().forEach(hint -> line(text, "hint", CanonicalPieces.of(hint)));
    if (item.task() instanceof Task.Find find) {
      line(text, "polynomial", find.statement().polynomial());
      line(text, "roots", String.join(",", find.statement().roots()));
      line(text, "find", find.statement().find());
      line(text, "form", find.form().name());
      if (find.form() instanceof Form.Choice choice) {
        for (Option option : choice.options()) {
          line(text, "option", PlainWriter.write(option.value().formula()));
        }
      }
      line(text, "answer", PlainWriter.write(find.current().solution().answer().formula()));
    } else if (item.task() instanceof Task.Prove prove) {
      line(text, "prove", CanonicalPieces.of(prove.claim()));
      prove.proof().forEach(line -> line(text, "proof", CanonicalPieces.of(line)));
    }
  }

  private static void line(StringBuilder text, String name, String value) {
    text.append(name).append(' ').append(value.replace("\n", "\\n")).append('\n');
  }

  private static byte[] digest(String text) {
    try {
      return MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException("every Java has SHA-256", impossible);
    }
  }
}
