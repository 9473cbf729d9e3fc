package rootwright.lesson.film;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jcodec.common.DemuxerTrack;
import org.jcodec.common.io.NIOUtils;
import org.jcodec.common.io.SeekableByteChannel;
import org.jcodec.common.model.Packet;
import org.jcodec.containers.mp4.demuxer.MP4Demuxer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rootwright.lesson.Lessons;
import rootwright.lesson.caption.Wording;
import rootwright.lesson.narration.Script;
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
