package rootwright.lesson.film;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import rootwright.lesson.caption.SubRip;
import rootwright.lesson.narration.Script;
import rootwright.lesson.picture.Painter;

/**
 * The encoder that Debian has in its package {@code ffmpeg}: H.264 in MP4, 1920 by 1080, a picture
 * for each change, the captions as a track that can be switched on.
 */
final class InstalledEncoder implements FilmMaker {

  private static final String COMMAND = "ffmpeg";

  /** How long the last picture stands again at the very end, in milliseconds. */
  private static final long LAST = 40;

  @Override
  public String title() {
    return "the installed encoder";
  }

  @Override
  public boolean isHere() {
    String path = System.getenv("PATH");
    return path != null
        && Stream.of(path.split(File.pathSeparator))
            .anyMatch(folder -> Files.isExecutable(Path.of(folder, COMMAND)));
  }

  @Override
  public long estimate(Script script) {
    return 3_000 + 250L * script.beats().size();
  }

  @Override
  public void make(Script script, Path file, FilmListener listener) throws IOException {
    Path folder = Files.createTempDirectory("rootwright-film");
    try {
      encode(script, folder, file, listener);
    } finally {
      try (Stream<Path> all = Files.walk(folder)) {
        for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
          Files.delete(each);
        }
      }
    }
  }

  private static void encode(Script script, Path folder, Path file, FilmListener listener)
      throws IOException {
    List<Frames.Frame> frames = Frames.of(script);
    StringBuilder list = new StringBuilder("ffconcat version 1.0\n");
    String name = "";
    for (int k = 0; k < frames.size(); k++) {
      name = "%05d.png".formatted(k);
      ImageIO.write(Painter.paint(frames.get(k).picture()), "png", folder.resolve(name).toFile());
      long millis = frames.get(k).millis();
      if (k == frames.size() - 1 && millis > LAST) {
        // The encoder gives the very last picture one tick, however long it is to stand.
        list.append("file %s\nduration %s\n".formatted(name, seconds(millis - LAST)));
        millis = LAST;
      }
      list.append("file %s\nduration %s\n".formatted(name, seconds(millis)));
      listener.done(k + 1, frames.size());
    }
    // The length of the last picture counts only if another one follows.
    list.append("file %s\n".formatted(name));
    Files.writeString(folder.resolve("list.txt"), list, StandardCharsets.UTF_8);
    Files.writeString(
        folder.resolve("captions.srt"), SubRip.write(script.cues()), StandardCharsets.UTF_8);
    Path log = folder.resolve("log.txt");
    Process process =
        new ProcessBuilder(
                COMMAND,
                "-y",
                "-loglevel",
                "error",
                "-f",
                "concat",
                "-i",
                folder.resolve("list.txt").toString(),
                "-i",
                folder.resolve("captions.srt").toString(),
                "-map",
                "0:v",
                "-map",
                "1:s",
                "-c:v",
                "libx264",
                "-preset",
                "veryfast",
                "-tune",
                "stillimage",
                "-pix_fmt",
                "yuv420p",
                "-vsync",
                "vfr",
                "-c:s",
                "mov_text",
                "-t",
                seconds(script.millis()),
                "-movflags",
                "+faststart",
                file.toAbsolutePath().toString())
            .redirectErrorStream(true)
            .redirectOutput(log.toFile())
            .start();
    try {
      if (process.waitFor() != 0) {
        throw new IOException(
            "the encoder refused: " + Files.readString(log, StandardCharsets.UTF_8).strip());
      }
    } catch (InterruptedException stopped) {
      process.destroy();
      Thread.currentThread().interrupt();
      throw new IOException("stopped", stopped);
    }
  }

  private static String seconds(long millis) {
    return String.format(Locale.ROOT, "%.3f", millis / 1000.0);
  }
}
