/** The answers' data by edition, the strict loader and the JSON codec. */
// What only the audit may use names its module, which is compiled after this one.
@SuppressWarnings("module")
module org.ensemblerules.tables {
  requires transitive org.ensemblerules.core;
  requires com.fasterxml.jackson.databind;
  requires static org.jspecify;

  exports org.ensemblerules.tables;
  exports org.ensemblerules.tables.message;
  exports org.ensemblerules.tables.set;
  exports org.ensemblerules.tables.codec to
      org.ensemblerules.audit;
  exports org.ensemblerules.tables.json to
      org.ensemblerules.audit;
}
