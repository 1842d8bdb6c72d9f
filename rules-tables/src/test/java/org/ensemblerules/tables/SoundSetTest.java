package org.ensemblerules.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.defect.Band;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.defect.DefectTable;
import org.ensemblerules.defect.ExtentKind;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.CredentialScope;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.EffectKind;
import org.ensemblerules.effect.EntityKind;
import org.ensemblerules.effect.HandlingDuty;
import org.ensemblerules.effect.Scope;
import org.ensemblerules.effect.Task;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Presence;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.inspection.CriterionRow;
import org.ensemblerules.inspection.Equipment;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.retirement.AgeLimit;
import org.ensemblerules.ruleset.CautionRow;
import org.ensemblerules.ruleset.InspectionKinds;
import org.ensemblerules.ruleset.StrengthKinds;
import org.ensemblerules.ruleset.Subject;
import org.ensemblerules.source.Basis;
import org.ensemblerules.source.Confidence;
import org.ensemblerules.source.Edition;
import org.ensemblerules.source.HowSeen;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.source.Row;
import org.ensemblerules.source.RowKey;
import org.ensemblerules.source.SourceId;
import org.ensemblerules.source.SourceKind;
import org.ensemblerules.tables.set.EditionTables;
import org.ensemblerules.tables.set.LoadedTables;
import org.ensemblerules.tables.set.TableFiles;
import org.ensemblerules.tables.set.TableRevision;
import org.junit.jupiter.api.Test;

/** What the frozen sound set says, value for value. */
class SoundSetTest {
  private static final OriginId FIRST = new OriginId("FROZEN_1");
  private static final OriginId SECOND = new OriginId("FROZEN_2");
  private static final OriginId THIRD = new OriginId("FROZEN_3");
  private static final Site SHELL = Site.of(Part.FABRIC, LayerKind.OUTER_SHELL);

  private final LoadedTables set =
      TableLoader.load(TableFiles.in(FixtureSets.sound())).orElseThrow();

  private DefectTable defects(OriginId edition) {
    return set.tables(edition).find(InspectionKinds.DEFECTS).orElseThrow();
  }

  private static List<String> keys(List<? extends Row> rows) {
    return rows.stream().map(Row::key).map(RowKey::value).toList();
  }

  @Test
  void sourcesAreKeptByTheirIds() {
    assertThat(set.sources().keySet())
        .extracting(SourceId::value)
        .containsExactly("frozen-rules", "frozen-standard");
    var rules = set.sources().get(new SourceId("frozen-rules"));
    assertThat(rules.kind()).isEqualTo(SourceKind.REGULATION);
    assertThat(rules.issuer()).contains("Nobody");
    assertThat(rules.seenAt()).contains("https://example.org/rules");
    assertThat(set.sources().get(new SourceId("frozen-standard")).seenAt()).isEmpty();
  }

  @Test
  void editionsSortByPublicationWhateverTheirOrderInTheFile() {
    assertThat(set.editions()).extracting(Edition::id).containsExactly(FIRST, SECOND, THIRD);
    assertThat(set.edition(FIRST).orElseThrow().effective()).contains(LocalDate.of(2001, 2, 28));
    assertThat(set.edition(SECOND).orElseThrow().consolidatedInto()).contains(THIRD);
    assertThat(set.edition(new OriginId("FROZEN_9"))).isEmpty();
  }

  @Test
  void editionsAreFoundBySubject() {
    assertThat(set.editions(Subject.INSPECTION))
        .extracting(Edition::id)
        .containsExactly(FIRST, SECOND, THIRD);
    assertThat(set.editions(Subject.AGE)).extracting(Edition::id).containsExactly(FIRST, SECOND);
    assertThat(set.tables(LoadedTables.TRADE).subjects())
        .containsExactly(Subject.PRODUCT, Subject.CARE, Subject.INSPECTION);
  }

