package org.ensemblerules.pages;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.source.Basis;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.source.Provenance;
import org.ensemblerules.tables.set.LoadedTables;

/** Names and bases as pages show them. */
final class Words {
  private Words() {}

  static String of(Enum<?> name) {
    return name.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  static String of(Collection<? extends Enum<?>> names) {
    return names.stream().map(Words::of).collect(Collectors.joining(", "));
  }

  /** As in "outer shell: fabric", so that parts of one layer read together. */
  static String of(Site site) {
    String part = site.part() == Part.WHOLE_ELEMENT ? "as a whole" : of(site.part());
    return site.layer().map(layer -> of(layer) + ": " + part).orElse(part);
  }

  static String code(Object name) {
    return "`" + name + "`";
  }

  static String sites(Collection<Site> sites) {
    return sites.stream().map(Words::of).collect(Collectors.joining("; "));
  }

  /** The year alone, since all editions with rows for inspection are of one standard. */
  static String edition(OriginId id) {
    if (id.equals(LoadedTables.TRADE)) {
      return "all";
    }
    if (id.equals(LoadedTables.LAW)) {
      return "law";
    }
    return id.value().startsWith("NFPA_1851_")
        ? id.value().replaceAll(".*_", "")
        : id.value().replace('_', ' ');
  }

  static String editions(List<OriginId> ids) {
    return ids.stream().map(Words::edition).collect(Collectors.joining(", "));
  }

  static String basis(Provenance provenance) {
    return basis(provenance.basis()) + provenance.note().map(note -> ". " + note).orElse("");
  }

  static String basis(Basis basis) {
    if (basis instanceof Basis.CarriedOver carried) {
      return basis(carried.there());
    }
    if (basis instanceof Basis.Published published) {
      return published.seen()
          + " "
          + code(published.source())
          + published.clause().map(clause -> " " + clause).orElse("")
          + (published.pages().isEmpty()
              ? ""
              : published.pages().stream()
                  .map(Words::code)
                  .collect(Collectors.joining(", ", " on ", "")));
    } else if (basis instanceof Basis.Memory memory) {
      return "MEMORY "
          + memory.confidence()
          + memory.about().map(about -> " of " + code(about)).orElse("");
    }
    return "COMMON_PRACTICE";
  }

  /** One of READ, RESTATED, COMMON_PRACTICE and MEMORY. */
  static String kind(Basis basis) {
    if (basis instanceof Basis.CarriedOver carried) {
      return kind(carried.there());
    }
    if (basis instanceof Basis.Published published) {
      return published.seen().name();
    }
    return basis instanceof Basis.Memory ? "MEMORY" : "COMMON_PRACTICE";
  }
}
