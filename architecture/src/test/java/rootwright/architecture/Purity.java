package rootwright.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaMember;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.HashMap;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** What exact mathematics must keep away from, as rules for the packages it lives in. */
final class Purity {

  private static final String EFFECTS =
      "java\\.(io\\.(File|Reader|Writer|InputStream|OutputStream|PrintStream).*|nio\\.file\\..*"
          + "|net\\..*|sql\\..*|util\\.(Random|Scanner|Timer|Date|Calendar)"
          + "|time\\.(Clock|Instant|LocalDate|LocalTime|LocalDateTime|OffsetDateTime|ZonedDateTime)"
          + "|util\\.concurrent\\.ThreadLocalRandom|security\\.SecureRandom"
          + "|lang\\.(Process|ProcessBuilder|Runtime))";

  private Purity() {}

  /** No file, no net, no clock, no process, and no chance that is not a seeded generator. */
  static ArchRule noEffectIn(String... packages) {
    return noClasses()
        .that()
        .resideInAnyPackage(packages)
        .should()
        .dependOnClassesThat()
        .haveNameMatching(EFFECTS)
        .orShould()
        .callMethod(System.class, "nanoTime")
        .orShould()
        .callMethod(System.class, "currentTimeMillis")
        .orShould()
        .callMethod(Math.class, "random")
        .orShould()
        .accessField(System.class, "out")
        .orShould()
        .accessField(System.class, "err")
        .because("the kernel answers the same question the same way, anywhere");
  }

  /**
   * No floating point in a field, a parameter or a result, and no call of anything that takes or
   * gives it, except in the classes named. The load factor of a hash table decides nothing.
   */
  static ArchRule noFloatingPointIn(Set<String> exceptions, String... packages) {
    return classes()
        .that()
        .resideInAnyPackage(packages)
        .and(
            DescribedPredicate.describe(
                "are not " + exceptions, each -> !exceptions.contains(outermost(each))))
        .should(new MeetNoFloatingPoint());
  }

  private static String outermost(JavaClass javaClass) {
    return javaClass.getName().replaceFirst("\\$.*", "");
  }

  private static final class MeetNoFloatingPoint extends ArchCondition<JavaClass> {

    private static final Set<String> FLOATING =
        Set.of("double", "float", "java.lang.Double", "java.lang.Float");

    MeetNoFloatingPoint() {
      super("meet no floating point");
    }

    @Override
    public void check(JavaClass javaClass, ConditionEvents events) {
      javaClass.getMembers().stream()
          .filter(member -> !isHashTable(member.getOwner()) && isFloating(typesOf(member)))
          .forEach(member -> found(member, member.getDescription(), events));
      javaClass.getAccessesFromSelf().stream()
          .filter(
              access ->
                  !isHashTable(access.getTargetOwner()) && isFloating(typesOf(access.getTarget())))
          .forEach(access -> found(access, access.getDescription(), events));
    }

    private static boolean isHashTable(JavaClass owner) {
      return owner.isAssignableTo(HashMap.class);
    }

    private static Stream<JavaClass> typesOf(JavaMember member) {
      return member instanceof JavaField field
          ? Stream.of(field.getRawType())
          : typesOf(
              ((JavaCodeUnit) member).getRawParameterTypes(),
              ((JavaCodeUnit) member).getRawReturnType());
    }

    private static Stream<JavaClass> typesOf(AccessTarget target) {
      return target instanceof AccessTarget.FieldAccessTarget field
          ? Stream.of(field.getRawType())
          : typesOf(
              ((AccessTarget.CodeUnitAccessTarget) target).getRawParameterTypes(),
              ((AccessTarget.CodeUnitAccessTarget) target).getRawReturnType());
    }

    private static Stream<JavaClass> typesOf(List<JavaClass> parameters, JavaClass result) {
      return Stream.concat(parameters.stream(), Stream.of(result));
    }

    private static boolean isFloating(Stream<JavaClass> types) {
      return types.anyMatch(type -> FLOATING.contains(type.getBaseComponentType().getName()));
    }

    private static void found(Object where, String text, ConditionEvents events) {
      events.add(SimpleConditionEvent.violated(where, text));
    }
  }
}
