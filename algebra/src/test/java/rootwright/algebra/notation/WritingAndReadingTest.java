package rootwright.algebra.notation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.Function;
import org.junit.jupiter.api.Test;

/** Writing and reading back is the identity on formulas in normal form. */
class WritingAndReadingTest {

  private static final int SAMPLES = 3_000;

  @Test
  void plainTextReadsBackAsTheSameFormula() throws UnreadableException {
    readsBack(PlainWriter::write, 3, 41);
  }

  @Test
  void unicodeReadsBackAsTheSameFormula() throws UnreadableException {
    readsBack(UnicodeWriter::write, 2, 42);
  }

  @Test
  void latexReadsBackAsTheSameFormula() throws UnreadableException {
    readsBack(LatexWriter::write, 3, 44);
  }

  @Test
  void theNormalFormOfANormalFormIsItself() {
    RandomFormulas formulas = new RandomFormulas(RandomFormulas.seed(43));
    for (int sample = 0; sample < SAMPLES; sample++) {
      Formula normal = NormalForm.of(formulas.draw(4));
      assertThat(NormalForm.of(normal)).isEqualTo(normal);
    }
  }

  private static void readsBack(Function<Formula, String> write, int depth, long usual)
      throws UnreadableException {
    long seed = RandomFormulas.seed(usual);
    RandomFormulas formulas = new RandomFormulas(seed);
    for (int sample = 0; sample < SAMPLES; sample++) {
      Formula formula = formulas.draw(1 + sample % depth);
      String text = write.apply(formula);
      if (text.contains("⁵√")) {
        continue;
      }
      Formula read;
      try {
        read = FormulaReader.formula(text);
      } catch (UnreadableException unreadable) {
        throw new AssertionError(
            "seed %d sample %d: %s is not read: %s"
                .formatted(seed, sample, text, unreadable.refusal()),
            unreadable);
      }
      assertThat(read)
          .as("seed %d sample %d: %s is read as %s", seed, sample, text, PlainWriter.write(read))
          .isEqualTo(NormalForm.of(formula));
    }
  }
}
