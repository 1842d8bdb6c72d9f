package org.ensemblerules.verdict;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.Scope;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.ruleset.CautionRow;
import org.ensemblerules.source.Basis;
import org.ensemblerules.source.Confidence;
import org.ensemblerules.source.HowSeen;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.source.Provenance;
import org.ensemblerules.source.Row;
import org.ensemblerules.source.RowKey;
import org.ensemblerules.source.Source;
import org.ensemblerules.source.SourceId;
import org.ensemblerules.source.SourceKind;
import org.junit.jupiter.api.Test;

/** Reasons keep one order, and say how sure the word is on which they rest. */
class ReasonTest {
  private static final SourceId SOURCE = new SourceId("invented-rules");

  private static Reason reason(
      ReasonKind kind,
      Part part,
      String finding,
      String row,
      String seen,
      Scope scope,
      String did) {
    return new Reason(
        kind,
        Optional.of(row)
            .filter(key -> !key.isEmpty())
            .map(key -> row(key, new Basis.CommonPractice()).cited()),
        Site.of(part),
        Optional.of(finding).filter(id -> !id.isEmpty()).map(FindingId::new),
        seen,
        new Effect.Retire(scope),
        Set.of(),
        Set.of(),
        List.of(did));
  }

  private static Row row(String key, Basis basis) {
    Provenance provenance =
        new Provenance(
            new RowKey(key), new OriginId("E"), basis, LocalDate.of(2030, 1, 1), Optional.empty());
    return new CautionRow(provenance, Set.of(), Set.of(), Set.of(), "x");
  }

  @Test
  void reasonsSortByKindPlaceFindingRowAndText() {
    List<Reason> inOrder =
        List.of(
            reason(ReasonKind.RULE, Part.TRIM, "F1", "a", "s", Scope.PART, "x"),
            reason(ReasonKind.NO_RULE, Part.FABRIC, "F1", "a", "s", Scope.PART, "x"),
            reason(ReasonKind.NO_RULE, Part.TRIM, "", "a", "s", Scope.PART, "x"),
            reason(ReasonKind.NO_RULE, Part.TRIM, "F1", "", "s", Scope.PART, "x"),
            reason(ReasonKind.NO_RULE, Part.TRIM, "F1", "a", "s", Scope.PART, "x"),
            reason(ReasonKind.NO_RULE, Part.TRIM, "F1", "a", "t", Scope.LAYER, "x"),
            reason(ReasonKind.NO_RULE, Part.TRIM, "F1", "a", "t", Scope.PART, "x"),
            reason(ReasonKind.NO_RULE, Part.TRIM, "F1", "a", "t", Scope.PART, "y"));
    for (int i = 0; i < inOrder.size(); i++) {
      for (int j = 0; j < inOrder.size(); j++) {
        assertThat(Integer.signum(inOrder.get(i).compareTo(inOrder.get(j))))
            .as("%s and %s", i, j)
            .isEqualTo(Integer.compare(i, j));
      }
    }
  }

  private static Optional<String> caution(Basis basis) {
    return on(basis).caution();
  }

  private static Reason on(Basis basis) {
    return new Reason(
        ReasonKind.RULE,
        Optional.of(row("a", basis).cited()),
        Site.of(Part.TRIM),
        Optional.empty(),
        "s",
        new Effect.Note(),
        Set.of(),
        Set.of(),
        List.of());
  }

  @Test
  void aReasonNamesThePagesOnWhichItWasSeen() {
    SourceId memo = new SourceId("memo");
    SourceId guide = new SourceId("guide");
    Map<SourceId, Source> listed =
        Map.of(
            memo,
            new Source(
                memo,
                SourceKind.PROCEDURE,
                "Memo on gear",
                Optional.of("City of Exampleton"),
                Optional.of("2020-06-17"),
                Optional.of("exampleton.example/memo"),
                Optional.of(LocalDate.of(2026, 11, 30)),
                Set.of(SOURCE)),
            guide,
            new Source(
                guide,
                SourceKind.COMMERCIAL,
                "A manufacturer's guide",
                Optional.empty(),
                Optional.of("2013"),
                Optional.empty(),
                Optional.empty(),
                Set.of(SOURCE)));
    Basis restated =
        new Basis.Published(SOURCE, Optional.empty(), HowSeen.RESTATED, List.of(memo, guide));
    String pages =
        " Seen on: Memo on gear, City of Exampleton, 2020-06-17, exampleton.example/memo, seen on"
            + " 2026-11-30; A manufacturer's guide, 2013, address kept back.";
    assertThat(on(restated).caution(listed))
        .contains("Seen restated elsewhere, not read in the source itself." + pages);
    assertThat(on(new Basis.CarriedOver(new OriginId("NEXT"), restated)).caution(listed))
        .hasValueSatisfying(
            text -> assertThat(text).startsWith("Carried over from an earlier").endsWith(pages));
    assertThat(on(restated).caution(Map.of()).orElseThrow()).endsWith(" Seen on: memo; guide.");
    assertThat(on(new Basis.CommonPractice()).caution(listed)).isEmpty();
    assertThat(on(new Basis.Memory(Confidence.LOW, Optional.empty())).caution(listed))
        .isEqualTo(caution(new Basis.Memory(Confidence.LOW, Optional.empty())));
  }

  @Test
  void onlyWhatWasReadOrIsPracticeNeedsNoCaution() {
    assertThat(caution(new Basis.CommonPractice())).isEmpty();
    assertThat(caution(new Basis.Published(SOURCE, Optional.of("1"), HowSeen.READ))).isEmpty();
    assertThat(caution(new Basis.Published(SOURCE, Optional.empty(), HowSeen.RESTATED)))
        .contains("Seen restated elsewhere, not read in the source itself.");
    assertThat(caution(new Basis.Memory(Confidence.LOW, Optional.empty())))
        .contains(
            "Remembered with LOW confidence, not seen published; confirm it before relying on"
                + " it.");
  }

  @Test
  void basesSayThemselvesOnOneLine() {
    assertThat(new Basis.CommonPractice().text()).isEqualTo("COMMON_PRACTICE");
    assertThat(new Basis.CommonPractice().cited()).isEmpty();
    Basis read = new Basis.Published(SOURCE, Optional.of("7.1"), HowSeen.READ);
    assertThat(read.text()).isEqualTo("PUBLISHED, READ, invented-rules, 7.1");
    assertThat(read.cited()).contains(SOURCE);
    assertThat(new Basis.Published(SOURCE, Optional.empty(), HowSeen.RESTATED).text())
        .isEqualTo("PUBLISHED, RESTATED, invented-rules, clause not seen");
    Basis memory = new Basis.Memory(Confidence.HIGH, Optional.of(SOURCE));
    assertThat(memory.text()).isEqualTo("MEMORY, HIGH, of invented-rules");
    assertThat(memory.cited()).contains(SOURCE);
    assertThat(new Basis.Memory(Confidence.HIGH, Optional.empty()).text())
        .isEqualTo("MEMORY, HIGH");
  }

  @Test
  void aReasonWithoutADefectRowHasNoWordingOfOne() {
    Reason reason = reason(ReasonKind.RULE, Part.TRIM, "F1", "a", "s", Scope.PART, "x");
    assertThat(reason.wording()).isEmpty();
    assertThat(reason.open()).isFalse();
    assertThat(reason.afterward()).isEmpty();
    assertThat(reason.rowKey()).contains(new RowKey("a"));
  }
}
