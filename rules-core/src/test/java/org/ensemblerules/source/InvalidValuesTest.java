package org.ensemblerules.source;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.ensemblerules.defect.Band;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.ExtentKind;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.defect.Grade;
import org.ensemblerules.effect.Credential;
import org.ensemblerules.effect.CredentialScope;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.effect.EntityKind;
import org.ensemblerules.gear.ElementId;
import org.ensemblerules.gear.Label;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Site;
import org.ensemblerules.history.EndEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.UseEvent;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.retirement.AgeLimit;
import org.ensemblerules.ruleset.Identity;
import org.ensemblerules.verdict.WayBack;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Values that are impossible in themselves are refused with field, value given and allowed. */
class InvalidValuesTest {
  private static final LocalDate DAY = LocalDate.of(2020, 5, 4);
  private static final Moment WHEN = Moment.on(MarkedDate.of(DAY));
  private static final Quantity INCH = Quantity.of("1", Unit.INCH);
  private static final Quantity SQUARE_INCH = Quantity.of("1", Unit.SQUARE_INCH);

  static Stream<Arguments> refused() {
    return Stream.of(
            text("RowKey.value", 200, RowKey::new),
            text("OriginId.value", 60, OriginId::new),
            text("SourceId.value", 60, SourceId::new),
            text("ElementId.value", 100, ElementId::new),
            text("FindingId.value", 100, FindingId::new),
            text("Basis.clause", 80, InvalidValuesTest::clause),
            text("Doer.name", 200, name -> new Doer(name, EntityKind.MEMBER, List.of())),
            text("Label.manufacturer", 200, value -> Label.builder().manufacturer(value)),
            text("Label.model", 200, value -> Label.builder().model(value)),
            text("Label.identification", 200, value -> Label.builder().identification(value)),
            text("Label.size", 60, value -> Label.builder().size(value)),
            text("Label.claimedEdition", 100, value -> Label.builder().claimedEdition(value)),
            text("Issued.holder", 200, value -> new UseEvent.Issued(WHEN, value)),
            text("Retired.why", 300, value -> new EndEvent.Retired(WHEN, value)),
            text(
                "LayerRetired.identification",
                200,
                value ->
                    new EndEvent.LayerRetired(
                        WHEN, LayerKind.OUTER_SHELL, Optional.of(value), "worn out")),
            text(
                "LayerRetired.why",
                300,
                value ->
                    new EndEvent.LayerRetired(
                        WHEN, LayerKind.OUTER_SHELL, Optional.empty(), value)),
            text("Disposed.method", 300, value -> new EndEvent.Disposed(WHEN, value)),
            text("Source.title", 300, value -> source(value, "x", "x", "x")),
            text("Source.issuer", 200, value -> source("x", value, "x", "x")),
            text("Source.date", 60, value -> source("x", "x", value, "x")),
            text("Source.seenAt", 300, value -> source("x", "x", "x", value)))
        .flatMap(s -> s);
  }

  private static Object clause(String text) {
    return new Basis.Published(new SourceId("s"), Optional.of(text), HowSeen.READ);
  }

  private static Object source(String title, String issuer, String date, String seenAt) {
    return new Source(
        new SourceId("s"),
        SourceKind.STUDY,
        title,
        Optional.of(issuer),
        Optional.of(date),
        Optional.of(seenAt),
        Optional.empty(),
        Set.of());
  }

  private interface Maker {
    Object make(String text);
  }

  /** Empty, blank, one too long, or with a control character. */
  private static Stream<Arguments> text(String field, int longest, Maker maker) {
    String allowed = "1 to " + longest + " characters, not blank, no control characters";
    String tooLong = "A".repeat(longest + 1);
    return Stream.of(
        of(field, "", allowed, () -> maker.make("")),
        of(field, " ", allowed, () -> maker.make(" ")),
        of(field, "A\nB", allowed, () -> maker.make("A\nB")),
        of(field, (longest + 1) + " characters", allowed, () -> maker.make(tooLong)));
  }

  private static Arguments of(String field, String given, String allowed, Executable call) {
    return Arguments.of(field, given, allowed, call);
  }

