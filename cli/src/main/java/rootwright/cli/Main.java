package rootwright.cli;

import java.io.PrintWriter;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** The entry of {@code ./rootwright}. */
@Command(
    name = "rootwright",
    description = "A workbench for a coach who teaches problems about the roots of a polynomial.",
    synopsisSubcommandLabel = "COMMAND",
    subcommands = {
      WorkCommand.class,
      CheckCommand.class,
      ComposeCommand.class,
      SiblingCommand.class,
      ClimbCommand.class,
      TwinsCommand.class,
      ShelfCommand.class,
      PaperCommand.class,
      BoardCommand.class,
      OpenCommand.class
    })
public final class Main implements Runnable {

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      scope = CommandLine.ScopeType.INHERIT,
      description = "Say how a command is used.")
  boolean help;

  @CommandLine.Spec CommandLine.Model.@org.jspecify.annotations.Nullable CommandSpec spec;

  /** Runs one command and ends the process with its exit status. */
  public static void main(String[] arguments) {
    System.exit(commandLine(Console.ofProcess()).execute(arguments));
  }

  /** The command line with everything it prints going to this console. */
  static CommandLine commandLine(Console console) {
    CommandLine line = new CommandLine(new Main(), new Commands(console));
    line.setOut(console.out());
    line.setErr(console.err());
    line.setParameterExceptionHandler(
        (wrong, arguments) -> {
          PrintWriter err = wrong.getCommandLine().getErr();
          err.println("error: " + wrong.getMessage());
          err.printf(
              "       how it is used: ./%s --help%n",
              wrong.getCommandLine().getCommandSpec().qualifiedName(" "));
          return ExitStatus.UNREADABLE.code();
        });
    line.setExecutionExceptionHandler(
        (failure, command, parsed) -> {
          command.getErr().println("error: something of ours broke: " + failure);
          return ExitStatus.CHECK_FAILED.code();
        });
    return line;
  }

  @Override
  public void run() {
    if (spec != null) {
      spec.commandLine().usage(spec.commandLine().getOut());
    }
  }
}
