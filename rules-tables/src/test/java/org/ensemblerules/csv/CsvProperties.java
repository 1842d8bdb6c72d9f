package org.ensemblerules.csv;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** What is written is read alike by a general-purpose reader (org.apache.commons:commons-csv). */
class CsvProperties {
  @Provide
  Arbitrary<List<List<String>>> records() {
    Arbitrary<String> hard = Arbitraries.strings().withChars(",\"\r\n \t;'ab").ofMaxLength(6);
    Arbitrary<String> any = Arbitraries.strings().ofMaxLength(10);
    Arbitrary<String> fields = Arbitraries.oneOf(hard, any);
    return Arbitraries.integers()
        .between(2, 5)
        .flatMap(width -> fields.list().ofSize(width).list().ofMaxSize(5));
  }

  @Property
  void everyTextSurvives(@ForAll("records") List<List<String>> records) throws IOException {
    try (CSVParser parser = CSVParser.parse(Csv.of(records), CSVFormat.RFC4180)) {
      assertThat(parser.getRecords().stream().map(CSVRecord::toList)).isEqualTo(records);
    }
  }

  @Property
  void everyRecordEndsInCarriageReturnAndLineFeed(@ForAll("records") List<List<String>> records) {
    assertThat(Csv.of(records)).matches(text -> text.isEmpty() || text.endsWith("\r\n"));
  }
}