  static Stream<Arguments> others() {
    String years = MarkedDate.FORMS;
    return Stream.of(
        of("RowKey.value", "a b", "letters, digits and - _ / @ .", () -> new RowKey("a b")),
        of("OriginId.value", "a", "groups of A-Z and 0-9, underscores", () -> new OriginId("a")),
        of(
            "OriginId.value",
            "A__B",
            "groups of A-Z and 0-9, underscores",
            () -> new OriginId("A__B")),
        of("SourceId.value", "A", "groups of a-z and 0-9, hyphens", () -> new SourceId("A")),
        of("SourceId.value", "a-", "groups of a-z and 0-9, hyphens", () -> new SourceId("a-")),
        of("MarkedDate.year", "1899-12-31", years, () -> MarkedDate.of(LocalDate.of(1899, 12, 31))),
        of("MarkedDate.year", "2201-01", years, () -> new MarkedDate.Month(YearMonth.of(2201, 1))),
        of("MarkedDate.year", "1899", years, () -> new MarkedDate.OfYear(1899)),
        of("MarkedDate.year", "2201", years, () -> new MarkedDate.OfYear(2201)),
        of(
            "Site",
            "TRIM@",
            "PART or PART@LAYER, as in TRIM@OUTER_SHELL",
            () -> Site.parse("TRIM@")),
        of("Site", "trim", "PART or PART@LAYER, as in TRIM@OUTER_SHELL", () -> Site.parse("trim")),
        of("Quantity.value", "abc", "a decimal number", () -> Quantity.of("abc", Unit.INCH)),
        of(
            "Quantity.value",
            "a number of precision 31 and scale 0",
            "at most 30 digits, scale -9 to 20",
            () -> Quantity.of("1".repeat(31), Unit.INCH)),
        of(
            "Quantity.value",
            "a number of precision 1 and scale -10",
            "at most 30 digits, scale -9 to 20",
            () -> new Quantity(new BigDecimal("1E+10"), Unit.INCH)),
        of(
            "Quantity.value",
            "a number of precision 1 and scale 21",
            "at most 30 digits, scale -9 to 20",
            () -> new Quantity(new BigDecimal("1E-21"), Unit.INCH)),
        of(
            "Quantity.compareSize",
            "1 in2",
            "a quantity of dimension LENGTH",
            () -> INCH.compareSize(SQUARE_INCH)),
        of(
            "Extent.length",
            "1 in2",
            "above zero, of dimension LENGTH",
            () -> new Extent.Length(SQUARE_INCH)),
        of(
            "Extent.length",
            "0 in",
            "above zero, of dimension LENGTH",
            () -> new Extent.Length(Quantity.of("0", Unit.INCH))),
        of(
            "Extent.area",
            "-1 in2",
            "above zero, of dimension AREA",
            () -> new Extent.Area(Quantity.of("-1", Unit.SQUARE_INCH))),
        of("Extent.count", "0", "1 or more", () -> new Extent.Count(0)),
        of(
            "Band.kind",
            "COUNT",
            "LENGTH, AREA",
            () -> new Band.Range(ExtentKind.COUNT, Optional.empty(), Optional.empty())),
        of("Band.over", "1 in2", "above zero, of dimension LENGTH", () -> range(SQUARE_INCH, null)),
        of(
            "Band.upTo",
            "0 in",
            "above zero, of dimension LENGTH",
            () -> range(null, Quantity.of("0", Unit.INCH))),
        of(
            "Band.over",
            "25.4 mm",
            "less than upTo",
            () -> range(Quantity.of("25.4", Unit.MILLIMETER), INCH)),
        of("Band.over", "3", "0 or more, less than upTo 3", () -> new Band.Counts(3, 3)),
        of("Band.over", "-1", "0 or more, less than upTo 3", () -> new Band.Counts(-1, 3)),
        of("Band.grades", "[]", "at least one, all of one scale", () -> new Band.Grades(Set.of())),
        of(
            "Band.grades",
            "[SLIGHT, HELD]",
            "at least one, all of one scale",
            () -> new Band.Grades(EnumSet.of(Grade.SLIGHT, Grade.HELD))),
        credential("from", LocalDate.of(1899, 12, 31), DAY),
        credential("through", DAY, LocalDate.of(2201, 1, 1)),
        of(
            "Credential.through",
            "2020-05-03",
            "a day not before 2020-05-04",
            () -> new Credential(CredentialScope.CLEAN, DAY, DAY.minusDays(1))),
        of("Moment.orderInDay", "-1", "0 to 10000", () -> new Moment(MarkedDate.of(DAY), -1)),
        of(
            "Moment.orderInDay",
            "10001",
            "0 to 10000",
            () -> new Moment(MarkedDate.of(DAY), 10_001)),
        of("AgeLimit.years", "0", "1 to 50 years", () -> new AgeLimit.Years(0)),
        of("AgeLimit.years", "51", "1 to 50 years", () -> new AgeLimit.Years(51)),
        of(
            "Identity.fingerprint",
            "ABC",
            "64 hexadecimal digits",
            () -> new Identity(Map.of(), List.of(), Map.of(), 2, "ABC")),
        of(
            "Identity.form",
            "0",
            "1 or more",
            () -> new Identity(Map.of(), List.of(), Map.of(), 0, "a".repeat(64))),
        of("Refused.faults", "[]", "at least one", () -> new Checked.Refused<>(List.of())),
        of("Steps.steps", "[]", "at least one", () -> new WayBack.Steps(List.of())));
  }

