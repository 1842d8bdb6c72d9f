package org.ensemblerules.fleet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.ensemblerules.gear.ElementId;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.NamedElement;
import org.ensemblerules.gear.Use;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.issue.SetPiece;
import org.ensemblerules.issue.SizeFit;
import org.ensemblerules.issue.SizeTable;
import org.ensemblerules.issue.Whereabouts;
import org.ensemblerules.source.Basis;
import org.ensemblerules.verdict.Headline;

/** Spares handed out, checked against every way of handing them out. */
class SpareSearchProperties {
  private static final List<String> SIZES = List.of("S", "M", "L", "XL");

  @Provide
  Arbitrary<List<String>> sizes() {
    return Arbitraries.of(SIZES).list().ofMaxSize(6);
  }

  @Provide
  Arbitrary<Map<String, Set<String>>> fits() {
    return Arbitraries.maps(Arbitraries.of(SIZES), Arbitraries.of(SIZES).set().ofMaxSize(2));
  }

  private static List<SetPiece> spares(List<String> sizes) {
    List<SetPiece> spares = new ArrayList<>();
    for (String size : sizes) {
      spares.add(
          new SetPiece(
              new NamedElement(
                  new ElementId("S-" + spares.size()), ElementKind.COAT, Use.STRUCTURAL),
              Set.of(size),
              Whereabouts.spare("1", "Shelf"),
              Headline.SERVICEABLE,
              Optional.empty()));
    }
    return spares;
  }

  @Property
  void asManyAsPossibleGetASpareThatFits(
      @ForAll("sizes") List<String> have,
      @ForAll("sizes") List<String> need,
      @ForAll("fits") Map<String, Set<String>> fits) {
    SizeTable table =
        SizeTable.of(
            fits.entrySet().stream()
                .map(
                    row ->
                        new SizeFit(
                            ElementKind.COAT,
                            row.getKey(),
                            row.getValue(),
                            new Basis.CommonPractice()))
                .toList());
    List<Optional<SetPiece>> handed =
        new SpareSearch(ElementKind.COAT, table, spares(have))
            .handOut(need.stream().map(Optional::of).toList());
    List<SetPiece> given = handed.stream().flatMap(Optional::stream).toList();
    assertThat(given).doesNotHaveDuplicates();
    for (int i = 0; i < need.size(); i++) {
      Optional<String> needed = Optional.of(need.get(i));
      assertThat(handed.get(i))
          .matches(
              spare ->
                  spare.isEmpty()
                      || table.fits(ElementKind.COAT, needed, spare.get().sizes())
                          == YesNoUnknown.YES);
    }
    assertThat(given).hasSize(most(table, need, 0, have, new boolean[have.size()]));
  }

  /** Every way: each in turn gets none, or any spare that fits and is left. */
  private static int most(
      SizeTable table, List<String> need, int turn, List<String> have, boolean[] gone) {
    if (turn == need.size()) {
      return 0;
    }
    int best = most(table, need, turn + 1, have, gone);
    for (int i = 0; i < have.size(); i++) {
      if (!gone[i]
          && table.fits(ElementKind.COAT, Optional.of(need.get(turn)), Set.of(have.get(i)))
              == YesNoUnknown.YES) {
        gone[i] = true;
        best = Math.max(best, 1 + most(table, need, turn + 1, have, gone));
        gone[i] = false;
      }
    }
    return best;
  }
}
