package rootwright.web.guard;

import java.util.Map;

/**
 * The headers every reply carries: nothing from outside is loaded, nothing inline is run, nobody
 * may frame the page.
 */
public final class SafeHeaders {

  /** Header names and values. */
  public static final Map<String, String> ALL =
      Map.of(
          "Content-Security-Policy",
          "default-src 'self'; object-src 'none'; base-uri 'none'; form-action 'none';"
              + " frame-ancestors 'none'",
          "X-Content-Type-Options",
          "nosniff",
          "Referrer-Policy",
          "no-referrer",
          "Cross-Origin-Opener-Policy",
          "same-origin",
          "Cross-Origin-Resource-Policy",
          "same-origin");

  private SafeHeaders() {}
}
