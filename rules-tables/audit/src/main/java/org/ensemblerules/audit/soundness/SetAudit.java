package org.ensemblerules.audit.soundness;

import java.time.LocalDate;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.ensemblerules.GearRules;
import org.ensemblerules.ruleset.Subject;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.Edition;
import org.ensemblerules.source.FaultCode;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.source.SourceId;
import org.ensemblerules.tables.OverlayJson;
import org.ensemblerules.tables.RuleSets;
import org.ensemblerules.tables.ShippedRules;
import org.ensemblerules.tables.TableLoader;
import org.ensemblerules.tables.message.JsonFault;
import org.ensemblerules.tables.set.LoadedTables;
import org.ensemblerules.tables.set.OverlayFile;
import org.ensemblerules.tables.set.TableFiles;

/**
 * Audits a set of table files, whether it can be loaded or not: of a set that is refused, what the
 * loader found stands in the report under the kinds of flaw that the audit knows.
 *
 * @since 0.1
 */
public final class SetAudit {
  private static final int LONGEST = 2000;

  private SetAudit() {}

  /**
   * What an audit of a set of files came to.
   *
   * @param refused the faults for which the set cannot be loaded; empty if it can be
   * @param editions the report of the rule set of each edition that has all tables, in the order of
   *     publication; empty if the set is refused
   */
  public record Audited(Optional<AuditReport> refused, Map<OriginId, AuditReport> editions) {
    /** Copies the map. */
    public Audited {
      editions = Collections.unmodifiableMap(new LinkedHashMap<>(editions));
    }

    /**
     * Tells whether the set is sound.
     *
     * @return true if it was loaded and no report has a fault
     */
    public boolean isSound() {
      return refused.isEmpty() && editions.values().stream().allMatch(AuditReport::isSound);
    }
  }

  /**
   * Audits a set of files.
   *
   * @param files the files; not null
   * @param asOf the day for which reviews must hold; not null
   * @return the reports; never null
   */
  public static Audited of(TableFiles files, LocalDate asOf) {
    return of(files, List.of(), asOf);
  }

  /**
   * Audits a set of files with overlays laid over each of its editions, as they would be judged by.
   *
   * @param files the files; not null
   * @param overlays the overlays, in whatever order; not null
   * @param asOf the day for which reviews must hold and for which the overlays are laid; not null
   * @return the reports; an edition over which the overlays cannot be laid has the report of what
   *     is wrong with them; never null
   */
  public static Audited of(TableFiles files, List<OverlayFile> overlays, LocalDate asOf) {
    return of(files, overlays, asOf, edition -> true);
  }

  /**
   * Audits some editions of a set of files, with overlays laid over each of them.
   *
   * @param files the files; not null
   * @param overlays the overlays, in whatever order; not null
   * @param asOf the day for which reviews must hold and for which the overlays are laid; not null
   * @param wanted which editions; not null
   * @return the reports of these editions; never null
   */
  public static Audited of(
      TableFiles files, List<OverlayFile> overlays, LocalDate asOf, Predicate<OriginId> wanted) {
    Checked<LoadedTables, JsonFault> loaded = TableLoader.load(files);
    if (loaded instanceof Checked.Refused<LoadedTables, JsonFault> refused) {
      return new Audited(Optional.of(report(refused.faults(), asOf)), Map.of());
    }
    LoadedTables tables = loaded.orElseThrow();
    Set<SourceId> sources = sources(tables, overlays);
    Map<OriginId, AuditReport> reports = new LinkedHashMap<>();
    for (Edition edition : tables.editions(Subject.INSPECTION)) {
      if (!wanted.test(edition.id())) {
        continue;
      }
      Checked<GearRules, JsonFault> composed = RuleSets.compose(tables, edition.id());
      Checked<GearRules, JsonFault> rules =
          composed instanceof Checked.Sound<GearRules, JsonFault> ok && !overlays.isEmpty()
              ? OverlayJson.lay(ok.value(), overlays, asOf)
              : composed;
      reports.put(
          edition.id(),
          rules instanceof Checked.Refused<GearRules, JsonFault> lacking
              ? report(lacking.faults(), asOf)
              : Audit.of(rules.orElseThrow(), sources, asOf));
    }
    return new Audited(Optional.empty(), reports);
  }

  /** Rows of overlays cite their own sources and those that come with the library. */
  private static Set<SourceId> sources(LoadedTables tables, List<OverlayFile> overlays) {
    Set<SourceId> sources = new HashSet<>(tables.sources().keySet());
    for (OverlayFile overlay : overlays) {
      sources.addAll(ShippedRules.sources().keySet());
      overlay.sources().forEach(source -> sources.add(source.id()));
    }
    return sources;
  }

  private static AuditReport report(List<JsonFault> faults, LocalDate asOf) {
    return new AuditReport(asOf, 0, faults.stream().map(SetAudit::flaw).toList(), Map.of());
  }

  private static Flaw flaw(JsonFault fault) {
    return new Flaw(
        kind(fault.code()),
        List.of(),
        List.of(fault.source() + "#" + fault.pointer()),
        shortened(fault.found()),
        shortened(fault.allowed()),
        Optional.empty());
  }

  /** The kind of flaw that a refusal is. */
  static FlawKind kind(FaultCode code) {
    return switch (code) {
      case UNKNOWN_SOURCE -> FlawKind.DANGLING_SOURCE;
      case NO_BASIS -> FlawKind.NO_BASIS;
      case NO_SUCH_PLACE -> FlawKind.UNREACHABLE;
      case GAP -> FlawKind.GAP;
      case OVERLAP -> FlawKind.OVERLAP;
      case BANDS_DO_NOT_JOIN -> FlawKind.BANDS_DO_NOT_JOIN;
      case DUPLICATE -> FlawKind.DUPLICATE;
      case NOT_ALLOWED, UNREADABLE, MISSING, UNKNOWN_FIELD, LOOSER, DEFECT -> FlawKind.UNREADABLE;
    };
  }

  private static String shortened(String text) {
    return text.length() <= LONGEST ? text : text.substring(0, LONGEST - 3) + "...";
  }
}
