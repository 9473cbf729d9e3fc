package rootwright.cli;

import java.util.Map;
import java.util.function.Supplier;
import picocli.CommandLine;
import rootwright.desk.Desk;
import rootwright.desk.lesson.LessonDesk;

/** Makes commands with the console and the desk they work with. */
final class Commands implements CommandLine.IFactory {

  private final Map<Class<?>, Supplier<?>> makers;

  Commands(Console console) {
    Desk desk = new Desk();
    makers =
        Map.ofEntries(
            Map.entry(WorkCommand.class, () -> new WorkCommand(console, desk)),
            Map.entry(CheckCommand.class, () -> new CheckCommand(console, desk)),
            Map.entry(ComposeCommand.class, () -> new ComposeCommand(console, desk)),
            Map.entry(SiblingCommand.class, () -> new SiblingCommand(console, desk)),
            Map.entry(ShelfCommand.class, () -> new ShelfCommand(console, desk)),
            Map.entry(BoardCommand.class, () -> new BoardCommand(console, new LessonDesk())),
            Map.entry(OpenCommand.class, () -> new OpenCommand(console)),
            Map.entry(ClimbCommand.class, () -> new ClimbCommand(console, desk)),
            Map.entry(TwinsCommand.class, () -> new TwinsCommand(console, desk)),
            Map.entry(PaperCommand.class, () -> new PaperCommand(console, desk)));
  }

  @Override
  public <K> K create(Class<K> type) throws Exception {
    Supplier<?> maker = makers.get(type);
    return maker == null ? CommandLine.defaultFactory().create(type) : type.cast(maker.get());
  }
}
