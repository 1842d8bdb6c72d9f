package org.ensemblerules.example.department.demo;

import java.util.List;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.Grade;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.RepairClass;

/** What happened to the structural footwear. */
final class FootwearStories {
  private FootwearStories() {}

  static List<Story> all() {
    return List.of(
        Story.ordinary(),
        new Story(
            "Lining a little rubbed at the heels",
            boots -> boots.found("F1", "LINING", "heels", DefectKind.LINING_WORN, Grade.SLIGHT)),
        new Story(
            "Tread worn, still plain to see",
            boots -> boots.found("F1", "SOLE", "both", DefectKind.TREAD_WEAR, Grade.MODERATE)),
        new Story(
            "The right sole begins to come off at the toe",
            boots ->
                boots.found("F1", "SOLE", "right toe", DefectKind.SOLE_SEPARATION, Grade.SLIGHT)),
        new Story(
            "The steel of the left toe cap shows through",
            boots -> boots.found("F1", "TOE_CAP", "left", DefectKind.EXPOSED_INSERT)),
        new Story(
            "Wet socks after standing in a flooded cellar",
            boots -> boots.found("F1", "WHOLE_ELEMENT", "", DefectKind.LOST_WATER_RESISTANCE)),
        new Story(
            "The left boot belongs to another pair",
            boots -> boots.found("F1", "WHOLE_ELEMENT", "", DefectKind.INCOMPLETE_PAIR)),
        new Story(
            "Diesel on uppers and soles",
            boots -> {
              boots.lookedOverAfterUse("2026-11-23");
              boots.found("F1", "WHOLE_ELEMENT", "", DefectKind.FUEL_OR_OIL);
            }),
        new Story(
            "A pull strap tore off and was replaced; nobody has looked at the boots since",
            boots ->
                boots
                    .found("F1", "PULL_STRAPS", "right, outer", DefectKind.TEAR)
                    .replaced("2026-11-12", RepairClass.ADVANCED, Trades.MAKER_ONE)
                    .passed("2026-11-16", Check.WATER_ENTRY, Trades.GEAR_ROOM)),
        new Story(
            "A pull strap was sewn on again by a tailor in town",
            boots ->
                boots
                    .foundBefore("2026-05-06", "F1", "PULL_STRAPS", "left", DefectKind.LOOSE)
                    .repaired("2026-05-11", RepairClass.BASIC, Trades.TAILOR)),
        new Story(
            "A pull strap was sewn on again by the manufacturer, and no water came in",
            boots ->
                boots
                    .foundBefore("2026-05-06", "F1", "PULL_STRAPS", "left", DefectKind.LOOSE)
                    .repaired("2026-06-02", RepairClass.ADVANCED, Trades.MAKER_ONE)
                    .passed("2026-06-09", Check.WATER_ENTRY, Trades.GEAR_ROOM)),
        new Story("Made in the summer of 2016", boots -> boots.made("2016-07")),
        new Story(
            "A sole melted on hot metal",
            boots -> boots.found("F1", "SOLE", "left", DefectKind.MELTING)));
  }
}
