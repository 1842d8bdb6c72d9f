package org.ensemblerules.example.department.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.ensemblerules.gear.Use;

/** Who is in the department: stations, an airfield crew and racks of reserve gear. */
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

  private static final List<String> SURNAMES =
      List.of(
          "Contrived",
          "Devised",
          "Fabled",
          "Feigned",
          "Mythical",
          "Nominal",
          "Assumed",
          "Alleged",
          "Putative",
          "Token",
          "Dummy",
          "Cipher",
          "Alias",
          "Generic",
          "Sham");

  /** The first of the stations whose gear is no case to show, but an ordinary fleet. */
  static final int FIRST_OF_THE_FLEET = 6;

  /** The number under which spare gear is kept. */
  static final int SPARE_SHELF = 10;

  private static final int PLACES = 8;
  private static final List<String> INITIALS = List.of("Aa.", "Bb.", "Cc.", "Dd.");

  private Roster() {}

  /** The members of four more stations and the shelf for spare gear: ordinary for the most part. */
  static List<Member> fleet() {
    List<Member> members = new ArrayList<>();
    for (int station = 0; station < INITIALS.size(); station++) {
      String initial = INITIALS.get(station);
      members.addAll(
          crew(
              FIRST_OF_THE_FLEET + station,
              SURNAMES.stream().map(name -> initial + " " + name).toList(),
              Use.STRUCTURAL));
    }
    members.addAll(spares());
    return members;
  }

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

  private static List<Member> spares() {
    return crew(
        SPARE_SHELF,
        IntStream.rangeClosed(1, PLACES).mapToObj(place -> "Spare shelf, place " + place).toList(),
        Use.STRUCTURAL);
  }

  private static List<Member> crew(int station, List<String> names, Use use) {
    List<Member> members = new ArrayList<>();
    for (String name : names) {
      members.add(new Member(station, members.size() + 1, name, use));
    }
    return members;
  }
}
