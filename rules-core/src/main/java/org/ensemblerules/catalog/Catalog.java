package org.ensemblerules.catalog;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.PermissionRow;
import org.ensemblerules.effect.PermittedDoer;
import org.ensemblerules.effect.Task;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.ruleset.Identity;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.ruleset.Tables;

/**
 * What can be entered under a set of rules: for each element its parts, the defects that can be
 * there and how each is measured, the criteria of its inspections; for each hand check its
 * conditions; for each task who may do it. Enough to draw an entry form without reading a table.
 *
 * @param rules the rules it was worked out from; not null
 * @param elements the elements that exist, each kind and use once; not null
 * @param checks the checks, each once; not null
 * @param doers who may do each task; every task is there; not null
 * @since 0.1
 */
public record Catalog(
    Identity rules,
    List<ElementForm> elements,
    List<CheckForm> checks,
    Map<Task, List<PermittedDoer>> doers) {
  /** Copies the collections. */
  public Catalog {
    Objects.requireNonNull(rules, "rules");
    elements = ImmutableList.copyOf(elements);
    checks = ImmutableList.copyOf(checks);
    doers = ImmutableMap.copyOf(doers);
  }

  /**
   * Works out the catalog of a set of rules.
   *
   * @param rules the rules; not null
   * @return the catalog; never null
   */
  public static Catalog of(RuleSet rules) {
    Tables tables = rules.tables();
    Map<Task, List<PermittedDoer>> doers = new EnumMap<>(Task.class);
    for (Task task : Task.values()) {
      doers.put(
          task,
          tables.permissions().permitted(task).stream()
              .map(PermissionRow::doer)
              .distinct()
              .toList());
    }
    return new Catalog(
        rules.identity(),
        Arrays.stream(ElementKind.values())
            .flatMap(
                kind -> Arrays.stream(Use.values()).map(use -> ElementForm.of(tables, kind, use)))
            .flatMap(Optional::stream)
            .toList(),
        Arrays.stream(Check.values()).map(check -> CheckForm.of(tables, check)).toList(),
        doers);
  }

  /**
   * Finds what can be entered of an element.
   *
   * @param kind the kind of element; not null
   * @param use its use; not null
   * @return its form; empty if no such element exists
   */
  public Optional<ElementForm> element(ElementKind kind, Use use) {
    return elements.stream().filter(form -> form.kind() == kind && form.use() == use).findFirst();
  }
}
