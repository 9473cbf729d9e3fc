package rootwright.bench;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rootwright.desk.Desk;
import rootwright.press.Outputs;
import rootwright.press.PrintJob;
import rootwright.press.PrintRun;
import rootwright.press.PrintedFile;
import rootwright.press.deliverable.Deliverables;
import rootwright.press.document.Language;
import rootwright.press.document.Layout;
import rootwright.press.output.Output;
import rootwright.press.paper.Content;
import rootwright.press.paper.Form;
import rootwright.press.paper.Paper;
import rootwright.press.paper.PaperItem;
import rootwright.press.paper.Task;
import rootwright.press.paper.Version;
import rootwright.press.paper.Versions;
import rootwright.working.problem.Statement;
import rootwright.working.route.ClassProfile;

/**
 * How long papers take to print, by the clock on the wall and in processor time of this thread: the
 * first PDF of a new process, then sheet, key and solutions of ten problems again and again. The
 * problems are worked before the clock starts.
 */
public final class PaperTime {

  private static final String[] PROBLEMS = {
    "3x^3 - 7x^2 + 5x + 11", "r + s + t",
    "2x^3 - 6x^2 + x + 5", "r^2 + s^2 + t^2",
    "5x^3 - 10x^2 + x - 4", "1/(r-3) + 1/(s-3) + 1/(t-3)",
    "4x^3 - 10x^2 - x + 5", "r^2 + s^2 + t^2",
    "x^3 - 4x^2 + 2x + 6", "(r+s)(s+t)(t+r)",
    "x^3 - 2x^2 + 3x - 5", "S_4",
    "x^3 - x^2 - 4x - 1", "r^2 s + s^2 t + t^2 r",
    "x^3 - 3x^2 - 2x + 5", "1/(r^2-1) + 1/(s^2-1) + 1/(t^2-1)",
    "x^4 - 3x^3 + 2x^2 + 5x - 7", "Σ 1/r",
    "x^3 - 5x + 3", "Σ r^2 s"
  };

  private static final int VERSIONS = 40;

  private PaperTime() {}

  /** Prints the figures; an argument is the number of warm rounds (20). */
  public static void main(String[] arguments) throws Exception {
    int rounds = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 20;
    Paper paper = paper(1);
    Output pdf = Outputs.usual().named("pdf").orElseThrow();
    System.out.println("first sheet: " + timed(() -> print(paper, pdf, "sheet")));
    System.out.println("then key:    " + timed(() -> print(paper, pdf, "key")));
    System.out.println("then solutions: " + timed(() -> print(paper, pdf, "solutions")));
    List<Figures> warm = new ArrayList<>();
    for (int k = 0; k < rounds; k++) {
      warm.add(
          timed(
              () -> {
                print(paper, pdf, "sheet");
                print(paper, pdf, "key");
                print(paper, pdf, "solutions");
              }));
    }
    System.out.println("sheet + key + solutions, median of the last half: " + median(warm));
    System.out.println(
        VERSIONS + " versions with their keys on two threads: " + wholeProcess(() -> run(pdf)));
    for (Output output : Outputs.usual().all()) {
      List<Figures> each = new ArrayList<>();
      for (int k = 0; k < rounds; k++) {
        each.add(timed(() -> print(paper, output, "scored")));
      }
      System.out.println("sheet with answers as " + output.name() + ": " + median(each));
    }
  }

  /** Individual versions, each with its key, kept nowhere. */
  private static void run(Output pdf) throws Exception {
    Paper paper = paper(VERSIONS);
    List<PrintJob> jobs = new ArrayList<>();
    for (Version version : paper.content().versions()) {
      for (String name : List.of("sheet", "key")) {
        jobs.add(
            new PrintJob(
                paper, version.mark(), Deliverables.named(name).orElseThrow(), Layout.USUAL, pdf));
      }
    }
    PrintRun.Store nowhere =
        new PrintRun.Store() {
          @Override
          public boolean has(String name) {
            return false;
          }

          @Override
          public void put(PrintedFile file) {}
        };
    PrintRun.print(jobs, nowhere, (done, all) -> {}, 2);
  }

  private static void print(Paper paper, Output output, String deliverable) throws Exception {
    PrintedFile.of(paper, "", Deliverables.named(deliverable).orElseThrow(), Layout.USUAL, output);
  }

  private static Paper paper(int versions) throws Exception {
    List<PaperItem> items = new ArrayList<>();
    for (int k = 0; k < PROBLEMS.length; k += 2) {
      items.add(
          PaperItem.of(
              new Task.Find(
                  Statement.of(PROBLEMS[k], PROBLEMS[k + 1]), new Form.Written(), Optional.empty()),
              4));
    }
    Desk desk = new Desk();
    return Paper.draft(
            new Content(
                "Sums over the roots",
                Language.ENGLISH,
                "Roots are complex numbers.",
                LocalDate.of(2026, 3, 5),
                versions == 1
                    ? List.of(new Version("", items))
                    : Versions.reordered(items, versions, 7)))
        .checked(statement -> desk.work(statement, ClassProfile.EVERYTHING))
        .frozen();
  }

  private interface Work {
    void run() throws Exception;
  }

  private record Figures(long wall, long processor) {
    @Override
    public String toString() {
      return "%d ms on the wall, %d ms of processor time".formatted(wall, processor);
    }
  }

  private static Figures timed(Work work) throws Exception {
    long wall = System.nanoTime();
    long processor = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    work.run();
    return new Figures(
        (System.nanoTime() - wall) / 1_000_000,
        (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - processor) / 1_000_000);
  }

  private static Figures wholeProcess(Work work) throws Exception {
    OperatingSystemMXBean system =
        (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
    long wall = System.nanoTime();
    long processor = system.getProcessCpuTime();
    work.run();
    return new Figures(
        (System.nanoTime() - wall) / 1_000_000,
        (system.getProcessCpuTime() - processor) / 1_000_000);
  }

  private static Figures median(List<Figures> all) {
    List<Figures> last = all.subList(all.size() / 2, all.size());
    long[] wall = last.stream().mapToLong(Figures::wall).sorted().toArray();
    long[] processor = last.stream().mapToLong(Figures::processor).sorted().toArray();
    return new Figures(wall[wall.length / 2], processor[processor.length / 2]);
  }
}
