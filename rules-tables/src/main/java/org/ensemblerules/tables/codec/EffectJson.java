package org.ensemblerules.tables.codec;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Optional;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.CredentialScope;
import org.ensemblerules.effect.Destination;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.EffectKind;
import org.ensemblerules.effect.EntityKind;
import org.ensemblerules.effect.GoesTo;
import org.ensemblerules.effect.PermissionRow;
import org.ensemblerules.effect.PermittedDoer;
import org.ensemblerules.effect.RepairClass;
import org.ensemblerules.effect.Scope;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.ObjectCursor;

/** The JSON form of effects, the same in table files and verdicts, and of who may do them. */
public final class EffectJson {
  private EffectJson() {}

  /** Reads an effect. */
  public static Optional<Effect> read(JsonCursor at) {
    ObjectCursor effect = at.object();
    Optional<EffectKind> kind = effect.required("kind", value -> value.enumOf(EffectKind.class));
    if (kind.isEmpty()) {
      return Optional.empty();
    }
    return switch (kind.get()) {
      case NOTE -> effect.make(Effect.Note::new);
      case CLEAN -> {
        Optional<CleaningKind> cleaning =
            effect.required("cleaning", value -> value.enumOf(CleaningKind.class));
        Optional<Scope> scope = scope(effect);
        yield effect.make(() -> new Effect.Clean(cleaning.orElseThrow(), scope.orElseThrow()));
      }
      case REPAIR -> {
        Optional<RepairClass> repair = repairClass(effect);
        Optional<Scope> scope = scope(effect);
        yield effect.make(() -> new Effect.Repair(repair.orElseThrow(), scope.orElseThrow()));
      }
      case REPLACE_PART -> {
        Optional<RepairClass> repair = repairClass(effect);
        yield effect.make(() -> new Effect.ReplacePart(repair.orElseThrow()));
      }
      case EVALUATE -> {
        Optional<Check> check = effect.required("check", value -> value.enumOf(Check.class));
        Optional<Scope> scope = scope(effect);
        yield effect.make(() -> new Effect.Evaluate(check.orElseThrow(), scope.orElseThrow()));
      }
      case RETIRE -> {
        Optional<Scope> scope = scope(effect);
        yield effect.make(() -> new Effect.Retire(scope.orElseThrow()));
      }
    };
  }

  private static Optional<Scope> scope(ObjectCursor effect) {
    return effect.required("scope", at -> at.enumOf(Scope.class));
  }

  private static Optional<RepairClass> repairClass(ObjectCursor effect) {
    return effect.required("class", at -> at.enumOf(RepairClass.class));
  }

  static JsonNode write(Effect effect) {
    Fields fields = new Fields().put("kind", effect.effectKind());
    if (effect instanceof Effect.Clean clean) {
      fields.put("cleaning", clean.kind()).put("scope", clean.scope());
    } else if (effect instanceof Effect.Repair repair) {
      fields.put("class", repair.repairClass()).put("scope", repair.scope());
    } else if (effect instanceof Effect.ReplacePart replace) {
      fields.put("class", replace.repairClass());
    } else if (effect instanceof Effect.Evaluate evaluate) {
      fields.put("check", evaluate.check()).put("scope", evaluate.scope());
    } else if (effect instanceof Effect.Retire retire) {
      fields.put("scope", retire.scope());
    }
    return fields.node();
  }

  /** Puts whom rows permit to do something, each with the credential needed. */
  static Fields doers(Fields fields, List<PermissionRow> rows) {
    return by(fields, rows.stream().map(PermissionRow::doer).toList());
  }

  /** Puts who may do something, each with the credential needed. */
  static Fields by(Fields fields, List<PermittedDoer> doers) {
    return fields.list(
        "by",
        doers,
        who -> new Fields().put("entity", who.entity()).known("needs", who.needs()).node());
  }

  static JsonNode write(GoesTo goesTo) {
    return new Fields()
        .put("destination", goesTo.destination())
        .known("scope", goesTo.scope())
        .node();
  }

  /** Reads where an element goes next. */
  static Optional<GoesTo> goesTo(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<Destination> destination =
        object.required("destination", value -> value.enumOf(Destination.class));
    Optional<CredentialScope> scope =
        object.optional("scope", value -> value.enumOf(CredentialScope.class));
    return object.make(() -> new GoesTo(destination.orElseThrow(), scope));
  }

  /** Reads who may do something. */
  static Optional<PermittedDoer> doer(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<EntityKind> entity =
        object.required("entity", value -> value.enumOf(EntityKind.class));
    Optional<CredentialScope> needs =
        object.optional("needs", value -> value.enumOf(CredentialScope.class));
    return object.make(() -> new PermittedDoer(entity.orElseThrow(), needs));
  }
}
