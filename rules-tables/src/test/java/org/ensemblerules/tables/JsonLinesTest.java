package org.ensemblerules.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.sun.management.ThreadMXBean;
import java.io.ByteArrayInputStream;
import java.io.FilterInputStream;
import java.io.InputStream;
import java.io.Reader;
import java.io.SequenceInputStream;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.stream.Stream;
import org.ensemblerules.source.FaultCode;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.tables.JsonLines.BadLine;
import org.ensemblerules.tables.JsonLines.Line;
import org.ensemblerules.tables.message.JsonFault;
import org.ensemblerules.verdict.Assessment;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class JsonLinesTest {
  private static String coat(String id) {
    return "{\"element\":{\"id\":\"" + id + "\",\"kind\":\"COAT\",\"use\":\"STRUCTURAL\"}}";
  }

  private static InputStream bytes(String text) {
    return new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
  }

  private static List<JsonLines.Entry<Assessment>> all(JsonLines<Assessment> lines) {
    try (Stream<JsonLines.Entry<Assessment>> stream = lines.stream()) {
      return stream.toList();
    }
  }

  /** The same text as bytes and as characters must give the same. */
  private static List<JsonLines.Entry<Assessment>> read(String text, int longest) {
    List<JsonLines.Entry<Assessment>> fromBytes =
        all(JsonLines.of("gear.jsonl", bytes(text), AssessmentJson::read, longest));
    List<JsonLines.Entry<Assessment>> fromCharacters =
        all(JsonLines.of("gear.jsonl", new StringReader(text), AssessmentJson::read, longest));
    assertThat(fromCharacters.toString().replace("characters", "bytes"))
        .isEqualTo(fromBytes.toString());
    return fromBytes;
  }

  private static Line<Assessment> line(long number, String id) {
    return new Line<>(number, AssessmentJson.read("assessment", coat(id)).orElseThrow());
  }

  private static BadLine<Assessment> bad(JsonLines.Entry<Assessment> outcome) {
    assertThat(outcome).isInstanceOf(BadLine.class);
    return (BadLine<Assessment>) outcome;
  }

  @Test
  void badLinesAreHandedOverAndReadingGoesOn() {
    List<JsonLines.Entry<Assessment>> outcomes =
        read(coat("A") + "\n{\"element\":7}\n" + coat("B") + "\n", 1000);

    assertThat(outcomes)
        .containsExactly(
            line(1, "A"),
            new BadLine<>(
                2,
                List.of(new JsonFault("gear.jsonl:2", "/element", "7", "an object")),
                "{\"element\":7}",
                true),
            line(3, "B"));
    assertThat(bad(outcomes.get(1)).faults().get(0))
        .hasToString("gear.jsonl:2#/element: found 7, allowed: an object");
  }

  @Test
  void allFaultsOfALineAreGiven() {
    assertThat(bad(read("{\"element\":{}}", 1000).get(0)).faults())
        .extracting(JsonFault::found)
        .containsExactly("no field \"id\"", "no field \"kind\"", "no field \"use\"");
  }

  @Test
  void blankLinesArePassedOverAndCounted() {
    assertThat(read("\n \t\n" + coat("A") + "\n\r\n\n" + coat("B"), 1000))
        .containsExactly(line(3, "A"), line(6, "B"));
  }

  @Test
  void thereMayBeNothing() {
    assertThat(read("", 1000)).isEmpty();
    assertThat(read("\n\n", 1000)).isEmpty();
    assertThat(read("\uFEFF", 1000)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"\n", "\r\n"})
  void linesEndAsFilesEndThem(String end) {
    assertThat(read("\uFEFF" + coat("A") + end + coat("B") + end, 1000))
        .containsExactly(line(1, "A"), line(2, "B"));
    assertThat(read(coat("A") + end + coat("B"), 1000)).containsExactly(line(1, "A"), line(2, "B"));
  }

  /** RFC 8259 lets these two stand in a text as they are; they end no line. */
  @Test
  void otherLineEndsOfUnicodeEndNoLine() {
    assertThat(read(coat("A\u2028B\u2029C") + "\n", 1000))
        .containsExactly(line(1, "A\u2028B\u2029C"));
  }

  @Test
  void twoValuesOnALineAreABadLine() {
    assertThat(bad(read(coat("A") + coat("B") + "\n", 1000).get(0)).faults())
        .extracting(JsonFault::allowed)
        .containsExactly("one JSON value");
  }

  @Test
  void aValueOverTwoLinesIsTwoBadLines() {
    assertThat(read("{\n}\n" + coat("A"), 1000))
        .satisfiesExactly(
            first -> assertThat(bad(first).text()).isEqualTo("{"),
            second -> assertThat(bad(second).text()).isEqualTo("}"),
            third -> assertThat(third).isEqualTo(line(3, "A")));
  }

  @Test
  void aLineMayBeAsLongAsTheLimitAndNoLonger() {
    String coat = coat("A");
    for (String end : List.of("", "\n", "\r\n")) {
      assertThat(read(coat + end + coat, coat.length()))
          .hasSize(end.isEmpty() ? 1 : 2)
          .doesNotHaveAnyElementsOfTypes(end.isEmpty() ? Line.class : BadLine.class);
    }
    assertThat(read(coat + "\r\n" + coat("B") + " \n" + coat, coat.length()))
        .containsExactly(
            line(1, "A"),
            new BadLine<>(
                2,
                List.of(
                    new JsonFault(
                        FaultCode.UNREADABLE,
                        "gear.jsonl:2",
                        "",
                        "a line of " + (coat.length() + 1) + " bytes",
                        "at most " + coat.length() + " bytes")),
                coat("B"),
                false),
            line(3, "A"));
  }

  @Test
  void oneLineThatIsNoUtf8SpoilsNoOther() {
    byte[] latin = coat("J\u00FCrgen").getBytes(StandardCharsets.ISO_8859_1);
    InputStream stream =
        new SequenceInputStream(
            new SequenceInputStream(bytes(coat("A") + "\n"), new ByteArrayInputStream(latin)),
            bytes("\n" + coat("\u00E9") + "\n"));

    assertThat(all(JsonLines.of("gear.jsonl", stream, AssessmentJson::read)))
        .containsExactly(
            line(1, "A"),
            new BadLine<>(
                2,
                List.of(
                    new JsonFault(
                        FaultCode.UNREADABLE,
                        "gear.jsonl:2",
                        "",
                        "bytes that are no UTF-8",
                        "UTF-8")),
                coat("J\u00FCrgen"),
                true),
            line(3, "\u00E9"));
  }

  @Test
  void linesAreReadAcrossBuffersOfAnySize() {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < 700; i++) {
      text.append(coat("\uD83D\uDE92" + "x".repeat(i % 90) + i)).append(i % 3 == 0 ? "\r\n" : "\n");
    }
    InputStream oneByOne = LineStreams.byteByByte(bytes(text.toString()));

    List<JsonLines.Entry<Assessment>> slowly =
        all(JsonLines.of("gear.jsonl", oneByOne, AssessmentJson::read));

    assertThat(slowly).hasSize(700).hasOnlyElementsOfType(Line.class);
    assertThat(read(text.toString(), 1000)).isEqualTo(slowly);
  }

  /** A line of 256 MiB must not be held, only measured. */
  @Test
  @Tag("slow")
  void anEndlessLineIsNotLoaded() {
    long length = 256L * 1024 * 1024;
    ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    long before = threads.getCurrentThreadAllocatedBytes();

    JsonLines<Assessment> lines =
        JsonLines.of(
            "gear.jsonl",
            new SequenceInputStream(
                LineStreams.repeated((byte) '[', length), bytes("\n" + coat("A"))),
            AssessmentJson::read);
    BadLine<Assessment> endless = bad(lines.next());

    assertThat(endless.text()).hasSize(JsonLines.USUAL_LONGEST);
    assertThat(endless.whole()).isFalse();
    assertThat(endless.faults())
        .containsExactly(
            new JsonFault(
                FaultCode.UNREADABLE,
                "gear.jsonl:1",
                "",
                "a line of " + length + " bytes",
                "at most 1048576 bytes"));
    assertThat(lines.next()).isEqualTo(line(2, "A"));
    assertThat(threads.getCurrentThreadAllocatedBytes() - before).isLessThan(32L * 1024 * 1024);
  }

  @Test
  @Tag("slow")
  void manyLinesAreReadOneByOne() {
    int most = 50_000;
    byte[] line = (coat("A") + "\n").getBytes(StandardCharsets.UTF_8);
    LineStreams.Endless endless = new LineStreams.Endless(line);

    JsonLines<Assessment> lines = JsonLines.of("gear.jsonl", endless, AssessmentJson::read);
    for (int i = 1; i <= most; i++) {
      assertThat(lines.next().number()).isEqualTo(i);
    }

    assertThat(endless.given()).as("read ahead").isLessThan((long) most * line.length + 20_000);
  }

  @Test
  void aFailureToReadIsNotTheEnd() {
    InputStream broken =
        new SequenceInputStream(
            bytes(coat("A") + "\n" + coat("B").substring(0, 20)),
            LineStreams.broken("the disk is gone"));
    JsonLines<Assessment> lines = JsonLines.of("gear.jsonl", broken, AssessmentJson::read);

    assertThat(lines.next()).isEqualTo(line(1, "A"));
    assertThatThrownBy(lines::hasNext)
        .isInstanceOf(UncheckedIOException.class)
        .hasMessage("gear.jsonl")
        .hasRootCauseMessage("the disk is gone");
  }

  @Test
  void closingClosesWhatIsReadFrom() {
    List<String> closed = new ArrayList<>();
    InputStream stream =
        new FilterInputStream(bytes(coat("A"))) {
          @Override
          public void close() {
            closed.add("stream");
          }
        };
    Reader reader =
        new StringReader(coat("A")) {
          @Override
          public void close() {
            closed.add("reader");
          }
        };

    all(JsonLines.of("gear.jsonl", stream, AssessmentJson::read));
    JsonLines.of("gear.jsonl", reader, AssessmentJson::read).close();

    assertThat(closed).containsExactly("stream", "reader");
  }

  @Test
  void afterTheLastLineThereIsNone() {
    JsonLines<Assessment> lines = JsonLines.of("gear.jsonl", bytes("\n"), AssessmentJson::read);

    assertThat(lines.hasNext()).isFalse();
    assertThatThrownBy(lines::next)
        .isInstanceOf(NoSuchElementException.class)
        .hasMessage("gear.jsonl");
  }

  @ParameterizedTest
  @ValueSource(ints = {Integer.MIN_VALUE, 0, JsonLines.LARGEST_LONGEST + 1})
  void aLimitOutOfRangeIsMisuse(int longest) {
    assertThatThrownBy(() -> JsonLines.of("gear.jsonl", bytes(""), AssessmentJson::read, longest))
        .isInstanceOf(InvalidValueException.class)
        .hasMessage("JsonLines.longest: given " + longest + ", allowed: 1 to 16777216");
  }

  /** What goes wrong with one line is a fault of that line, even if nobody foresaw it. */
  @Test
  void whatNobodyForesawIsAFaultOfItsLine() {
    JsonLines<String> lines =
        JsonLines.of("gear.jsonl", bytes(coat("A") + "\n7\n" + coat("B")), AssessmentJson::read)
            .map(
                gear -> {
                  if (gear.element().id().value().equals("A")) {
                    throw new ArithmeticException("Overflow\nsecond line");
                  }
                  return gear.element().id().value();
                });

    JsonLines.Entry<String> first = lines.next();
    assertThat(first.number()).isEqualTo(1);
    assertThat(((BadLine<String>) first).text()).isEqualTo(coat("A"));
    assertThat(((BadLine<String>) first).faults())
        .singleElement()
        .satisfies(
            fault ->
                assertThat(fault.toString())
                    .startsWith(
                        "gear.jsonl:1#: found a defect of this library:"
                            + " java.lang.ArithmeticException: Overflow\\u000asecond line at ")
                    .contains("JsonLinesTest")
                    .doesNotContain("\n"));
    assertThat(((BadLine<String>) lines.next()).faults())
        .containsExactly(new JsonFault("gear.jsonl:2", "", "7", "an object"));
    assertThat(lines.next()).isEqualTo(new Line<>(3, "B"));
    assertThat(lines.hasNext()).isFalse();
  }

  @Test
  void tooLittleMemoryIsNoFaultOfALine() {
    JsonLines<String> lines =
        JsonLines.of("gear.jsonl", bytes(coat("A")), AssessmentJson::read)
            .map(
                gear -> {
                  throw new OutOfMemoryError("as if");
                });

    assertThatThrownBy(lines::next).isInstanceOf(OutOfMemoryError.class);
  }
}
