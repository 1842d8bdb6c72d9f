package org.ensemblerules.gates;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaMember;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.domain.JavaType;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiConsumer;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** What every module's types keep: what they show, how they are named, where they stand. */
public final class TypeRules {
  private static final String OWN = "org.ensemblerules.";
  private static final String NULL_MARKED = "org.jspecify.annotations.NullMarked";
  private static final List<String> VAGUE = List.of("Manager", "Helper", "Util", "Utils");

  private TypeRules() {}

  /**
   * Public and protected members of exported types name JDK types and our own exported ones only,
   * in parameters, results, fields, bounds, parents and thrown exceptions, type arguments included.
   *
   * @param exported the packages that the module shows
   * @param hidden the packages that it keeps to itself
   */
  public static ArchRule exportedTypesShowOnlyJdkAndOwnTypes(
      Set<String> exported, Set<String> hidden) {
    Predicate<JavaClass> allowed =
        shown ->
            shown.isPrimitive()
                || shown.getName().startsWith("java.")
                || (shown.getName().startsWith(OWN) && !hidden.contains(shown.getPackageName()));
    return rule(
        "show only JDK types and our own",
        (type, faults) -> {
          if (!exported.contains(type.getPackageName()) || !reachable(type)) {
            return;
          }
          shown(type.getDescription(), parentsAndBounds(type), allowed, faults);
          for (JavaField field : type.getFields()) {
            if (visible(field)) {
              shown(field.getDescription(), Stream.of(field.getType()), allowed, faults);
            }
          }
          for (JavaCodeUnit unit : type.getCodeUnits()) {
            if (visible(unit)) {
              shown(unit.getDescription(), signature(unit), allowed, faults);
            }
          }
        });
  }

  /** No name that says only that a class does things. */
  public static ArchRule namesSayWhatATypeIs() {
    return rule(
        "not be named " + VAGUE,
        (type, faults) ->
            VAGUE.stream()
                .filter(type.getSimpleName()::endsWith)
                .forEach(end -> faults.add(type.getDescription() + " is named ..." + end)));
  }

  /** Null is the exception everywhere in the public interface. */
  public static ArchRule publicTypesStandInNullMarkedPackages() {
    return rule(
        "stand in a package that is @NullMarked",
        (type, faults) -> {
          if (type.isTopLevelClass()
              && type.getModifiers().contains(JavaModifier.PUBLIC)
              && !type.getPackage().isAnnotatedWith(NULL_MARKED)) {
            faults.add(type.getDescription() + " stands in a package without @NullMarked");
          }
        });
  }

  /** A rule over all classes whose check adds one line for each fault it finds. */
  public static ArchRule rule(String description, BiConsumer<JavaClass, Set<String>> check) {
    ArchCondition<JavaClass> condition =
        new ArchCondition<>(description) {
          @Override
          public void check(JavaClass type, ConditionEvents events) {
            Set<String> faults = new TreeSet<>();
            check.accept(type, faults);
            for (String fault : faults) {
              events.add(SimpleConditionEvent.violated(type, fault));
            }
          }
        };
    return classes().should(condition);
  }

  private static void shown(
      String where,
      Stream<? extends JavaType> types,
      Predicate<JavaClass> allowed,
      Set<String> faults) {
    types
        .flatMap(type -> type.getAllInvolvedRawTypes().stream())
        .map(JavaClass::getBaseComponentType)
        .filter(allowed.negate())
        .forEach(raw -> faults.add(where + " shows " + raw.getName()));
  }

  private static Stream<JavaType> parentsAndBounds(JavaClass type) {
    return Stream.of(
            type.getSuperclass().stream(),
            type.getInterfaces().stream(),
            type.getTypeParameters().stream())
        .flatMap(types -> types);
  }

  private static Stream<JavaType> signature(JavaCodeUnit unit) {
    return Stream.of(
            unit.getParameterTypes().stream(),
            Stream.of(unit.getReturnType()),
            unit.getTypeParameters().stream(),
            unit.getExceptionTypes().stream())
        .flatMap(types -> types);
  }

  private static boolean reachable(JavaClass type) {
    return open(type.getModifiers())
        && type.getEnclosingClass().map(TypeRules::reachable).orElse(true);
  }

  private static boolean visible(JavaMember member) {
    return open(member.getModifiers());
  }

  private static boolean open(Set<JavaModifier> modifiers) {
    return modifiers.contains(JavaModifier.PUBLIC) || modifiers.contains(JavaModifier.PROTECTED);
  }
}
