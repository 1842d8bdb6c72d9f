package org.ensemblerules.gates;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchRule;
import java.util.List;
import java.util.Set;

/**
 * Packages that stand on one another.
 *
 * @param root the package that holds them all
 * @param bottomUp their names below the root, each reading only those before it
 */
public record PackageOrder(String root, List<String> bottomUp) {
  /** Each question has one package, and reads only the packages below it. */
  public ArchRule eachReadsOnlyThoseBelow() {
    return TypeRules.rule("read only packages below their own: " + bottomUp, this::checkOrder);
  }

  /** Only these packages read the given one; every other function belongs to its own table. */
  public ArchRule onlyTheseRead(String read, Set<String> readers) {
    return TypeRules.rule(
        "not read " + read + " unless in " + readers,
        (type, faults) -> {
          if (readers.contains(placeOf(type))) {
            return;
          }
          for (Dependency dependency : type.getDirectDependenciesFromSelf()) {
            if (placeOf(dependency.getTargetClass()).equals(read)) {
              faults.add(dependency.getDescription());
            }
          }
        });
  }

  private void checkOrder(JavaClass type, Set<String> faults) {
    int own = bottomUp.indexOf(placeOf(type));
    if (own < 0) {
      faults.add(type.getDescription() + " stands in no package of the order " + bottomUp);
      return;
    }
    for (Dependency dependency : type.getDirectDependenciesFromSelf()) {
      JavaClass target = dependency.getTargetClass().getBaseComponentType();
      if (isOurs(target) && bottomUp.indexOf(placeOf(target)) > own) {
        faults.add(
            placeOf(type) + " reads " + placeOf(target) + ": " + dependency.getDescription());
      }
    }
  }

  private boolean isOurs(JavaClass type) {
    return type.getPackageName().equals(root) || type.getPackageName().startsWith(root + ".");
  }

  /** The first name below the root: a package and those inside it stand in one place. */
  private String placeOf(JavaClass type) {
    JavaClass element = type.getBaseComponentType();
    if (!isOurs(element) || element.getPackageName().equals(root)) {
      return "";
    }
    String below = element.getPackageName().substring(root.length() + 1);
    int dot = below.indexOf('.');
    return dot < 0 ? below : below.substring(0, dot);
  }
}
