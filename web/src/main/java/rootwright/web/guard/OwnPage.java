package rootwright.web.guard;

import java.net.URI;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * Tells the desk's own page from everybody else's.
 *
 * <p>A page from elsewhere can make a browser send requests to this machine. Two headers that no
 * script can forge give it away: {@code Host}, when a foreign name was pointed at this machine, and
 * {@code Origin}, when another page sent the request.
 */
public final class OwnPage {

  private static final Set<String> LOOPBACK_NAMES = Set.of("127.0.0.1", "localhost", "[::1]");

  private OwnPage() {}

  /**
   * Whether a {@code Host} header names this machine.
   *
   * @param host the header, with or without a port; absent is refused
   */
  public static boolean isOwnHost(Optional<String> host) {
    return host.map(OwnPage::nameOf).filter(LOOPBACK_NAMES::contains).isPresent();
  }

  /**
   * Whether an {@code Origin} header belongs to the page that the {@code Host} header names.
   *
   * @param origin the header; absent for a plain visit, which is welcome
   * @param host the {@code Host} header of the same request
   */
  public static boolean isOwnOrigin(Optional<String> origin, Optional<String> host) {
    if (origin.isEmpty()) {
      return true;
    }
    try {
      URI from = URI.create(origin.get());
      return "http".equals(from.getScheme())
          && from.getRawAuthority() != null
          && host.filter(from.getRawAuthority()::equalsIgnoreCase).isPresent()
          && isOwnHost(Optional.of(from.getRawAuthority()));
    } catch (IllegalArgumentException unreadable) {
      return false;
    }
  }

  private static String nameOf(String host) {
    int colon = host.lastIndexOf(':');
    boolean port = colon > 0 && !host.endsWith("]");
    return (port ? host.substring(0, colon) : host).toLowerCase(Locale.ROOT);
  }
}
