package org.ensemblerules.example.department.demo;

import java.util.List;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Legibility;

/**
 * What happens to the gear of an ordinary fleet: to most of it nothing beside use, cleaning and
 * inspection, and to the rest what every department sees in a year. Which piece it happens to is
 * told by a number made of its holder and kind, so that it is the same at every telling.
 */
final class FleetStories {
  private static final Story ORDINARY = Story.ordinary();

  /** Of each hundred pieces, one number for each of these; the others had ordinary years. */
  private static final List<Story> OF_EACH_HUNDRED =
      List.of(
          notInspectedThisYear(),
          notInspectedThisYear(),
          notInspectedThisYear(),
          new Story(
              "Back from a fire two days ago, full of soot, not washed yet",
              piece -> {
                piece.lookedOverAfterUse("2026-11-23");
                piece.found("F1", "WHOLE_ELEMENT", "all over", DefectKind.COMBUSTION_PRODUCTS);
              }),
          new Story(
              "Used two days ago, and nobody has looked it over since",
              piece -> piece.usedOn("2026-11-23")),
          new Story(
              "The last inspection was made, and never got on record",
              piece -> piece.lastInspection().notOnRecord()),
          new Story(
              "The label is worn and can be read in part",
              piece -> piece.label(label -> label.legibility(Legibility.PARTLY_READABLE))),
          new Story("Made more than ten years ago", piece -> piece.made("2016-05")),
          new Story(
              "Taken out of service until a spare part comes",
              piece -> piece.takenOut("2026-10-05", "waits for a spare part")),
          new Story(
              "Retired last year and cut up",
              piece -> {
                piece.lastCaredFor(2024);
                piece.retired("2025-06-02", "worn out");
                piece.disposed("2025-06-20", "cut up");
              }));

  private static final Story SPARE =
      new Story("On the spare shelf since it was bought", Piece::neverIssued);

  private FleetStories() {}

  private static Story notInspectedThisYear() {
    return new Story(
        "This year's inspection is late by some days", piece -> piece.lastCaredFor(2025));
  }

  /** The story of one piece. */
  static Story of(ElementKind kind, Member holder) {
    if (holder.isPlaceOfSpares()) {
      return SPARE;
    }
    int number = (holder.station() * 37 + holder.number() * 53 + kind.ordinal() * 29) % 100;
    return number < OF_EACH_HUNDRED.size() ? OF_EACH_HUNDRED.get(number) : ORDINARY;
  }
}
