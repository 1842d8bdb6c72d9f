package org.ensemblerules.pages;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.ensemblerules.GearRules;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.source.Checked;
import org.ensemblerules.tables.AssessmentJson;
import org.ensemblerules.tables.message.JsonFault;
import org.ensemblerules.verdict.Assessment;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.TaskDue;
import org.ensemblerules.verdict.Verdict;

/** Where the columns of a records system go, and what each of them buys. */
final class MappingPage {
  private static final Path CODE = Path.of("src", "test", "java", "org", "ensemblerules", "pages");

  private MappingPage() {}

  static Page page(RuleSet rules) throws IOException {
    return new Markdown("From a records system to a verdict")
        .paragraph(
            "Which column goes where, what it buys, and what is answered without it. What a column"
                + " does not say is left out; it is never filled in with what is usual. Names of"
                + " fields are those of the JSON, described by [the"
                + " schema](../rules-tables/src/main/resources/org/ensemblerules/tables/schema/assessment.schema.json);"
                + " the builders in Java have the same.")
        .heading("Columns")
        .table(List.of("Column", "Goes to", "What it buys", "Without it"), columns())
        .heading("Six records of one coat")
        .paragraph(
            "The same coat, as of "
                + MappingRecords.AS_OF
                + " by "
                + rules.identity().editions().values().stream().distinct().toList().get(0)
                + ". Each record has what those before it have, and something more. What falls due"
                + " is answered from the first record on.")
        .table(
            List.of("", "The record adds", "Service", "Headline", "Reasons", "Next due"),
            records(rules))
        .heading("A row in Java")
        .paragraph(
            "`CoatRow` is a row as a query returns it, `people` the register of people, read once:"
                + " `DoerRegisterJson.read(name, text)`.")
        .paragraph("```java\n" + lines("RowToVerdict") + "\n```")
        .heading("What need not be handed over")
        .paragraph(
            "`rules.stillMatters(assessment, day)` returns the part of a history that"
                + " can still change an answer on that day or later. It leaves out what was done"
                + " again since: an inspection that found nothing, a wash, a passed check that"
                + " answers no finding, as often as any rule counts together, and a use that was"
                + " looked after. Service, actions, handling and due days are the same by the part"
                + " as by the whole, on that day and on each later one, whatever happens after it"
                + " and is added to both; the build tries this by the thousand.")
        .points(
            List.of(
                "What speaks against the element stays: findings and what was done for them, failed"
                    + " checks, what it met, what was taken out, lent, lost or retired, what does"
                    + " not count.",
                "What was missed in years past is told from the whole only.",
                "It is no leave to delete anything: the file of an element is kept whole, and other"
                    + " rules may ask for other things."))
        .heading("Lines of the first format")
        .paragraph(
            "Inspections stood beside the history once, in a field of their own. Such a line is"
                + " refused, so that no inspection is passed over, and its answer says how to"
                + " convert it:")
        .paragraph("```json\n" + OldLines.OLD + "\n```")
        .paragraph("```\n" + refused(OldLines.OLD) + "\n```")
        .paragraph(
            "These lines convert one, with Jackson; everything else stands where it stood, and no"
                + " value changes. The verdict is that of a record written today.")
        .paragraph("```java\n" + lines("OldLines") + "\n```")
        .page("mapping.md");
  }

  private static String refused(String line) {
    return ((Checked.Refused<Assessment, JsonFault>) AssessmentJson.read("turnouts.jsonl:1", line))
        .faults().stream().map(JsonFault::toString).collect(Collectors.joining("\n"));
  }

