package org.ensemblerules.example.department.demo;

import java.util.ArrayList;
import java.util.List;
import org.ensemblerules.gear.Use;

/** Who is in the department: two stations, an airfield crew and a rack of reserve gear. */
final class Roster {
  private static final List<String> EXAMPLE_HILL =
      List.of(
          "A. Sample",
          "B. Specimen",
          "C. Example",
          "D. Figment",
          "E. Placeholder",
          "F. Invented",
          "G. Madeup",
          "H. Pretend",
          "V. Noone");
  private static final List<String> SAMPLE_STREET =
      List.of(
          "I. Notional",
          "J. Fictive",
          "K. Imagined",
          "L. Supposed",
          "M. Pattern",
          "N. Template",
          "O. Mockup",
          "P. Stand-In",
          "W. Nowhere");
  private static final List<String> PRETEND_FIELD =
      List.of("Q. Make-Believe", "R. Conjured", "S. Whimsy", "T. Phantom", "U. Daydream");

  private Roster() {}

  /** The members of the two stations, in structural gear. */
  static List<Member> structural() {
    List<Member> members = new ArrayList<>();
    members.addAll(crew(1, EXAMPLE_HILL, Use.STRUCTURAL));
    members.addAll(crew(2, SAMPLE_STREET, Use.STRUCTURAL));
    return members;
  }

  /** The airfield crew, in proximity gear. */
  static List<Member> proximity() {
    return crew(3, PRETEND_FIELD, Use.PROXIMITY);
  }

  /** The places of the reserve rack. */
  static List<Member> reserve(int places, Use use) {
    int station = use == Use.STRUCTURAL ? 4 : 5;
    List<String> names = new ArrayList<>();
    for (int place = 1; place <= places; place++) {
      names.add("Reserve rack, place " + place);
    }
    return crew(station, names, use);
  }

  private static List<Member> crew(int station, List<String> names, Use use) {
    List<Member> members = new ArrayList<>();
    for (String name : names) {
      members.add(new Member(station, members.size() + 1, name, use));
    }
    return members;
  }
}
