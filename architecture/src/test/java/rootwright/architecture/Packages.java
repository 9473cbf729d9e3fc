package rootwright.architecture;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.dependencies.SliceAssignment;
import com.tngtech.archunit.library.dependencies.SliceIdentifier;
import com.tngtech.archunit.library.dependencies.SlicesRuleDefinition;

/**
 * What holds between packages: every package by itself, the one a floor is named after included.
 */
final class Packages {

  /** No package leads back to itself through others, wherever in the house those are. */
  static final ArchRule NO_CYCLE =
      SlicesRuleDefinition.slices().assignedFrom(new EveryPackage()).should().beFreeOfCycles();

  private Packages() {}

  /** Each package is a slice of its own. */
  private static final class EveryPackage implements SliceAssignment {

    @Override
    public SliceIdentifier getIdentifierOf(JavaClass javaClass) {
      return SliceIdentifier.of(javaClass.getPackageName());
    }

    @Override
    public String getDescription() {
      return "every package";
    }
  }
}
