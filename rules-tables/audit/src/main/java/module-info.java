/** Are the rules themselves sound, and what would other rules change? */
module org.ensemblerules.audit {
  requires transitive org.ensemblerules.tables;
  requires com.fasterxml.jackson.databind;
  requires com.google.common;
  requires static org.jspecify;

  exports org.ensemblerules.audit;
  exports org.ensemblerules.audit.soundness;
  exports org.ensemblerules.audit.difference;
  exports org.ensemblerules.audit.words;
  exports org.ensemblerules.audit.json;
}
