/** The answers' data by edition, the strict loader and the JSON codec. */
module org.ensemblerules.tables {
  requires transitive org.ensemblerules.core;
  requires com.fasterxml.jackson.databind;
  requires static org.jspecify;

// An empty package cannot be exported: this line comes in with the package's first type.
// exports org.ensemblerules.tables;
}
