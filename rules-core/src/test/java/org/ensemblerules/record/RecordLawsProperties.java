package org.ensemblerules.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import net.jqwik.api.statistics.Statistics;
import org.ensemblerules.gates.FewestTries;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Label;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.Moment;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.Occasion;
import org.ensemblerules.testkit.ArbitrariesOfDates;
import org.ensemblerules.testkit.ArbitrariesOfEvents;
import org.ensemblerules.testkit.People;

/** What holds of every file. */
class RecordLawsProperties {
  @Provide
  Arbitrary<Event> events() {
    Arbitrary<Event> advanced =
        ArbitrariesOfDates.moments()
            .map(
                when ->
                    new LookEvent.Inspected(
                        Inspection.builder(
                                InspectionKind.ADVANCED,
                                Occasion.PERIODIC,
                                when.date(),
                                People.DEPARTMENT)
                            .build(),
                        when.orderInDay()));
    return Arbitraries.frequencyOf(
        Tuple.of(6, ArbitrariesOfEvents.on(ElementKind.HELMET)),
        Tuple.of(1, ArbitrariesOfEvents.undated(ElementKind.HELMET)),
        Tuple.of(1, advanced));
  }

  /** A part of a whole life, so that items are present, and whatever else may have happened. */
  @Provide
  Arbitrary<List<Event>> lives() {
    return Combinators.combine(
            Arbitraries.subsetOf(Filed.wholeLife()), events().list().ofMaxSize(3))
        .as(
            (whole, random) -> {
              List<Event> life = new ArrayList<>(whole);
              life.addAll(random);
              return life;
            });
  }

  /** Notes, each of the moment of an event of the life or of any other. */
  private static Arbitrary<RecordNote> notes(List<Event> life) {
    List<RecordNote> forms =
        List.of(
            new RecordNote(
                RecordItem.ISSUE_DATE_AND_CONDITION,
                Filed.on("2020"),
                RecordDetail.CONDITION,
                "good"),
            new RecordNote(
                RecordItem.ADVANCED_INSPECTIONS, Filed.on("2020"), RecordDetail.FINDINGS, "none"),
            new RecordNote(
                RecordItem.ADVANCED_CLEANINGS, Filed.on("2020"), RecordDetail.FINDINGS, "none"),
            new RecordNote(
                RecordItem.CLEANING_REASON_AND_DOER, Filed.on("2020"), RecordDetail.REASON, "due"),
            new RecordNote(
                RecordItem.REPAIRS, Filed.on("2020"), RecordDetail.DESCRIPTION, "new strap"));
    List<Moment> moments = new ArrayList<>(life.stream().map(Event::when).toList());
    moments.add(Filed.on("2021-02-03"));
    return Combinators.combine(Arbitraries.of(forms), Arbitraries.of(moments))
        .as((form, when) -> new RecordNote(form.item(), when, form.detail(), form.text()));
  }

  @Provide
  Arbitrary<Tuple.Tuple2<List<Event>, List<RecordNote>>> files() {
    return lives()
        .flatMap(life -> notes(life).list().ofMaxSize(4).map(notes -> Tuple.of(life, notes)));
  }

  private static RecordFileBuilder file(List<Event> life, List<RecordNote> notes) {
    RecordFileBuilder file = Filed.file(life);
    notes.forEach(file::note);
    return file;
  }

  @Property(edgeCases = EdgeCasesMode.NONE)
  void theOrderOfWhatIsGivenNeverMatters(
      @ForAll("files") Tuple.Tuple2<List<Event>, List<RecordNote>> file,
      @ForAll("files") Tuple.Tuple2<List<Event>, List<RecordNote>> more) {
    List<Event> events = new ArrayList<>(file.get1());
    events.addAll(more.get1());
    List<RecordNote> notes = new ArrayList<>(file.get2());
    notes.addAll(more.get2());
    List<Event> eventsBack = new ArrayList<>(more.get1());
    eventsBack.addAll(file.get1());
    List<RecordNote> notesBack = new ArrayList<>(more.get2());
    notesBack.addAll(file.get2());
    FileReport one = Filed.check(file(events, notes));
    FileReport other = Filed.check(file(eventsBack, notesBack));
    assertThat(other).isEqualTo(one);
    RecordFile given = file(events, notes).build();
    RecordFile givenBack = file(eventsBack, notesBack).build();
    assertThat(givenBack).isEqualTo(given);
    assertThat(List.copyOf(givenBack.notes())).isEqualTo(List.copyOf(given.notes()));
  }

  @Property(edgeCases = EdgeCasesMode.NONE)
  @FewestTries(100)
  void onlyAnEventOfTheVeryItemTurnsPresentToMissing(
      @ForAll("files") Tuple.Tuple2<List<Event>, List<RecordNote>> file,
      @ForAll("events") Event added) {
    FileReport before = Filed.check(file(file.get1(), file.get2()));
    List<Event> life = new ArrayList<>(file.get1());
    life.add(added);
    FileReport after = Filed.check(file(life, file.get2()));
    Statistics.label("turned to missing")
        .collect(
            Arrays.stream(RecordItem.values())
                .anyMatch(
                    item ->
                        before.answers().get(item) instanceof FileAnswer.Present
                            && after.answers().get(item) instanceof FileAnswer.Missing))
        .coverage(coverage -> coverage.check(true).percentage(share -> share > 1));
    for (RecordItem item : RecordItem.values()) {
      if (before.answers().get(item) instanceof FileAnswer.Present
          && after.answers().get(item) instanceof FileAnswer.Missing missing) {
        assertThat(item.records(added)).as("%s", item).isTrue();
        assertThat(missing.what()).allMatch(what -> what.endsWith(" on " + added.when()));
      }
    }
  }

  @Property(edgeCases = EdgeCasesMode.NONE)
  void aNoteOrWhatTheFileSaysOfTheLabelTurnsNothingToMissing(
      @ForAll("files") Tuple.Tuple2<List<Event>, List<RecordNote>> file) {
    RecordFileBuilder growing = Filed.file(file.get1());
    FileReport before = Filed.check(growing);
    for (RecordNote note : file.get2()) {
      FileReport after = Filed.check(growing.note(note));
      assertNothingTurnedToMissing(before, after);
      before = after;
    }
    FileReport labeled =
        Filed.check(
            growing.label(Label.builder().manufactured(MarkedDate.parse("2020-03-04")).build()));
    assertNothingTurnedToMissing(before, labeled);
  }

  private static void assertNothingTurnedToMissing(FileReport before, FileReport after) {
    for (RecordItem item : RecordItem.values()) {
      if (!(before.answers().get(item) instanceof FileAnswer.Missing)) {
        assertThat(after.answers().get(item))
            .as("%s", item)
            .isNotInstanceOf(FileAnswer.Missing.class);
      }
    }
  }

  @Property(edgeCases = EdgeCasesMode.NONE)
  void whatHasNoDateNeverCountsAsPresent(@ForAll("lives") List<Event> life) {
    FileReport report = Filed.check(Filed.file(life));
    for (RecordItem item : RecordItem.values()) {
      boolean undated =
          life.stream()
              .anyMatch(
                  event ->
                      item.records(event) && event.when().date() instanceof MarkedDate.Unknown);
      if (undated && item.details().contains(RecordDetail.DATE)) {
        assertThat(report.answers().get(item)).isNotInstanceOf(FileAnswer.Present.class);
        assertThat(report.complete()).isFalse();
      }
    }
  }
}
