/**
 * The questions asked of protective clothing: values, rows, tables and the functions that answer.
 */
module org.ensemblerules.core {
  requires com.google.common;
  requires static org.jspecify;

  exports org.ensemblerules;
  exports org.ensemblerules.source;
  exports org.ensemblerules.measure;
  exports org.ensemblerules.gear;
  exports org.ensemblerules.effect;
  exports org.ensemblerules.defect;
  exports org.ensemblerules.inspection;
  exports org.ensemblerules.fieldcheck;
  exports org.ensemblerules.strength;
  exports org.ensemblerules.care;
  exports org.ensemblerules.repair;
  exports org.ensemblerules.history;
  exports org.ensemblerules.retirement;
  exports org.ensemblerules.schedule;
  exports org.ensemblerules.record;
  exports org.ensemblerules.ruleset;
  exports org.ensemblerules.verdict;
  exports org.ensemblerules.issue;
  exports org.ensemblerules.fleet;
  exports org.ensemblerules.catalog;
  exports org.ensemblerules.words;
}
