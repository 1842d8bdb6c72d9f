package org.ensemblerules.laws;

import com.google.common.collect.Sets;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.PropertyDefaults;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import org.ensemblerules.care.CareDemand;
import org.ensemblerules.care.CareLimitRow;
import org.ensemblerules.care.CareLimitTable;
import org.ensemblerules.care.CleaningAnswer;
import org.ensemblerules.care.CleaningDemand;
import org.ensemblerules.care.CleaningResultRow;
import org.ensemblerules.care.CleaningResultTable;
import org.ensemblerules.care.Contaminant;
import org.ensemblerules.care.LogReduction;
import org.ensemblerules.care.RemovalEfficiency;
import org.ensemblerules.care.WashAnswer;
import org.ensemblerules.care.WashMeasure;
import org.ensemblerules.care.WashPractice;
import org.ensemblerules.care.WashRecord;
import org.ensemblerules.care.WashRecordBuilder;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CredentialScope;
import org.ensemblerules.effect.EntityKind;
import org.ensemblerules.effect.ForbidRow;
import org.ensemblerules.effect.PermissionRow;
import org.ensemblerules.effect.PermissionTable;
import org.ensemblerules.effect.Task;
import org.ensemblerules.fieldcheck.CheckLimitRow;
import org.ensemblerules.fieldcheck.CheckLimitTable;
import org.ensemblerules.fieldcheck.LimitAnswer;
import org.ensemblerules.gates.FewestTries;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.history.EndEvent;
import org.ensemblerules.history.History;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.history.ReturnRow;
import org.ensemblerules.history.Transfer;
import org.ensemblerules.inspection.Coverage;
import org.ensemblerules.inspection.CriteriaTable;
import org.ensemblerules.inspection.CriterionRow;
import org.ensemblerules.inspection.Equipment;
import org.ensemblerules.inspection.EvidenceGrade;
import org.ensemblerules.inspection.GradeRow;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.inspection.InspectionBuilder;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.InspectionStanding;
import org.ensemblerules.inspection.Occasion;
import org.ensemblerules.inspection.Outcome;
import org.ensemblerules.inspection.SignOff;
import org.ensemblerules.inspection.SignOffReading;
import org.ensemblerules.measure.Limit;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.record.KeepAnswer;
import org.ensemblerules.record.PfasContent;
import org.ensemblerules.record.PfasDemand;
import org.ensemblerules.record.PfasLawRow;
import org.ensemblerules.record.PfasLawTable;
import org.ensemblerules.record.PfasNotice;
import org.ensemblerules.record.PlaceCode;
import org.ensemblerules.record.RecordFile;
import org.ensemblerules.record.RetentionPolicy;
import org.ensemblerules.record.RetentionRow;
import org.ensemblerules.record.RetentionStart;
import org.ensemblerules.record.SaleAnswer;
import org.ensemblerules.record.SaleParty;
import org.ensemblerules.retirement.AgeAnswer;
import org.ensemblerules.retirement.AgeLimit;
import org.ensemblerules.retirement.AgeLimitRow;
import org.ensemblerules.retirement.AgeLimitTable;
import org.ensemblerules.retirement.DisposalRoute;
import org.ensemblerules.retirement.DisposalRouteRow;
import org.ensemblerules.retirement.DisposalTable;
import org.ensemblerules.retirement.RetiredGear;
import org.ensemblerules.retirement.RetirementCause;
import org.ensemblerules.retirement.RetirementReason;
import org.ensemblerules.retirement.RouteAnswer;
import org.ensemblerules.retirement.RouteCondition;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.FrozenProvenance;
import org.ensemblerules.testkit.FrozenRules;
import org.ensemblerules.testkit.People;
import org.ensemblerules.testkit.StrictnessLaw;

/** A row that is at least as strict as another answers no milder, whatever is asked of both. */
@PropertyDefaults(tries = 2000, edgeCases = EdgeCasesMode.NONE)
class StricterRowsProperties {
  private static final Use USE = Use.STRUCTURAL;
  private static final LocalDate DAY = LocalDate.of(2024, 6, 15);

