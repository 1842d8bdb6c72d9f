package org.ensemblerules.tables;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.ruleset.Subject;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.Edition;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.tables.message.JsonFault;
import org.ensemblerules.tables.set.LoadedTables;
import org.ensemblerules.tables.set.TableFiles;
import org.ensemblerules.testkit.ShippedLoad;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Only what is asked for is loaded, and it is the same as if all had been. */
class LazyEditionsTest {
  private static final OriginId EDITION_2008 = new OriginId("NFPA_1851_2008");

  @Tag("slow")
  @Test
  void theRulesOfAnEditionAreTheSameWhetherAllWasLoadedOrNot() {
    LoadedTables all = ShippedLoad.tables();
    assertThat(ShippedRules.editions()).isEqualTo(all.editions(Subject.INSPECTION)).hasSize(4);
    for (Edition edition : ShippedRules.editions()) {
      RuleSet eager = RuleSets.compose(all, edition.id()).orElseThrow().rules();
      RuleSet lazy = ShippedRules.of(edition.id()).orElseThrow().rules();
      assertThat(lazy.identity()).isEqualTo(eager.identity());
      assertThat(lazy.editions()).isEqualTo(eager.editions());
      assertThat(lazy.tables().rows()).hasSameSizeAs(eager.tables().rows());
      assertThat(ShippedRules.of(edition.id()).orElseThrow().rules()).isSameAs(lazy);
    }
    assertThat(ShippedRules.sources()).isEqualTo(all.sources());
    assertThat(ShippedRules.of(new OriginId("NO_SUCH_EDITION"))).isEmpty();
  }

  @Test
  void filesOfOtherEditionsAreNotRead() {
    Set<String> read = new HashSet<>();
    TableFiles shipped = ShippedTables.files();
    TableFiles watched =
        path -> {
          read.add(path);
          return shipped.read(path);
        };
    LoadedTables tables = TableLoader.load(watched, Set.of(EDITION_2008)).orElseThrow();
    assertThat(tables.editions(Subject.INSPECTION))
        .extracting(Edition::id)
        .containsExactly(EDITION_2008);
    assertThat(RuleSets.compose(tables, EDITION_2008)).isInstanceOf(Checked.Sound.class);
    assertThat(read)
        .contains("nfpa-1850-2026/edition.json", "trade/hydrostatic.json")
        .noneMatch(path -> path.matches("nfpa-(1851-20[12]|1850-)[^/]*/.*-changes.json"));
  }

  @Test
  void anEditionThatCarriesAnotherOverWholeHasAllItsTables() {
    RuleSet before = ShippedRules.standard().rules();
    RuleSet after = ShippedRules.of(new OriginId("NFPA_1850_2026")).orElseThrow().rules();
    // A caution on its first day is its own.
    assertThat(after.tables().rows()).hasSize(before.tables().rows().size() + 1);
    assertThat(after.identity().revisions())
        .containsKeys(
            "nfpa-1850-2026/edition.json",
            "nfpa-1850-2026/cautions-changes.json",
            "nfpa-1851-2020/defects-changes.json");
  }

  private static Checked<LoadedTables, JsonFault> withWhole(String edition, String from) {
    TableFiles shipped = ShippedTables.files();
    return TableLoader.load(
        path ->
            path.equals(edition)
                ? shipped
                    .read(path)
                    .map(
                        bytes ->
                            new String(bytes, java.nio.charset.StandardCharsets.UTF_8)
                                .replace("\"NFPA_1851_2020\",\n    \"unc", from)
                                .getBytes(java.nio.charset.StandardCharsets.UTF_8))
                : shipped.read(path));
  }

  @Tag("slow")
  @Test
  void whatIsCarriedOverWholeMustBeThereAndMustEnd() {
    String file = "nfpa-1850-2026/edition.json";
    for (String from : Set.of("NFPA_1851_2021", "NFPA_1850_2026")) {
      Checked<LoadedTables, JsonFault> loaded = withWhole(file, "\"" + from + "\",\n    \"unc");
      assertThat(loaded)
          .as(from)
          .isInstanceOfSatisfying(
              Checked.Refused.class,
              refused ->
                  assertThat(refused.faults().toString())
                      .contains(file + "#/carriesOver/edition: found \"" + from + "\"")
                      .contains(
                          from.endsWith("1")
                              ? "nearest NFPA_1851_20"
                              : "a chain of editions that ends"));
    }
    assertThat(Optional.of(withWhole("none", ""))).get().isInstanceOf(Checked.Sound.class);
  }
}
