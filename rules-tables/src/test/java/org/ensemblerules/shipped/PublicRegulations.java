package org.ensemblerules.shipped;

import java.util.List;
import java.util.OptionalInt;
import org.ensemblerules.source.OriginId;

/** What public regulations ask for, in our own words, each with its section. */
final class PublicRegulations {
  private PublicRegulations() {}

  /** How the shipped tables stand to a rule. */
  enum Stand {
    /** What the tables ask for is as strict as the rule, or stricter. */
    ENOUGH,
    /** What the tables ask for is looser: by themselves they do not satisfy the rule. */
    LOOSER,
    /** The rule binds the program or the record; no interval of the tables answers it. */
    OUT_OF_REACH
  }

  /**
   * A rule.
   *
   * @param source the regulation, as in the list of sources
   * @param section its section
   * @param words what it asks for
   * @param months the longest time between two inspections; empty if it sets none in months
   * @param stand how the shipped tables stand to it
   */
  record Rule(String source, String section, String words, OptionalInt months, Stand stand) {
    @Override
    public String toString() {
      return source + " " + section;
    }
  }

  /**
   * An edition that a law names.
   *
   * @param law the law and its section
   * @param edition the edition
   */
  record Adoption(String law, OriginId edition) {}

  static final Rule WASHINGTON =
      new Rule(
          "wac-296-305-02002",
          "(5)",
          "structural clothing is inspected semi-annually by a person whom the employer has"
              + " qualified, and never more than six months lie between",
          OptionalInt.of(6),
          Stand.LOOSER);
  static final Rule NEW_JERSEY =
      new Rule(
          "njac-12-100-10-16",
          "(a)",
          "fire fighting equipment is inspected at least yearly",
          OptionalInt.of(12),
          Stand.ENOUGH);
  static final Rule NEW_MEXICO_YEARLY =
      new Rule(
          "nmac-11-5-2-10",
          "(B)(1)",
          "fire fighting equipment is inspected yearly, with records",
          OptionalInt.of(12),
          Stand.ENOUGH);
  static final Rule NEW_MEXICO_RUN =
      new Rule(
          "nmac-11-5-2-10",
          "(B)(1)",
          "equipment is looked over after each run or daily, whichever is less often",
          OptionalInt.empty(),
          Stand.ENOUGH);
  static final Rule MICHIGAN_INSPECTED =
      new Rule(
          "mich-r-408-17431",
          "(5)",
          "protective equipment is inspected after each use",
          OptionalInt.empty(),
          Stand.ENOUGH);
  static final Rule MICHIGAN_CLEANED =
      new Rule(
          "mich-r-408-17431",
          "(5)",
          "protective equipment is cleaned after each use, soiled or not",
          OptionalInt.empty(),
          Stand.LOOSER);
  static final Rule TEXAS_RISK =
      new Rule(
          "tac-37-435-1",
          "(b)",
          "the risk assessment is reviewed at least every five years",
          OptionalInt.empty(),
          Stand.OUT_OF_REACH);

  static List<Rule> all() {
    return List.of(
        WASHINGTON,
        NEW_JERSEY,
        NEW_MEXICO_YEARLY,
        NEW_MEXICO_RUN,
        MICHIGAN_INSPECTED,
        MICHIGAN_CLEANED,
        TEXAS_RISK);
  }

  static List<Adoption> adoptions() {
    return List.of(
        new Adoption("WAC 296-305-02001(4), own cleaning", ShippedEditions.EDITION_2008),
        new Adoption(
            "8 CCR 3402.3, by the rulemaking in force since 2023", ShippedEditions.EDITION_2014),
        new Adoption("Texas, guide of the commission", ShippedEditions.EDITION_2014),
        new Adoption("Texas, compliance page of the commission", ShippedEditions.EDITION_2020),
        new Adoption("Florida 69A-37.501(1)(f), state grant", ShippedEditions.EDITION_2020));
  }
}