  private static Arbitrary<Optional<LayerKind>> layers() {
    return Arbitraries.of(LayerKind.OUTER_SHELL, LayerKind.MOISTURE_BARRIER).optional(0.6);
  }

  // ------------------------------------------------------------------------------------ ages

  @Provide
  Arbitrary<AgeLimitRow> ages() {
    return Arbitraries.<AgeLimit>of(
            new AgeLimit.Years(7),
            new AgeLimit.Years(10),
            new AgeLimit.Years(15),
            new AgeLimit.NoneSet(),
            new AgeLimit.NotSeen())
        .map(
            limit ->
                new AgeLimitRow(
                    FrozenProvenance.of("age"), ElementKind.COAT, USE, Optional.empty(), limit));
  }

  /** The first day out; an unknown date, or a limit that was not seen, counts as out at once. */
  private static LocalDate firstDayOut(AgeLimitRow row, MarkedDate made) {
    AgeAnswer answer =
        AgeLimitTable.of(List.of(row))
            .orElseThrow()
            .answer(ElementKind.COAT, USE, Optional.empty(), made);
    if (answer instanceof AgeAnswer.LeavesOn leaves) {
      return leaves.firstDayOut();
    }
    return answer instanceof AgeAnswer.NoLimitSet ? LocalDate.MAX : LocalDate.MIN;
  }

  @FewestTries(500)
  @Property
  void ages(@ForAll("ages") AgeLimitRow one, @ForAll("ages") AgeLimitRow other) {
    for (String made : List.of("2020-03-01", "2016-02", "2000", "")) {
      MarkedDate date = made.isEmpty() ? MarkedDate.unknown() : MarkedDate.parse(made);
      StrictnessLaw.holds(
          one,
          other,
          (strict, mild) -> !firstDayOut(strict, date).isAfter(firstDayOut(mild, date)));
    }
  }

  // ------------------------------------------------------------------------------------ washes

  @Provide
  Arbitrary<CareLimitRow> careLimits() {
    Arbitrary<CareDemand> within =
        Combinators.combine(
                Arbitraries.of(WashMeasure.WATER_TEMPERATURE, WashMeasure.DRYING_TEMPERATURE),
                Arbitraries.of(
                    Limit.atMost("40", Unit.DEGREE_CELSIUS),
                    Limit.atMost("105", Unit.DEGREE_FAHRENHEIT),
                    Limit.atMost("60", Unit.DEGREE_CELSIUS),
                    Limit.atLeast("30", Unit.DEGREE_CELSIUS),
                    Limit.atLeast("40", Unit.DEGREE_CELSIUS)))
            .as(CareDemand.Within::new);
    Arbitrary<CareDemand> forbidden =
        Arbitraries.of(WashPractice.CHLORINE_BLEACH, WashPractice.MACHINE_DRYING)
            .map(CareDemand.Forbidden::new);
    return Combinators.combine(
            layers(), Arbitraries.frequencyOf(Tuple.of(4, within), Tuple.of(1, forbidden)))
        .as(
            (layer, demand) ->
                new CareLimitRow(
                    FrozenProvenance.of("care"), ElementKind.COAT, USE, layer, demand));
  }

  @Provide
  Arbitrary<WashRecord> washes() {
    Arbitrary<Optional<Quantity>> celsius =
        Arbitraries.of("25", "35", "40", "40.5", "40.6", "50", "70")
            .map(text -> Quantity.of(text, Unit.DEGREE_CELSIUS))
            .optional(0.9);
    return Combinators.combine(
            celsius,
            celsius,
            Arbitraries.of(YesNoUnknown.class),
            Arbitraries.of(YesNoUnknown.class))
        .as(
            (water, drying, bleach, machine) -> {
              WashRecordBuilder wash =
                  WashRecord.builder()
                      .practice(WashPractice.CHLORINE_BLEACH, bleach)
                      .practice(WashPractice.MACHINE_DRYING, machine);
              water.ifPresent(wash::waterTemperature);
              drying.ifPresent(wash::dryingTemperature);
              return wash.build();
            });
  }

