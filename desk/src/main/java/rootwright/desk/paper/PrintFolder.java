package rootwright.desk.paper;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import rootwright.press.PrintRun;
import rootwright.press.PrintedFile;

/**
 * A folder for printed files. A file appears there when it is whole, so a run that was killed can
 * go on where it stopped.
 */
final class PrintFolder implements PrintRun.Store {

  private static final String UNFINISHED = ".part";

  private final Path folder;

  PrintFolder(Path folder) throws IOException {
    this.folder = Files.createDirectories(folder);
  }

  @Override
  public boolean has(String name) {
    return Files.isRegularFile(folder.resolve(name));
  }

  @Override
  public void put(PrintedFile file) {
    Path part = folder.resolve(file.name() + UNFINISHED);
    try {
      Files.write(part, file.bytes());
      Files.move(
          part,
          folder.resolve(file.name()),
          StandardCopyOption.ATOMIC_MOVE,
          StandardCopyOption.REPLACE_EXISTING);
    } catch (IOException unwritable) {
      throw new UncheckedIOException(unwritable);
    }
  }
}
