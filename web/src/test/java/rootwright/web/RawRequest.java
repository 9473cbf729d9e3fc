package rootwright.web;

import java.io.IOException;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;

/**
 * A request written byte by byte, so that a test can lie in the headers that browsers keep honest.
 */
record RawRequest(String method, String path, Map<String, String> headers, String body) {

  /** A plain visit that claims to go to this host. */
  static RawRequest visit(String host) {
    return new RawRequest("GET", "/", Map.of("Host", host), "");
  }

  /** The same with one header changed. */
  RawRequest with(String name, String value) {
    Map<String, String> more = new TreeMap<>(headers);
    more.put(name, value);
    return new RawRequest(method, path, more, body);
  }

  /** Sends it and returns the whole reply. */
  String sentTo(URI server) throws IOException {
    StringBuilder text = new StringBuilder("%s %s HTTP/1.1\r\n".formatted(method, path));
    byte[] bytes = body.getBytes(StandardCharsets.UTF_8);
    headers.forEach((name, value) -> text.append(name).append(": ").append(value).append("\r\n"));
    text.append("Content-Length: ").append(bytes.length).append("\r\nConnection: close\r\n\r\n");
    try (Socket socket = new Socket(server.getHost(), server.getPort())) {
      socket.setSoTimeout(10_000);
      socket.getOutputStream().write(text.toString().getBytes(StandardCharsets.UTF_8));
      socket.getOutputStream().write(bytes);
      socket.getOutputStream().flush();
      return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  /** The status of the reply. */
  int statusFrom(URI server) throws IOException {
    return Integer.parseInt(sentTo(server).split(" ", 3)[1]);
  }
}