  private static Arguments credential(String field, LocalDate from, LocalDate through) {
    LocalDate given = field.equals("from") ? from : through;
    return of(
        "Credential." + field,
        given.toString(),
        "a day in the years 1900 to 2200",
        () -> new Credential(CredentialScope.CLEAN, from, through));
  }

  private static Band range(Quantity over, Quantity upTo) {
    return new Band.Range(ExtentKind.LENGTH, Optional.ofNullable(over), Optional.ofNullable(upTo));
  }

  @ParameterizedTest(name = "{0}: {1}")
  @MethodSource({"refused", "others"})
  void theMessageNamesFieldGivenAndAllowed(
      String field, String given, String allowed, Executable call) {
    InvalidValueException thrown = catchThrowableOfType(InvalidValueException.class, call::execute);
    assertThat(thrown).as("nothing was thrown").isNotNull();
    assertThat(thrown.field()).isEqualTo(field);
    assertThat(thrown.given()).isEqualTo(given);
    assertThat(thrown.allowed()).isEqualTo(allowed);
    assertThat(thrown)
        .hasMessageStartingWith(field + ": given ")
        .hasMessageContaining(given.replace("\n", "\\u000a"))
        .hasMessageEndingWith(", allowed: " + allowed);
  }

  @Test
  void textIsQuotedAndOtherValuesAreNot() {
    assertThat(new InvalidValueException("F", "x", "y")).hasMessage("F: given \"x\", allowed: y");
    assertThat(new InvalidValueException("F", 3, "y")).hasMessage("F: given 3, allowed: y");
    assertThat(new InvalidValueException("F", null, "y")).hasMessage("F: given null, allowed: y");
  }

  @Test
  void theLongestTextAllowedIsAllowed() {
    assertThat(new ElementId("A".repeat(100)).value()).hasSize(100);
    assertThat(new ElementId("a")).isLessThan(new ElementId("b"));
    assertThat(new SourceId("a")).isLessThan(new SourceId("b"));
    assertThat(new RowKey("a/B-1_2@x.y")).hasToString("a/B-1_2@x.y");
    assertThat(new Moment(MarkedDate.of(DAY), 10_000).orderInDay()).isEqualTo(10_000);
    assertThat(new Quantity(new BigDecimal("9".repeat(30)), Unit.INCH)).isNotNull();
    assertThat(new Quantity(new BigDecimal("1E+9"), Unit.INCH)).isNotNull();
    assertThat(new Quantity(new BigDecimal("1E-20"), Unit.INCH)).isNotNull();
    assertThat(new AgeLimit.Years(50)).hasToString("50 years");
    assertThat(new Credential(CredentialScope.CLEAN, DAY, DAY).holdsOn(DAY)).isTrue();
    LocalDate first = LocalDate.of(1900, 1, 1);
    LocalDate last = LocalDate.of(2200, 12, 31);
    assertThat(new Credential(CredentialScope.CLEAN, first, last).holdsOn(DAY)).isTrue();
  }

  @Test
  void aMissingTextIsNamed() {
    assertThatThrownBy(() -> new ElementId(null))
        .isInstanceOf(NullPointerException.class)
        .hasMessage("ElementId.value");
  }
}
