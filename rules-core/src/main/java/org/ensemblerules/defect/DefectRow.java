package org.ensemblerules.defect;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.Sets;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.EffectKind;
import org.ensemblerules.effect.HandlingDuty;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.source.CitedRow;
import org.ensemblerules.source.ComparableRow;
import org.ensemblerules.source.ComparedFields;
import org.ensemblerules.source.Comparison;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.Provenance;

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
 * @param afterward the checks that must be passed after the effect is carried out; not null
 * @param open whether practice is disputed, so that the department may decide it by an overlay;
 *     only an evaluation can be open
 * @param admits the answers that an overlay may give to an open row; none where nobody but whom the
 *     row names may decide; not null
 * @param approval for a row of an overlay that answers an open row, which and on whose word; empty
 *     for all others
 * @param wording what the row says, in words, 1 to 500 characters; not null
 * @since 0.1
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
    Set<Check> afterward,
    boolean open,
    List<Admitted> admits,
    Optional<Approval> approval,
    String wording)
    implements ComparableRow<DefectRow> {
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
    afterward = Sets.immutableEnumSet(afterward);
    admits = ImmutableList.copyOf(admits);
    Objects.requireNonNull(approval, "approval");
    InvalidValueException.require(
        open || admits.isEmpty(), "DefectRow.admits", admits, "none, or a row that is open");
    InvalidValueException.requireText("DefectRow.wording", wording, 500);
    InvalidValueException.require(
        !open || effect.effectKind() == EffectKind.EVALUATE,
        "DefectRow.open",
        open,
        "false, or an effect EVALUATE");
  }

  /**
   * Makes a row that admits no answer and is none.
   *
   * @param provenance where the row comes from; not null
   * @param element the kind of element; not null
   * @param use its use; not null
   * @param site the part and its layer; not null
   * @param defect what is wrong; not null
   * @param band the extents that the row is for; not null
   * @param effect what it calls for; not null
   * @param handling how the element must be handled until settled; not null
   * @param afterward the checks that must be passed after the effect is carried out; not null
   * @param open whether practice is disputed
   * @param wording what the row says, in words; not null
   */
  public DefectRow(
      Provenance provenance,
      ElementKind element,
      Use use,
      Site site,
      DefectKind defect,
      Band band,
      Effect effect,
      Set<HandlingDuty> handling,
      Set<Check> afterward,
      boolean open,
      String wording) {
    this(
        provenance,
        element,
        use,
        site,
        defect,
        band,
        effect,
        handling,
        afterward,
        open,
        List.of(),
        Optional.empty(),
        wording);
  }

  /**
   * Tells whether a row of an overlay is an answer that this open row admits, so that it stands in
   * its place.
   *
   * @param answer the row of an overlay; not null
   * @return true if it names this row, is for the same extents and gives one of its answers
   */
  public boolean isAnsweredBy(DefectRow answer) {
    return open
        && answer.approval().filter(given -> given.decides().equals(key())).isPresent()
        && isOnTheSame(answer)
        && band.equals(answer.band())
        && answer.handling().containsAll(handling)
        && admits.stream().anyMatch(each -> each.isGivenBy(answer));
  }

  @Override
  public CitedRow cited() {
    return new CitedRow(
        provenance,
        Optional.of(
            wording
                + approval
                    .map(
                        given ->
                            " Decided by policy "
                                + provenance.origin()
                                + ", approved by "
                                + given.by()
                                + " on "
                                + given.on()
                                + ", in place of row "
                                + given.decides()
                                + ".")
                    .orElse("")),
        open);
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
        afterward.toString(),
        Boolean.toString(open),
        admits.stream().map(Admitted::text).sorted().collect(Collectors.joining("; ")),
        approval.map(given -> given.decides() + ", " + given.by() + ", " + given.on()).orElse(""),
        wording);
  }

  @Override
  public List<String> topic() {
    return List.of(element.name(), use.name(), site.toString(), defect.name());
  }

  @Override
  public List<String> narrowedTo() {
    return List.of(band.kind() + " " + band);
  }

  @Override
  public List<String> words() {
    return List.of(wording);
  }

  /**
   * Compares what rows for the same extent ask for; of other extents, nothing is said. Retiring is
   * stricter than evaluating, though a part replaced leaves an evaluation open: what settles both
   * is {@linkplain #standsInFor another question}.
   */
  @Override
  public ComparedFields compareFields(DefectRow other) {
    return ComparedFields.on(
            isOnTheSame(other)
                && band.equals(other.band)
                && open == other.open
                && admits.equals(other.admits)
                && approval.equals(other.approval))
        .with("effect", Comparison.of(asksForAllOf(other), other.asksForAllOf(this)));
  }

  /**
   * Tells whether another row is for the same defect at the same site of the same gear, whatever
   * the extent.
   *
   * @param other the other row; not null
   * @return true if element, use, site and defect are the same
   */
  public boolean isOnTheSame(DefectRow other) {
    return element == other.element
        && use == other.use
        && site.equals(other.site)
        && defect == other.defect;
  }

  /**
   * Tells whether this row asks for as much as another for an extent that both hold. What is
   * retired needs no check afterward.
   *
   * @param other a row for the same defect and site; not null
   * @return true if effect, handling and checks are no less
   */
  public boolean asksForAsMuchAs(DefectRow other) {
    return effect.compareStrictness(other.effect).isAtLeastAsStrict()
        && handling.containsAll(other.handling)
        && (effect instanceof Effect.Retire || afterward.containsAll(other.afterward));
  }

  /** A part retired may have a successor, of which the checks are still asked. */
  private boolean asksForAllOf(DefectRow other) {
    return asksForAsMuchAs(other)
        && (effect.isFinal() || afterward.containsAll(other.afterward))
        && !skipsTheTryOf(other);
  }

  /** What nobody has tried is tried first, whoever evaluates it then. */
  private boolean skipsTheTryOf(DefectRow other) {
    return other.isOfUntried()
        && effect instanceof Effect.Evaluate mine
        && other.effect instanceof Effect.Evaluate asked
        && mine.check() != asked.check();
  }

  /**
   * Tells whether this row answers for places that nobody has tried, among places told apart by
   * whether they held.
   *
   * @return true if its band has the grade of such a place
   */
  public boolean isOfUntried() {
    return band instanceof Band.Grades graded
        && graded.grades().stream().anyMatch(grade -> grade.oncePassed().isPresent());
  }

  /**
   * Tells whether this row makes another needless for an extent that both hold: whatever settles
   * this one leaves nothing open of the other. Replacing what is retired settles neither a cleaning
   * nor an evaluation.
   *
   * @param other a row for the same defect and site; not null
   * @return true if nothing of the other would be left
   */
  public boolean standsInFor(DefectRow other) {
    boolean apart =
        effect instanceof Effect.Retire
            && !effect.isFinal()
            && (other.effect instanceof Effect.Clean || other.effect instanceof Effect.Evaluate);
    return asksForAllOf(other) && !apart;
  }

  /**
   * Tells whether this row answers an extent that the other holds too by an effect that certainly
   * asks for less. A row whose practice is disputed may be answered by any effect but a note.
   *
   * @param other the other row; not null
   * @return true if the effect may not be laid beside that of the other
   */
  public boolean asksForLessThan(DefectRow other) {
    return isOnTheSame(other)
        && other.band.meets(band)
        && (!other.open || effect instanceof Effect.Note)
        && effect.against(other.effect).isLess();
  }
}
