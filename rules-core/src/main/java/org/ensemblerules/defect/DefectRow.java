package org.ensemblerules.defect;

import com.google.common.collect.Sets;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.EffectKind;
import org.ensemblerules.effect.HandlingDuty;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.source.CitedRow;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.Provenance;
import org.ensemblerules.source.Row;

/**
 * Says what a defect at a site calls for.
 *
 * @param provenance where the row comes from; not null
 * @param element the kind of element; not null
 * @param use its use; not null
 * @param site the part and its layer; not null
 * @param defect what is wrong; not null
 * @param band the extents that the row is for; not null
 * @param effect what it calls for; not null
 * @param handling how the element must be handled until settled; not null
 * @param afterwards the checks that must be passed after the effect is carried out; not null
 * @param open whether practice is disputed, so that an overlay may decide; only an evaluation can
 *     be open
 * @param wording what the row says, in words, 1 to 500 characters; not null
 */
public record DefectRow(
    Provenance provenance,
    ElementKind element,
    Use use,
    Site site,
    DefectKind defect,
    Band band,
    Effect effect,
    Set<HandlingDuty> handling,
    Set<Check> afterwards,
    boolean open,
    String wording)
    implements Row {
  /**
   * Checks the values.
   *
   * @throws InvalidValueException if the wording is blank or an effect other than an evaluation is
   *     open
   */
  public DefectRow {
    Objects.requireNonNull(provenance, "provenance");
    Objects.requireNonNull(element, "element");
    Objects.requireNonNull(use, "use");
    Objects.requireNonNull(site, "site");
    Objects.requireNonNull(defect, "defect");
    Objects.requireNonNull(band, "band");
    Objects.requireNonNull(effect, "effect");
    handling = Sets.immutableEnumSet(handling);
    afterwards = Sets.immutableEnumSet(afterwards);
    InvalidValueException.requireText("DefectRow.wording", wording, 500);
    InvalidValueException.require(
        !open || effect.effectKind() == EffectKind.EVALUATE,
        "DefectRow.open",
        open,
        "false, or an effect EVALUATE");
  }

  @Override
  public CitedRow cited() {
    return new CitedRow(provenance, Optional.of(wording), open);
  }

  @Override
  public List<String> canonical() {
    return List.of(
        element.name(),
        use.name(),
        site.toString(),
        defect.name(),
        band.kind() + " " + band,
        effect.text(),
        handling.toString(),
        afterwards.toString(),
        Boolean.toString(open),
        wording);
  }
}
