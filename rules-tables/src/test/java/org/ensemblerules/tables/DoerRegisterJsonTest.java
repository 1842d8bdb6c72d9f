package org.ensemblerules.tables;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.effect.DoerRegister;
import org.ensemblerules.effect.EntityKind;
import org.ensemblerules.effect.Vouched;
import org.ensemblerules.history.WorkEvent;
import org.ensemblerules.source.Checked;
import org.ensemblerules.tables.message.UnknownDoer;
import org.ensemblerules.verdict.Assessment;
import org.junit.jupiter.api.Test;

class DoerRegisterJsonTest {
  private static final String ROOM =
      "{\"name\":\"Gear room\",\"kind\":\"ORGANIZATION\",\"credentials\":"
          + "[{\"scope\":\"CLEAN\",\"from\":\"2024-01-01\",\"through\":\"2027-12-31\"}]}";
  private static final String REGISTER = "{\"doers\":[" + ROOM + "]}";

  private static DoerRegister register() {
    return DoerRegisterJson.read("doers.json", REGISTER).orElseThrow();
  }

  private static String coat(String by) {
    return "{\"element\":{\"id\":\"1\",\"kind\":\"COAT\",\"use\":\"STRUCTURAL\"},\"history\":"
        + "[{\"event\":\"CLEANED\",\"on\":\"2024-06-01\",\"cleaning\":\"ADVANCED\",\"by\":"
        + by
        + "}]}";
  }

  private static Doer doer(Assessment assessment) {
    return assessment.history().events(WorkEvent.Cleaned.class).get(0).by();
  }

  @Test
  void readsWhatItWrites() {
    assertThat(DoerRegisterJson.write(register())).isEqualTo(REGISTER);
    assertThat(TableSchemas.objections("doers", REGISTER)).isEmpty();
    assertThat(DoerRegisterJson.write(DoerRegister.empty())).isEqualTo("{\"doers\":[]}");
    assertThat(DoerRegisterJson.read("doers.json", "{\"doers\":[]}").orElseThrow())
        .isEqualTo(DoerRegister.empty());
  }

  @Test
  void aNameStandsForTheDoerInFull() {
    Assessment named =
        AssessmentJson.naming(register(), UnknownDoer.REFUSED)
            .read("line", coat("\"Gear room\""))
            .orElseThrow();
    assertThat(named).isEqualTo(AssessmentJson.read("assessment", coat(ROOM)).orElseThrow());
    assertThat(AssessmentJson.write(named, register())).isEqualTo(coat("\"Gear room\""));
    assertThat(AssessmentJson.write(named, DoerRegister.empty())).isEqualTo(coat(ROOM));
    assertThat(TableSchemas.objections("assessment", coat("\"Gear room\""))).isEmpty();
  }

  /** Somebody whose credentials changed since is not written by the name alone. */
  @Test
  void whoIsOtherwiseInTheRegisterIsWrittenInFull() {
    String member = "{\"name\":\"Gear room\",\"kind\":\"MEMBER\"}";
    Assessment given = AssessmentJson.read("assessment", coat(member)).orElseThrow();
    assertThat(AssessmentJson.write(given, register())).isEqualTo(coat(member));
  }

  @Test
  void aNameThatTheRegisterDoesNotHave() {
    Assessment read =
        AssessmentJson.naming(register(), UnknownDoer.COUNTS_FOR_NOTHING)
            .read("line", coat("\"Laundry\""))
            .orElseThrow();
    assertThat(doer(read)).isEqualTo(Doer.unregistered("Laundry"));
    String written = AssessmentJson.write(read);
    assertThat(written).contains("\"registered\":false");
    assertThat(TableSchemas.objections("assessment", written)).isEmpty();
    assertThat(AssessmentJson.read("assessment", written).orElseThrow()).isEqualTo(read);
    assertThat(
            AssessmentJson.naming(register(), UnknownDoer.REFUSED)
                .read("line", coat("\"Laundry\"")))
        .hasToString(
            "Refused[faults=[line#/history/0/by: found \"Laundry\", allowed: a name that the"
                + " register of doers has]]");
  }

