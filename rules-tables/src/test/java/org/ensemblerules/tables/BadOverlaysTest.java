package org.ensemblerules.tables;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ensemblerules.GearRules;
import org.ensemblerules.gear.Part;
import org.ensemblerules.source.Checked;
import org.ensemblerules.tables.message.JsonFault;
import org.ensemblerules.tables.set.OverlayFile;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every bad overlay of the folder is refused with the very faults that stand beside it, each with
 * its code on a line, when it is read or when it is laid over the shipped rules; and those stay as
 * they were.
 */
class BadOverlaysTest {
  private static final LocalDate AS_OF = LocalDate.of(2026, 11, 25);

  /** What no schema can see: what other rows say, days that no calendar has, no JSON at all. */
  private static final Set<String> BEYOND_SCHEMAS =
      Set.of(
          "begins-later",
          "cut-off",
          "duplicate-field",
          "duplicate-key",
          "extent-told-otherwise",
          "instructions-looser-than-any-maker-may",
          "instructions-looser-unnamed",
          "instructions-loosening-without-an-end",
          "instructions-on-the-other-side",
          "instructions-replacing-what-is-not-there",
          "instructions-that-nothing-keeps",
          "key-of-the-base",
          "last-doer",
          "looser-rows",
          "looser-wash",
          "name-of-an-edition",
          "name-of-the-trade",
          "no-such-part",
          "policy-that-nothing-keeps",
          "source-of-the-library-again",
          "stands-on-itself",
          "stands-on-nothing",
          "without-review-date");

  static List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder())) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(name -> name.endsWith(".json"))
          .map(name -> name.substring(0, name.length() - ".json".length()))
          .sorted()
          .toList();
    }
  }

  @ParameterizedTest
  @MethodSource("names")
  void isRefusedWithItsFaults(String name) throws IOException {
    String before = ShippedRules.standard().identity().fingerprint();
    assertThat(faults(name)).isEqualTo(Files.readAllLines(folder().resolve(name + ".faults")));
    assertThat(ShippedRules.standard().identity().fingerprint()).isEqualTo(before);
    assertThat(ShippedRules.standard().identity().overlays()).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("names")
  void whatIsBrokenInFormTheSchemaRefusesToo(String name) throws IOException {
    if (!BEYOND_SCHEMAS.contains(name)) {
      assertThat(TableSchemas.objections("overlay", text(name))).isNotEmpty();
    } else if (!name.equals("cut-off") && !name.equals("duplicate-field")) {
      assertThat(TableSchemas.objections("overlay", text(name))).isEmpty();
    }
  }

  @Test
  void aHugeFileIsRefused() {
    assertThat(faults(OverlayJson.read("huge.json", " ".repeat(1_000_001))))
        .containsExactly(
            "UNREADABLE huge.json#: found 1000001 characters, allowed: at most 1000000 characters");
  }

  @Test
  @Tag("slow")
  void familiesThatStandForTooManyRowsAreRefused() {
    String all = names("elementKind");
    String row =
        "{\"key\": \"k%d\", \"elements\": "
            + all
            + ", \"uses\": [\"STRUCTURAL\", \"PROXIMITY\"], \"sites\": "
            + parts()
            + ", \"defects\": "
            + names("defectKind")
            + ", \"effect\": {\"kind\": \"RETIRE\", \"scope\": \"ELEMENT\"}, \"wording\": \"All.\","
            + " \"basis\": {\"kind\": \"COMMON_PRACTICE\"}}";
    StringBuilder rows = new StringBuilder();
    for (int i = 0; i < 60; i++) {
      rows.append(i == 0 ? "" : ",").append(row.formatted(i));
    }
    assertThat(
            faults(
                OverlayJson.read(
                    "many.json",
                    "{\"overlay\": \"MANY\", \"kind\": \"LAW_OF_PLACE\", \"title\": \"Many\","
                        + " \"reviewedThrough\": \"2027-12-31\", \"defects\": ["
                        + rows
                        + "]}")))
        .singleElement()
        .asString()
        .startsWith("NOT_ALLOWED many.json#/defects/")
        .endsWith(
            ": found families that stand for more than 100000 rows up to here, allowed: at most"
                + " 100000 rows in a file");
  }

  private static String names(String name) {
    return TableSchemas.text("vocabulary").get("$defs").get(name).get("enum").toString();
  }

  private static String parts() {
    return Stream.of(Part.values())
        .map(part -> "\"" + part + "\"")
        .collect(Collectors.joining(", ", "[", "]"));
  }

  private static List<String> faults(String name) throws IOException {
    Checked<OverlayFile, JsonFault> read = OverlayJson.read(name + ".json", text(name));
    if (read instanceof Checked.Sound<OverlayFile, JsonFault> ok) {
      Checked<GearRules, JsonFault> laid =
          OverlayJson.lay(ShippedRules.standard(), List.of(ok.value()), AS_OF);
      return faults(laid);
    }
    return faults(read);
  }

  private static List<String> faults(Checked<?, JsonFault> loaded) {
    assertThat(loaded).isInstanceOf(Checked.Refused.class);
    return ((Checked.Refused<?, JsonFault>) loaded)
        .faults().stream().map(fault -> fault.code() + " " + fault).toList();
  }

  private static String text(String name) throws IOException {
    return Files.readString(folder().resolve(name + ".json"));
  }

  private static Path folder() {
    try {
      return Path.of(
          Objects.requireNonNull(BadOverlaysTest.class.getResource("overlays/bad")).toURI());
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }
}
