package org.ensemblerules.source;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A value that was seen restated leads to the pages, and a page to the documents it restates. */
class SeenOnPagesTest {
  private static final SourceId STANDARD = new SourceId("invented-rules");
  private static final SourceId MEMO = new SourceId("memo");
  private static final SourceId GUIDE = new SourceId("guide");

  @Test
  void aRestatedValueNamesItsPagesBesideTheDocument() {
    Basis basis = restated(List.of(MEMO, GUIDE));
    assertThat(basis.cited()).contains(STANDARD);
    assertThat(basis.pages()).containsExactly(MEMO, GUIDE);
    assertThat(basis.text())
        .isEqualTo("PUBLISHED, RESTATED, invented-rules, clause not seen, on page memo and guide");
    assertThat(new Basis.CarriedOver(new OriginId("LATER"), basis).pages())
        .containsExactly(MEMO, GUIDE);
  }

  @Test
  void whatWasReadOrRememberedIsOnNoOtherPage() {
    assertThat(new Basis.Published(STANDARD, Optional.empty(), HowSeen.READ).pages()).isEmpty();
    assertThat(new Basis.Published(STANDARD, Optional.empty(), HowSeen.RESTATED).pages()).isEmpty();
    assertThat(new Basis.CommonPractice().pages()).isEmpty();
    assertThat(new Basis.Memory(Confidence.LOW, Optional.of(STANDARD)).pages()).isEmpty();
  }

  @Test
  void pagesThatContradictTheBasisAreRefused() {
    assertThatThrownBy(
            () -> new Basis.Published(STANDARD, Optional.empty(), HowSeen.READ, List.of(MEMO)))
        .isInstanceOf(InvalidValueException.class)
        .hasMessageContaining("Basis.pages")
        .hasMessageContaining("none, since it was read in the document itself");
    for (List<SourceId> pages : List.of(List.of(MEMO, MEMO), List.of(STANDARD))) {
      assertThatThrownBy(() -> restated(pages))
          .isInstanceOf(InvalidValueException.class)
          .hasMessageContaining("each page once, and none that is the document itself");
    }
  }

  @Test
  void aPageThatSellsNamesNeitherIssuerNorAddress() {
    assertThat(page(SourceKind.COMMERCIAL, Optional.empty(), Optional.empty()).wasSeen()).isTrue();
    assertThat(page(SourceKind.PRESS, Optional.empty(), Optional.of("example.org")).wasSeen())
        .isTrue();
    assertThat(page(SourceKind.PRESS, Optional.of("Nobody"), Optional.empty()).wasSeen()).isFalse();
    assertThatThrownBy(() -> page(SourceKind.COMMERCIAL, Optional.of("Nobody"), Optional.empty()))
        .hasMessageContaining("Source.issuer");
    assertThatThrownBy(
            () -> page(SourceKind.COMMERCIAL, Optional.empty(), Optional.of("example.org")))
        .hasMessageContaining("Source.seenAt");
  }

  @Test
  void aSourceSaysWhereItCanBeFollowedTo() {
    assertThat(page(SourceKind.COMMERCIAL, Optional.empty(), Optional.empty()).citation())
        .isEqualTo("A memo, address kept back, seen on 2020-05-04");
    assertThat(page(SourceKind.PRESS, Optional.of("Nobody"), Optional.of("example.org")).citation())
        .isEqualTo("A memo, Nobody, example.org, seen on 2020-05-04");
    assertThat(page(SourceKind.PRESS, Optional.of("Nobody"), Optional.empty()).citation())
        .isEqualTo("A memo, Nobody, own text not seen, seen on 2020-05-04");
  }

  @Test
  void nothingRestatesItself() {
    assertThatThrownBy(
            () ->
                new Source(
                    STANDARD,
                    SourceKind.STANDARD,
                    "Invented rules",
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Set.of(STANDARD)))
        .isInstanceOf(InvalidValueException.class)
        .hasMessageContaining("documents other than itself");
  }

  private static Basis restated(List<SourceId> pages) {
    return new Basis.Published(STANDARD, Optional.empty(), HowSeen.RESTATED, pages);
  }

  private static Source page(SourceKind kind, Optional<String> issuer, Optional<String> seenAt) {
    return new Source(
        MEMO,
        kind,
        "A memo",
        issuer,
        Optional.empty(),
        seenAt,
        Optional.of(LocalDate.of(2020, 5, 4)),
        Set.of(STANDARD));
  }
}
