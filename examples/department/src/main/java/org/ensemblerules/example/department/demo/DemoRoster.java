package org.ensemblerules.example.department.demo;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.ensemblerules.gear.ElementId;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Use;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.issue.Fitting;
import org.ensemblerules.issue.Join;
import org.ensemblerules.issue.Whereabouts;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.tables.message.KeptGear;

/** The lists that the invented department keeps beside the records of its gear. */
public final class DemoRoster {
  private static final Map<String, Member> BY_TAG = byTag();

  /** When what is lent was promised back. */
  private static final Map<String, LocalDate> PROMISED =
      Map.of("2-06-GLOVES", LocalDate.of(2026, 11, 23));

  private DemoRoster() {}

  private static Map<String, Member> byTag() {
    Map<String, Member> members = new LinkedHashMap<>();
    Stream.of(Roster.structural(), Roster.proximity(), Roster.fleet())
        .flatMap(List::stream)
        .forEach(member -> members.put(member.tag(""), member));
    return members;
  }

  /**
   * Tells who has a piece of gear and where it is.
   *
   * @param id its name; not null
   * @return what the lists say; never null
   */
  public static Whereabouts of(ElementId id) {
    String tag = id.value().replaceFirst("[A-Z_]+$", "");
    Optional<Member> holder = Optional.ofNullable(BY_TAG.get(tag));
    if (holder.isEmpty()) {
      return tag.matches("[45]-[0-9]+-")
          ? Whereabouts.spare(
              "Gear room", "Reserve rack, place " + tag.substring(2, tag.length() - 1))
          : Whereabouts.unknown();
    }
    Member member = holder.get();
    return member.isPlaceOfSpares()
        ? Whereabouts.spare("Gear room", member.name())
        : new Whereabouts(
            Optional.of(member.name()),
            Optional.of("Station " + member.station()),
            Optional.empty(),
            Optional.ofNullable(PROMISED.get(id.value())));
  }

  /**
   * Tells who has the coats of the members and where they are.
   *
   * @return the entries of a list; never null
   */
  public static List<KeptGear> whereabouts() {
    return BY_TAG.values().stream()
        .map(member -> new ElementId(member.tag(ElementKind.COAT.name())))
        .map(id -> new KeptGear(id, of(id)))
        .toList();
  }

  /**
   * Lists the members who wear gear. One has grown, one was never measured, and one is new and has
   * nothing yet.
   *
   * @return the members; never null
   */
  public static List<org.ensemblerules.issue.Member> members() {
    List<org.ensemblerules.issue.Member> members = new ArrayList<>();
    for (Member member : BY_TAG.values()) {
      if (!member.isPlaceOfSpares()) {
        members.add(wearer(member));
      }
    }
    members.add(
        new org.ensemblerules.issue.Member(
            "Ee. Newly-Made", Optional.of("Station 9"), Set.of(Use.STRUCTURAL), sizes("M")));
    return members;
  }

  private static org.ensemblerules.issue.Member wearer(Member member) {
    Map<ElementKind, String> sizes =
        member.tag("").equals("7-03-") ? Map.of() : sizes(member.size());
    if (member.tag("").equals("6-05-")) {
      sizes.put(ElementKind.COAT, "2XL");
    }
    return new org.ensemblerules.issue.Member(
        member.name(), Optional.of("Station " + member.station()), Set.of(member.use()), sizes);
  }

  private static Map<ElementKind, String> sizes(String size) {
    Map<ElementKind, String> sizes = new EnumMap<>(ElementKind.class);
    Arrays.stream(ElementKind.values()).forEach(kind -> sizes.put(kind, size));
    return sizes;
  }

  /**
   * Lists what was looked at when the members put their sets on in spring. At one the coat rides
   * up, and a few were on vacation.
   *
   * @return the looks; never null
   */
  public static List<Fitting> fittings() {
    List<Fitting> looks = new ArrayList<>();
    for (Member member : BY_TAG.values()) {
      if (!member.isPlaceOfSpares() && member.number() != 11) {
        for (Join.Place place : Join.Place.values()) {
          looks.addAll(looks(member, place));
        }
      }
    }
    return looks;
  }

  private static List<Fitting> looks(Member member, Join.Place place) {
    List<Fitting> looks = new ArrayList<>();
    boolean rides = place == Join.Place.COAT_OVER_TROUSERS && member.tag("").equals("1-04-");
    for (ElementKind one : place.one()) {
      for (ElementKind other : place.other()) {
        looks.add(
            new Fitting(
                member.name(),
                place,
                new ElementId(member.tag(one.name())),
                new ElementId(member.tag(other.name())),
                MarkedDate.of(LocalDate.of(2026, 4, 2 + member.number())),
                YesNoUnknown.YES,
                Optional.of(Quantity.of(rides ? "1.5" : "3", Unit.INCH))));
      }
    }
    return looks;
  }
}
