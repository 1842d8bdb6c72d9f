package org.ensemblerules.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Stream;
import org.ensemblerules.GearRules;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.source.Checked;
import org.ensemblerules.tables.AssessmentJson;
import org.ensemblerules.tables.CareJson;
import org.ensemblerules.tables.CustodyJson;
import org.ensemblerules.tables.DisposalJson;
import org.ensemblerules.tables.JsonLines;
import org.ensemblerules.tables.OverlayJson;
import org.ensemblerules.tables.RecordFileJson;
import org.ensemblerules.tables.RepairJson;
import org.ensemblerules.tables.ShippedRules;
import org.ensemblerules.tables.TableLoader;
import org.ensemblerules.tables.TestCaseJson;
import org.ensemblerules.tables.VerdictJson;
import org.ensemblerules.tables.message.JsonFault;
import org.ensemblerules.tables.set.OverlayFile;
import org.ensemblerules.tables.set.TableFiles;

/**
 * Every reader, given whatever bytes: each line is answered or refused with its faults on one line
 * each, what is read is written and read again to the same, and nothing is thrown. In the ordinary
 * build only the seeds in the folder of each method are tried; the profile {@code fuzz} makes up
 * more from them.
 */
class ReadersFuzzTest {
  private static final RuleSet RULES = ShippedRules.standard().rules();
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

  @FuzzTest
  void assessments(byte[] data) {
    lines(
        data,
        AssessmentJson::read,
        AssessmentJson::write,
        given -> VerdictJson.write(GearRules.of(RULES).assess(given, DAY)));
  }

  @FuzzTest
  void verdicts(byte[] data) {
    lines(
        data,
        VerdictJson::read,
        VerdictJson::write,
        given -> assertThat(given.toString()).contains(given.service().name()));
  }

  @FuzzTest
  void reports(byte[] data) {
    lines(
        data,
        TestCaseJson::read,
        TestCaseJson::write,
        given ->
            GearRules.of(RULES)
                .judge(given.purpose(), given.rule())
                .judge(given.product(), given.report()));
  }

  @FuzzTest
  void records(byte[] data) {
    lines(
        data,
        RecordFileJson::read,
        RecordFileJson::write,
        given -> GearRules.of(RULES).file(given, DAY));
  }

  @FuzzTest
  void care(byte[] data) {
    lines(
        data,
        CareJson::read,
        asked ->
            CareJson.write(asked, RULES.careRoutes().route(asked.element(), asked.exposures())));
  }

  @FuzzTest
  void repair(byte[] data) {
    lines(
        data, RepairJson::read, asked -> RepairJson.write(asked, asked.plan(GearRules.of(RULES))));
  }

  @FuzzTest
  void custody(byte[] data) {
    lines(
        data,
        CustodyJson::read,
        asked ->
            CustodyJson.write(
                asked, RULES.tables().records().custodySteps().check(asked.custody(), DAY), DAY));
  }

  @FuzzTest
  void disposal(byte[] data) {
    lines(
        data,
        DisposalJson::read,
        asked ->
            DisposalJson.write(
                asked, RULES.tables().records().disposalRoutes().routes(asked.gear())));
  }

  @FuzzTest
  void overlays(byte[] data) {
    Checked<OverlayFile, JsonFault> read =
        OverlayJson.read("overlay.json", new String(data, StandardCharsets.UTF_8));
    if (read instanceof Checked.Sound<OverlayFile, JsonFault> ok) {
      Checked<GearRules, JsonFault> laid =
          OverlayJson.lay(GearRules.of(RULES), List.of(ok.value()), DAY);
      requireFaults(laid);
    }
    requireFaults(read);
  }

  /** One file of a small set, which file by the first byte; the others are as they are. */
  @FuzzTest
  void tables(byte[] data) {
    if (data.length == 0) {
      return;
    }
    List<String> names = List.copyOf(SmallSet.FILES.keySet());
    String changed = names.get(Byte.toUnsignedInt(data[0]) % names.size());
    byte[] text = Arrays.copyOfRange(data, 1, data.length);
    TableFiles files =
        path ->
            path.equals(changed)
                ? Optional.of(text)
                : Optional.ofNullable(SmallSet.FILES.get(path));
    requireFaults(TableLoader.load(files));
  }

  /** A set so small that loading it takes little time, by the paths of its files in order. */
  private static final class SmallSet {
    static final SortedMap<String, byte[]> FILES = new TreeMap<>();

    static {
      Path folder = Path.of("src", "test", "resources", "org/ensemblerules/tables/sets/sound");
      try (Stream<Path> paths = Files.walk(folder)) {
        for (Path path : paths.filter(Files::isRegularFile).toList()) {
          String name = folder.relativize(path).toString().replace('\\', '/');
          FILES.put(name, Files.readAllBytes(path));
        }
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }

  private static <T> void lines(byte[] data, JsonLines.Reading<T> reading, Consumer<T> answer) {
    lines(data, reading, Optional.empty(), answer);
  }

  private static <T> void lines(
      byte[] data, JsonLines.Reading<T> reading, Function<T, String> writer, Consumer<T> answer) {
    lines(data, reading, Optional.of(writer), answer);
  }

  private static <T> void lines(
      byte[] data,
      JsonLines.Reading<T> reading,
      Optional<Function<T, String>> writer,
      Consumer<T> answer) {
    List<JsonLines.Entry<T>> outcomes = new ArrayList<>();
    // Without the net that JsonLines spreads: what is thrown here is to be found.
    JsonLines.Reading<T> bare =
        (source, json) -> {
          try {
            Checked<T, JsonFault> loaded = reading.read(source, json);
            if (loaded instanceof Checked.Sound<T, JsonFault> ok) {
              answer.accept(ok.value());
              writer.ifPresent(
                  write ->
                      assertThat(reading.read("again", write.apply(ok.value())).orElseThrow())
                          .isEqualTo(ok.value()));
            }
            return loaded;
          } catch (RuntimeException e) {
            throw new AssertionError(e);
          }
        };
    JsonLines.of("lines", new ByteArrayInputStream(data), bare).forEachRemaining(outcomes::add);
    for (JsonLines.Entry<T> outcome : outcomes) {
      if (outcome instanceof JsonLines.BadLine<T> bad) {
        requireOneLineEach(bad.faults());
      }
    }
  }

  private static void requireFaults(Checked<?, JsonFault> loaded) {
    if (loaded instanceof Checked.Refused<?, JsonFault> refused) {
      requireOneLineEach(refused.faults());
    }
  }

  private static void requireOneLineEach(List<JsonFault> faults) {
    assertThat(faults).isNotEmpty();
    for (JsonFault fault : faults) {
      assertThat(fault.toString().lines()).hasSize(1);
    }
  }
}