  /** Beside a row that every wash keeps, so that only what the row itself asks decides. */
  private static boolean counts(CareLimitRow row, WashRecord wash, Set<LayerKind> layers) {
    CareLimitRow kept =
        new CareLimitRow(
            FrozenProvenance.of("kept"),
            ElementKind.COAT,
            USE,
            Optional.empty(),
            new CareDemand.Forbidden(WashPractice.DRYING_IN_SUNLIGHT));
    return CareLimitTable.of(List.of(kept))
            .orElseThrow()
            .with(List.of(row), List.of(), FrozenRules.tables().anatomy())
            .orElseThrow()
            .judge(shaded(wash), FitGear.element(ElementKind.COAT).build(), layers)
        instanceof WashAnswer.Counts;
  }

  private static WashRecord shaded(WashRecord wash) {
    WashRecordBuilder shaded =
        WashRecord.builder().practice(WashPractice.DRYING_IN_SUNLIGHT, YesNoUnknown.NO);
    for (WashPractice practice :
        List.of(WashPractice.CHLORINE_BLEACH, WashPractice.MACHINE_DRYING)) {
      shaded.practice(practice, wash.practiced(practice));
    }
    wash.measured(WashMeasure.WATER_TEMPERATURE).ifPresent(shaded::waterTemperature);
    wash.measured(WashMeasure.DRYING_TEMPERATURE).ifPresent(shaded::dryingTemperature);
    return shaded.build();
  }

  @FewestTries(500)
  @Property
  void careLimits(
      @ForAll("careLimits") CareLimitRow one,
      @ForAll("careLimits") CareLimitRow other,
      @ForAll("washes") WashRecord wash) {
    for (Set<LayerKind> layers :
        List.of(
            Set.<LayerKind>of(),
            Set.of(LayerKind.OUTER_SHELL),
            Set.of(LayerKind.MOISTURE_BARRIER, LayerKind.THERMAL_LINER))) {
      StrictnessLaw.holds(
          one,
          other,
          (strict, mild) -> !counts(strict, wash, layers) || counts(mild, wash, layers));
    }
  }

  @Property
  void careLimitsPassItOn(
      @ForAll("careLimits") CareLimitRow one,
      @ForAll("careLimits") CareLimitRow two,
      @ForAll("careLimits") CareLimitRow three) {
    StrictnessLaw.passesOn(one, two, three);
  }

  @Provide
  Arbitrary<CleaningResultRow> cleaningResults() {
    return Arbitraries.<CleaningDemand>of(
            new CleaningDemand.Removal(Limit.atLeast("50", Unit.PERCENT)),
            new CleaningDemand.Removal(Limit.atLeast("99", Unit.PERCENT)),
            new CleaningDemand.WholeLogs(2),
            new CleaningDemand.WholeLogs(3))
        .map(
            demand ->
                new CleaningResultRow(FrozenProvenance.of("result"), Contaminant.BACTERIA, demand));
  }

  @FewestTries(500)
  @Property
  void cleaningResults(
      @ForAll("cleaningResults") CleaningResultRow one,
      @ForAll("cleaningResults") CleaningResultRow other) {
    for (BigDecimal after :
        Stream.of("1", "9", "40", "600", "2000").map(BigDecimal::new).toList()) {
      StrictnessLaw.holds(
          one, other, (strict, mild) -> !cleaned(strict, after) || cleaned(mild, after));
    }
  }

  private static boolean cleaned(CleaningResultRow row, BigDecimal after) {
    return CleaningResultTable.of(List.of(row))
            .orElseThrow()
            .judge(
                Map.of(
                    Contaminant.BACTERIA,
                    row.demand() instanceof CleaningDemand.WholeLogs
                        ? LogReduction.of(new BigDecimal(1000), after, Optional.empty())
                        : RemovalEfficiency.of(
                            Quantity.of("1000", Unit.ONE), new Quantity(after, Unit.ONE))))
            .get(Contaminant.BACTERIA)
        instanceof CleaningAnswer.Meets;
  }

