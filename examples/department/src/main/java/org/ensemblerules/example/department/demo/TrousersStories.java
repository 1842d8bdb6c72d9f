package org.ensemblerules.example.department.demo;

import java.util.List;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.Grade;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.RepairClass;
import org.ensemblerules.gear.Label;
import org.ensemblerules.gear.LabelBuilder;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Legibility;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.inspection.Equipment;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;

/** What happened to the structural trousers. */
final class TrousersStories {
  private static final String SEAT_SEAM = "SEAM_MAJOR_A@OUTER_SHELL";
  private static final Extent TWENTY_MILLIMETERS =
      new Extent.Length(Quantity.of("20", Unit.MILLIMETER));

  private TrousersStories() {}

  static List<Story> all() {
    return List.of(
        Story.ordinary(),
        new Story(
            "A gap of 20 mm in the seat seam, sewn by somebody whose training had run out",
            trousers ->
                trousers
                    .foundBefore(
                        "2026-06-09",
                        "F1",
                        SEAT_SEAM,
                        "seat",
                        DefectKind.BROKEN_STITCHING,
                        TWENTY_MILLIMETERS)
                    .repaired("2026-06-12", RepairClass.BASIC, Trades.LAPSED_MENDER)
                    .passed("2026-06-15", Check.SEAM_PULL, Trades.GEAR_ROOM)),
        new Story(
            "The same gap, sewn by the gear room and pulled by hand afterward",
            trousers ->
                trousers
                    .foundBefore(
                        "2026-06-09",
                        "F1",
                        SEAT_SEAM,
                        "seat",
                        DefectKind.BROKEN_STITCHING,
                        TWENTY_MILLIMETERS)
                    .repaired("2026-06-12", RepairClass.BASIC, Trades.GEAR_ROOM)
                    .passed("2026-06-15", Check.SEAM_PULL, Trades.GEAR_ROOM)),
        new Story(
            "Broken stitches in the inseam, and nobody measured how long",
            trousers ->
                trousers.found("F1", SEAT_SEAM, "inseam, left", DefectKind.BROKEN_STITCHING)),
        new Story(
            "A seam open for two inches at the crotch",
            trousers ->
                trousers.foundLong("F1", SEAT_SEAM, "crotch", DefectKind.MISSING_STITCHING, "51")),
        new Story(
            "Knee reinforcement rubbed through",
            trousers ->
                trousers.found(
                    "F1",
                    "REINFORCEMENT@OUTER_SHELL",
                    "left knee",
                    DefectKind.ABRASION,
                    Grade.SEVERE)),
        new Story(
            "Inspected straight from the rack, still dirty",
            trousers -> trousers.lastInspection().clean(YesNoUnknown.NO)),
        new Story(
            "Inspected without a flashlight and without a new sample of the trim",
            trousers -> {
              trousers.lastInspection().without(Equipment.FOCUSED_FLASHLIGHT);
              trousers.lastInspection().without(Equipment.NEW_TRIM_SAMPLE);
            }),
        new Story(
            "Inspected by a newcomer whom nobody has trained",
            trousers -> trousers.lastInspection().madeBy(Trades.UNTRAINED)),
        new Story(
            "Worn again after the yearly inspection, and not looked over since",
            trousers -> trousers.usedOn("2026-11-22")),
        new Story(
            "The record says in service two months before the label says made",
            trousers -> {
              trousers.made("2022-05");
              trousers.placedInService("2022-03-01");
            }),
        new Story(
            "Hydraulic oil on both legs",
            trousers -> {
              trousers.lookedOverAfterUse("2026-11-24");
              trousers.found("F1", "FABRIC@OUTER_SHELL", "both legs", DefectKind.FUEL_OR_OIL);
            }),
        new Story(
            "A suspender button has pulled out of the cloth",
            trousers ->
                trousers.found("F1", "SUSPENDER_ATTACHMENT@OUTER_SHELL", "back", DefectKind.LOOSE)),
        new Story(
            "Film of the moisture barrier peels at the knees",
            trousers ->
                trousers.found(
                    "F1", "FABRIC@MOISTURE_BARRIER", "both knees", DefectKind.DELAMINATION)),
        new Story(
            "The liner's label is worn; its date of manufacture cannot be read",
            trousers ->
                trousers.label(
                    LayerKind.LINER_SYSTEM,
                    label ->
                        label
                            .manufactured(MarkedDate.unknown())
                            .legibility(Legibility.PARTLY_READABLE))),
        new Story(
            "Worn out all over: the provider advises against any repair",
            trousers -> trousers.found("F1", "WHOLE_ELEMENT", "", DefectKind.BEYOND_REPAIR)),
        new Story(
            "Nobody looked at the suspender attachments; the sheet says so",
            trousers -> trousers.lastInspection().skipped(Part.SUSPENDER_ATTACHMENT)),
        new Story(
            "The list has no size for the liner",
            trousers -> trousers.label(LayerKind.LINER_SYSTEM, TrousersStories::withoutSize)));
  }

  private static LabelBuilder withoutSize(LabelBuilder printed) {
    Label label = printed.build();
    return Label.builder()
        .manufacturer(label.manufacturer().orElseThrow())
        .model(label.model().orElseThrow())
        .identification(label.identification().orElseThrow())
        .claimedEdition(label.claimedEdition().orElseThrow())
        .manufactured(label.manufactured())
        .certificationMark(label.certificationMark())
        .legibility(label.legibility());
  }
}
