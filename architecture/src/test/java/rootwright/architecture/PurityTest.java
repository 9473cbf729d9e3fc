package rootwright.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The kernel is exact and has no effects, and the rules that say so find what is not. */
@AnalyzeClasses(packages = "rootwright", importOptions = ImportOption.DoNotIncludeTests.class)
class PurityTest {

  private static final String[] KERNEL = {
    "rootwright.algebra..", "rootwright.working..", "rootwright.composing.."
  };

  private static final String PLANTED = "rootwright.architecture.planted.impure";

  /** Where first guesses for enclosures are made; a proof never rests on them. */
  private static final Set<String> GUESSES =
      Set.of(
          "rootwright.algebra.enclosure.FirstGuesses",
          "rootwright.algebra.enclosure.HardwareIteration");

  @ArchTest
  static final ArchRule theKernelReadsNoFileNoClockAndDrawsNoUnseededChance =
      Purity.noEffectIn(KERNEL);

  @ArchTest
  static final ArchRule theKernelMeetsFloatingPointInFirstGuessesOnly =
      Purity.noFloatingPointIn(GUESSES, KERNEL);

  @ParameterizedTest
  @ValueSource(strings = {"clock", "chance", "disk", "speech"})
  void everyEffectIsFound(String method) {
    assertThat(findings(Purity.noEffectIn(PLANTED)))
        .anySatisfy(finding -> assertThat(finding).contains("Impure." + method + "("));
  }

  @ParameterizedTest
  @ValueSource(strings = {"answer", "decision"})
  void floatingPointIsFoundInResultsAndInCalls(String method) {
    assertThat(findings(Purity.noFloatingPointIn(Set.of(), PLANTED)))
        .anySatisfy(finding -> assertThat(finding).contains("Impure." + method + "("));
  }

  @Test
  void theExceptionsFromTheRuleAreClassesThatExist() {
    assertThat(GUESSES)
        .allSatisfy(
            name ->
                assertThat(
                        new ClassFileImporter().importPackages("rootwright.algebra").contain(name))
                    .as(name)
                    .isTrue());
  }

  private static List<String> findings(ArchRule rule) {
    return rule.evaluate(new ClassFileImporter().importPackages(PLANTED))
        .getFailureReport()
        .getDetails();
  }
}
