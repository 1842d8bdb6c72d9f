package org.ensemblerules.laws;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.AccessTarget.CodeUnitCallTarget;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import net.jqwik.api.Property;
import org.ensemblerules.gates.MainClasses;
import org.ensemblerules.ruleset.TableKind;
import org.ensemblerules.ruleset.TableKinds;
import org.ensemblerules.source.ComparableRow;
import org.ensemblerules.source.ComparedFields;
import org.ensemblerules.source.Comparison;
import org.ensemblerules.source.Provenance;
import org.ensemblerules.testkit.FrozenProvenance;
import org.ensemblerules.testkit.StrictnessLaw;
import org.junit.jupiter.api.Test;

/**
 * Whatever type of row says that one row is stricter than another is held to it by a property that
 * asks both: one that hands two rows of the type to {@link StrictnessLaw}. Both are read from the
 * compiled classes, so that no list can be forgotten.
 */
class EveryOrderHasALawTest {
  /** Every class of properties, and what this test invents. */
  private static final JavaClasses PROPERTIES =
      new ClassFileImporter(
              List.of(
                  location ->
                      location.contains("Properties")
                          || location.contains(EveryOrderHasALawTest.class.getSimpleName())))
          .importPath(folder());

  @Test
  void everyTypeOfRowWithAnOrderHasALaw() {
    assertThat(withALaw())
        .containsExactlyInAnyOrderElementsOf(
            TableKinds.all().stream()
                .map(TableKind::rowType)
                .filter(type -> hasAnOrder(MainClasses.all().get(type)))
                .map(Class::getName)
                .toList());
  }

  /** Rows without a law are those that compare as the same or not at all. */
  @Test
  void aTypeOfRowWithoutAnOrderComparesOnlyByBeingTheSame() {
    assertThat(hasAnOrder(PROPERTIES.get(Ordered.class))).isTrue();
    assertThat(hasAnOrder(PROPERTIES.get(OrderedElsewhere.class))).isTrue();
    assertThat(hasAnOrder(PROPERTIES.get(SameOnly.class))).isFalse();
  }

  /** The method below asks for the law, and nobody runs it. */
  @Test
  void aLawThatIsNoPropertyIsNone() {
    assertThat(withALaw()).doesNotContain(Ordered.class.getName());
    assertThat(PROPERTIES.get(NobodyRunsIt.class).getMethods())
        .anyMatch(EveryOrderHasALawTest::asksForTheLaw);
  }

  /** Whether it puts anything into a comparison but whether both speak of the same. */
  private static boolean hasAnOrder(JavaClass rowType) {
    JavaMethod compares = rowType.getMethod("compareFields", rowType.getName());
    return Stream.<CodeUnitCallTarget>concat(
            compares.getMethodCallsFromSelf().stream().map(call -> call.getTarget()),
            compares.getConstructorCallsFromSelf().stream().map(call -> call.getTarget()))
        .filter(
            target ->
                target.getRawReturnType().isEquivalentTo(ComparedFields.class)
                    || (target.getOwner().isEquivalentTo(ComparedFields.class)
                        && target.getName().equals("<init>")))
        .anyMatch(target -> !target.getName().equals("on"));
  }

  private static Set<String> withALaw() {
    return PROPERTIES.stream()
        .flatMap(type -> type.getMethods().stream())
        .filter(method -> method.isAnnotatedWith(Property.class))
        .filter(EveryOrderHasALawTest::asksForTheLaw)
        .map(EveryOrderHasALawTest::rowType)
        .collect(Collectors.toSet());
  }

  private static Path folder() {
    try {
      return Path.of(
          EveryOrderHasALawTest.class.getProtectionDomain().getCodeSource().getLocation().toURI());
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }

  private static boolean asksForTheLaw(JavaMethod method) {
    return method.getMethodCallsFromSelf().stream()
        .anyMatch(
            call ->
                call.getTargetOwner().isEquivalentTo(StrictnessLaw.class)
                    && call.getName().equals("holds"));
  }

  /** The type of which a property takes two rows first. */
  private static String rowType(JavaMethod property) {
    List<JavaClass> parameters = property.getRawParameterTypes();
    assertThat(parameters).as("%s", property).hasSizeGreaterThanOrEqualTo(2);
    assertThat(parameters.get(1)).as("%s", property).isEqualTo(parameters.get(0));
    assertThat(parameters.get(0).isAssignableTo(ComparableRow.class)).as("%s", property).isTrue();
    return parameters.get(0).getName();
  }

  private interface Invented<R extends Invented<R>> extends ComparableRow<R> {
    @Override
    default Provenance provenance() {
      return FrozenProvenance.of("invented");
    }

    @Override
    default List<String> canonical() {
      return List.of();
    }

    @Override
    default List<String> topic() {
      return List.of();
    }
  }

  private record Ordered(int least) implements Invented<Ordered> {
    @Override
    public ComparedFields compareFields(Ordered other) {
      return ComparedFields.on(true).with("least", Comparison.moreIsStricter(least, other.least));
    }
  }

  private record OrderedElsewhere(Ordered row) implements Invented<OrderedElsewhere> {
    @Override
    public ComparedFields compareFields(OrderedElsewhere other) {
      return row.compareFields(other.row);
    }
  }

  private record SameOnly() implements Invented<SameOnly> {
    @Override
    public ComparedFields compareFields(SameOnly other) {
      return ComparedFields.on(meaning().equals(other.meaning()));
    }
  }

  private static final class NobodyRunsIt {
    void holds(Ordered one, Ordered other) {
      StrictnessLaw.holds(one, other, (strict, mild) -> strict.least() >= mild.least());
    }
  }
}
