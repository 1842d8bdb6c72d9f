package org.ensemblerules.tables;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.ensemblerules.record.RecordFile;
import org.ensemblerules.source.Checked;
import org.ensemblerules.testkit.ArbitrariesOfFiles;
import org.ensemblerules.testkit.InventedRules;

/** What holds for every file of an element that can be written. */
class RecordFileJsonProperties {
  @Provide
  Arbitrary<RecordFile> files() {
    return ArbitrariesOfFiles.files(InventedRules.criteria());
  }

  @Property(edgeCases = EdgeCasesMode.NONE)
  void whatIsWrittenReadsTheSame(@ForAll("files") RecordFile file) {
    String json = RecordFileJson.write(file);

    assertThat(json).doesNotContainPattern("\\R");
    assertThat(RecordFileJson.read("file", json)).isEqualTo(new Checked.Sound<>(file));
    assertThat(RecordFileJson.write(RecordFileJson.read("file", json).orElseThrow()))
        .isEqualTo(json);
  }

  @Property(tries = 100, edgeCases = EdgeCasesMode.NONE)
  void whatIsWrittenIsAsTheSchemaSays(@ForAll("files") RecordFile file) {
    assertThat(TableSchemas.objections("file", RecordFileJson.write(file))).isEmpty();
  }
}
