/** The answers' data by edition, the strict loader and the JSON codec. */
module org.ensemblerules.tables {
  requires transitive org.ensemblerules.core;
  requires com.fasterxml.jackson.databind;
  requires static org.jspecify;

  exports org.ensemblerules.tables;
}
