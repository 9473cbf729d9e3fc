package rootwright.cli;

import java.util.HashMap;
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
        new HashMap<>(
            Map.of(
                WorkCommand.class, () -> new WorkCommand(console, desk),
                CheckCommand.class, () -> new CheckCommand(console, desk),
                ComposeCommand.class, () -> new ComposeCommand(console, desk),
                SiblingCommand.class, () -> new SiblingCommand(console, desk),
                ClimbCommand.class, () -> new ClimbCommand(console, desk),
                TwinsCommand.class, () -> new TwinsCommand(console, desk),
                ShelfCommand.class, () -> new ShelfCommand(console, desk),
                BoardCommand.class, () -> new BoardCommand(console, new LessonDesk()),
                OpenCommand.class, () -> new OpenCommand(console)));
    makers.putAll(PaperCommand.makers(console, desk));
  }

  @Override
  public <K> K create(Class<K> type) throws Exception {
    Supplier<?> maker = makers.get(type);
    return maker == null ? CommandLine.defaultFactory().create(type) : type.cast(maker.get());
  }
}
