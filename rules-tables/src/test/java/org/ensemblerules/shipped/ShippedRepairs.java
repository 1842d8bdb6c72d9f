package org.ensemblerules.shipped;

import java.util.Arrays;
import java.util.List;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.Credential;
import org.ensemblerules.effect.CredentialScope;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.effect.EntityKind;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementId;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Label;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.repair.RepairOrders;
import org.ensemblerules.repair.RepairTables;
import org.ensemblerules.ruleset.CareKinds;
import org.ensemblerules.ruleset.InspectionKinds;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.tables.set.EditionTables;
import org.ensemblerules.testkit.ShippedGear;

/** Repair orders by the shipped tables, and what they are asked about. */
final class ShippedRepairs {
  private static final ConcurrentMap<OriginId, RepairOrders> ORDERS = new ConcurrentHashMap<>();

  private ShippedRepairs() {}

  static RepairOrders orders(OriginId edition) {
    return ORDERS.computeIfAbsent(edition, each -> RepairOrders.of(tables(each)));
  }

  static RepairTables tables(OriginId edition) {
    EditionTables tables = ShippedEditions.loaded().tables(edition);
    return new RepairTables(
        ShippedEditions.loaded().find(InspectionKinds.ANATOMY).orElseThrow(),
        tables.find(InspectionKinds.DEFECTS).orElseThrow(),
        tables.find(CareKinds.REPAIR_LIMITS).orElseThrow(),
        tables.find(InspectionKinds.PERMISSIONS).orElseThrow(),
        tables.find(InspectionKinds.CHECKS).orElseThrow());
  }

  static Element element(ElementKind kind, Use use) {
    return Element.builder(new ElementId("E-1"), kind, use)
        .label(Label.builder().manufacturer(ShippedGear.MAKER).build())
        .build();
  }

  static Finding finding(String id, Site site, DefectKind defect, Extent extent) {
    return new Finding(
        new FindingId(id), site, "", defect, extent, MarkedDate.of(ShippedGear.AS_OF));
  }

  static Finding finding(String site, DefectKind defect) {
    return finding("F1", Site.parse(site), defect, new Extent.NotMeasured());
  }

  static Extent length(String value, Unit unit) {
    return new Extent.Length(Quantity.of(value, unit));
  }

  static Doer with(EntityKind kind, CredentialScope... scopes) {
    List<Credential> credentials =
        Arrays.stream(scopes)
            .map(
                scope ->
                    new Credential(scope, ShippedGear.IN_SERVICE, ShippedGear.AS_OF.plusYears(1)))
            .toList();
    return new Doer(
        kind == EntityKind.MANUFACTURER ? ShippedGear.MAKER : kind.name(), kind, credentials);
  }
}
