package org.ensemblerules.example.department.demo;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ensemblerules.GearRules;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.inspection.CriteriaTable;
import org.ensemblerules.ruleset.Subject;
import org.ensemblerules.source.Edition;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.verdict.Assessment;

/**
 * An invented fire department and its gear, the same at every run. Nobody and nothing in it exists.
 */
public final class DemoDepartment {
  /** Its name. */
  public static final String NAME = "Exampleton Fire Department (invented)";

  /** The day its gear is judged for. */
  public static final LocalDate AS_OF = LocalDate.of(2026, 11, 25);

  private static final Comparator<DemoElement> BY_NAME =
      Comparator.comparing(element -> element.assessment().element().id());

  private DemoDepartment() {}

  /**
   * Tells of every piece of gear.
   *
   * @param rules the rules whose inspection forms the department fills in; not null
   * @return the pieces by their name; never null
   */
  public static List<DemoElement> elements(GearRules rules) {
    List<DemoElement> elements = new ArrayList<>(cases(rules));
    elements.addAll(fleet(rules));
    elements.sort(BY_NAME);
    return elements;
  }

  /**
   * Tells of the pieces that something worth showing happened to, a story for each rule.
   *
   * @param rules the rules whose inspection forms the department fills in; not null
   * @return the pieces by their name; never null
   */
  public static List<DemoElement> cases(GearRules rules) {
    CriteriaTable criteria = rules.tables().criteria();
    List<DemoElement> elements = new ArrayList<>();
    structural()
        .forEach((kind, stories) -> tell(criteria, kind, Roster.structural(), stories, elements));
    for (ElementKind kind : ElementKind.values()) {
      if (kind != ElementKind.COVERALL) {
        tell(criteria, kind, Roster.proximity(), ProximityStories.of(kind), elements);
      }
    }
    rack(criteria, ElementKind.COAT, Use.STRUCTURAL, MeasuredStories.all(), elements);
    rack(criteria, ElementKind.COVERALL, Use.STRUCTURAL, CoverallStories.structural(), elements);
    rack(criteria, ElementKind.COVERALL, Use.PROXIMITY, CoverallStories.proximity(), elements);
    elements.sort(BY_NAME);
    return elements;
  }

  /**
   * Tells of the pieces that make up most of the department, with an ordinary share of trouble.
   * Their last inspections are signed off, of older ones there are only dates.
   *
   * @param rules the rules whose inspection forms the department fills in; not null
   * @return the pieces by their name; never null
   */
  public static List<DemoElement> fleet(GearRules rules) {
    CriteriaTable criteria = rules.tables().criteria();
    Optional<OriginId> signedFor =
        Optional.ofNullable(rules.editions().get(Subject.INSPECTION)).map(Edition::id);
    List<DemoElement> elements = new ArrayList<>();
    for (Member member : Roster.fleet()) {
      for (ElementKind kind : structural().keySet()) {
        elements.add(told(criteria, kind, member, signedFor, FleetStories.of(kind, member)));
      }
    }
    elements.sort(BY_NAME);
    return elements;
  }

  private static DemoElement told(
      CriteriaTable criteria,
      ElementKind kind,
      Member holder,
      Optional<OriginId> signedFor,
      Story story) {
    Piece piece = new Piece(criteria, kind, holder, signedFor);
    story.teller().accept(piece);
    return new DemoElement(story.title(), piece.assessment());
  }

  /**
   * Returns what is handed over to be judged.
   *
   * @param rules the rules whose inspection forms the department fills in; not null
   * @return the assessments by the name of the piece; never null
   */
  public static List<Assessment> assessments(GearRules rules) {
    return elements(rules).stream().map(DemoElement::assessment).toList();
  }

  private static Map<ElementKind, List<Story>> structural() {
    Map<ElementKind, List<Story>> stories = new LinkedHashMap<>();
    stories.put(ElementKind.COAT, CoatStories.all());
    stories.put(ElementKind.TROUSERS, TrousersStories.all());
    stories.put(ElementKind.HOOD, HoodStories.all());
    stories.put(ElementKind.GLOVES, GlovesStories.all());
    stories.put(ElementKind.FOOTWEAR, FootwearStories.all());
    stories.put(ElementKind.HELMET, HelmetStories.all());
    stories.put(ElementKind.DRAG_RESCUE_DEVICE, DragRescueStories.all());
    return stories;
  }

  /** Each member's piece has the next story; when they are told, the rest had ordinary years. */
  private static void tell(
      CriteriaTable criteria,
      ElementKind kind,
      List<Member> members,
      List<Story> stories,
      List<DemoElement> elements) {
    for (int i = 0; i < members.size(); i++) {
      Story story = i < stories.size() ? stories.get(i) : Story.ordinary();
      elements.add(told(criteria, kind, members.get(i), Optional.empty(), story));
    }
  }

  private static void rack(
      CriteriaTable criteria,
      ElementKind kind,
      Use use,
      List<Story> stories,
      List<DemoElement> elements) {
    tell(criteria, kind, Roster.reserve(stories.size(), use), stories, elements);
  }
}
