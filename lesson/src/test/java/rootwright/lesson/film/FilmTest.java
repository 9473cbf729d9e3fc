package rootwright.lesson.film;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.imageio.ImageIO;
import org.jcodec.common.DemuxerTrack;
import org.jcodec.common.io.NIOUtils;
import org.jcodec.common.io.SeekableByteChannel;
import org.jcodec.common.model.Packet;
import org.jcodec.containers.mp4.demuxer.MP4Demuxer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rootwright.lesson.Lessons;
import rootwright.lesson.caption.SubRip;
import rootwright.lesson.caption.Wording;
import rootwright.lesson.narration.Script;
import rootwright.lesson.picture.Painter;
import rootwright.lesson.plan.Pace;
import rootwright.lesson.plan.Plan;
import rootwright.lesson.plan.PlanCheck;
import rootwright.lesson.plan.PlanLine;
import rootwright.lesson.plan.PlanStep;
import rootwright.lesson.plan.StepKind;
import rootwright.lesson.slide.DeckMaker;
import rootwright.working.proof.Letters;

class FilmTest {

  @Test
  void aFilmLastsAsLongAsTheNarrationAndHasOnePictureForEachChange(@TempDir Path folder)
      throws Exception {
    Script script = shortScript();
    Path file = folder.resolve("short.mp4");
    List<Integer> told = new ArrayList<>();

    new OwnEncoder().make(script, file, (done, all) -> told.add(done));

    long millis = 0;
    int pictures = 0;
    try (SeekableByteChannel channel = NIOUtils.readableChannel(file.toFile());
        MP4Demuxer demuxer = MP4Demuxer.createMP4Demuxer(channel)) {
      DemuxerTrack track = demuxer.getVideoTrack();
      for (Packet packet = track.nextFrame(); packet != null; packet = track.nextFrame()) {
        millis += 1000 * packet.getDuration() / packet.getTimescale();
        pictures++;
      }
    }
    assertThat(pictures).isEqualTo(script.beats().size());
    assertThat(told).hasSize(script.beats().size());
    assertThat(millis).isEqualTo(script.millis());
    assertThat(Files.size(file)).isGreaterThan(1000);
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void aPlayerOfOthersSeesTheSlidesForAsLongAsTheNarrationTakes(
      boolean installed, @TempDir Path folder) throws Exception {
    Script script = shortScript();
    Path film = folder.resolve("film.mp4");
    FilmMaker maker = installed ? new InstalledEncoder() : new OwnEncoder();
    assertThat(maker.isHere()).as("the command ffmpeg is there; ./verify installs it").isTrue();

    maker.make(script, film, (done, all) -> {});

    String seconds =
        run(
            folder,
            "ffprobe",
            "-v",
            "error",
            "-select_streams",
            "v",
            "-show_entries",
            "format=duration",
            "-of",
            "csv=p=0",
            film.toString());
    assertThat(Double.parseDouble(seconds.strip()))
        .isCloseTo(script.millis() / 1000.0, within(0.06));
    long from = 0;
    for (Frames.Frame frame : Frames.of(script)) {
      Path seen = folder.resolve("seen-%d.png".formatted(from));
      // A seek would go on to the next picture; at twenty pictures a second none is left out.
      String middle =
          String.format(
              Locale.ROOT,
              "fps=20,trim=start=%.3f,scale=1920:1080",
              (from + frame.millis() / 2) / 1000.0);
      run(
          folder,
          "ffmpeg",
          "-y",
          "-loglevel",
          "error",
          "-i",
          film.toString(),
          "-vf",
          middle,
          "-frames:v",
          "1",
          seen.toString());
      BufferedImage image = ImageIO.read(seen.toFile());
      double own = difference(image, Painter.paint(frame.picture()));
      assertThat(own).as("what is seen at %d ms", from + frame.millis() / 2).isLessThan(3);
      for (Frames.Frame other : Frames.of(script)) {
        if (!other.equals(frame)) {
          assertThat(own).isLessThan(difference(image, Painter.paint(other.picture())));
        }
      }
      from += frame.millis();
    }
    assertThat(from).isEqualTo(script.millis());
  }

  @Test
  void theInstalledEncoderPutsTheCaptionsIntoTheFilm(@TempDir Path folder) throws Exception {
    Script script = shortScript();
    Path film = folder.resolve("film.mp4");

    new InstalledEncoder().make(script, film, (done, all) -> {});

    String captions =
        run(
            folder,
            "ffmpeg",
            "-loglevel",
            "error",
            "-i",
            film.toString(),
            "-map",
            "0:s:0",
            "-f",
            "srt",
            "-");
    assertThat(captions.replaceAll("\\s+", " ").strip())
        .isEqualTo(SubRip.write(script.cues()).replaceAll("\\s+", " ").strip());
  }

  @Test
  void theForecastGrowsWithThePictures() throws Exception {
    Script few = shortScript();
    Script many = Lessons.script("newton-identities");

    for (FilmMaker maker : FilmMaker.ALL) {
      assertThat(maker.estimate(few)).as(maker.title()).isPositive();
      assertThat(maker.estimate(many)).as(maker.title()).isGreaterThan(maker.estimate(few));
      assertThat(maker.estimate(many)).as(maker.title()).isLessThan(many.millis());
    }
  }

  /** What a command prints. */
  private static String run(Path folder, String... command) throws Exception {
    Path printed = folder.resolve("printed.txt");
    Process process =
        new ProcessBuilder(command)
            .redirectErrorStream(true)
            .redirectOutput(printed.toFile())
            .start();
    assertThat(process.waitFor()).as(Files.readString(printed)).isZero();
    return Files.readString(printed);
  }

  /** By how much two pictures differ against their paper, in greys of 255 in the mean. */
  private static double difference(BufferedImage one, BufferedImage other) {
    long sum = 0;
    for (int y = 0; y < 1080; y += 2) {
      for (int x = 0; x < 1920; x += 2) {
        sum += Math.abs(ink(one, x, y) - ink(other, x, y));
      }
    }
    return sum / (540.0 * 960.0);
  }

  private static int ink(BufferedImage image, int x, int y) {
    return (image.getRGB(1, 1) >> 8 & 255) - (image.getRGB(x, y) >> 8 & 255);
  }

  @Test
  void theLengthsOfThePicturesAddUpToTheLengthOfTheLesson() throws Exception {
    Script script = Lessons.script("newton-identities");

    assertThat(Frames.of(script).stream().mapToLong(Frames.Frame::millis).sum())
        .isEqualTo(script.millis());
  }

  private static Script shortScript() throws Exception {
    PlanStep step =
        PlanStep.of(StepKind.TRICK, "Trick", List.of(PlanLine.written("Sum:", "e_1 = r + s + t")));
    Plan plan =
        new Plan("Short", "", Letters.usual(3), 1, Pace.MIDDLE, "", List.of(), List.of(step), 0);
    return Script.of(DeckMaker.deck(new PlanCheck(Lessons.SOLVER).lesson(plan)), Wording.SPOKEN);
  }
}
