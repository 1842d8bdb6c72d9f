package org.ensemblerules.catalog;

import com.google.common.collect.ImmutableList;
import java.util.List;
import java.util.Objects;
import org.ensemblerules.gear.Presence;
import org.ensemblerules.gear.Site;

/**
 * What can be entered of one part.
 *
 * @param site the part and its layer; not null
 * @param presence whether every such element has it; not null
 * @param defects the defects that rows know there; none is no proof that nothing else can be found,
 *     which is entered all the same and evaluated; not null
 * @since 0.1
 */
public record SiteForm(Site site, Presence presence, List<DefectForm> defects) {
  /** Copies the list. */
  public SiteForm {
    Objects.requireNonNull(site, "site");
    Objects.requireNonNull(presence, "presence");
    defects = ImmutableList.copyOf(defects);
  }
}
