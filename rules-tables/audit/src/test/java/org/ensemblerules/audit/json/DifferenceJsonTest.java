package org.ensemblerules.audit.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.domains.Domain;
import org.ensemblerules.GearRules;
import org.ensemblerules.audit.difference.ChangeKind;
import org.ensemblerules.audit.difference.ElementDifference;
import org.ensemblerules.audit.difference.FleetDifference;
import org.ensemblerules.audit.difference.RowChange;
import org.ensemblerules.audit.difference.RuleSetDifference;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.retirement.AgeLimit;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.tables.ReadFaults;
import org.ensemblerules.tables.ShippedRules;
import org.ensemblerules.tables.TableSchemas;
import org.ensemblerules.testkit.Cases;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.FrozenRules;
import org.ensemblerules.testkit.GearCase;
import org.ensemblerules.testkit.OtherRules;

/**
 * Differences as they are written in JSON: as the schema has them, by a validator of another
 * project; read back as they were; written again to the same text.
 */
class DifferenceJsonTest {
  private static final RuleSet RULES = ShippedRules.standard().rules();
  private static final RuleSet OTHERS =
      ShippedRules.of(new OriginId("NFPA_1851_2014")).orElseThrow().rules();

  private static void isReadBack(DifferenceLine line) {
    String text = DifferenceJson.write(line);
    assertThat(TableSchemas.objections("difference-answer", text)).as(text).isEmpty();
    assertThat(text).doesNotContain("\n");
    DifferenceLine read = DifferenceJson.read("kept", text).orElseThrow();
    assertThat(read).isEqualTo(line);
    assertThat(DifferenceJson.write(read)).isEqualTo(text);
  }

  @Example
  void whatAnotherEditionChanges() {
    RuleSetDifference difference =
        RuleSetDifference.between(GearRules.of(OTHERS), GearRules.of(RULES));
    List<DifferenceLine> lines = new ArrayList<>();
    lines.add(DifferenceLine.Rules.of(difference));
    List<RowChange> changes = difference.changes();
    Set<ChangeKind> kinds = EnumSet.noneOf(ChangeKind.class);
    for (int i = 0; i < changes.size(); i++) {
      if (kinds.add(changes.get(i).kind()) || i % 50 == 0) {
        lines.add(DifferenceLine.ChangedRow.of(changes.get(i)));
      }
    }
    assertThat(kinds).hasSizeGreaterThan(2);
    lines.forEach(DifferenceJsonTest::isReadBack);
  }

  /** The frozen rules have other limits of age and other tasks, and ask for other things. */
  @Property(tries = 50, edgeCases = EdgeCasesMode.NONE)
  @Domain(Cases.class)
  void whatItChangesForGearIsReadBack(@ForAll GearCase given) {
    List<DifferenceLine> lines = new ArrayList<>();
    lines.add(
        DifferenceLine.ChangedFleet.of(
            FleetDifference.between(
                GearRules.of(FrozenRules.rules()),
                GearRules.of(RULES),
                List.of(given.assessment()),
                given.asOf(),
                each -> lines.add(DifferenceLine.ChangedElement.of(each)))));
    assertThat(lines).hasSize(2);
    lines.forEach(DifferenceJsonTest::isReadBack);
  }

  @Example
  void eachThingThatChangesForAHelmetIsTold() {
    RuleSet younger = OtherRules.ages(row -> OtherRules.age(row, new AgeLimit.Years(4)));
    List<DifferenceLine.ChangedElement> lines =
        List.of(
            helmet(FrozenRules.rules(), RULES),
            helmet(RULES, FrozenRules.rules()),
            helmet(FrozenRules.rules(), younger));
    assertThat(lines).anyMatch(line -> !line.gained().isEmpty());
    assertThat(lines).anyMatch(line -> !line.lost().isEmpty());
    assertThat(lines).anyMatch(line -> !line.due().isEmpty());
    assertThat(lines).anyMatch(line -> !line.ages().isEmpty());
    lines.forEach(DifferenceJsonTest::isReadBack);
  }

  private static DifferenceLine.ChangedElement helmet(RuleSet now, RuleSet then) {
    GearCase helmet = FitGear.fit(ElementKind.HELMET);
    return DifferenceLine.ChangedElement.of(
        ElementDifference.of(
            GearRules.of(now),
            GearRules.of(then),
            helmet.assessment(),
            helmet.asOf().plusYears(2)));
  }

  @Example
  void badDifferencesAreRefused() {
    assertThat(ReadFaults.of(DifferenceJson.read("kept", "{\"difference\":\"ROWS\"}")))
        .hasSize(1)
        .first()
        .asString()
        .startsWith("/difference NOT_ALLOWED: \"ROWS\"; ")
        .contains("ROW");
    assertThat(
            ReadFaults.of(
                DifferenceJson.read(
                    "kept",
                    "{\"difference\":\"ROW\",\"kind\":\"ADDED\",\"table\":\"T\",\"topic\":[],"
                        + "\"strictness\":\"STRICTER\"}")))
        .containsExactly(
            "/kind NOT_ALLOWED: \"ADDED\"; ADDED with only a row after, REMOVED with only a row"
                + " before, or both rows");
    assertThat(
            ReadFaults.of(
                DifferenceJson.read(
                    "kept",
                    "{\"difference\":\"FLEET\",\"asOf\":\"2026-11-25\",\"elements\":1,"
                        + "\"inServiceBefore\":1,\"inServiceAfter\":\"one\",\"changed\":0,"
                        + "\"effects\":{\"GAINS_ACTION\":0},\"gainedFor\":{\"No key\":1},"
                        + "\"lostWith\":{},\"serviceBefore\":\"IN\"}")))
        .anyMatch(fault -> fault.startsWith("/inServiceAfter NOT_ALLOWED: \"one\""))
        .anyMatch(fault -> fault.startsWith("/effects/GAINS_ACTION NOT_ALLOWED: 0"))
        .anyMatch(fault -> fault.startsWith("/gainedFor/No key NOT_ALLOWED"))
        .anyMatch(fault -> fault.startsWith("/serviceBefore UNKNOWN_FIELD"));
  }
}
