package org.ensemblerules.ruleset;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.ensemblerules.source.Row;
import org.ensemblerules.testkit.FrozenProvenance;
import org.ensemblerules.testkit.FrozenRules;
import org.junit.jupiter.api.Test;

/** The rules as text that anyone can hash. */
class CanonicalRulesTest {
  private static CautionRow caution(String key, String text) {
    return new CautionRow(FrozenProvenance.of(key), Set.of(), Set.of(), Set.of(), text);
  }

  @Test
  void eachRowIsALineAndTheFingerprintIsItsSha256() throws Exception {
    RuleSet rules = FrozenRules.rules();
    CanonicalRules canonical = rules.canonical();
    assertThat(canonical.lines())
        .hasSize(1 + rules.tables().rows().size() + rules.editions().size())
        .isSorted()
        .noneMatch(line -> line.contains("\n"));
    assertThat(canonical.text()).isEqualTo(String.join("\n", canonical.lines()) + "\n");
    byte[] digest =
        MessageDigest.getInstance("SHA-256")
            .digest(canonical.text().getBytes(StandardCharsets.UTF_8));
    assertThat(HexFormat.of().formatHex(digest))
        .isEqualTo(canonical.sha256())
        .isEqualTo(rules.identity().fingerprint());
  }

  /** The text of one row, and the hash that coreutils' sha256sum gives for it. */
  @Test
  void oneRowInFull() {
    CanonicalRules one = CanonicalRules.of(Map.of(), List.<Row>of(caution("b", "A back\\slash.")));
    assertThat(one.text())
        .isEqualTo(
            "cautions\tfrozen/b\tFROZEN_2020\tPUBLISHED, RESTATED, invented-rules, clause not"
                + " seen\t2030-12-31\t\t[]\t[]\t[]\tA back\\\\slash.\nform\t2\n");
    assertThat(one.sha256())
        .isEqualTo("28fb0828898be99685ef34a8045d73b0d1604d8d707f47d395e40965c76efbf6");
  }

  @Test
  void noTwoTextsRunTogetherAlike() {
    assertThat(
            List.of("a\\b", "a\\\\b", "a\\tb", "a\\\\tb").stream()
                .map(text -> CanonicalRules.of(Map.of(), List.<Row>of(caution("c", text))).text())
                .distinct())
        .hasSize(4);
  }

  /** Its effective date keeps gear out, so an edition belongs to the rules that are hashed. */
  @Test
  void theEditionsChosenAreInIt() {
    assertThat(FrozenRules.rules().canonical().lines())
        .anyMatch(line -> line.startsWith("subject\tCARE\teditions\t"))
        .anyMatch(line -> line.startsWith("subject\tAGE\teditions\t"));
  }
}
