package org.ensemblerules.tables.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Which name was probably meant. */
class NearestNameTest {
  private static final List<String> NAMES = List.of("COAT", "BOAT", "TROUSERS", "HELMET_COVER");

  @Test
  void theFewestChangesWin() {
    assertThat(NearestName.of("TROUSER", NAMES)).contains("TROUSERS");
    assertThat(NearestName.of("helmet-cover", NAMES)).contains("HELMET_COVER");
    assertThat(NearestName.of("HELMTE_COVER", NAMES)).contains("HELMET_COVER");
  }

  @Test
  void ofEquallyNearNamesTheFirstIsTaken() {
    assertThat(NearestName.of("GOAT", NAMES)).contains("COAT");
  }

  @Test
  void aNameThatDiffersInMoreThanHalfIsNotNear() {
    assertThat(NearestName.of("CO", NAMES)).contains("COAT");
    assertThat(NearestName.of("C", NAMES)).isEmpty();
    assertThat(NearestName.of("", NAMES)).isEmpty();
    assertThat(NearestName.of("x".repeat(100_000), NAMES)).isEmpty();
  }

  @Test
  void whatIsAllowedIsSaidShortly() {
    assertThat(NearestName.allowed("COAST", List.of("COAT", "HOOD")))
        .isEqualTo("nearest COAT; one of COAT, HOOD");
    assertThat(NearestName.allowed("x", List.of("COAT", "HOOD"))).isEqualTo("one of COAT, HOOD");
    assertThat(NearestName.allowed("x", List.of("COAT"))).isEqualTo("COAT");
    assertThat(NearestName.allowed("x", List.of())).isEqualTo("none");
    assertThat(NearestName.allowed("COAST", NAMES, "a kind of gear"))
        .isEqualTo("nearest COAT; a kind of gear");
  }
}
