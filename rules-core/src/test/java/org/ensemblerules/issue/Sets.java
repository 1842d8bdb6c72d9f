package org.ensemblerules.issue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.effect.Destination;
import org.ensemblerules.effect.GoesTo;
import org.ensemblerules.gear.ElementId;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.NamedElement;
import org.ensemblerules.gear.Use;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.source.Basis;
import org.ensemblerules.verdict.Headline;

/** An invented department's sets: coat, trousers or coverall, gloves. */
final class Sets {
  static final LocalDate DAY = LocalDate.of(2024, 6, 15);
  static final Basis OURS = new Basis.CommonPractice();
  static final Join OVERLAP =
      new Join(
          Join.Place.COAT_OVER_TROUSERS,
          Use.STRUCTURAL,
          Optional.of(Quantity.of("50", Unit.MILLIMETER)),
          OURS);
  static final SetTable TABLE =
      SetTable.of(
          List.of(
              new SetRow(
                  Use.STRUCTURAL,
                  List.of(
                      Set.of(ElementKind.COAT, ElementKind.TROUSERS), Set.of(ElementKind.COVERALL)),
                  OURS),
              new SetRow(Use.STRUCTURAL, List.of(Set.of(ElementKind.GLOVES)), OURS)),
          List.of(OVERLAP));
  static final SizeTable SIZES =
      SizeTable.of(List.of(new SizeFit(ElementKind.COAT, "M", Set.of("L"), OURS)));
  static final Member MEMBER =
      new Member(
          "Member 7",
          Optional.of("Station 1"),
          Set.of(Use.STRUCTURAL),
          Map.of(
              ElementKind.COAT, "M",
              ElementKind.TROUSERS, "M",
              ElementKind.COVERALL, "M",
              ElementKind.GLOVES, "M"));
  static final List<SetPiece> WHOLE =
      List.of(
          piece(ElementKind.COAT, "L"),
          piece(ElementKind.TROUSERS, "M"),
          piece(ElementKind.GLOVES, "M"));

  private Sets() {}

  static SetPiece piece(ElementKind kind, String... sizes) {
    return piece(kind + " 1", kind, Use.STRUCTURAL, Headline.SERVICEABLE, sizes);
  }

  static SetPiece piece(String id, ElementKind kind, Use use, Headline headline, String... sizes) {
    return new SetPiece(
        new NamedElement(new ElementId(id), kind, use),
        Set.of(sizes),
        Whereabouts.with(MEMBER.name(), "Station 1"),
        headline,
        headline == Headline.SERVICEABLE
            ? Optional.empty()
            : Optional.of(GoesTo.of(Destination.GEAR_ROOM)));
  }

  static Fitting overlap(String on, YesNoUnknown good, String millimeters) {
    return new Fitting(
        MEMBER.name(),
        Join.Place.COAT_OVER_TROUSERS,
        new ElementId("COAT 1"),
        new ElementId("TROUSERS 1"),
        MarkedDate.parse(on),
        good,
        Optional.of(Quantity.of(millimeters, Unit.MILLIMETER)));
  }

  static MemberSet check(List<SetPiece> pieces, Fitting... fittings) {
    return new SetCheck(TABLE, SIZES, List.of(fittings), DAY)
        .of(MEMBER, Use.STRUCTURAL, pieces, Set.of());
  }

  static List<SetPiece> with(SetPiece more) {
    List<SetPiece> all = new ArrayList<>(WHOLE);
    all.add(more);
    return all;
  }
}
