package org.ensemblerules.tables.codec;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import java.util.Optional;
import org.ensemblerules.fleet.Readiness;
import org.ensemblerules.fleet.ReadyCount;
import org.ensemblerules.fleet.ReadyGroup;
import org.ensemblerules.fleet.ReadyMember;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.issue.MemberSet;
import org.ensemblerules.issue.SetGap;
import org.ensemblerules.issue.SetPiece;
import org.ensemblerules.words.Sentences;
import org.ensemblerules.words.Words;

/** The JSON form of who is ready. */
public final class ReadyTree {
  private ReadyTree() {}

  /** Writes who is ready. */
  public static JsonNode write(Readiness ready, Words words) {
    Sentences sentences = new Sentences(words);
    return new Fields()
        .list("counts", ready.counts().entrySet(), ReadyTree::write)
        .list("sets", ready.members(), member -> write(member, sentences))
        .list("strangers", ready.strangers(), ReadyTree::write)
        .list("repeated", ready.repeated())
        .node();
  }

  private static JsonNode write(Map.Entry<ReadyGroup, ReadyCount> entry) {
    ReadyGroup group = entry.getKey();
    ReadyCount count = entry.getValue();
    return new Fields()
        .known("station", group.station())
        .put("kind", group.kind())
        .put("use", group.use())
        .put("in", count.in())
        .put("out", count.out())
        .put("because", FiguresTree.counts(count.because()))
        .put("noticed", count.noticed())
        .node();
  }

  private static JsonNode write(ReadyMember member, Sentences sentences) {
    MemberSet set = member.set();
    return new Fields()
        .put("member", set.member().name())
        .known("station", set.member().station())
        .put("use", set.use())
        .put("complete", set.isComplete())
        .put("usable", set.isUsable())
        .list("pieces", set.pieces().values(), ReadyTree::write)
        .list("gaps", set.gaps(), gap -> write(gap, sentences))
        .known("weakest", set.weakest().map(piece -> piece.element().id()))
        .list("spares", member.spares().entrySet(), ReadyTree::spare)
        .node();
  }

  private static JsonNode spare(Map.Entry<ElementKind, Optional<SetPiece>> spare) {
    return new Fields()
        .put("kind", spare.getKey())
        .known("piece", spare.getValue(), ReadyTree::write)
        .node();
  }

  private static JsonNode write(SetPiece piece) {
    Fields fields =
        new Fields()
            .put("element", ElementJson.named(piece.element()).node())
            .list("sizes", piece.sizes());
    return WhereaboutsTree.where(fields, piece.whereabouts())
        .put("headline", piece.headline())
        .known("goesTo", piece.goesTo(), EffectJson::write)
        .node();
  }

  private static JsonNode write(SetGap gap, Sentences sentences) {
    Fields fields = new Fields().put("gap", name(gap)).known("kind", gap.lacks());
    if (gap instanceof SetGap.NotJoined joined) {
      fields.put("place", joined.join().place()).put("shown", joined.shown());
    }
    return fields.put("text", sentences.of(gap)).node();
  }

  private static String name(SetGap gap) {
    if (gap instanceof SetGap.NoRow) {
      return "NO_ROW";
    } else if (gap instanceof SetGap.Missing) {
      return "MISSING";
    } else if (gap instanceof SetGap.Out) {
      return "OUT";
    } else if (gap instanceof SetGap.OtherUse) {
      return "OTHER_USE";
    } else if (gap instanceof SetGap.Size) {
      return "SIZE";
    }
    return gap instanceof SetGap.SameId ? "SAME_ID" : "NOT_JOINED";
  }
}
