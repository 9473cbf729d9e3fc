package rootwright.web;

import java.io.IOException;
import java.net.URI;
import java.util.List;
import java.util.Locale;

/** Opens an address in the browser that the person at this machine uses. */
public final class OpenPage {

  private OpenPage() {}

  /**
   * Asks the system to show the address.
   *
   * @return whether the system took the request; if not, the person must be told the address
   */
  public static boolean inBrowser(URI address) {
    String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
    List<String> opener =
        system.contains("mac")
            ? List.of("open", address.toString())
            : system.contains("win")
                ? List.of("rundll32", "url.dll,FileProtocolHandler", address.toString())
                : List.of("xdg-open", address.toString());
    try {
      new ProcessBuilder(opener)
          .redirectOutput(ProcessBuilder.Redirect.DISCARD)
          .redirectError(ProcessBuilder.Redirect.DISCARD)
          .start();
      return true;
    } catch (IOException none) {
      return false;
    }
  }
}