  @Test
  void aNameWithoutARegisterIsRefused() {
    assertThat(AssessmentJson.read("line", coat("\"Gear room\"")))
        .hasToString(
            "Refused[faults=[line#/history/0/by: found \"Gear room\", allowed: an object; a name"
                + " alone needs a register of doers]]");
  }

  @Test
  void oneNameForTwoIsRefused() {
    String text =
        "{\"doers\":["
            + ROOM
            + ","
            + ROOM
            + ",{\"name\":\"Gear room\",\"kind\":\"MEMBER\"},"
            + "{\"name\":\"X\",\"kind\":\"MEMBER\",\"registered\":false}]}";
    assertThat(((Checked.Refused<?, ?>) DoerRegisterJson.read("doers.json", text)).faults())
        .map(Object::toString)
        .containsExactly(
            "doers.json#/doers/2: found \"Gear room\" again with other particulars, allowed: each"
                + " name once, or with the same particulars",
            "doers.json#/doers/3: found registered false, allowed: a doer who is registered");
    assertThat(DoerRegister.of(List.of(new Doer("A", EntityKind.MEMBER, List.of()))).doers())
        .hasSize(1);
  }

  private static final String VOUCHED =
      "{\"name\":\"A. Sample\",\"kind\":\"MEMBER\",\"credentials\":[{\"scope\":\"INSPECT\","
          + "\"from\":\"2024-01-01\",\"through\":\"2027-12-31\",\"vouched\":"
          + "{\"by\":\"Chief C. Sample\",\"on\":\"2024-02-01\"}}]}";

  @Test
  void readsAndWritesWhoVouches() {
    String text = "{\"doers\":[" + VOUCHED + "]}";
    DoerRegister read = DoerRegisterJson.read("doers.json", text).orElseThrow();
    assertThat(read.doer("A. Sample").credentials().get(0).vouched())
        .contains(new Vouched("Chief C. Sample", LocalDate.of(2024, 2, 1)));
    assertThat(DoerRegisterJson.write(read)).isEqualTo(text);
    assertThat(TableSchemas.objections("doers", text)).isEmpty();
  }

  @Test
  void nobodyVouchesForAProvider() {
    String text = "{\"doers\":[" + VOUCHED.replace("MEMBER", "INDEPENDENT_SERVICE_PROVIDER") + "]}";
    assertThat(((Checked.Refused<?, ?>) DoerRegisterJson.read("doers.json", text)).faults())
        .map(Object::toString)
        .containsExactly(
            "doers.json#/doers/0/credentials: found INDEPENDENT_SERVICE_PROVIDER vouched for,"
                + " allowed: an organization's word for its own people, MEMBER or ORGANIZATION;"
                + " others are verified");
  }

  @Test
  void severalRegistersAreReadAsOne() {
    Map<String, String> texts = new LinkedHashMap<>();
    texts.put("one.json", REGISTER);
    texts.put("two.json", "{\"doers\":[\n" + VOUCHED + ",\n" + ROOM + "]}");
    assertThat(DoerRegisterJson.readAll(texts).orElseThrow().doers())
        .map(Doer::name)
        .containsExactly("Gear room", "A. Sample");
  }

  @Test
  void twoThatDisagreeAreToldWithTheLinesOfBoth() {
    Map<String, String> texts = new LinkedHashMap<>();
    texts.put("one.json", "{\n \"doers\": [\n" + ROOM + "\n]}");
    texts.put(
        "two.json",
        "{\"doers\":[\n" + VOUCHED + ",\n\n{\"name\":\"Gear room\",\"kind\":\"MEMBER\"}]}");
    texts.put("three.json", "{\"doers\":[{\"name\":\"B\"}]}");
    assertThat(((Checked.Refused<?, ?>) DoerRegisterJson.readAll(texts)).faults())
        .map(Object::toString)
        .containsExactly(
            "two.json:4#/doers/1: found \"Gear room\" with other particulars than in one.json:3,"
                + " allowed: the same particulars of a name wherever it stands",
            "three.json#/doers/0: found no field \"kind\", allowed: a field of this name, which"
                + " must be given");
  }
}
