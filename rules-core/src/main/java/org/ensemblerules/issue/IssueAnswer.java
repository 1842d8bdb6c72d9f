package org.ensemblerules.issue;

import com.google.common.collect.ImmutableList;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.effect.GoesTo;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.NamedElement;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.verdict.Service;

/**
 * Whether an element may be issued to a member.
 *
 * @param element the element; not null
 * @param member the member; not null
 * @param against what speaks against it; empty if it may be issued; not null
 * @since 0.1
 */
public record IssueAnswer(NamedElement element, Member member, List<Objection> against) {
  /** Copies the list. */
  public IssueAnswer {
    Objects.requireNonNull(element, "element");
    Objects.requireNonNull(member, "member");
    against = ImmutableList.copyOf(against);
  }

  /**
   * Tells whether an element may be issued to a member: it may be in service, no notice touches it,
   * nobody else has it, the member needs a set for its use, and it fits.
   *
   * @param judged the element, judged for the day of issue; not null
   * @param member the member; not null
   * @param sizes which sizes fit whom; not null
   * @return yes, or everything that speaks against it; never null
   */
  public static IssueAnswer of(JudgedElement judged, Member member, SizeTable sizes) {
    Element element = judged.element();
    List<Objection> against = new ArrayList<>();
    if (judged.verdict().service() == Service.OUT) {
      against.add(
          new Objection(
              ObjectionKind.OUT_OF_SERVICE,
              "out of service: it goes to "
                  + judged.verdict().goesTo().map(GoesTo::text).orElseThrow()));
    }
    judged.notices().forEach(notice -> against.add(notice.objection()));
    judged
        .whereabouts()
        .holder()
        .filter(holder -> !holder.equals(member.name()))
        .ifPresent(
            holder -> against.add(new Objection(ObjectionKind.HAS_HOLDER, "issued to " + holder)));
    if (!member.uses().contains(element.use())) {
      against.add(
          new Objection(
              ObjectionKind.USE_NOT_NEEDED,
              "built for " + element.use() + ", for which " + member.name() + " needs no set"));
    }
    size(element.kind(), member, sizes, element).ifPresent(against::add);
    return new IssueAnswer(element.named(), member, against);
  }

  private static Optional<Objection> size(
      ElementKind kind, Member member, SizeTable sizes, Element element) {
    YesNoUnknown fits = sizes.fits(kind, member.size(kind), SizeTable.sizes(element));
    String needs =
        member
            .size(kind)
            .map(size -> member.name() + " needs " + size)
            .orElse("nobody measured " + member.name());
    return switch (fits) {
      case YES -> Optional.empty();
      case NO ->
          Optional.of(
              new Objection(
                  ObjectionKind.OTHER_SIZE,
                  "size " + String.join(", ", SizeTable.sizes(element)) + "; " + needs));
      case UNKNOWN ->
          Optional.of(
              new Objection(
                  ObjectionKind.SIZE_NOT_KNOWN,
                  (SizeTable.sizes(element).isEmpty() ? "its size is not known; " : "") + needs));
    };
  }

  /**
   * Tells whether it may be issued.
   *
   * @return true only if nothing speaks against it
   */
  public boolean mayBeIssued() {
    return against.isEmpty();
  }
}
