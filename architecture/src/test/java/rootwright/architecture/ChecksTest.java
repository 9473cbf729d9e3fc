package rootwright.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The two checks know nothing of each other, and a slip nothing of the right answer. */
@AnalyzeClasses(packages = "rootwright", importOptions = ImportOption.DoNotIncludeTests.class)
class ChecksTest {

  private static final String EXACT = "rootwright.working.check.exact";
  private static final String SECOND = "rootwright.working.check.second";

  private static final String[] OF_THE_EXACT_CHECK = {
    EXACT, "rootwright.algebra.roots", "rootwright.algebra.symmetric"
  };

  private static final String[] OF_THE_SECOND_CHECK = {
    SECOND, "rootwright.algebra.enclosure", "rootwright.algebra.companion"
  };

  @ArchTest
  static final ArchRule theSecondCheckAsksNothingOfTheFirst =
      noClasses()
          .that()
          .resideInAPackage(SECOND)
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(OF_THE_EXACT_CHECK)
          .because("a second opinion that asks the first is none");

  @ArchTest
  static final ArchRule theExactCheckNeverLooksAtEnclosures =
      noClasses()
          .that()
          .resideInAPackage(EXACT)
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(OF_THE_SECOND_CHECK);

  /** Asked knows the value for the routes; a slip must not look at it. */
  @ArchTest
  static final ArchRule slipsDoNotKnowTheRightAnswer =
      noClasses()
          .that()
          .resideInAPackage("rootwright.working.slip..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("rootwright.working.solve..", SECOND)
          .orShould()
          .callMethod("rootwright.working.ask.Asked", "value")
          .because("a mistake that looks at the answer is no mistake");

  /** A rule about a package that was renamed would hold for ever. */
  @Test
  void packagesThatTheChecksKeepApartExist() {
    assertThat(new ClassFileImporter().importPackages("rootwright.algebra", "rootwright.working"))
        .extracting(JavaClass::getPackageName)
        .contains(
            Stream.of(OF_THE_EXACT_CHECK, OF_THE_SECOND_CHECK)
                .flatMap(Stream::of)
                .toArray(String[]::new));
  }
}