  @Test
  void anEditionHasNoTableThatItsFolderDoesNotList() {
    assertThat(set.tables(SECOND).find(InspectionKinds.CRITERIA)).isEmpty();
    assertThat(set.tables(SECOND).find(InspectionKinds.CHECKS)).isEmpty();
    assertThat(set.tables(SECOND).find(InspectionKinds.CAUTIONS)).isEmpty();
    assertThat(set.tables(new OriginId("FROZEN_9")).subjects()).isEmpty();
  }

  @Test
  void aFamilyExpandsToOneRowForEachCombination() {
    assertThat(
            keys(
                set.find(InspectionKinds.ANATOMY)
                    .orElseThrow()
                    .of(ElementKind.COAT, Use.STRUCTURAL)))
        .containsExactly(
            "shell/COAT/STRUCTURAL/WHOLE_ELEMENT",
            "shell/COAT/STRUCTURAL/FABRIC@OUTER_SHELL",
            "shell/COAT/STRUCTURAL/SEAM_MAJOR_A@OUTER_SHELL",
            "trim/COAT/STRUCTURAL/TRIM@OUTER_SHELL",
            "pocket/COAT/STRUCTURAL/POCKET@OUTER_SHELL");
    assertThat(set.find(InspectionKinds.ANATOMY).orElseThrow().rows()).hasSize(11);
  }

  @Test
  void aRowHasItsOwnReviewDateOrThatOfItsFile() {
    var pocket =
        set.find(InspectionKinds.ANATOMY)
            .orElseThrow()
            .at(ElementKind.COAT, Use.STRUCTURAL, Site.of(Part.POCKET, LayerKind.OUTER_SHELL))
            .orElseThrow();
    assertThat(pocket.presence()).isEqualTo(Presence.OPTIONAL);
    assertThat(pocket.provenance().reviewedThrough()).isEqualTo(LocalDate.of(2026, 6, 30));
    assertThat(pocket.provenance().note()).contains("Some coats have none.");
    var shell =
        set.find(InspectionKinds.ANATOMY)
            .orElseThrow()
            .at(ElementKind.COAT, Use.PROXIMITY, SHELL)
            .orElseThrow();
    assertThat(shell.provenance().reviewedThrough()).isEqualTo(LocalDate.of(2027, 11, 30));
    assertThat(shell.provenance().origin()).isEqualTo(LoadedTables.TRADE);
    assertThat(shell.provenance().basis()).isEqualTo(new Basis.CommonPractice());
  }

  @Test
  void criteriaAreReadWithTheirSitesTogether() {
    List<CriterionRow> rows =
        set.tables(FIRST)
            .find(InspectionKinds.CRITERIA)
            .orElseThrow()
            .required(InspectionKind.ADVANCED, ElementKind.COAT, Use.STRUCTURAL);
    assertThat(keys(rows))
        .containsExactly("coat-shell/COAT/STRUCTURAL", "coat-pocket/COAT/STRUCTURAL");
    CriterionRow shell = rows.get(0);
    assertThat(shell.order()).isEqualTo(10);
    assertThat(shell.sites())
        .containsExactly(SHELL, Site.of(Part.SEAM_MAJOR_A, LayerKind.OUTER_SHELL));
    assertThat(shell.lookFor()).isEqualTo(Set.of(DefectKind.RIP, DefectKind.TEAR));
    assertThat(shell.atHand()).isEqualTo(Set.of(Equipment.GOOD_LIGHT));
    assertThat(shell.check()).isEqualTo(Set.of(Check.SEAM_PULL));
    assertThat(shell.way()).isEqualTo("Look along every seam.");
    assertThat(rows.get(1).atHand()).isEmpty();
    assertThat(shell.provenance().basis())
        .isEqualTo(
            new Basis.Published(new SourceId("frozen-rules"), Optional.of("§6.2"), HowSeen.READ));
  }

