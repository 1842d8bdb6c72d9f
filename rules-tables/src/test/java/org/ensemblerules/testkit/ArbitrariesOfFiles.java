package org.ensemblerules.testkit;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.history.Moment;
import org.ensemblerules.record.DisposalNote;
import org.ensemblerules.record.PfasContent;
import org.ensemblerules.record.PfasNotice;
import org.ensemblerules.record.PlaceCode;
import org.ensemblerules.record.RecordDetail;
import org.ensemblerules.record.RecordFile;
import org.ensemblerules.record.RecordFileBuilder;
import org.ensemblerules.record.RecordItem;
import org.ensemblerules.record.RecordNote;
import org.ensemblerules.retirement.DisposalRoute;
import org.ensemblerules.source.RowKey;

/** Files of elements that hold anything that a file can say. */
public final class ArbitrariesOfFiles {
  private ArbitrariesOfFiles() {}

  /**
   * Returns notes of every item and detail that notes tell.
   *
   * @return the notes
   */
  public static Arbitrary<RecordNote> notes() {
    Arbitrary<RecordNote> forms =
        Arbitraries.of(
            form(RecordItem.ISSUE_DATE_AND_CONDITION, RecordDetail.CONDITION),
            form(RecordItem.ADVANCED_INSPECTIONS, RecordDetail.FINDINGS),
            form(RecordItem.ADVANCED_CLEANINGS, RecordDetail.FINDINGS),
            form(RecordItem.CLEANING_REASON_AND_DOER, RecordDetail.REASON),
            form(RecordItem.REPAIRS, RecordDetail.DESCRIPTION));
    return Combinators.combine(
            forms, ArbitrariesOfAssessments.moments(), ArbitrariesOfTexts.texts(500))
        .as((form, when, text) -> new RecordNote(form.item(), when, form.detail(), text));
  }

  private static RecordNote form(RecordItem item, RecordDetail detail) {
    return new RecordNote(item, Moment.on(MarkedDate.unknown()), detail, "x");
  }

  /**
   * Returns notices about added PFAS.
   *
   * @return the notices
   */
  public static Arbitrary<PfasNotice> notices() {
    return Combinators.combine(
            Arbitraries.of("US-WA", "CA-ON", "FR-75", "XX-A1B").map(PlaceCode::new),
            ArbitrariesOfTexts.markedDates(),
            Arbitraries.of(PfasContent.class),
            ArbitrariesOfTexts.texts(500).optional(),
            ArbitrariesOfTexts.markedDates())
        .as(PfasNotice::new);
  }

  /**
   * Returns files.
   *
   * @param criteria the keys of criteria that inspections speak of
   * @return the files
   */
  public static Arbitrary<RecordFile> files(List<RowKey> criteria) {
    Arbitrary<Optional<DisposalNote>> disposals =
        Combinators.combine(Arbitraries.of(DisposalRoute.class), Arbitraries.of(YesNoUnknown.class))
            .as(DisposalNote::new)
            .optional();
    return Combinators.combine(
            ArbitrariesOfGear.elements(),
            ArbitrariesOfAssessments.histories(criteria),
            ArbitrariesOfGear.elements(),
            Arbitraries.of(YesNoUnknown.class),
            notes().list().ofMaxSize(3),
            disposals,
            notices().list().ofMaxSize(2))
        .as(
            (element, history, filed, inStock, notes, disposal, notices) -> {
              RecordFileBuilder file = RecordFile.builder(element, history).inStock(inStock);
              filed.label().ifPresent(file::label);
              for (LayerKind layer : filed.layerLabels().keySet()) {
                file.layer(layer, filed.layerLabels().get(layer));
              }
              notes.forEach(file::note);
              disposal.ifPresent(file::disposal);
              notices.forEach(file::pfasNotice);
              return file.build();
            });
  }
}