  // ------------------------------------------------------------------------------------ checks

  @Provide
  Arbitrary<CheckLimitRow> checkLimits() {
    return Combinators.combine(
            Arbitraries.of("50", "51", "2 in"), Arbitraries.of(true, true, true, false))
        .as(
            (size, least) -> {
              Unit unit = size.endsWith("in") ? Unit.INCH : Unit.MILLIMETER;
              String number = size.split(" ", -1)[0];
              return new CheckLimitRow(
                  FrozenProvenance.of("limit"),
                  Check.FIT_AND_OVERLAP,
                  least ? Limit.atLeast(number, unit) : Limit.atMost(number, unit),
                  DefectKind.MISMATCH_OF_ASSEMBLY);
            });
  }

  @FewestTries(500)
  @Property
  void checkLimits(
      @ForAll("checkLimits") CheckLimitRow one, @ForAll("checkLimits") CheckLimitRow other) {
    for (String size : List.of("0", "49", "50", "50.5", "50.8", "51", "80")) {
      Quantity measured = Quantity.of(size, Unit.MILLIMETER);
      StrictnessLaw.holds(
          one, other, (strict, mild) -> !meets(strict, measured) || meets(mild, measured));
    }
  }

  private static boolean meets(CheckLimitRow row, Quantity measured) {
    return CheckLimitTable.of(List.of(row)).orElseThrow().judge(row.check(), measured)
        instanceof LimitAnswer.Meets;
  }

  // ------------------------------------------------------------------------------------ doers

  @Provide
  Arbitrary<PermissionRow> permissions() {
    return Arbitraries.of(CredentialScope.class)
        .optional()
        .map(
            needs ->
                new PermissionRow(
                    FrozenProvenance.of("permission"),
                    Task.ADVANCED_CLEANING,
                    EntityKind.ORGANIZATION,
                    needs));
  }

  private static boolean granted(PermissionTable table, String on) {
    return Stream.of(People.DEPARTMENT, People.UNTRAINED, People.PROVIDER)
        .filter(doer -> doer.kind() == EntityKind.ORGANIZATION)
        .anyMatch(
            doer ->
                table
                    .mayPerform(
                        doer,
                        Task.ADVANCED_CLEANING,
                        FitGear.element(ElementKind.COAT).build(),
                        LocalDate.parse(on))
                    .granted());
  }

  private static PermissionTable with(PermissionRow row) {
    return PermissionTable.of(
            Stream.concat(
                    FrozenRules.tables().permissions().rows().stream()
                        .filter(each -> each.task() != row.task() || each.entity() != row.entity()),
                    Stream.of(row))
                .toList())
        .orElseThrow();
  }

  @FewestTries(500)
  @Property(tries = 200)
  void permissions(
      @ForAll("permissions") PermissionRow one, @ForAll("permissions") PermissionRow other) {
    StrictnessLaw.holds(
        one,
        other,
        (strict, mild) ->
            !granted(with(strict), "2024-06-15") || granted(with(mild), "2024-06-15"));
  }

  @Provide
  Arbitrary<ForbidRow> forbidden() {
    return Arbitraries.of("2020-01-01", "2024-06-15", "2030-01-01")
        .map(LocalDate::parse)
        .optional()
        .map(
            from ->
                new ForbidRow(
                    FrozenProvenance.of("forbid"),
                    Task.ADVANCED_CLEANING,
                    EntityKind.ORGANIZATION,
                    from));
  }

  @FewestTries(500)
  @Property(tries = 200)
  void forbidden(@ForAll("forbidden") ForbidRow one, @ForAll("forbidden") ForbidRow other) {
    for (String day : List.of("2019-01-01", "2024-06-14", "2024-06-15", "2031-01-01")) {
      StrictnessLaw.holds(
          one,
          other,
          (strict, mild) -> !granted(without(strict), day) || granted(without(mild), day));
    }
  }

