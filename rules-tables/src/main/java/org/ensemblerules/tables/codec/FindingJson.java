package org.ensemblerules.tables.codec;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Optional;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Site;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.ObjectCursor;
import org.ensemblerules.tables.json.ValueReaders;

/** The JSON form of a finding. */
final class FindingJson {
  private FindingJson() {}

  static Optional<Finding> read(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<FindingId> id = object.required("id", FindingJson::id);
    Optional<Site> site = object.required("site", ValueReaders::site);
    Optional<String> place = object.optional("place", value -> value.parsed(Finding::requirePlace));
    Optional<DefectKind> defect =
        object.required("defect", value -> value.enumOf(DefectKind.class));
    Optional<Extent> extent = object.optional("extent", ExtentJson::read);
    Optional<MarkedDate> seen = object.required("seen", ValueReaders::markedDate);
    return object.make(
        () ->
            new Finding(
                id.orElseThrow(),
                site.orElseThrow(),
                place.orElse(""),
                defect.orElseThrow(),
                extent.orElseGet(Extent.NotMeasured::new),
                seen.orElseThrow()));
  }

  static Optional<FindingId> id(JsonCursor at) {
    return at.parsed(FindingId::new);
  }

  /** The name of something that an owner names, as decisions are. */
  static Optional<FindingId> ownersId(JsonCursor at) {
    return at.parsed(text -> new FindingId(text).requireOwners());
  }

  static JsonNode write(Finding finding) {
    Fields fields = new Fields().put("id", finding.id()).put("site", finding.site());
    if (!finding.place().isEmpty()) {
      fields.put("place", finding.place());
    }
    return fields
        .put("defect", finding.defect())
        .known("extent", ExtentJson.write(finding.extent()), extent -> extent)
        .put("seen", finding.seen())
        .node();
  }
}
