package org.ensemblerules.defect;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.TableFault;
import org.ensemblerules.testkit.FrozenProvenance;
import org.ensemblerules.testkit.FrozenRules;
import org.junit.jupiter.api.Test;

/** Rows whose bands overlap, leave gaps or stand nowhere make no table; each fault is named. */
class DefectTableFaultsTest {
  private final List<DefectRow> rows = new ArrayList<>();

  private void row(Band band) {
    row("FABRIC@OUTER_SHELL", band);
  }

  private void row(String site, Band band) {
    rows.add(
        new DefectRow(
            FrozenProvenance.of("r" + (rows.size() + 1)),
            ElementKind.COAT,
            Use.STRUCTURAL,
            Site.parse(site),
            DefectKind.RIP,
            band,
            new Effect.Note(),
            Set.of(),
            Set.of(),
            false,
            "x"));
  }

  private List<String> faults() {
    Checked<DefectTable, TableFault> result =
        DefectTable.of(rows, FrozenRules.rules().tables().anatomy());
    return result instanceof Checked.Refused<DefectTable, TableFault> faulty
        ? faulty.faults().stream().map(fault -> fault.code() + " " + fault).toList()
        : List.of();
  }

  private static Band inches(String over, String upTo) {
    return new Band.Range(ExtentKind.LENGTH, quantity(over), quantity(upTo));
  }

  private static Optional<Quantity> quantity(String value) {
    return Optional.ofNullable(value).map(text -> Quantity.of(text, Unit.INCH));
  }

  @Test
  void bandsThatJoinInAnyOrderAreSound() {
    row(inches("3", null));
    row(inches(null, "1"));
    row(
        new Band.Range(
            ExtentKind.LENGTH, Optional.of(Quantity.of("25.4", Unit.MILLIMETER)), quantity("3.0")));
    assertThat(faults()).isEmpty();
  }

  @Test
  void countsAndGradesInAnyOrderAreSoundAndSorted() {
    row(new Band.Counts(4, Integer.MAX_VALUE));
    row(new Band.Counts(0, 2));
    row(new Band.Counts(2, 4));
    row("TRIM@OUTER_SHELL", new Band.Grades(EnumSet.of(Grade.MODERATE, Grade.SEVERE)));
    row("TRIM@OUTER_SHELL", new Band.Grades(EnumSet.of(Grade.SLIGHT)));
    DefectTable table = DefectTable.of(rows, FrozenRules.rules().tables().anatomy()).orElseThrow();
    assertThat(bands(table, "FABRIC@OUTER_SHELL"))
        .containsExactly("count 1 to 2", "count 3 to 4", "count 5 or more");
    assertThat(bands(table, "TRIM@OUTER_SHELL")).containsExactly("SLIGHT", "MODERATE or SEVERE");
  }

  private static List<String> bands(DefectTable table, String site) {
    return table.bands(ElementKind.COAT, Use.STRUCTURAL, Site.parse(site), DefectKind.RIP).stream()
        .map(row -> row.band().toString())
        .toList();
  }

  @Test
  void aGap() {
    row(inches(null, "1"));
    row(inches("2", null));
    assertThat(faults())
        .containsExactly(
            "BANDS_DO_NOT_JOIN frozen/r2, extent: found over 2 in, allowed: a band over 1 in, where"
                + " the one before ends");
  }

  @Test
  void anOverlap() {
    row(inches(null, "2"));
    row(inches("1", "4"));
    row(inches("4", null));
    assertThat(faults())
        .containsExactly(
            "BANDS_DO_NOT_JOIN frozen/r2, extent: found over 1 in up to 4 in, allowed: a band over"
                + " 2 in, where the one before ends");
  }

  @Test
  void twoBandsFromZero() {
    row(inches(null, "1"));
    row(inches(null, null));
    assertThat(faults()).hasSize(1);
    assertThat(faults().get(0))
        .startsWith("BANDS_DO_NOT_JOIN ")
        .contains("a band over 1 in, where the one before ends");
  }

  @Test
  void aBandBehindOneWithoutAnEnd() {
    row(inches(null, null));
    row(inches("2", null));
    assertThat(faults())
        .containsExactly(
            "BANDS_DO_NOT_JOIN frozen/r2, extent: found over 2 in, allowed: no further band, since"
                + " the one before has no end");
  }

  @Test
  void aFirstBandNotFromZeroAndALastWithAnEnd() {
    row(inches("1", "2"));
    assertThat(faults())
        .containsExactly(
            "BANDS_DO_NOT_JOIN frozen/r1, extent: found over 1 in up to 2 in, allowed: a band from"
                + " zero",
            "BANDS_DO_NOT_JOIN frozen/r1, extent: found a last band with an end, allowed: no upTo");
  }

  @Test
  void countsWithAGapAnOverlapAndAnEnd() {
    row(new Band.Counts(0, 2));
    row(new Band.Counts(3, 5));
    row(new Band.Counts(4, 9));
    assertThat(faults())
        .containsExactly(
            "BANDS_DO_NOT_JOIN frozen/r2, extent: found count 4 to 5, allowed: a band over 2",
            "BANDS_DO_NOT_JOIN frozen/r3, extent: found count 5 to 9, allowed: a band over 5",
            "BANDS_DO_NOT_JOIN frozen/r3, extent: found a last band with an end, allowed: no upTo");
  }

  @Test
  void gradesTwiceAndLeftOut() {
    row(new Band.Grades(EnumSet.of(Grade.SLIGHT)));
    row(new Band.Grades(EnumSet.of(Grade.SLIGHT, Grade.MODERATE)));
    assertThat(faults())
        .containsExactly(
            "OVERLAP frozen/r2, extent: found SLIGHT, allowed: each grade of SEVERITY once",
            "BANDS_DO_NOT_JOIN frozen/r1, extent: found no band for [SEVERE], allowed: every grade"
                + " of SEVERITY");
  }

  @Test
  void gradesOfAnotherScale() {
    row(new Band.Grades(GradeScale.SEVERITY.grades()));
    row(new Band.Grades(EnumSet.of(Grade.HELD)));
    assertThat(faults())
        .containsExactly(
            "OVERLAP frozen/r2, extent: found HELD, allowed: each grade of SEVERITY once");
  }

  @Test
  void extentsOfTwoKinds() {
    row(inches(null, null));
    row(new Band.Counts(0, Integer.MAX_VALUE));
    assertThat(faults())
        .containsExactly(
            "BANDS_DO_NOT_JOIN frozen/r2, extent: found extent told by COUNT, allowed: LENGTH");
  }

  @Test
  void twoRowsForTheSameCell() {
    row(new Band.Presence());
    row(new Band.Presence());
    assertThat(faults())
        .containsExactly(
            "DUPLICATE frozen/r2, extent: found a second row for the same cell, allowed: one row");
  }

  @Test
  void aSiteThatTheElementDoesNotHave() {
    row("GLOVE_SHELL", new Band.Presence());
    assertThat(faults())
        .containsExactly(
            "NO_SUCH_PLACE frozen/r1, sites: found GLOVE_SHELL on COAT STRUCTURAL, allowed: a site"
                + " that the anatomy table has");
  }

  @Test
  void allFaultsAreNamedAtOnce() {
    row("GLOVE_SHELL", new Band.Presence());
    row(inches("1", null));
    row("TRIM@OUTER_SHELL", new Band.Counts(1, Integer.MAX_VALUE));
    assertThat(faults()).hasSize(3);
  }
}
