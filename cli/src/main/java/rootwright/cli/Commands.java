package rootwright.cli;

import picocli.CommandLine;
import rootwright.desk.Desk;

/** Makes commands with the console and the desk they work with. */
final class Commands implements CommandLine.IFactory {

  private final Console console;
  private final Desk desk = new Desk();

  Commands(Console console) {
    this.console = console;
  }

  @Override
  public <K> K create(Class<K> type) throws Exception {
    if (type == WorkCommand.class) {
      return type.cast(new WorkCommand(console, desk));
    }
    return CommandLine.defaultFactory().create(type);
  }
}