  @Test
  void bandsKeepTheDigitsAndUnitTheyWereGivenIn() {
    List<DefectRow> bands =
        defects(FIRST).bands(ElementKind.COAT, Use.PROXIMITY, SHELL, DefectKind.TEAR);
    assertThat(bands)
        .extracting(DefectRow::band)
        .containsExactly(
            new Band.Range(
                ExtentKind.LENGTH,
                Optional.empty(),
                Optional.of(new Quantity(new BigDecimal("1.0"), Unit.INCH))),
            new Band.Range(
                ExtentKind.LENGTH,
                Optional.of(new Quantity(new BigDecimal("1"), Unit.INCH)),
                Optional.empty()));
    assertThat(bands.get(0).afterward()).isEqualTo(Set.of(Check.ADVANCED_INSPECTION));
    assertThat(bands.get(1).effect()).isEqualTo(new Effect.Retire(Scope.LAYER));
  }

  @Test
  void anExtentLeftOutIsPresence() {
    DefectRow struck =
        defects(SECOND)
            .bands(
                ElementKind.HELMET,
                Use.STRUCTURAL,
                Site.of(Part.WHOLE_ELEMENT),
                DefectKind.HELMET_STRUCK)
            .get(0);
    assertThat(struck.band()).isEqualTo(new Band.Presence());
    assertThat(struck.effect())
        .isEqualTo(new Effect.Evaluate(Check.EXPERT_EVALUATION, Scope.ELEMENT));
    assertThat(struck.handling()).isEqualTo(Set.of(HandlingDuty.ISOLATE));
  }

  @Test
  void everyKindOfEffectAndBandIsRead() {
    assertThat(defects(FIRST).rows())
        .extracting(row -> row.effect().effectKind())
        .contains(EffectKind.values());
    assertThat(defects(FIRST).rows())
        .extracting(row -> row.band().kind())
        .contains(ExtentKind.values());
    assertThat(defects(FIRST).rows())
        .filteredOn(DefectRow::open)
        .extracting(row -> row.provenance().basis())
        .containsExactly(
            new Basis.Memory(Confidence.LOW, Optional.of(new SourceId("frozen-standard"))));
    assertThat(defects(FIRST).rows())
        .filteredOn(row -> row.defect() == DefectKind.SOILING)
        .extracting(DefectRow::effect)
        .containsOnly(new Effect.Clean(CleaningKind.ADVANCED, Scope.ELEMENT));
  }

  @Test
  void carriedOverRowsKeepTheEditionTheyWereWrittenFor() {
    assertThat(defects(SECOND).rows())
        .filteredOn(row -> row.key().value().startsWith("rip-small/"))
        .hasSize(4)
        .extracting(row -> row.provenance().origin())
        .containsOnly(FIRST);
    assertThat(defects(SECOND).rows())
        .filteredOn(row -> row.key().value().startsWith("struck/"))
        .extracting(row -> row.provenance().origin())
        .containsOnly(SECOND);
  }

  @Test
  void aFamilyOfTheSameKeyTakesThePlaceOfTheOneCarriedOver() {
    List<DefectRow> burns =
        defects(SECOND).bands(ElementKind.COAT, Use.STRUCTURAL, SHELL, DefectKind.BURN_HOLE);
    assertThat(burns).extracting(DefectRow::wording).containsExactly("Any burn hole.");
    assertThat(burns.get(0).provenance().origin()).isEqualTo(SECOND);
  }

  @Test
  void aRemovedFamilyIsNotCarriedOver() {
    assertThat(keys(defects(FIRST).rows())).anyMatch(key -> key.startsWith("trim-scorched/"));
    assertThat(keys(defects(SECOND).rows())).noneMatch(key -> key.startsWith("trim-scorched/"));
  }

  @Test
  void carryingOverGoesThroughEditions() {
    assertThat(defects(THIRD).rows()).isEqualTo(defects(SECOND).rows());
  }

