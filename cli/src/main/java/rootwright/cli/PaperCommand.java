package rootwright.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import rootwright.desk.Desk;
import rootwright.desk.paper.FiledPaper;
import rootwright.desk.paper.PaperFile;

/**
 * {@code ./rootwright paper}: by itself, everything at once from a list of problems to the printed
 * files; its own commands take the steps one by one.
 */
@Command(
    name = "paper",
    description =
        "Make a paper of a list of problems: every key is checked, the paper is frozen with a code,"
            + " and its documents are printed. The commands below take the steps one by one.",
    subcommands = {
      PaperDraftCommand.class,
      PaperShowCommand.class,
      PaperEditCommand.class,
      PaperCheckCommand.class,
      PaperFreezeCommand.class,
      PaperPrintCommand.class,
      PaperCompareCommand.class,
      PaperCorrectCommand.class
    })
final class PaperCommand implements Callable<Integer> {

  private final Console console;
  private final Desk desk;

  @Mixin DraftOptions draft = new DraftOptions();
  @Mixin PrintOptions printing = new PrintOptions();

  PaperCommand(Console console, Desk desk) {
    this.console = console;
    this.desk = desk;
  }

  /** How this command and its own commands are made. */
  static Map<Class<?>, Supplier<?>> makers(Console console, Desk desk) {
    return Map.of(
        PaperCommand.class, () -> new PaperCommand(console, desk),
        PaperDraftCommand.class, () -> new PaperDraftCommand(console, desk),
        PaperShowCommand.class, () -> new PaperShowCommand(console),
        PaperEditCommand.class, () -> new PaperEditCommand(console),
        PaperCheckCommand.class, () -> new PaperCheckCommand(console, desk),
        PaperFreezeCommand.class, () -> new PaperFreezeCommand(console, desk),
        PaperPrintCommand.class, () -> new PaperPrintCommand(console, desk),
        PaperCompareCommand.class, () -> new PaperCompareCommand(console, desk),
        PaperCorrectCommand.class, () -> new PaperCorrectCommand(console, desk));
  }

  @Override
  public Integer call() throws InterruptedException {
    return PaperAction.exitStatus(
        console,
        false,
        () -> {
          FiledPaper frozen =
              desk.papers().frozen(desk.papers().checked(desk.papers().draft(draft.order())));
          Path path = Files.createDirectories(printing.out).resolve(frozen.code() + "-paper.yaml");
          PaperFile file = new PaperFile(path);
          if (!Files.exists(path)) {
            file.write(frozen);
          }
          printing.print(desk.papers(), file, console);
          console.out().println(path);
          console.out().println("paper code " + frozen.code());
        });
  }
}
