package org.ensemblerules.example.department.report;

import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.ExtentKind;
import org.ensemblerules.defect.Grade;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.CredentialScope;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.EntityKind;
import org.ensemblerules.effect.GoesTo;
import org.ensemblerules.effect.PermissionRow;
import org.ensemblerules.effect.PermittedDoer;
import org.ensemblerules.effect.RepairClass;
import org.ensemblerules.effect.Scope;
import org.ensemblerules.effect.Task;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.inspection.Equipment;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.repair.RepairLevel;

/** Names such as {@code OUTER_SHELL} as words. */
final class PlainWords {
  private static final Pattern NAME = Pattern.compile("(?<![/A-Z_])[A-Z][A-Z_]*[A-Z](@[A-Z_]+)?");
  private static final Set<String> NAMES = names();
  private static final Map<String, String> IRREGULAR =
      Map.ofEntries(
          Map.entry("CBRN_AGENT", "CBRN agent"),
          Map.entry("HOOK_AND_LOOP", "hook-and-loop"),
          Map.entry("HOOKS_AND_D_RINGS", "hooks and D-rings"),
          Map.entry("SEAM_MAJOR_A", "Major A seam"),
          Map.entry("SEAM_MAJOR_B", "Major B seam"),
          Map.entry("SEAM_MINOR", "Minor seam"),
          Map.entry("PARTICULATE_BLOCKING_LAYER", "particulate-blocking layer"),
          Map.entry("FIT_AND_OVERLAP", "check of fit and overlap"),
          Map.entry("WATER_ENTRY", "check for water entry"),
          Map.entry("DRAG_RESCUE_ROUTING", "check of the drag rescue device's routing"),
          Map.entry("NON_LIVE_FIRE_TRAINING", "non-live-fire training"));

  private PlainWords() {}

  private static Set<String> names() {
    Set<String> names = new HashSet<>(Set.of("UNKNOWN"));
    List.<Enum<?>[]>of(
            DefectKind.values(),
            ExtentKind.values(),
            Grade.values(),
            Check.values(),
            CleaningKind.values(),
            CredentialScope.values(),
            EntityKind.values(),
            RepairClass.values(),
            RepairLevel.values(),
            Task.values(),
            ElementKind.values(),
            LayerKind.values(),
            Part.values(),
            Use.values(),
            Equipment.values(),
            InspectionKind.values())
        .forEach(values -> List.of(values).forEach(value -> names.add(value.name())));
    return names;
  }

  static String of(Enum<?> value) {
    return plain(value.name());
  }

  private static String plain(String name) {
    String irregular = IRREGULAR.get(name);
    return irregular == null ? name.toLowerCase(Locale.ROOT).replace('_', ' ') : irregular;
  }

  static String list(Collection<? extends Enum<?>> values) {
    return values.stream().map(PlainWords::of).collect(Collectors.joining(", "));
  }

  static String of(Site site) {
    String part = of(site.part());
    return site.layer()
        .map(
            layer ->
                site.part() == Part.WHOLE_ELEMENT
                    ? "whole " + of(layer)
                    : part + " of the " + of(layer))
        .orElse(part);
  }

  /** What an effect calls for, without saying on what. */
  static String of(Effect effect) {
    if (effect instanceof Effect.Note) {
      return "nothing; it is compared next time";
    } else if (effect instanceof Effect.Clean clean) {
      return of(Task.of(clean.kind()));
    } else if (effect instanceof Effect.Repair repair) {
      return of(Task.of(repair.repairClass()));
    } else if (effect instanceof Effect.ReplacePart replace) {
      return "replacement (" + of(Task.of(replace.repairClass())) + ")";
    } else if (effect instanceof Effect.Evaluate evaluate) {
      return of(evaluate.check());
    }
    return "retirement";
  }

  /** Where an element goes, and for a service provider what they must be verified for. */
  static String of(GoesTo goesTo) {
    return of(goesTo.destination())
        + goesTo.scope().map(scope -> " verified for: " + of(scope)).orElse("");
  }

  /** The same, with how much of the element it falls on. */
  static String withScope(Effect effect) {
    return effect.keepsOut() ? of(effect) + " of the " + of(effect.scope()) : of(effect);
  }

  private static String of(Scope scope) {
    return scope == Scope.ELEMENT ? "whole element" : scope.name().toLowerCase(Locale.ROOT);
  }

  /** Whom rows permit to do something, and with which training. */
  static String permitted(Collection<PermissionRow> rows) {
    return who(rows.stream().map(PermissionRow::doer).toList());
  }

  /** Who may do something, and with which training. */
  static String who(Collection<PermittedDoer> doers) {
    return doers.stream()
        .map(
            who ->
                of(who.entity())
                    + who.needs().map(needed -> " trained for: " + of(needed)).orElse(""))
        .collect(Collectors.joining("; "));
  }

  /** A sentence of the library with its names as words. */
  static String sentence(String text) {
    return NAME.matcher(text).replaceAll(PlainWords::word);
  }

  private static String word(MatchResult match) {
    String[] names = match.group().split("@", -1);
    for (String name : names) {
      if (!NAMES.contains(name)) {
        return match.group();
      }
    }
    if (names.length == 2) {
      return of(Site.parse(match.group()));
    }
    return plain(names[0]);
  }
}