  @Test
  void ageLimitsAreReadWithAndWithoutLayers() {
    assertThat(set.tables(FIRST).find(InspectionKinds.AGE_LIMITS).orElseThrow().rows())
        .extracting(row -> row.key() + " " + row.limit())
        .containsExactly(
            "coat/COAT/STRUCTURAL/OUTER_SHELL NONE_SET",
            "coat/COAT/STRUCTURAL/LINER_SYSTEM NONE_SET",
            "coat/COAT/PROXIMITY/OUTER_SHELL NONE_SET",
            "coat/COAT/PROXIMITY/LINER_SYSTEM NONE_SET",
            "helmet/HELMET/STRUCTURAL NOT_SEEN");
    assertThat(set.tables(SECOND).find(InspectionKinds.AGE_LIMITS).orElseThrow().rows())
        .filteredOn(row -> row.element() == ElementKind.HELMET)
        .extracting(row -> row.limit())
        .containsExactly(new AgeLimit.Years(10));
  }

  @Test
  void intervalsChecksPermissionsAndCautionsAreRead() {
    EditionTables first = set.tables(FIRST);
    assertThat(first.find(InspectionKinds.INTERVALS).orElseThrow().rows())
        .extracting(
            row -> row.key() + " " + row.firstMonths() + " " + row.firstMonthsWithCbrnOption())
        .containsExactly("advanced/COAT/STRUCTURAL 12 6", "advanced/HELMET/STRUCTURAL 12 6");
    assertThat(
            first
                .find(InspectionKinds.CHECKS)
                .orElseThrow()
                .row(Check.ROUTINE_INSPECTION)
                .passCloses())
        .isFalse();
    assertThat(first.find(InspectionKinds.CHECKS).orElseThrow().row(Check.SEAM_PULL).key().value())
        .isEqualTo("seam-pull");
    assertThat(
            first.find(InspectionKinds.PERMISSIONS).orElseThrow().permitted(Task.ADVANCED_REPAIR))
        .extracting(row -> row.key() + " " + row.entity() + " " + row.needs().orElseThrow())
        .containsExactly(
            "advanced-repair/ORGANIZATION "
                + EntityKind.ORGANIZATION
                + " "
                + CredentialScope.ADVANCED_REPAIR,
            "advanced-repair/MANUFACTURER "
                + EntityKind.MANUFACTURER
                + " "
                + CredentialScope.ADVANCED_REPAIR);
    List<CautionRow> cautions = first.find(InspectionKinds.CAUTIONS).orElseThrow().rows();
    assertThat(keys(cautions)).containsExactly("all", "helmet-retired");
    assertThat(cautions.get(0).effects()).isEmpty();
    assertThat(cautions.get(1).effects()).containsExactly(EffectKind.RETIRE);
  }

  @Test
  void everyFileIsAmongTheRevisions() {
    assertThat(set.revisions())
        .extracting(TableRevision::file)
        .startsWith("sources.json", "editions.json", "trade/anatomy-coat.json")
        .hasSize(39);
    assertThat(set.revisions())
        .filteredOn(revision -> revision.table().equals("defects"))
        .allSatisfy(
            revision -> {
              assertThat(revision.revision()).isEqualTo(1);
              assertThat(revision.knownGaps()).containsExactly("Nearly everything.");
            });
  }

  @Test
  void whatEachEditionHoldsIsNotFoundAmongWhatAllShare() {
    LoadedTables set = new LoadedTables(Map.of(), List.of(), List.of(), List.of());
    assertThat(set.find(InspectionKinds.ANATOMY)).isEmpty();
    assertThat(set.find(StrengthKinds.REQUIREMENTS)).isEmpty();
    assertThatThrownBy(() -> set.find(InspectionKinds.DEFECTS))
        .isInstanceOf(InvalidValueException.class)
        .hasMessage(
            "LoadedTables.kind: given \"defects\", allowed: a kind held by the trade, products or"
                + " the law");
  }
}
