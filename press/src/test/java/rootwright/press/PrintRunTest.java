package rootwright.press;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.junit.jupiter.api.Test;
import rootwright.press.deliverable.Deliverables;
import rootwright.press.document.Layout;
import rootwright.press.paper.BlockedException;
import rootwright.press.paper.Paper;
import rootwright.press.paper.Version;
import rootwright.press.paper.Versions;

class PrintRunTest {

  /** Keeps files in memory. */
  private static final class Shelf implements PrintRun.Store {
    private final Map<String, PrintedFile> files = new ConcurrentHashMap<>();

    @Override
    public boolean has(String name) {
      return files.containsKey(name);
    }

    @Override
    public void put(PrintedFile file) {
      files.put(file.name(), file);
    }
  }

  private static Paper individual(int versions) throws BlockedException {
    List<Version> all =
        Versions.reordered(PaperSamples.draft().content().versions().get(0).items(), versions, 7);
    return Paper.draft(PaperSamples.content(all)).checked(PaperSamples::work).frozen();
  }

  private static List<PrintJob> jobs(Paper paper) {
    List<PrintJob> jobs = new ArrayList<>();
    for (Version version : paper.content().versions()) {
      for (String name : List.of("sheet", "key")) {
        jobs.add(
            new PrintJob(
                paper,
                version.mark(),
                Deliverables.named(name).orElseThrow(),
                Layout.USUAL,
                Printed.OUTPUTS.named("text").orElseThrow()));
      }
    }
    return jobs;
  }

  @Test
  void everyStudentGetsAVersionAndTheCoachItsKey() throws Exception {
    Paper paper = individual(200);
    Shelf shelf = new Shelf();
    List<Integer> steps = Collections.synchronizedList(new ArrayList<>());
    int printed =
        PrintRun.print(jobs(paper), shelf, (done, all) -> steps.add(done * 1000 + all), 2);
    assertThat(printed).isEqualTo(400);
    assertThat(shelf.files.keySet())
        .hasSize(400)
        .contains(paper.code() + "-001-sheet.txt", paper.code() + "-200-key.txt");
    assertThat(steps).hasSize(400).contains(400_400);
  }

  @Test
  void aRunThatWasBrokenOffGoesOnWhereItStopped() throws Exception {
    Paper paper = individual(30);
    Shelf shelf = new Shelf();
    PrintRun.print(jobs(paper).subList(0, 25), shelf, (done, all) -> {}, 2);
    assertThat(PrintRun.print(jobs(paper), shelf, (done, all) -> {}, 2)).isEqualTo(35);
    assertThat(shelf.files).hasSize(60);
  }

  @Test
  void aStaleKeyStopsTheRun() {
    Paper draft = PaperSamples.draft();
    assertThatThrownBy(() -> PrintRun.print(jobs(draft), new Shelf(), (done, all) -> {}, 2))
        .isInstanceOf(BlockedException.class);
  }
}
