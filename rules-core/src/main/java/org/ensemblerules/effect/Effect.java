package org.ensemblerules.effect;

import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.source.Comparison;

/**
 * What a rule calls for. Every effect but {@link Note} keeps the element out of service until it is
 * done and shown. Only {@link Retire} of the whole element is final for the element.
 *
 * @since 0.1
 */
public sealed interface Effect {

  /** Acceptable: recorded, and compared next time. */
  record Note() implements Effect {
    @Override
    public Scope scope() {
      return Scope.PART;
    }

    @Override
    public EffectKind effectKind() {
      return EffectKind.NOTE;
    }

    @Override
    public String text() {
      return "NOTE";
    }
  }

  /**
   * Cleaned first.
   *
   * @param kind how; not null
   * @param scope how much of the element; not null
   */
  record Clean(CleaningKind kind, Scope scope) implements Effect {
    /** Checks for nulls. */
    public Clean {
      Objects.requireNonNull(kind, "kind");
      Objects.requireNonNull(scope, "scope");
    }

    @Override
    public EffectKind effectKind() {
      return EffectKind.CLEAN;
    }

    @Override
    public String text() {
      return "CLEAN " + kind + " on " + scope;
    }
  }

  /**
   * Repaired.
   *
   * @param repairClass by whom; not null
   * @param scope how much of the element; not null
   */
  record Repair(RepairClass repairClass, Scope scope) implements Effect {
    /** Checks for nulls. */
    public Repair {
      Objects.requireNonNull(repairClass, "repairClass");
      Objects.requireNonNull(scope, "scope");
    }

    @Override
    public EffectKind effectKind() {
      return EffectKind.REPAIR;
    }

    @Override
    public String text() {
      return "REPAIR " + repairClass + " on " + scope;
    }
  }

  /**
   * The part is replaced.
   *
   * @param repairClass the class of repair that replacing it is; not null
   */
  record ReplacePart(RepairClass repairClass) implements Effect {
    /** Checks for nulls. */
    public ReplacePart {
      Objects.requireNonNull(repairClass, "repairClass");
    }

    @Override
    public Scope scope() {
      return Scope.PART;
    }

    @Override
    public EffectKind effectKind() {
      return EffectKind.REPLACE_PART;
    }

    @Override
    public String text() {
      return "REPLACE_PART " + repairClass;
    }
  }

  /**
   * Evaluated by a check or test.
   *
   * @param check which; not null
   * @param scope how much of the element; not null
   */
  record Evaluate(Check check, Scope scope) implements Effect {
    /** Checks for nulls. */
    public Evaluate {
      Objects.requireNonNull(check, "check");
      Objects.requireNonNull(scope, "scope");
    }

    @Override
    public EffectKind effectKind() {
      return EffectKind.EVALUATE;
    }

    @Override
    public String text() {
      return "EVALUATE by " + check + " on " + scope;
    }
  }

  /**
   * Leaves service for good.
   *
   * @param scope how much of the element; not null
   */
  record Retire(Scope scope) implements Effect {
    /** Checks for nulls. */
    public Retire {
      Objects.requireNonNull(scope, "scope");
    }

    @Override
    public EffectKind effectKind() {
      return EffectKind.RETIRE;
    }

    @Override
    public String text() {
      return "RETIRE " + scope;
    }
  }

  /**
   * Returns how much of the element the effect falls on.
   *
   * @return the scope; never null
   */
  Scope scope();

  /**
   * Returns the effect on one line, as verdicts and pages show it.
   *
   * @return the text; never null
   */
  String text();

  /**
   * Returns the plain name of the effect, without its details.
   *
   * @return the kind; never null
   */
  EffectKind effectKind();

  /**
   * Tells whether the effect keeps the element out of service.
   *
   * @return true for every effect but a note
   */
  default boolean keepsOut() {
    return !(this instanceof Note);
  }

  /**
   * Tells whether the effect is final for the element.
   *
   * @return true only for retirement of the whole element
   */
  default boolean isFinal() {
    return this instanceof Retire retire && retire.scope() == Scope.ELEMENT;
  }

  /**
   * Returns the task that carries the effect out.
   *
   * @return the task; empty for a note, and for an evaluation, whose doer the check table names
   */
  default Optional<Task> task() {
    if (this instanceof Clean clean) {
      return Optional.of(Task.of(clean.kind()));
    } else if (this instanceof Repair repair) {
      return Optional.of(Task.of(repair.repairClass()));
    } else if (this instanceof ReplacePart replace) {
      return Optional.of(Task.of(replace.repairClass()));
    } else if (this instanceof Retire) {
      return Optional.of(Task.RETIREMENT);
    }
    return Optional.empty();
  }

  /**
   * Sets the effect against another, in the one order of effects.
   *
   * @param other the other; not null
   * @return how much this one asks for, set against the other; never null
   */
  default Strictness against(Effect other) {
    return Strictness.of(this, other);
  }

  /**
   * Compares the effect with another.
   *
   * @param other the other; not null
   * @return how strict this one is, set against the other; never null
   */
  default Comparison compareStrictness(Effect other) {
    return switch (against(other)) {
      case SAME -> Comparison.SAME;
      case COVERING -> Comparison.STRICTER;
      case COVERED -> Comparison.MILDER;
      // More of another sort leaves open what the other asks for.
      case HIGHER, LOWER, APART -> Comparison.UNDECIDED;
    };
  }
}
