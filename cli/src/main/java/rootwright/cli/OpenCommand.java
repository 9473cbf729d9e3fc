package rootwright.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import rootwright.web.DeskServer;
import rootwright.web.DeskSettings;
import rootwright.web.OpenPage;

/** {@code ./rootwright open}: starts the desk and shows it in the browser. */
@Command(
    name = "open",
    description = "Start the desk on this machine only and open it in the browser.")
final class OpenCommand implements Callable<Integer> {

  private final Console console;

  @Option(
      names = "--port",
      description = "The port on this machine (${DEFAULT-VALUE}).",
      defaultValue = "" + DeskSettings.USUAL_PORT)
  int port;

  @Option(
      names = "--folder",
      paramLabel = "FOLDER",
      description = "Where the desk keeps what it remembers (${DEFAULT-VALUE}).",
      defaultValue = "${sys:user.home}/.rootwright")
  Path folder = Path.of(".");

  @Option(names = "--no-browser", description = "Only say the address.")
  boolean quiet;

  OpenCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() throws InterruptedException {
    try (DeskServer server = DeskServer.start(new DeskSettings(port, folder)).warmUp()) {
      console.out().println("The desk is at " + server.address() + " (Ctrl+C ends it).");
      if (!quiet && !OpenPage.inBrowser(server.address())) {
        console.out().println("No browser could be started; open the address yourself.");
      }
      Thread.currentThread().join();
    }
    return ExitStatus.DONE.code();
  }
}
