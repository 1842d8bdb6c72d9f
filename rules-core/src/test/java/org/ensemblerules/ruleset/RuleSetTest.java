package org.ensemblerules.ruleset;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.effect.EffectKind;
import org.ensemblerules.effect.Task;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.source.Basis;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.Edition;
import org.ensemblerules.source.HowSeen;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.source.Provenance;
import org.ensemblerules.source.RowKey;
import org.ensemblerules.source.SourceId;
import org.ensemblerules.source.TableFault;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.FrozenProvenance;
import org.ensemblerules.testkit.FrozenRules;
import org.ensemblerules.testkit.People;
import org.junit.jupiter.api.Test;

/** A rule set says which rules it is made of. */
class RuleSetTest {
  private static final CautionRow ROW =
      new CautionRow(FrozenProvenance.of("c"), Set.of(), Set.of(), Set.of(), "Mind this.");

  private static String fingerprint(List<CautionRow> cautions) {
    Tables frozen = FrozenRules.tables();
    Tables tables =
        Tables.of(
            frozen.map().with(InspectionKinds.CAUTIONS, CautionTable.of(cautions).orElseThrow()));
    return FrozenRules.of(tables).identity().fingerprint();
  }

  private static CautionRow with(Provenance provenance) {
    return new CautionRow(provenance, ROW.elements(), ROW.uses(), ROW.effects(), ROW.text());
  }

  @Test
  void theFingerprintDoesNotDependOnTheOrderOfRows() {
    CautionRow other = with(FrozenProvenance.of("d"));
    assertThat(fingerprint(List.of(ROW, other))).isEqualTo(fingerprint(List.of(other, ROW)));
  }

  @Test
  void theFingerprintDependsOnEveryPartOfARow() {
    Provenance from = ROW.provenance();
    Basis read = new Basis.Published(new SourceId("s"), Optional.of("1"), HowSeen.READ);
    OriginId origin = new OriginId("OTHER");
    LocalDate day = from.reviewedThrough();
    Optional<String> none = Optional.empty();
    List<CautionRow> rows = new ArrayList<>();
    rows.add(ROW);
    rows.add(with(new Provenance(new RowKey("k"), from.origin(), from.basis(), day, none)));
    rows.add(with(new Provenance(from.key(), origin, from.basis(), day, none)));
    rows.add(with(new Provenance(from.key(), from.origin(), read, day, none)));
    rows.add(with(new Provenance(from.key(), from.origin(), from.basis(), day.plusDays(1), none)));
    rows.add(with(new Provenance(from.key(), from.origin(), from.basis(), day, Optional.of("n"))));
    rows.add(new CautionRow(from, EnumSet.of(ElementKind.HOOD), Set.of(), Set.of(), "Mind this."));
    rows.add(new CautionRow(from, Set.of(), Set.of(), Set.of(), "Mind that."));
    Set<String> prints = new HashSet<>();
    rows.forEach(row -> prints.add(fingerprint(List.of(row))));
    prints.add(fingerprint(List.of()));
    assertThat(prints).hasSize(rows.size() + 1);
  }

  /** So that a change of what is hashed, or how, does not go unnoticed. */
  @Test
  void theFingerprintIsTheSameOnEveryMachine() {
    assertThat(FrozenRules.rules().identity().fingerprint())
        .isEqualTo(FrozenRules.of(FrozenRules.tables()).identity().fingerprint())
        .matches("[0-9a-f]{64}");
  }

  @Test
  void theIdentityNamesEditionsAndRevisions() {
    Identity identity = FrozenRules.rules().identity();
    assertThat(identity.editions())
        .containsOnlyKeys(Subject.CARE, Subject.INSPECTION, Subject.AGE)
        .containsEntry(Subject.CARE, FrozenProvenance.EDITION);
    assertThat(identity.revisions()).isEqualTo(Map.of("defects", 1));
    assertThat(FrozenRules.rules().editions().get(Subject.AGE).id())
        .isEqualTo(new OriginId("FROZEN_2010"));
  }

