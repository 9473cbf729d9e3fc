package rootwright.architecture;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** Which floor may know which: what the build files say, said again by the compiled code. */
@AnalyzeClasses(packages = "rootwright", importOptions = ImportOption.DoNotIncludeTests.class)
class FloorsTest {

  @ArchTest
  static final ArchRule aFloorKnowsOnlyThoseBelowIt =
      layeredArchitecture()
          .consideringOnlyDependenciesInLayers()
          .layer("algebra")
          .definedBy("rootwright.algebra..")
          .layer("working")
          .definedBy("rootwright.working..")
          .layer("composing")
          .definedBy("rootwright.composing..")
          .layer("press")
          .definedBy("rootwright.press..")
          .layer("lesson")
          .definedBy("rootwright.lesson..")
          .layer("bank")
          .definedBy("rootwright.bank..")
          .layer("desk")
          .definedBy("rootwright.desk..")
          .layer("web")
          .definedBy("rootwright.web..")
          .layer("cli")
          .definedBy("rootwright.cli..")
          .whereLayer("algebra")
          .mayNotAccessAnyLayer()
          .whereLayer("working")
          .mayOnlyAccessLayers("algebra")
          .whereLayer("composing")
          .mayOnlyAccessLayers("algebra", "working")
          .whereLayer("press")
          .mayOnlyAccessLayers("algebra", "working", "composing")
          .whereLayer("lesson")
          .mayOnlyAccessLayers("algebra", "working", "composing", "press")
          .whereLayer("bank")
          .mayOnlyAccessLayers("algebra", "working", "composing")
          .whereLayer("desk")
          .mayOnlyAccessLayers("algebra", "working", "composing", "press", "lesson", "bank")
          .whereLayer("web")
          .mayNotBeAccessedByAnyLayer()
          .ignoreDependency(resideInAPackage("rootwright.cli"), resideInAPackage("rootwright.web"))
          .whereLayer("cli")
          .mayNotBeAccessedByAnyLayer();

  @ArchTest
  static final ArchRule theTerminalStartsThePageAndKnowsNothingElseOfIt =
      noClasses()
          .that()
          .resideInAPackage("rootwright.cli..")
          .should()
          .dependOnClassesThat()
          .haveNameMatching("rootwright\\.web\\.(?!DeskServer|DeskSettings|OpenPage).*");

  @ArchTest static final ArchRule internalPackagesBelongToTheirParent = InternalPackages.RULE;
}
