package org.ensemblerules.gear;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.TableFault;
import org.ensemblerules.testkit.FrozenProvenance;
import org.ensemblerules.testkit.FrozenRules;
import org.junit.jupiter.api.Test;

/** Which parts an element has, and what a site without a layer may mean. */
class AnatomyTableTest {
  private static final AnatomyTable TABLE = FrozenRules.rules().tables().anatomy();

  private static List<Site> meant(ElementKind element, String site) {
    return TABLE.meant(element, Use.STRUCTURAL, Site.parse(site));
  }

  @Test
  void aSiteThatExistsMeansItself() {
    assertThat(meant(ElementKind.COAT, "FABRIC@OUTER_SHELL"))
        .containsExactly(Site.parse("FABRIC@OUTER_SHELL"));
    assertThat(meant(ElementKind.COAT, "DRAG_RESCUE_DEVICE"))
        .containsExactly(Site.parse("DRAG_RESCUE_DEVICE"));
  }

  @Test
  void aPartWithoutItsLayerMeansThatPartOfEachLayer() {
    assertThat(meant(ElementKind.COAT, "FABRIC"))
        .extracting(Site::toString)
        .containsExactly(
            "FABRIC@OUTER_SHELL",
            "FABRIC@MOISTURE_BARRIER",
            "FABRIC@THERMAL_LINER",
            "FABRIC@WINTER_LINER");
  }

  @Test
  void aPartThatTheElementDoesNotHaveMeansNothing() {
    assertThat(meant(ElementKind.COAT, "GLOVE_SHELL")).isEmpty();
    assertThat(meant(ElementKind.COAT, "TRIM@THERMAL_LINER")).isEmpty();
    assertThat(meant(ElementKind.HELMET, "LABEL@OUTER_SHELL")).isEmpty();
    assertThat(TABLE.meant(ElementKind.COAT, Use.PROXIMITY, Site.parse("FABRIC"))).isEmpty();
  }

  @Test
  void elementsAndUsesAreKeptApart() {
    assertThat(TABLE.of(ElementKind.COAT, Use.STRUCTURAL)).hasSize(19);
    assertThat(TABLE.of(ElementKind.COAT, Use.PROXIMITY)).isEmpty();
    assertThat(TABLE.of(ElementKind.HELMET, Use.STRUCTURAL))
        .allMatch(row -> row.element() == ElementKind.HELMET);
    assertThat(TABLE.at(ElementKind.HELMET, Use.STRUCTURAL, Site.parse("FACESHIELD")))
        .map(AnatomyRow::presence)
        .contains(Presence.OPTIONAL);
  }

  @Test
  void aSiteTwiceIsAFault() {
    AnatomyRow row =
        new AnatomyRow(
            FrozenProvenance.of("a"),
            ElementKind.COAT,
            Use.STRUCTURAL,
            Site.parse("TRIM@OUTER_SHELL"),
            Presence.REQUIRED);
    assertThat(
            ((Checked.Refused<AnatomyTable, TableFault>) AnatomyTable.of(List.of(row, row)))
                .faults())
        .extracting(Object::toString)
        .containsExactly(
            "frozen/a, sites: found TRIM@OUTER_SHELL, allowed: each site once per element and use");
  }

  @Test
  void everySiteHasANumberOfItsOwnAndReadsBack() {
    boolean[] taken = new boolean[Site.count()];
    for (Part part : Part.values()) {
      check(Site.of(part), taken);
      for (LayerKind layer : LayerKind.values()) {
        check(Site.of(part, layer), taken);
      }
    }
    assertThat(taken).doesNotContain(false);
  }

  private static void check(Site site, boolean[] taken) {
    assertThat(taken[site.index()]).isFalse();
    taken[site.index()] = true;
    assertThat(Site.parse(site.toString())).isEqualTo(site);
  }
}
