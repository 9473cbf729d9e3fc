package rootwright.cli;

import java.io.IOException;
import java.math.BigInteger;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import rootwright.algebra.notation.UnreadableException;
import rootwright.composing.blueprint.Blueprint;
import rootwright.composing.blueprint.Composition;
import rootwright.composing.blueprint.KnownNames;
import rootwright.composing.blueprint.OrderEstimate;
import rootwright.desk.Desk;
import rootwright.desk.table.ComposersTable.Attention;
import rootwright.desk.table.ScanFile;
import rootwright.desk.table.UnreadableBlueprintException;

/** {@code ./rootwright compose}: fresh problems by an order. */
@Command(
    name = "compose",
    description =
        "Compose fresh problems: every one worked by all routes and both checks, with believable"
            + " wrong options, a level and hints. The same order and seed give the same problems.")
final class ComposeCommand implements Callable<Integer> {

  /** A box with fewer candidates is scanned in a second or so. */
  private static final BigInteger LARGE = BigInteger.valueOf(20_000_000);

  private static final BigInteger NOTICED_SECONDS = BigInteger.valueOf(10);
  private static final BigInteger HOUR_SECONDS = BigInteger.valueOf(3_600);
  private static final int SAMPLE_MILLISECONDS = 400;

  private final Console console;
  private final Desk desk;

  @Mixin BlueprintOptions order = new BlueprintOptions();

  @Option(
      names = "--show-blueprint",
      description = "Print the order as YAML, for --blueprint, and compose nothing.")
  boolean showBlueprint;

  @Option(names = "--families", description = "List the families of asks, and compose nothing.")
  boolean families;

  @Option(
      names = "--state",
      paramLabel = "FILE",
      description =
          "Keep in this file how far the scan is; Ctrl-C stops it, the same again goes on.")
  @Nullable Path state;

  @Option(names = "--long", description = "Start an order that may run for more than an hour.")
  boolean patient;

  @Mixin OutputOptions output = new OutputOptions();

  ComposeCommand(Console console, Desk desk) {
    this.console = console;
    this.desk = desk;
  }

  @Override
  public Integer call() throws IOException {
    return OrderErrors.told(console, String.valueOf(order.file), this::run);
  }

  private ExitStatus run() throws IOException, UnreadableException, UnreadableBlueprintException {
    if (families) {
      KnownNames.families()
          .forEach((name, words) -> console.out().printf("%-26s %s%n", name, words));
      return ExitStatus.DONE;
    }
    Blueprint blueprint = order.blueprint(desk);
    if (showBlueprint) {
      console.out().print(desk.table().blueprintAsYaml(blueprint));
      console.out().flush();
      return ExitStatus.DONE;
    }
    return mayStart(blueprint) ? compose(blueprint) : ExitStatus.UNREADABLE;
  }

  /**
   * Says how long a large order may take before it is started, and asks for a word if very long.
   */
  private boolean mayStart(Blueprint blueprint) throws UnreadableException {
    if (!blueprint.contradictions().isEmpty()
        || blueprint.polynomial().candidates().compareTo(LARGE) <= 0) {
      return true;
    }
    OrderEstimate estimate = desk.table().estimate(blueprint, SAMPLE_MILLISECONDS);
    BigInteger seconds = desk.table().secondsAtMost(estimate);
    if (seconds.compareTo(NOTICED_SECONDS) >= 0) {
      console
          .err()
          .printf(
              "This order has %,d candidates and may take up to %s, by a sample of %,d.%n",
              estimate.candidates(), Duration.inWords(seconds), estimate.sampled());
    }
    if (seconds.compareTo(HOUR_SECONDS) > 0 && !patient) {
      console
          .err()
          .println(
              "error: it was not started; say --long to start it all the same, --state FILE to be"
                  + " able to stop and go on, or ask for less: a smaller --size or --degree");
      return false;
    }
    return true;
  }

  private ExitStatus compose(Blueprint blueprint) throws IOException, UnreadableException {
    List<Path> avoid = blueprint.avoid().stream().map(Path::of).toList();
    for (Path file : avoid) {
      if (!Files.isReadable(file)) {
        throw new NoSuchFileException(file.toString());
      }
    }
    Set<String> known = desk.table().fingerprints(avoid);
    ScanProgress progress = new ScanProgress(console);
    try (Interruption interruption = new Interruption()) {
      Attention attention = Attention.NONE.until(interruption).telling(progress);
      ScanFile kept = state == null ? null : desk.table().progressFile(state, blueprint);
      Composition composition =
          desk.table()
              .compose(blueprint, known, kept == null ? attention : attention.keepingIn(kept));
      progress.clear();
      new CompositionPrinter(console, output.form()).print(composition);
      if (kept != null) {
        keep(kept, composition);
      }
      return composition.problems().isEmpty() ? ExitStatus.NOT_SINGLE : ExitStatus.DONE;
    }
  }

  private void keep(ScanFile kept, Composition composition) throws IOException {
    if (composition.ending() == Composition.Ending.STOPPED) {
      kept.write();
      console.err().printf("Stopped; the same order with --state %s goes on.%n", state);
    } else {
      kept.finish();
    }
  }
}