  @Provide
  Arbitrary<GradeRow> grades() {
    return Combinators.combine(
            Arbitraries.of(EvidenceGrade.SIGNED_OFF, EvidenceGrade.ITEMIZED),
            Arbitraries.of("2020-01-01", "2024-06-15", "2030-01-01")
                .map(LocalDate::parse)
                .optional())
        .as(
            (least, from) ->
                new GradeRow(FrozenProvenance.of("grade"), InspectionKind.ADVANCED, least, from));
  }

  @FewestTries(500)
  @Property(tries = 200)
  void grades(@ForAll("grades") GradeRow one, @ForAll("grades") GradeRow other) {
    for (String day : List.of("2019-01-01", "2024-06-14", "2024-06-15", "2031-01-01")) {
      StrictnessLaw.holds(
          one,
          other,
          (strict, mild) -> !countsBySignOff(strict, day) || countsBySignOff(mild, day));
    }
  }

  private static boolean countsBySignOff(GradeRow row, String day) {
    Inspection made =
        Inspection.builder(
                InspectionKind.ADVANCED,
                Occasion.PERIODIC,
                MarkedDate.parse(day),
                People.permitted(InspectionKind.ADVANCED.task()))
            .gearClean(YesNoUnknown.YES)
            .allAtHand()
            .signOff(new SignOff(FrozenProvenance.EDITION, Set.of()))
            .build();
    return InspectionStanding.of(
            made,
            FitGear.element(ElementKind.COAT).build(),
            FrozenRules.tables().criteria(),
            new SignOffReading(
                FrozenRules.rules().evidenceTables().editions(), List.of(), List.of(row)),
            FrozenRules.tables().permissions())
        .counts();
  }

  @Provide
  Arbitrary<ReturnRow> returns() {
    return Combinators.combine(
            Arbitraries.of(Transfer.BACK_FROM_LOAN, Transfer.BACK_FROM_PROVIDER),
            Arbitraries.of(InspectionKind.class).set().ofMinSize(1))
        .as(
            (back, inspections) ->
                new ReturnRow(FrozenProvenance.of("return"), back, inspections, "Looked at."));
  }

  @FewestTries(500)
  @Property(tries = 500)
  void returns(@ForAll("returns") ReturnRow one, @ForAll("returns") ReturnRow other) {
    for (Transfer back : List.of(Transfer.BACK_FROM_LOAN, Transfer.BACK_FROM_PROVIDER)) {
      for (InspectionKind kind : InspectionKind.values()) {
        StrictnessLaw.holds(
            one, other, (strict, mild) -> !serves(strict, back, kind) || serves(mild, back, kind));
      }
    }
  }

  /** Whether a coat that came back and was inspected may serve, by the one row alone. */
  private static boolean serves(ReturnRow row, Transfer back, InspectionKind kind) {
    return row.back() != back
        || row.asksFor(
            new LookEvent.Inspected(
                Inspection.builder(
                        kind,
                        Occasion.AFTER_RETURN,
                        MarkedDate.of(DAY),
                        People.permitted(kind.task()))
                    .build(),
                0));
  }

  private static PermissionTable without(ForbidRow row) {
    return PermissionTable.of(FrozenRules.tables().permissions().rows())
        .orElseThrow()
        .with(List.of(row))
        .orElseThrow();
  }

  // ------------------------------------------------------------------------------------ the end

  @Provide
  Arbitrary<DisposalRouteRow> routes() {
    return Arbitraries.of(
            RouteCondition.MARKED_FOR_TRAINING,
            RouteCondition.UNDAMAGED,
            RouteCondition.UNCONTAMINATED)
        .set()
        .ofMaxSize(3)
        // What leaves by such a route has been released.
        .map(given -> Sets.union(given, Set.of(RouteCondition.RELEASED)).immutableCopy())
        .map(
            conditions ->
                new DisposalRouteRow(
                    FrozenProvenance.of("route"),
                    ElementKind.COAT,
                    USE,
                    RetirementReason.OVER_AGE_LIMIT,
                    DisposalRoute.NON_LIVE_FIRE_TRAINING,
                    conditions));
  }

