package org.ensemblerules.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Use;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.history.HolderSpan;
import org.ensemblerules.retirement.CustodyRecord;
import org.ensemblerules.retirement.Handover;
import org.ensemblerules.retirement.RetiredGear;
import org.ensemblerules.retirement.RetirementCause;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.testkit.FrozenProvenance;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Values that are impossible in themselves are refused with field, value given and allowed. */
class RecordValuesTest {
  static Stream<Arguments> refused() {
    return Stream.of(
        of(
            "PlaceCode.value: given \"US\", allowed: a code of ISO 3166-2",
            () -> new PlaceCode("US")),
        of(
            "PlaceCode.value: given \"us-wa\", allowed: a code of ISO 3166-2",
            () -> new PlaceCode("us-wa")),
        of(
            "RecordNote.detail: given \"DATE of REPAIRS\", allowed: CONDITION of",
            () -> new RecordNote(RecordItem.REPAIRS, Filed.on("2020"), RecordDetail.DATE, "x")),
        of(
            "RecordNote.detail: given \"REASON of REPAIRS\", allowed: CONDITION of",
            () -> new RecordNote(RecordItem.REPAIRS, Filed.on("2020"), RecordDetail.REASON, "x")),
        of(
            "RecordItemRow.details: given [], allowed: at least one",
            () -> Filed.row(RecordItem.REPAIRS, Set.of())),
        of(
            "RetentionPolicy.years: given 0, allowed: 1 to 100 years",
            () -> new RetentionPolicy(0, RetentionStart.DISPOSAL)),
        of(
            "KeepNotice.years: given 101, allowed: 1 to 100 years",
            () -> new PfasDemand.KeepNotice(101, Set.of(SaleParty.BUYER))),
        of(
            "KeepNotice.by: given [], allowed: at least one party",
            () -> new PfasDemand.KeepNotice(3, Set.of())),
        of(
            "PfasLawRow.before: given 2020-01-01, allowed: a day after the first",
            () -> law("2020-01-01", "2020-01-01")),
        of("PfasNotice.reason: given \" \", allowed: 1 to 500", () -> notice(" ")),
        of("HolderSpan.holder: given \"\", allowed: 1 to 200", () -> holder("")),
        of("RetiredGear.causes: given [], allowed: at least one cause", () -> retired(Set.of())),
        of(
            "BeyondRepair.what: given \"\", allowed: 1 to 300",
            () -> new RetirementCause.BeyondRepair("")),
        of(
            "Handover.to: given \"\", allowed: 1 to 200",
            () -> new Handover(Filed.on("2020"), "A", "")),
        of(
            "Deed.by: given \"\", allowed: 1 to 200",
            () -> new CustodyRecord.Deed(MarkedDate.unknown(), "")));
  }

  private static Arguments of(String message, Executable call) {
    return Arguments.of(message, call);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("refused")
  void theMessageNamesFieldGivenAndAllowed(String message, Executable call) {
    assertThatThrownBy(call::execute)
        .isInstanceOf(InvalidValueException.class)
        .hasMessageStartingWith(message);
  }

  private static Object law(String from, String before) {
    return new PfasLawRow(
        FrozenProvenance.of("law"),
        new PlaceCode("XX-A"),
        Optional.of(LocalDate.parse(from)),
        Optional.of(LocalDate.parse(before)),
        new PfasDemand.SaleBan());
  }

  private static Object notice(String reason) {
    return new PfasNotice(
        new PlaceCode("XX-A"),
        MarkedDate.unknown(),
        PfasContent.UNKNOWN,
        Optional.of(reason),
        MarkedDate.unknown());
  }

  private static Object holder(String name) {
    return new HolderSpan(name, Filed.on("2020"), Optional.empty());
  }

  private static Object retired(Set<RetirementCause> causes) {
    YesNoUnknown unknown = YesNoUnknown.UNKNOWN;
    return new RetiredGear(
        ElementKind.COAT, Use.STRUCTURAL, causes, unknown, unknown, unknown, unknown);
  }

  @Test
  void anItemSaidTwiceOrADetailOfAnotherItemIsRefused() {
    RecordItemRow holder = Filed.row(RecordItem.ISSUED_TO, Set.of(RecordDetail.HOLDER));
    assertThat(RecordItemTable.of(List.of(holder, holder))).isInstanceOf(Checked.Refused.class);
    assertThat(
            RecordItemTable.of(
                List.of(Filed.row(RecordItem.ISSUED_TO, Set.of(RecordDetail.METHOD)))))
        .isInstanceOf(Checked.Refused.class);
  }
}
