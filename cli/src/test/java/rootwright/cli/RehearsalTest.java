package rootwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RehearsalTest {

  @Test
  void everyCommandOfTheRehearsalGoesThrough(@TempDir Path folder) throws IOException {
    assertThat(Rehearsal.play(folder)).isEqualTo(ExitStatus.DONE.code());
    assertThat(folder.resolve("out/show.html")).isNotEmptyFile();
    assertThat(folder.resolve("out/slides.pdf")).isNotEmptyFile();
  }
}
