package rootwright.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noMethods;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** What the floors must not do, beyond what Maven already forbids. */
@AnalyzeClasses(packages = "rootwright", importOptions = ImportOption.DoNotIncludeTests.class)
class FloorsTest {

  private static final String[] KERNEL = {
    "rootwright.algebra..", "rootwright.working..", "rootwright.composing.."
  };

  @ArchTest static final ArchRule packagesOfTheAlgebraFormNoCycle = noCycleIn("algebra");

  @ArchTest static final ArchRule packagesOfTheWorkingFloorFormNoCycle = noCycleIn("working");

  @ArchTest static final ArchRule packagesOfTheComposingFloorFormNoCycle = noCycleIn("composing");

  @ArchTest static final ArchRule packagesOfThePressFormNoCycle = noCycleIn("press");

  @ArchTest static final ArchRule packagesOfTheLessonFormNoCycle = noCycleIn("lesson");

  @ArchTest static final ArchRule packagesOfTheWebFormNoCycle = noCycleIn("web");

  @ArchTest
  static final ArchRule theTwoChecksShareNothingButTheNumbersAndTheReader =
      noClasses()
          .that()
          .resideInAPackage("rootwright.working.check.second..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "rootwright.working.check.exact..",
              "rootwright.algebra.roots..",
              "rootwright.algebra.symmetric..")
          .because("a second opinion that asks the first is none");

  @ArchTest
  static final ArchRule theExactCheckNeverLooksAtEnclosures =
      noClasses()
          .that()
          .resideInAPackage("rootwright.working.check.exact..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "rootwright.working.check.second..",
              "rootwright.algebra.enclosure..",
              "rootwright.algebra.companion..");

  @ArchTest
  static final ArchRule theKernelReadsNoFileNoClockAndDrawsNoUnseededChance =
      noClasses()
          .that()
          .resideInAnyPackage(KERNEL)
          .should()
          .dependOnClassesThat()
          .haveNameMatching(
              "java\\.(io\\.(File|Reader|Writer|InputStream|OutputStream|PrintStream).*|nio\\.file\\..*"
                  + "|net\\..*|sql\\..*|util\\.(Random|Scanner|Timer|Date|Calendar)"
                  + "|time\\.(Clock|Instant|LocalDate|LocalDateTime|ZonedDateTime)"
                  + "|util\\.concurrent\\.ThreadLocalRandom|lang\\.(Process|ProcessBuilder|Runtime))")
          .because("the kernel answers the same question the same way, anywhere");

  @ArchTest
  static final ArchRule theKernelNeverAsksWhatTimeItIs =
      noClasses()
          .that()
          .resideInAnyPackage(KERNEL)
          .should()
          .callMethod(System.class, "nanoTime")
          .orShould()
          .callMethod(System.class, "currentTimeMillis")
          .orShould()
          .callMethod(Math.class, "random");

  /** First guesses for enclosures may be in floating point; a proof never rests on them. */
  @ArchTest
  static final ArchRule theKernelAnswersNothingInFloatingPoint =
      noMethods()
          .that()
          .areDeclaredInClassesThat()
          .resideInAnyPackage(KERNEL)
          .and()
          .areDeclaredInClassesThat()
          .haveNameNotMatching(".*\\.(FirstGuesses|HardwareIteration)(\\$.*)?")
          .should()
          .haveRawReturnType(double.class)
          .orShould()
          .haveRawReturnType(float.class)
          .orShould()
          .haveRawReturnType(double[].class);

  @ArchTest
  static final ArchRule thePageAndTheTerminalCallNoAlgorithmBelowTheDesk =
      noClasses()
          .that()
          .resideInAnyPackage("rootwright.web..", "rootwright.cli..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "rootwright.algebra.roots..",
              "rootwright.algebra.symmetric..",
              "rootwright.algebra.factor..",
              "rootwright.algebra.real..",
              "rootwright.algebra.companion..",
              "rootwright.working.check..",
              "rootwright.composing.scan.candidate..",
              "rootwright.composing.scan.filter..")
          .orShould()
          .dependOnClassesThat()
          .haveNameMatching("rootwright\\.composing\\.scan\\.(Scan|Relaxations|Conflicts)");

  private static ArchRule noCycleIn(String module) {
    return slices()
        .matching("rootwright." + module + ".(**)")
        .should()
        .beFreeOfCycles()
        .allowEmptyShould(true);
  }
}
