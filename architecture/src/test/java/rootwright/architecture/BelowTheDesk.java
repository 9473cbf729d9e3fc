package rootwright.architecture;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaMember;
import com.tngtech.archunit.core.domain.JavaModifier;
import java.util.Set;

/**
 * What of the floors below the desk may be used above it: the notation; records, constants, closed
 * families and exceptions, which are read; what turns plain values into them, such as a word into a
 * wish; and a few lists and files by name. Everything else may be an algorithm.
 */
final class BelowTheDesk {

  private static final String LOWER =
      "rootwright\\.(algebra|working|composing|press|lesson|bank)\\..*";
  private static final String NOTATION = "rootwright.algebra.notation";

  /** Classes that are neither records nor constants, and yet only say what there is. */
  static final Set<String> LISTS_AND_FILES =
      Set.of(
          "rootwright.composing.blueprint.KnownNames",
          "rootwright.composing.family.Families",
          "rootwright.press.document.Language",
          "rootwright.lesson.show.LessonFile");

  /** An access to a lower floor that is none of these. */
  static final DescribedPredicate<JavaAccess<?>> MAY_BE_AN_ALGORITHM =
      DescribedPredicate.describe(
          "may be an algorithm below the desk",
          access -> isLower(access.getTargetOwner()) && !isOpen(access));

  private BelowTheDesk() {}

  private static boolean isLower(JavaClass owner) {
    return owner.getName().matches(LOWER) && !owner.getPackageName().equals(NOTATION);
  }

  private static boolean isOpen(JavaAccess<?> access) {
    JavaClass owner = access.getTargetOwner();
    return LISTS_AND_FILES.contains(owner.getName())
        || owner.isAssignableTo(Throwable.class)
        || isData(owner) && !computes(access.getTarget());
  }

  private static boolean isData(JavaClass owner) {
    return owner.isRecord() || owner.isEnum() || owner.isInterface();
  }

  /**
   * Whether a static method makes its result from something of the house, not from plain values.
   */
  private static boolean computes(AccessTarget target) {
    JavaMember member = target.resolveMember().orElse(null);
    return member instanceof JavaCodeUnit unit
        && unit.getModifiers().contains(JavaModifier.STATIC)
        && unit.getRawParameterTypes().stream()
            .anyMatch(type -> type.getPackageName().startsWith("rootwright"));
  }
}
