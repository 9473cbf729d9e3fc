package rootwright.bank.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rootwright.working.Subjects;
import rootwright.working.kind.Kinds;
import rootwright.working.problem.Statement;

class ShelfTest {

  @TempDir Path folder;

  private static final Subjects SUBJECTS = new Subjects(new Kinds());

  private static Statement problem(String polynomial, String ask) {
    return Statement.of(polynomial, ask);
  }

  @Test
  void statementsWithLettersAndWithoutAPolynomialAreKeptAndTheirTwinsFound() throws Exception {
    Shelf shelf = new Shelf(folder.resolve("shelf.txt"), SUBJECTS);
    assertThat(shelf.add(problem("x^3 - 9x^2 + kx - 24", "k if r = 2s"))).isEmpty();
    assertThat(shelf.add(problem("", "x^5 + y^5 if x + y = 3, x y = 1"))).isEmpty();
    assertThat(words(shelf.add(problem("x^3 + 9x^2 + mx + 24", "m if r = 2s"))))
        .containsExactly("mirror image");
    assertThat(words(shelf.add(problem("2x^3 - 18x^2 + 2kx - 48", "k if r = 2s"))))
        .containsExactly("same problem scaled");
    assertThat(words(shelf.add(problem("", "a^5 + b^5 if a + b = 3, a b = 1"))))
        .containsExactly("same problem renamed");
    assertThat(shelf.add(problem("x^3 - 9x^2 + kx - 24", "k if r = 3s"))).isEmpty();
    assertThat(shelf.entries()).hasSize(3);
    assertThat(shelf.find(List.of("r = 3s"))).hasSize(1);
  }

  @Test
  void aProblemIsFoundAgainByAnyWordOfItsLine() throws Exception {
    Shelf shelf = new Shelf(folder.resolve("shelf.txt"), SUBJECTS);
    assertThat(shelf.add(problem("2x^3 - 6x^2 + x + 5", "Σ r^2"))).isEmpty();
    assertThat(shelf.add(problem("x^3 - 4x + 1", "Σ 1/r^2"))).isEmpty();
    assertThat(shelf.find(List.of("R^2", "4*X"))).hasSize(1);
    assertThat(shelf.find(List.of())).hasSize(2);
  }

  @Test
  void theSameProblemScaledIsNotAddedAndTheRelationIsNamed() throws Exception {
    Shelf shelf = shelfWithAnchor();
    assertThat(words(shelf.add(problem("4x^3 - 12x^2 + 2x + 10", "Σ r^2"))))
        .containsExactly("same problem scaled");
    assertThat(shelf.entries()).hasSize(1);
  }

  @Test
  void theMirrorImageIsNotAddedAndTheCommonKeyIsNamed() throws Exception {
    Shelf shelf = shelfWithAnchor();
    assertThat(words(shelf.add(problem("2x^3 + 6x^2 + x - 5", "Σ r^2"))))
        .containsExactly("mirror image, same key 8");
    assertThat(shelf.entries()).hasSize(1);
  }

  @Test
  void theReciprocalTwinIsNotAddedAndIsNamed() throws Exception {
    Shelf shelf = shelfWithAnchor();
    assertThat(words(shelf.add(problem("5x^3 + x^2 - 6x + 2", "Σ 1/r^2"))))
        .containsExactly("reciprocal twin, same key 8");
    assertThat(shelf.entries()).hasSize(1);
  }

  @Test
  void aShiftIsReportedAndAdded() throws Exception {
    Shelf shelf = new Shelf(folder.resolve("shelf.txt"), SUBJECTS);
    shelf.add(problem("x^3 - 4x + 1", "Σ 1/r"));
    // The roots moved by 1: (x - 1)^3 - 4(x - 1) + 1, and the ask moved along.
    assertThat(words(shelf.add(problem("x^3 - 3x^2 - x + 4", "Σ 1/(r - 1)"))))
        .containsExactly("same problem shifted: every root moved by 1");
    assertThat(shelf.entries()).hasSize(2);
  }

  private Shelf shelfWithAnchor() throws Exception {
    Shelf shelf = new Shelf(folder.resolve("shelf.txt"), SUBJECTS);
    assertThat(shelf.add(problem("2x^3 - 6x^2 + x + 5", "Σ r^2"))).isEmpty();
    return shelf;
  }

  private static List<String> words(List<ShelfTwin> twins) {
    return twins.stream().map(twin -> twin.twin().words()).toList();
  }

  @Test
  void whatStoodInTheFileStaysAsItWas() throws Exception {
    Path file = folder.resolve("shelf.txt");
    String before = "# my own notes\nx^2 - 5x + 3 ; Σ r^3\nno problem at all\n";
    Files.writeString(file, before);
    Shelf shelf = new Shelf(file, SUBJECTS);
    shelf.add(problem("x^3 - 4x + 1", "Σ 1/r^2"));
    assertThat(Files.readString(file)).startsWith(before);
    assertThat(shelf.entries()).hasSize(2);
  }
}
