package rootwright.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import org.junit.jupiter.api.Test;

/** The page and the terminal go to the desk for everything that is worked out. */
@AnalyzeClasses(packages = "rootwright", importOptions = ImportOption.DoNotIncludeTests.class)
class DeskTest {

  @ArchTest
  static final ArchRule thePageAndTheTerminalCallNoAlgorithmBelowTheDesk =
      noClasses()
          .that()
          .resideInAnyPackage("rootwright.web..", "rootwright.cli..")
          .should()
          .accessTargetWhere(BelowTheDesk.MAY_BE_AN_ALGORITHM);

  @Test
  void theDeskItselfWouldBeFoundToCallAlgorithms() {
    assertThat(
            noClasses()
                .should()
                .accessTargetWhere(BelowTheDesk.MAY_BE_AN_ALGORITHM)
                .evaluate(new ClassFileImporter().importPackages("rootwright"))
                .getFailureReport()
                .getDetails())
        .anySatisfy(
            finding ->
                assertThat(finding).contains("rootwright.desk.Desk.work(", "Subjects.work("));
  }

  @Test
  void theExceptionsFromTheRuleAreClassesThatExist() {
    JavaClasses house = new ClassFileImporter().importPackages("rootwright");
    assertThat(BelowTheDesk.LISTS_AND_FILES)
        .allSatisfy(name -> assertThat(house.contain(name)).as(name).isTrue());
  }
}
