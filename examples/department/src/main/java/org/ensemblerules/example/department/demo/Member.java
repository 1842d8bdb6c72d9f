package org.ensemblerules.example.department.demo;

import java.util.List;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.effect.EntityKind;
import org.ensemblerules.gear.Use;

/** One member, or one place of the reserve rack. Everybody here is invented. */
record Member(int station, int number, String name, Use use) {
  private static final List<String> SIZES = List.of("S", "M", "L", "XL", "2XL");

  /** The member as somebody who looks over their own gear. */
  Doer doer() {
    return new Doer(name, EntityKind.MEMBER, List.of());
  }

  /** Who cleans and inspects their gear: the gear room, or for some stations a provider. */
  Doer carer() {
    return station == 8 || station == 9 ? Trades.PROVIDER : Trades.GEAR_ROOM;
  }

  /** Whether each use of their gear is on record, and that its wearer looked it over. */
  boolean usesAreOnRecord() {
    return station < Roster.FIRST_OF_THE_FLEET;
  }

  /** The size they wear, or that of what lies at the place. */
  String size() {
    return usesAreOnRecord()
        ? number % 2 == 0 ? "M" : "L"
        : SIZES.get((number + station) % SIZES.size());
  }

  /** Whether this is a place of the shelf for spare gear. */
  boolean isPlaceOfSpares() {
    return station == Roster.SPARE_SHELF;
  }

  /** The name of a piece of this member's gear, as in {@code 1-03-COAT}. */
  String tag(String piece) {
    return station + "-" + (number < 10 ? "0" : "") + number + "-" + piece;
  }
}
