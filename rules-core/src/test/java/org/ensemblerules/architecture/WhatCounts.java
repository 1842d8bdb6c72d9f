package org.ensemblerules.architecture;

import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.lang.ArchRule;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.ensemblerules.care.CareLimitTable;
import org.ensemblerules.effect.PermissionTable;
import org.ensemblerules.fieldcheck.CheckLimitTable;
import org.ensemblerules.gates.TypeRules;
import org.ensemblerules.history.Evidence;
import org.ensemblerules.history.Validity;
import org.ensemblerules.inspection.Coverage;
import org.ensemblerules.inspection.InspectionStanding;
import org.ensemblerules.repair.RepairOrders;
import org.ensemblerules.ruleset.RuleSet;

/** Whether something on record counts is decided in one place, and read everywhere else. */
final class WhatCounts {
  private static final String JUDGE = Evidence.class.getPackageName() + ".EventJudge";

  /** What decides, by its methods, and who may call it beside the judge of events. */
  private static final Map<Class<?>, Map<String, Set<String>>> DECIDES =
      Map.of(
          InspectionStanding.class, Map.of("of", Set.of()),
          Coverage.class, Map.of("of", names(InspectionStanding.class)),
          Validity.class, Map.of("objection", Set.of()),
          CareLimitTable.class, Map.of("judge", names(Validity.class)),
          CheckLimitTable.class, Map.of("judge", names(Validity.class)),
          // What a repair to come would need, and what the rules answer when asked, are no events.
          PermissionTable.class,
              Map.of(
                  "mayPerform",
                  names(
                      PermissionTable.class,
                      InspectionStanding.class,
                      RepairOrders.class,
                      RuleSet.class)));

  private WhatCounts() {}

  private static Set<String> names(Class<?>... types) {
    return Set.copyOf(List.of(types).stream().map(Class::getName).toList());
  }

  /** Nothing but the judge of events calls what decides. */
  static ArchRule isDecidedOnce() {
    return TypeRules.rule(
        "leave it to " + JUDGE + " what counts",
        (type, faults) -> {
          for (JavaAccess<?> access : type.getAccessesFromSelf()) {
            DECIDES.forEach(
                (owner, methods) -> {
                  Set<String> callers = methods.get(access.getName());
                  if (callers != null
                      && access.getTargetOwner().isEquivalentTo(owner)
                      && !type.isEquivalentTo(owner)
                      && !type.getName().equals(JUDGE)
                      && !callers.contains(type.getName())) {
                    faults.add(access.getDescription());
                  }
                });
          }
        });
  }
}