  @FewestTries(500)
  @Property
  void disposal(
      @ForAll("routes") DisposalRouteRow one,
      @ForAll("routes") DisposalRouteRow other,
      @ForAll YesNoUnknown custody,
      @ForAll YesNoUnknown marked,
      @ForAll YesNoUnknown damaged,
      @ForAll YesNoUnknown contaminated) {
    RetiredGear gear =
        new RetiredGear(
            ElementKind.COAT,
            USE,
            Set.of(new RetirementCause.OverAge(DAY)),
            custody,
            marked,
            damaged,
            contaminated);
    StrictnessLaw.holds(one, other, (strict, mild) -> !open(strict, gear) || open(mild, gear));
  }

  private static boolean open(DisposalRouteRow row, RetiredGear gear) {
    return DisposalTable.of(List.of(row)).orElseThrow().routes(gear).stream()
        .anyMatch(RouteAnswer.Open.class::isInstance);
  }

  // ------------------------------------------------------------------------------------ records

  @Provide
  Arbitrary<RetentionRow> retention() {
    return Combinators.combine(
            Arbitraries.integers().between(1, 4), Arbitraries.of(RetentionStart.class))
        .as(
            (years, start) ->
                new RetentionRow(FrozenProvenance.of("keep"), new RetentionPolicy(years, start)));
  }

  @FewestTries(500)
  @Property
  void retention(@ForAll("retention") RetentionRow one, @ForAll("retention") RetentionRow other) {
    for (String on : List.of("2020-02-29", "2020-02", "2020", "")) {
      MarkedDate date = on.isEmpty() ? MarkedDate.unknown() : MarkedDate.parse(on);
      RecordFile file =
          RecordFile.builder(
                  FitGear.element(ElementKind.COAT).build(),
                  History.of(List.of(new EndEvent.Retired(Moment.on(date), "over age"))))
              .build();
      StrictnessLaw.holds(
          one, other, (strict, mild) -> !kept(strict, file).isBefore(kept(mild, file)));
    }
  }

  private static LocalDate kept(RetentionRow row, RecordFile file) {
    return row.policy().keepThrough(file).orElse(LocalDate.MAX);
  }

  @Provide
  Arbitrary<PfasLawRow> laws() {
    Arbitrary<Optional<LocalDate>> from =
        Arbitraries.of("2020-01-01", "2024-01-01").map(LocalDate::parse).optional();
    Arbitrary<Optional<LocalDate>> before =
        Arbitraries.of("2025-01-01", "2030-01-01").map(LocalDate::parse).optional();
    Arbitrary<PfasDemand> demands =
        Arbitraries.of(
            new PfasDemand.SaleBan(),
            new PfasDemand.KeepNotice(3, EnumSet.of(SaleParty.SELLER)),
            new PfasDemand.KeepNotice(3, EnumSet.allOf(SaleParty.class)),
            new PfasDemand.KeepNotice(5, EnumSet.of(SaleParty.BUYER)));
    return Combinators.combine(from, before, demands)
        .as(
            (begins, ends, demand) ->
                new PfasLawRow(
                    FrozenProvenance.of("law"), new PlaceCode("US-WA"), begins, ends, demand));
  }

  @FewestTries(500)
  @Property
  void pfasLaws(
      @ForAll("laws") PfasLawRow one,
      @ForAll("laws") PfasLawRow other,
      @ForAll PfasContent content,
      @ForAll SaleParty party) {
    for (String sold : List.of("2019-06-01", "2022", "2024-01-01", "2026-01-01", "2031-05")) {
      MarkedDate on = MarkedDate.parse(sold);
      StrictnessLaw.holds(
          one,
          other,
          (strict, mild) ->
              !through(strict, on, party).isBefore(through(mild, on, party))
                  && (!barred(mild, on, content) || barred(strict, on, content)));
    }
  }

