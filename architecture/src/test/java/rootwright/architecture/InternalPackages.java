package rootwright.architecture;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import com.tngtech.archunit.lang.syntax.ArchRuleDefinition;

/** A package named {@code internal} is for its parent, and for what lies in it. */
final class InternalPackages {

  /** Nobody but the parent looks into an internal package. */
  static final ArchRule RULE =
      ArchRuleDefinition.classes()
          .that(DescribedPredicate.describe("are internal", InternalPackages::isInternal))
          .should(new BeKnownToTheirParentOnly());

  private InternalPackages() {}

  private static boolean isInternal(JavaClass javaClass) {
    return javaClass.getPackageName().endsWith(".internal");
  }

  private static final class BeKnownToTheirParentOnly extends ArchCondition<JavaClass> {

    BeKnownToTheirParentOnly() {
      super("be known to the package above only");
    }

    @Override
    public void check(JavaClass internal, ConditionEvents events) {
      String parent = internal.getPackageName().replaceFirst("\\.internal$", "");
      for (Dependency dependency : internal.getDirectDependenciesToSelf()) {
        String from = dependency.getOriginClass().getPackageName();
        if (!from.equals(parent) && !from.equals(internal.getPackageName())) {
          events.add(SimpleConditionEvent.violated(dependency, dependency.getDescription()));
        }
      }
    }
  }
}
