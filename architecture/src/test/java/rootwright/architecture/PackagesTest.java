package rootwright.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import org.junit.jupiter.api.Test;

/** Packages form no cycle, and the rule that says so finds one where there is one. */
@AnalyzeClasses(packages = "rootwright", importOptions = ImportOption.DoNotIncludeTests.class)
class PackagesTest {

  @ArchTest static final ArchRule packagesOfTheHouseFormNoCycle = Packages.NO_CYCLE;

  @Test
  void twoPackagesThatKnowEachOtherAreFound() {
    assertThat(
            Packages.NO_CYCLE
                .evaluate(
                    new ClassFileImporter().importPackages("rootwright.architecture.planted.cycle"))
                .getFailureReport()
                .getDetails())
        .singleElement()
        .asString()
        .contains("planted.cycle.egg", "planted.cycle.hen");
  }
}
