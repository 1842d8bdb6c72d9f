package org.ensemblerules.shipped;

import static org.assertj.core.api.Assertions.assertThat;
import static org.ensemblerules.shipped.ShippedRepairs.finding;
import static org.ensemblerules.shipped.ShippedRepairs.orders;
import static org.ensemblerules.shipped.ShippedRepairs.with;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.Grade;
import org.ensemblerules.effect.CredentialScope;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.effect.EntityKind;
import org.ensemblerules.effect.Permission;
import org.ensemblerules.effect.PermissionRow;
import org.ensemblerules.effect.Task;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.repair.MayDo;
import org.ensemblerules.repair.RepairOrder;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.testkit.ShippedGear;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Who may repair what by the shipped tables, and what everybody else is told. */
class ShippedRepairPermissionsTest {
  private static final Element COAT = ShippedRepairs.element(ElementKind.COAT, Use.STRUCTURAL);

  static List<OriginId> editions() {
    return ShippedEditions.WITH_INSPECTION;
  }

  /** A member, or somebody trained for basic repair only, is told why not and who may. */
  @ParameterizedTest
  @MethodSource("editions")
  void whoeverLacksTheScopeIsToldWhyNot(OriginId edition) {
    Finding hole =
        finding(
            "F1",
            Site.parse("FABRIC@MOISTURE_BARRIER"),
            DefectKind.TEAR,
            new Extent.Graded(Grade.SLIGHT));
    assertThat(may(edition, hole, with(EntityKind.MEMBER)))
        .isEqualTo(
            new MayDo.WhyNot(
                Task.ADVANCED_REPAIR,
                new Permission.NotThisEntity(EntityKind.MEMBER, Task.ADVANCED_REPAIR)));
    assertThat(may(edition, hole, with(EntityKind.ORGANIZATION, CredentialScope.BASIC_REPAIR)))
        .isInstanceOf(MayDo.WhyNot.class);
    assertThat(may(edition, hole, with(EntityKind.VERIFIED_INDEPENDENT_SERVICE_PROVIDER)))
        .isEqualTo(
            new MayDo.WhyNot(
                Task.ADVANCED_REPAIR,
                new Permission.MissingCredential(CredentialScope.ADVANCED_REPAIR)));
    assertThat(
            may(
                edition,
                hole,
                with(
                    EntityKind.VERIFIED_INDEPENDENT_SERVICE_PROVIDER,
                    CredentialScope.ADVANCED_REPAIR)))
        .isInstanceOf(MayDo.Yes.class);
    assertThat(may(edition, hole, with(EntityKind.MANUFACTURER))).isInstanceOf(MayDo.Yes.class);
  }

  private static MayDo may(OriginId edition, Finding finding, Doer doer) {
    return orders(edition)
        .plan(COAT, List.of(finding), doer, ShippedGear.AS_OF)
        .orders()
        .get(0)
        .may();
  }

  // Restated: providers without verification were recognized under the 2008 edition, and no longer
  // from 2014 on. Restated of 2020: advanced repair is for verified providers and organizations and
  // the element's manufacturer.
  @ParameterizedTest
  @MethodSource("editions")
  void onlyTheVerifiedAndTheManufacturerRepairLayersInside(OriginId edition) {
    RepairOrder order =
        orders(edition)
            .plan(COAT, List.of(finding("SEAM_TAPE@MOISTURE_BARRIER", DefectKind.LIFTING_TAPE)))
            .orders()
            .get(0);
    assertThat(order.by().stream().map(PermissionRow::entity).collect(Collectors.toSet()))
        .isEqualTo(
            Set.of(
                EntityKind.VERIFIED_ORGANIZATION,
                EntityKind.VERIFIED_INDEPENDENT_SERVICE_PROVIDER,
                EntityKind.MANUFACTURER));
    Finding snap = finding("SNAPS@OUTER_SHELL", DefectKind.DAMAGED);
    Doer unverified = with(EntityKind.INDEPENDENT_SERVICE_PROVIDER, CredentialScope.BASIC_REPAIR);
    assertThat(may(edition, snap, unverified).granted())
        .isEqualTo(edition.equals(ShippedEditions.EDITION_2008));
  }
}
