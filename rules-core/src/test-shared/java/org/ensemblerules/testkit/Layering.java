package org.ensemblerules.testkit;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.care.CareDemand;
import org.ensemblerules.care.CareLimitRow;
import org.ensemblerules.care.ModelCareLimitRow;
import org.ensemblerules.care.WashMeasure;
import org.ensemblerules.defect.Band;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.EntityKind;
import org.ensemblerules.effect.ForbidRow;
import org.ensemblerules.effect.Task;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.GearModel;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.history.ReturnRow;
import org.ensemblerules.history.Transfer;
import org.ensemblerules.inspection.EvidenceGrade;
import org.ensemblerules.inspection.GradeRow;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.IntervalRow;
import org.ensemblerules.measure.Limit;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.record.RetentionPolicy;
import org.ensemblerules.record.RetentionRow;
import org.ensemblerules.record.RetentionStart;
import org.ensemblerules.retirement.AgeLimit;
import org.ensemblerules.retirement.AgeLimitRow;
import org.ensemblerules.ruleset.Overlay;
import org.ensemblerules.ruleset.OverlayKind;
import org.ensemblerules.ruleset.OverlayRows;
import org.ensemblerules.schedule.Discharge;
import org.ensemblerules.schedule.TaskKey;
import org.ensemblerules.schedule.TaskRow;
import org.ensemblerules.schedule.Timing;
import org.ensemblerules.source.Basis;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.source.Provenance;
import org.ensemblerules.source.Row;
import org.ensemblerules.source.RowKey;
import org.ensemblerules.strength.UsedGearRow;

/** Invented overlays over the frozen rules, and their rows. */
public final class Layering {
  private final OriginId id;
  private int made;

  private Layering(String id) {
    this.id = new OriginId(id);
  }

  /**
   * Starts the rows of an overlay; each gets a key of its own.
   *
   * @param id the overlay's name
   * @return the rows' maker
   */
  public static Layering of(String id) {
    return new Layering(id);
  }

  /**
   * Makes a department's policy of rows.
   *
   * @param rows its rows
   * @return the overlay
   */
  public Overlay policy(Row... rows) {
    return overlay(OverlayKind.DEPARTMENT_POLICY, Optional.empty(), Arrays.asList(rows));
  }

  /**
   * Makes a law of a place of rows.
   *
   * @param rows its rows
   * @return the overlay
   */
  public Overlay law(Row... rows) {
    return overlay(OverlayKind.LAW_OF_PLACE, Optional.empty(), Arrays.asList(rows));
  }

  /**
   * Makes an overlay.
   *
   * @param kind what sort of layer
   * @param on what it stands on
   * @param rows its rows
   * @return the overlay
   */
  public Overlay overlay(OverlayKind kind, Optional<OriginId> on, List<? extends Row> rows) {
    return new Overlay(
        id, kind, "Invented layer " + id, on, Optional.empty(), OverlayRows.of(rows));
  }

  private Provenance provenance() {
    made++;
    return new Provenance(
        new RowKey(id.value().toLowerCase(Locale.ROOT) + "/" + made),
        id,
        new Basis.CommonPractice(),
        LocalDate.of(2030, 12, 31),
        Optional.empty());
  }

  /** Advanced inspections at the same interval first and later. */
  public IntervalRow interval(ElementKind element, int first, int repeat) {
    return new IntervalRow(
        provenance(), InspectionKind.ADVANCED, element, Use.STRUCTURAL, first, first, repeat);
  }

  /** How an element is inspected after it came back with a transfer. */
  public ReturnRow returned(Transfer back, Set<InspectionKind> inspections) {
    return new ReturnRow(provenance(), back, inspections, "An invented policy.");
  }

  /** A task of its own name. */
  public TaskRow task(ElementKind element, Discharge doneBy, Timing timing) {
    return new TaskRow(
        provenance(), new TaskKey("local-duty"), element, Use.STRUCTURAL, doneBy, timing, false);
  }

  /** An inspection of any kind by the department itself. */
  public static Discharge byTheDepartment() {
    return new Discharge.InspectedBy(
        EnumSet.of(InspectionKind.ROUTINE, InspectionKind.ADVANCED),
        EnumSet.of(EntityKind.ORGANIZATION));
  }

  /** What a defect of a coat calls for. */
  public DefectRow defect(String site, DefectKind defect, Band band, Effect effect) {
    return new DefectRow(
        provenance(),
        ElementKind.COAT,
        Use.STRUCTURAL,
        Site.parse(site),
        defect,
        band,
        effect,
        Set.of(),
        Set.of(),
        false,
        "An invented policy.");
  }

  /** How old a layer or an element may become. */
  public AgeLimitRow age(ElementKind element, Optional<LayerKind> layer, AgeLimit limit) {
    return new AgeLimitRow(provenance(), element, Use.STRUCTURAL, layer, limit);
  }

  /** Who may not do what. */
  public ForbidRow forbid(Task task, EntityKind entity) {
    return new ForbidRow(provenance(), task, entity, Optional.empty());
  }

  /** What share of its strength used gear must keep. */
  public UsedGearRow share(String percent) {
    return new UsedGearRow(provenance(), Optional.of(new BigDecimal(percent)));
  }

  /** That inspections of a kind are itemized. */
  public GradeRow itemized(InspectionKind kind) {
    return new GradeRow(provenance(), kind, EvidenceGrade.ITEMIZED, Optional.empty());
  }

  /** How long files are kept after retirement. */
  public RetentionRow keep(int years) {
    return new RetentionRow(provenance(), new RetentionPolicy(years, RetentionStart.RETIREMENT));
  }

  /**
   * Makes a manufacturer's instructions of rows.
   *
   * @param rows its rows
   * @return the overlay
   */
  public Overlay instructions(Row... rows) {
    return overlay(OverlayKind.MANUFACTURERS_INSTRUCTIONS, Optional.empty(), Arrays.asList(rows));
  }

  /** How warm the water of a wash may be, in degrees Celsius. */
  public CareLimitRow water(ElementKind element, String celsius) {
    return careLimit(
        element,
        new CareDemand.Within(
            WashMeasure.WATER_TEMPERATURE, Limit.atMost(celsius, Unit.DEGREE_CELSIUS)));
  }

  /** What is asked of a wash. */
  public CareLimitRow careLimit(ElementKind element, CareDemand demand) {
    return new CareLimitRow(provenance(), element, Use.STRUCTURAL, Optional.empty(), demand);
  }

  /** A limit for one model that stands beside the others. */
  public static ModelCareLimitRow beside(GearModel model, CareLimitRow limit) {
    return new ModelCareLimitRow(model, limit, Optional.empty(), Optional.empty());
  }

  /** A limit for one model in place of the frozen rules' limit of the water. */
  public static ModelCareLimitRow inPlace(GearModel model, CareLimitRow limit) {
    return new ModelCareLimitRow(
        model, limit, Optional.of(frozenWater(limit.element())), Optional.empty());
  }

  /** The key of the frozen rules' limit of the water. */
  public static RowKey frozenWater(ElementKind element) {
    return new RowKey("frozen/care/" + element + "/WATER_TEMPERATURE");
  }
}
