package org.ensemblerules.tables.load;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.ensemblerules.ruleset.TableKind;
import org.ensemblerules.ruleset.TableKinds;
import org.ensemblerules.source.InvalidValueException;

/** The tables that files have. */
final class TableTypes {
  private static final Map<TableKind<?, ?>, TableType<?>> BY_KIND = byKind();
  private static final Map<String, TableType<?>> BY_NAME = byName();

  private TableTypes() {}

  private static Map<TableKind<?, ?>, TableType<?>> byKind() {
    Map<TableKind<?, ?>, TableType<?>> types = new LinkedHashMap<>();
    Stream.of(
            GearReaders.TYPES,
            LaboratoryReaders.TYPES,
            RequirementReader.TYPES,
            CareReaders.TYPES,
            RouteReaders.TYPES,
            RepairReaders.TYPES,
            ScheduleReaders.TYPES,
            InspectionReaders.TYPES,
            DefectReaders.TYPES,
            EffectReaders.TYPES,
            FieldcheckReaders.TYPES,
            RecordReaders.TYPES,
            LawReaders.TYPES)
        .flatMap(List::stream)
        .forEach(
            type ->
                InvalidValueException.require(
                    types.putIfAbsent(type.kind(), type) == null,
                    "TableTypes.kind",
                    type,
                    "one reader for each kind of table"));
    return Collections.unmodifiableMap(types);
  }

  private static Map<String, TableType<?>> byName() {
    Map<String, TableType<?>> types = new LinkedHashMap<>();
    all().forEach(type -> types.put(type.name(), type));
    return Collections.unmodifiableMap(types);
  }

  /** The types, each after the one that its tables are compiled by. */
  static List<TableType<?>> all() {
    return TableKinds.all().stream()
        .filter(BY_KIND::containsKey)
        .<TableType<?>>map(BY_KIND::get)
        .toList();
  }

  /** The types by their names in files. */
  static Map<String, TableType<?>> named() {
    return BY_NAME;
  }
}
