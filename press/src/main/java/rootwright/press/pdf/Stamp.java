package rootwright.press.pdf;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDate;
import java.util.HexFormat;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The last touch to a finished PDF: the date of its metadata becomes the date of the document, its
 * identifier becomes a digest of the rest, and the lists of the glyphs of each typeface are not
 * referred to any more. Those lists are optional, and the formatter's leave out glyphs that it has
 * embedded, which PDF/UA-1 forbids (7.21.4.2). Lengths do not change, so that no offset does.
 */
final class Stamp {

  private static final Pattern METADATA_DATE =
      Pattern.compile("<xmp:MetadataDate>(\\d{4}-\\d{2}-\\d{2}T\\d{2}:\\d{2}:\\d{2})");
  private static final Pattern IDENTIFIER =
      Pattern.compile("/ID \\[<([0-9A-F]{32})> <([0-9A-F]{32})>\\]");

  private static final Pattern GLYPH_LIST = Pattern.compile("/CIDSet \\d+ \\d+ R");

  private Stamp() {}

  static byte[] on(byte[] pdf, LocalDate date) {
    // One letter a byte, so that places in the text are places in the file.
    StringBuilder text = new StringBuilder(new String(pdf, StandardCharsets.ISO_8859_1));
    Matcher dated = METADATA_DATE.matcher(text);
    if (dated.find()) {
      text.replace(dated.start(1), dated.end(1), date + "T00:00:00");
    }
    Matcher listed = GLYPH_LIST.matcher(text);
    while (listed.find()) {
      text.replace(listed.start(), listed.end(), " ".repeat(listed.end() - listed.start()));
    }
    Matcher identified = IDENTIFIER.matcher(text);
    if (identified.find()) {
      String blank = "0".repeat(32);
      text.replace(identified.start(1), identified.end(1), blank);
      text.replace(identified.start(2), identified.end(2), blank);
      String digest = digest(text.toString());
      text.replace(identified.start(1), identified.end(1), digest);
      text.replace(identified.start(2), identified.end(2), digest);
    }
    return text.toString().getBytes(StandardCharsets.ISO_8859_1);
  }

  private static String digest(String text) {
    try {
      byte[] whole =
          MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.ISO_8859_1));
      return HexFormat.of().formatHex(whole, 0, 16).toUpperCase(Locale.ROOT);
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException("every Java has SHA-256", impossible);
    }
  }
}
