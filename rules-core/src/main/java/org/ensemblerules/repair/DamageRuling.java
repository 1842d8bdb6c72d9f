package org.ensemblerules.repair;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.Demand;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.HandlingDuty;
import org.ensemblerules.effect.Scope;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Site;

/**
 * What the rows make of one finding in the company of the others.
 *
 * @param because which other finding makes it stricter; empty if none does
 * @param preserved whether the gear is kept as found, so that only its release lets anything begin
 */
record DamageRuling(
    Site site,
    RepairLevel level,
    List<RepairLimitRow> limits,
    Optional<String> because,
    boolean preserved) {

  static DamageRuling of(
      PlacedFinding found, List<PlacedFinding> all, Element element, RepairLimitTable table) {
    Site site = found.demand().site();
    List<RepairLimitRow> limits = new ArrayList<>();
    RepairLevel level = RepairLevel.of(found.demand().effect());
    if (level.repairClass().isPresent()) {
      List<RepairLimitRow> here = table.at(element.kind(), element.use(), site);
      level = apply(level, here, limits, row -> holds(row.subject(), site, all));
      if (level.replaces()) {
        level =
            apply(level, here, limits, row -> row.subject() instanceof RepairSubject.Replacement);
      }
    }
    RepairLevel wider = RepairLevel.ACCEPTABLE;
    Optional<String> because = Optional.empty();
    for (PlacedFinding other : all) {
      RepairLevel reach = reach(other.demand(), site);
      if (!level.isAtLeast(reach) && !wider.isAtLeast(reach)) {
        wider = wider.and(reach);
        because = Optional.of("because of " + other.finding().text());
      }
    }
    Optional<String> reason = because;
    Optional<PlacedFinding> held =
        all.stream().filter(each -> preserves(each.demand())).findFirst();
    Optional<String> why =
        held.filter(each -> !each.equals(found))
            .map(each -> "because of " + each.finding().text())
            .or(() -> reason);
    return new DamageRuling(site, level.and(wider), limits, why, held.isPresent());
  }

  private static RepairLevel apply(
      RepairLevel level,
      List<RepairLimitRow> here,
      List<RepairLimitRow> limits,
      Predicate<RepairLimitRow> holds) {
    RepairLevel stricter = level;
    for (RepairLimitRow row : here) {
      if (holds.test(row)) {
        limits.add(row);
        stricter = stricter.and(row.least());
      }
    }
    return stricter;
  }

  private static boolean holds(RepairSubject subject, Site site, List<PlacedFinding> all) {
    if (subject instanceof RepairSubject.Damage damage) {
      DefectKind defect = damage.defect();
      return all.stream()
          .anyMatch(each -> each.finding().defect() == defect && each.demand().site().equals(site));
    }
    return subject instanceof RepairSubject.AnyDamage;
  }

  /** What a finding makes of other findings: what leaves or is preserved is not repaired. */
  private static RepairLevel reach(Demand demand, Site site) {
    if (demand.effect() instanceof Effect.Retire retire
        && (retire.scope() == Scope.ELEMENT
            || (retire.scope() == Scope.LAYER && oneLayer(demand.site(), site))
            || (retire.scope() == Scope.PART && demand.site().equals(site)))) {
      return RepairLevel.NOT_REPAIRABLE;
    }
    return preserves(demand) ? RepairLevel.DECIDE_FIRST : RepairLevel.ACCEPTABLE;
  }

  private static boolean preserves(Demand demand) {
    return demand.row().stream()
        .anyMatch(row -> row.handling().contains(HandlingDuty.PRESERVE_AS_FOUND));
  }

  /** Whether two places may be of one labeled layer; without layers, the element is one. */
  private static boolean oneLayer(Site one, Site other) {
    if (one.layer().isEmpty() || other.layer().isEmpty()) {
      return one.layer().equals(other.layer());
    }
    LayerKind first = one.layer().get();
    LayerKind second = other.layer().get();
    return first == second || joined(first) == joined(second);
  }

  private static LayerKind joined(LayerKind layer) {
    return layer.joinedIn().orElse(layer);
  }
}