  @Test
  void everyRowOfEveryTableIsListed() {
    Tables tables = FrozenRules.tables();
    assertThat(tables.rows())
        .hasSize(TableKinds.all().stream().mapToInt(kind -> tables.rows(kind).size()).sum());
    assertThat(tables.rows()).allMatch(row -> !row.canonical().isEmpty());
    assertThat(tables.rows().stream().map(row -> row.key()).distinct().count())
        .isEqualTo(tables.rows().size());
  }

  @Test
  void mayPerformIsAskedOfTheRules() {
    RuleSet rules = FrozenRules.rules();
    var coat = FitGear.element(ElementKind.COAT).build();
    assertThat(rules.mayPerform(People.MAKER, Task.IDENTIFICATION, coat, FitGear.AS_OF).granted())
        .isTrue();
    assertThat(
            rules
                .mayPerform(People.OTHER_MAKER, Task.IDENTIFICATION, coat, FitGear.AS_OF)
                .granted())
        .isFalse();
  }

  @Test
  void cautionsAreChosenByElementUseAndEffect() {
    CautionTable cautions = FrozenRules.rules().tables().cautions();
    var helmet = FitGear.element(ElementKind.HELMET).build();
    var coat = FitGear.element(ElementKind.COAT).build();
    assertThat(cautions.with(coat, Set.of()))
        .extracting(CautionRow::text)
        .containsExactly("These rules are invented.");
    assertThat(cautions.with(helmet, Set.of())).hasSize(2);
    assertThat(cautions.with(helmet, EnumSet.of(EffectKind.RETIRE))).hasSize(3);
    assertThat(cautions.with(coat, EnumSet.of(EffectKind.CLEAN))).hasSize(1);
  }

  @Test
  void aCautionForOneUseIsNotForTheOther() {
    CautionRow proximity =
        new CautionRow(
            FrozenProvenance.of("p"), Set.of(), EnumSet.of(Use.PROXIMITY), Set.of(), "Mind.");
    CautionTable table = CautionTable.of(List.of(proximity)).orElseThrow();
    assertThat(table.with(FitGear.element(ElementKind.COAT).build(), Set.of())).isEmpty();
  }

  @Test
  void aCautionTwiceIsAFault() {
    Checked<CautionTable, TableFault> result = CautionTable.of(List.of(ROW, ROW));
    assertThat(((Checked.Refused<CautionTable, TableFault>) result).faults())
        .extracting(Object::toString)
        .containsExactly("frozen/c, key: found frozen/c, allowed: each key once");
  }

  @Test
  void editionsSortByTheirOrder() {
    Edition newer = edition("A", 2);
    Edition older = edition("B", 1);
    assertThat(newer).isGreaterThan(older);
    assertThat(older).isLessThan(newer).isEqualByComparingTo(edition("B", 1));
    assertThat(edition("C", 1)).isGreaterThan(older);
    assertThat(newer.canonical()).containsExactly("A", "2", "T", "", "", "");
    assertThat(FrozenRules.rules().editions().get(Subject.CARE).canonical())
        .containsExactly(
            "FROZEN_2020", "2", "Invented rules, edition of 2020", "2018-07-01", "", "");
    assertThatThrownBy(
            () ->
                new Edition(
                    FrozenProvenance.of("edition"),
                    FrozenProvenance.EDITION,
                    1,
                    "T",
                    Optional.of(FrozenRules.EFFECTIVE),
                    Optional.empty(),
                    Optional.of(FrozenRules.EFFECTIVE)))
        .hasMessageContaining("none beside the day it took effect");
  }

  private static Edition edition(String id, int order) {
    return new Edition(
        FrozenProvenance.of("e"), new OriginId(id), order, "T", Optional.empty(), Optional.empty());
  }
}