  private static List<List<String>> columns() {
    return List.of(
        List.of(
            "Asset number, type",
            "`element.id`, `kind`, `use`",
            "every answer",
            "nothing is answered: the line is bad"),
        List.of(
            "Made, as on the label: month or year is enough",
            "`manufactured` of the label, of each layer that has one",
            "age: the first day out of service",
            "OUT, its age is not known"),
        List.of(
            "Maker, model, size, mark, label can be read",
            "the label: `manufacturer`, `model`, `size`, `certificationMark`, `legibility`",
            "that shell and liner belong together; repairs by its manufacturer count",
            "OUT, the label must be read"),
        List.of(
            "Issued, in service since",
            "`element.inService`, event `ISSUED`",
            "when its duties begin",
            "they count from its manufacture, or are due now"),
        List.of(
            "On the shelf since", "event `STOCKED`", "stock has no duties", "it counts as issued"),
        List.of(
            "People and companies, with trainings",
            "the register of doers, once; events name them, `by`",
            "whatever they did counts",
            "nothing that they did counts; each name is told"),
        List.of(
            "Day, kind and doer of a wash",
            "event `CLEANED`: `on`, `cleaning`, `by`",
            "the yearly washes, and what exposures call for",
            "washes are due"),
        List.of(
            "What was washed, and as the instructions say",
            "`layers` (`WHOLE`, or a list), `limitsKept`",
            "that the wash counts",
            "it counts for no layer; stated once for a whole column by whoever imports it"),
        List.of(
            "Day, kind and doer of an inspection",
            "event `INSPECTED`: `kind`, `occasion`, `on`, `by`",
            "when the next one is due",
            "OUT, not inspected"),
        List.of(
            "Its checklist is signed, tools were at hand, it was clean",
            "`signedOff` with the edition and the findings that it was clear but for; `atHand`,"
                + " `gearClean`",
            "service, marked as signed off",
            "only its date counts, to tell what is due: OUT"),
        List.of(
            "Items of its checklist",
            "`outcomes`, for each criterion; one that is not there counts as not looked at unless"
                + " it was signed off",
            "service, itemized, as a policy may ask for",
            "it rests on the sign-off"),
        List.of(
            "Broken off, and completed later",
            "two events `INSPECTED`; the later one names by `completes` the day of the one begun",
            "both together count, as of the day when it was begun",
            "neither counts: OUT"),
        List.of(
            "Findings, damage",
            "event `FOUND`, or `findings` for what was found now: `id`, `site`, `defect`, `extent`",
            "who may mend it and what follows, or that it must be retired",
            "an inspection that found something and does not say what: OUT"),
        List.of(
            "Repairs, with their order",
            "event `REPAIRED`: class, `by`, `answers` with the id of the finding",
            "closes the finding",
            "the finding stays open"),
        List.of(
            "Hand checks and tests",
            "events `CHECKED` and `TESTED`, with conditions, `answers`",
            "close findings, tell the yearly tests",
            "they are due"),
        List.of(
            "Runs, exposures",
            "events `USED`, `EXPOSED`",
            "what must be washed or looked at before the next use",
            "nobody can ask for it: this is a ground, and must not be left out"),
        List.of(
            "Out of service, lent, lost, at the provider",
            "events `TAKEN_OUT`, `BACK_IN_SERVICE`, `MOVED`",
            "that it is away, and that it is looked at when it is back",
            "the same: must not be left out"),
        List.of(
            "Retired, disposed of",
            "events `RETIRED`, `LAYER_RETIRED`, `DISPOSED`",
            "that it stays out",
            "the same: must not be left out"));
  }

  private static List<List<String>> records(RuleSet rules) {
    List<List<String>> lines = new ArrayList<>();
    for (MappingRecords.Sample sample : MappingRecords.all(rules)) {
      Verdict verdict =
          RowToVerdict.verdict(
              GearRules.of(rules), sample.people(), sample.row(), MappingRecords.AS_OF);
      lines.add(
          List.of(
              String.valueOf(lines.size() + 1),
              sample.adds(),
              verdict.service().name(),
              verdict.headline().name(),
              reasons(verdict),
              verdict.due().stream().findFirst().map(MappingPage::text).orElse("nothing")));
    }
    return lines;
  }

  private static String text(TaskDue due) {
    return due.task() + due.by().map(day -> " by " + day).orElse(", now");
  }

  /** How many reasons of each kind keep it out. */
  private static String reasons(Verdict verdict) {
    Map<String, Long> kinds =
        verdict.reasons().stream()
            .filter(reason -> reason.effect().keepsOut())
            .collect(
                Collectors.groupingBy(
                    (Reason reason) -> reason.kind().name(), TreeMap::new, Collectors.counting()));
    return kinds.isEmpty()
        ? "none"
        : kinds.entrySet().stream()
            .map(entry -> entry.getValue() + " " + entry.getKey())
            .collect(Collectors.joining(", "));
  }

  /** The lines that the page shows of a file of code. */
  static String lines(String name) throws IOException {
    return Files.readAllLines(CODE.resolve(name + ".java")).stream()
        .dropWhile(line -> !line.strip().equals("// page begins"))
        .skip(1)
        .takeWhile(line -> !line.strip().equals("// page ends"))
        .map(line -> line.startsWith("  ") ? line.substring(2) : line)
        .collect(Collectors.joining("\n"));
  }
}
