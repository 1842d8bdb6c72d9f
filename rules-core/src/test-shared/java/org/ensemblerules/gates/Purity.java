package org.ensemblerules.gates;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.lang.ArchRule;
import java.io.Serializable;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;

/** Same inputs, same answer: nothing is read from the machine, the clock or chance. */
public final class Purity {
  private static final List<String> FORBIDDEN_PACKAGES =
      List.of(
          "java.io",
          "java.net",
          "java.nio.channels",
          "java.nio.file",
          "java.sql",
          "java.util.logging",
          "java.util.random",
          "com.fasterxml");

  /** Marks a type, reads nothing. */
  private static final Set<String> ALLOWED_TYPES = Set.of(Serializable.class.getName());

  private static final List<Class<?>> FORBIDDEN_TYPES = List.of(Random.class, Clock.class);

  private static final Set<String> FORBIDDEN_TYPE_NAMES =
      Set.of("java.time.InstantSource", "java.util.SplittableRandom");

  private static final Map<String, Set<String>> FORBIDDEN_CALLS =
      Map.of(
          "java.lang.System",
          Set.of("currentTimeMillis", "nanoTime", "getenv", "getProperty", "getProperties"),
          "java.lang.Math",
          Set.of("random"),
          "java.lang.StrictMath",
          Set.of("random"),
          "java.time.ZoneId",
          Set.of("systemDefault"),
          "java.util.Calendar",
          Set.of("getInstance"),
          "java.util.GregorianCalendar",
          Set.of("<init>"),
          "java.util.Locale",
          Set.of("getDefault"),
          "java.util.TimeZone",
          Set.of("getDefault"),
          "java.util.UUID",
          Set.of("randomUUID"));

  private Purity() {}

  /** No input or output, no clock, no randomness, no default locale or zone. */
  public static ArchRule nothingIsReadFromOutside() {
    return TypeRules.rule(
        "read nothing from the machine, the clock or chance",
        (type, faults) -> {
          for (Dependency dependency : type.getDirectDependenciesFromSelf()) {
            if (isForbidden(dependency.getTargetClass().getBaseComponentType())) {
              faults.add(dependency.getDescription());
            }
          }
          for (JavaAccess<?> access : type.getAccessesFromSelf()) {
            if (isForbidden(access)) {
              faults.add(access.getDescription());
            }
          }
        });
  }

  /** Nothing that one caller leaves behind for the next. */
  public static ArchRule staticFieldsAreFinal() {
    return TypeRules.rule(
        "have no static field that changes",
        (type, faults) -> {
          for (JavaField field : type.getFields()) {
            Set<JavaModifier> modifiers = field.getModifiers();
            if (modifiers.contains(JavaModifier.STATIC)
                && !modifiers.contains(JavaModifier.FINAL)) {
              faults.add(field.getDescription() + " is static and not final");
            }
          }
        });
  }

  private static boolean isForbidden(JavaClass target) {
    if (ALLOWED_TYPES.contains(target.getName())) {
      return false;
    }
    return FORBIDDEN_PACKAGES.stream().anyMatch(name -> isInside(target, name))
        || FORBIDDEN_TYPES.stream().anyMatch(target::isAssignableTo)
        || FORBIDDEN_TYPE_NAMES.contains(target.getName());
  }

  private static boolean isInside(JavaClass target, String packageName) {
    return target.getPackageName().equals(packageName)
        || target.getPackageName().startsWith(packageName + ".");
  }

  /** Calls and method references alike. */
  private static boolean isForbidden(JavaAccess<?> access) {
    JavaClass owner = access.getTargetOwner();
    String name = access.getName();
    boolean readsTheClock = isInside(owner, "java.time") && name.equals("now");
    boolean isToday = access.getTarget().getFullName().equals("java.util.Date.<init>()");
    return readsTheClock
        || isToday
        || FORBIDDEN_CALLS.getOrDefault(owner.getName(), Set.of()).contains(name);
  }
}