  private static LocalDate through(PfasLawRow row, MarkedDate sold, SaleParty party) {
    KeepAnswer answer =
        PfasLawTable.of(List.of(row))
            .orElseThrow()
            .keepThrough(
                new PfasNotice(
                    new PlaceCode("US-WA"), sold, PfasContent.ADDED, Optional.empty(), sold),
                party);
    return answer instanceof KeepAnswer.Through kept ? kept.through() : LocalDate.MIN;
  }

  private static boolean barred(PfasLawRow row, MarkedDate sold, PfasContent content) {
    return PfasLawTable.of(List.of(row))
            .orElseThrow()
            .maySell(new PlaceCode("US-WA"), sold.latest().orElseThrow(), content)
        instanceof SaleAnswer.Barred;
  }

  // ------------------------------------------------------------------------------------ criteria

  @Provide
  Arbitrary<CriterionRow> criteria() {
    Site shell = Site.parse("FABRIC@OUTER_SHELL");
    Site label = Site.parse("LABEL@OUTER_SHELL");
    return Combinators.combine(
            Arbitraries.of(InspectionKind.ROUTINE, InspectionKind.ADVANCED).set().ofMinSize(1),
            Arbitraries.of(List.of(shell), List.of(shell, label)),
            Arbitraries.of(DefectKind.RIP, DefectKind.TEAR).set().ofMinSize(1),
            Arbitraries.of(Equipment.class).set().ofMaxSize(2))
        .as((kinds, sites, lookFor, atHand) -> criterion("row", kinds, sites, lookFor, atHand));
  }

  private static CriterionRow criterion(
      String key,
      Set<InspectionKind> kinds,
      List<Site> sites,
      Set<DefectKind> lookFor,
      Set<Equipment> atHand) {
    return new CriterionRow(
        FrozenProvenance.of(key),
        kinds,
        ElementKind.COAT,
        USE,
        key.equals("met") ? 1 : 2,
        sites,
        lookFor,
        atHand,
        Set.of(),
        "look at it");
  }

  @FewestTries(500)
  @Property(tries = 500)
  void criteria(
      @ForAll("criteria") CriterionRow one,
      @ForAll("criteria") CriterionRow other,
      @ForAll Outcome outcome,
      @ForAll Set<Equipment> atHand) {
    for (InspectionKind kind : List.of(InspectionKind.ROUTINE, InspectionKind.ADVANCED)) {
      for (Optional<Outcome> given : List.of(Optional.<Outcome>empty(), Optional.of(outcome))) {
        StrictnessLaw.holds(
            one,
            other,
            (strict, mild) ->
                !complete(strict, kind, given, atHand) || complete(mild, kind, given, atHand));
      }
    }
  }

  /** Beside a criterion that each inspection meets. */
  private static boolean complete(
      CriterionRow row, InspectionKind kind, Optional<Outcome> given, Set<Equipment> atHand) {
    CriterionRow met =
        criterion(
            "met",
            EnumSet.allOf(InspectionKind.class),
            List.of(Site.parse("FABRIC@OUTER_SHELL")),
            Set.of(DefectKind.SOILING),
            Set.of());
    CriteriaTable table =
        CriteriaTable.of(List.of(met, row), FrozenRules.tables().anatomy()).orElseThrow();
    InspectionBuilder made =
        Inspection.builder(kind, Occasion.PERIODIC, MarkedDate.of(DAY), People.DEPARTMENT)
            .atHand(atHand)
            .outcome(met.key(), Outcome.CLEAR);
    // What is not asked of an inspection is not answered either.
    if (row.kinds().contains(kind)) {
      given.ifPresent(each -> made.outcome(row.key(), each));
    }
    return Coverage.of(
            made.build(), FitGear.element(ElementKind.COAT).build(), table, FrozenRules.signOffs())
        .isComplete();
  }
}
