package org.ensemblerules.example.department;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.ensemblerules.DepartmentRules;
import org.ensemblerules.GearRules;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.example.department.demo.DemoDepartment;
import org.ensemblerules.example.department.demo.DemoPolicies;
import org.ensemblerules.example.department.demo.DemoRoster;
import org.ensemblerules.fleet.Budget;
import org.ensemblerules.fleet.Figures;
import org.ensemblerules.fleet.Forecast;
import org.ensemblerules.fleet.Leaving;
import org.ensemblerules.fleet.Need;
import org.ensemblerules.fleet.PlanYear;
import org.ensemblerules.fleet.Prices;
import org.ensemblerules.fleet.Readiness;
import org.ensemblerules.fleet.ReplacementPlan;
import org.ensemblerules.fleet.UnitCost;
import org.ensemblerules.issue.JudgedElement;
import org.ensemblerules.issue.KeptElement;
import org.ensemblerules.issue.SetCheck;
import org.ensemblerules.schedule.Discharge;
import org.ensemblerules.schedule.TaskRow;
import org.ensemblerules.tables.ShippedRules;
import org.ensemblerules.tables.message.CostEntry;
import org.ensemblerules.verdict.LayerAge;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.TaskDue;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * Totals of a department against those of SQL over what its verdicts say, by a database of another
 * project (H2).
 */
class TotalsAgainstSqlTest {
  private static final GearRules RULES = ShippedRules.standard();
  private static final LocalDate DAY = DemoDepartment.AS_OF;
  private static final DepartmentRules DEPARTMENT =
      RULES.department(List.of(DemoPolicies.notice()), DAY);
  private static final List<JudgedElement> GEAR = gear();
  private static Connection database;

  private static List<JudgedElement> gear() {
    return DemoDepartment.assessments(RULES).stream()
        .map(
            piece -> DEPARTMENT.judged(new KeptElement(piece, DemoRoster.of(piece.element().id()))))
        .toList();
  }

  @BeforeAll
  static void load() throws SQLException {
    database = DriverManager.getConnection("jdbc:h2:mem:");
    try (Statement statement = database.createStatement()) {
      statement.execute(
          "create table gear(n int, kind varchar, used varchar, station varchar, service varchar,"
              + " gone boolean, noticed boolean)");
      statement.execute("create table cause(n int, cause varchar)");
      statement.execute("create table reason(n int, kind varchar)");
      statement.execute("create table due(n int, task varchar, last_day date)");
      statement.execute("create table inspection(kind varchar, used varchar, task varchar)");
      statement.execute("create table label(n int, made date)");
      statement.execute(
          "create table leaving(n int, kind varchar, layer varchar, what varchar, first_out date)");
    }
    for (int n = 0; n < GEAR.size(); n++) {
      load(n, GEAR.get(n));
    }
  }

  @AfterAll
  static void close() throws SQLException {
    database.close();
  }

  private static void load(int n, JudgedElement judged) throws SQLException {
    insert(
        "gear",
        n,
        judged.element().kind().name(),
        judged.element().use().name(),
        judged.whereabouts().station().orElse(null),
        judged.service().name(),
        judged.isGone(),
        !judged.notices().isEmpty());
    for (Enum<?> cause : judged.verdict().outBecause()) {
      insert("cause", n, cause.name());
    }
    for (Reason reason : judged.verdict().reasons()) {
      if (!(reason.effect() instanceof Effect.Note)) {
        insert("reason", n, reason.kind().name());
      }
    }
    for (TaskDue due : judged.verdict().due()) {
      insert("due", n, due.task().value(), due.by().orElse(null));
    }
    for (TaskRow row : RULES.tables().tasks().rows(judged.element())) {
      if (row.doneBy() instanceof Discharge.Inspected
          || row.doneBy() instanceof Discharge.InspectedBy) {
        insert(
            "inspection",
            judged.element().kind().name(),
            judged.element().use().name(),
            row.task().value());
      }
    }
    for (LayerAge age : judged.verdict().ages()) {
      insert("label", n, age.manufactured().earliest().orElse(null));
    }
    for (Leaving leaving : DEPARTMENT.leaving(judged)) {
      insert(
          "leaving",
          n,
          leaving.group().kind().name(),
          leaving.group().layer().map(Enum::name).orElse(null),
          leaving.when().getClass().getSimpleName(),
          leaving.when() instanceof Leaving.DayOut.On on ? on.firstDayOut() : null);
    }
  }

  private static void insert(String table, Object... values) throws SQLException {
    String places = "?" + ", ?".repeat(values.length - 1);
    try (PreparedStatement row =
        database.prepareStatement("insert into " + table + " values(" + places + ")")) {
      for (int i = 0; i < values.length; i++) {
        row.setObject(i + 1, values[i]);
      }
      row.execute();
    }
  }

  private static long number(String query) throws SQLException {
    try (Statement statement = database.createStatement();
        ResultSet rows = statement.executeQuery(query)) {
      rows.next();
      return rows.getLong(1);
    }
  }

  /** The last column by the others. */
  private static Map<String, Long> numbers(String query) throws SQLException {
    Map<String, Long> numbers = new TreeMap<>();
    try (Statement statement = database.createStatement();
        ResultSet rows = statement.executeQuery(query)) {
      int columns = rows.getMetaData().getColumnCount();
      while (rows.next()) {
        List<String> key = new ArrayList<>();
        for (int i = 1; i < columns; i++) {
          key.add(String.valueOf(rows.getString(i)));
        }
        numbers.put(String.join(" ", key), rows.getLong(columns));
      }
    }
    return numbers;
  }

  private static Map<String, Long> named(Map<?, Long> counts) {
    Map<String, Long> named = new TreeMap<>();
    counts.forEach((key, count) -> named.put(key.toString(), count));
    return named;
  }

  @Test
  void figures() throws SQLException {
    Figures figures = GEAR.stream().collect(DEPARTMENT.figures());
    String late = "due d join gear g on g.n = d.n where not g.gone and ";
    String over = "(d.last_day is null or d.last_day < date '" + DAY + "')";
    String inspected =
        "(d.task in (select task from inspection i where i.kind = g.kind and i.used = g.used))";
    assertThat(figures.elements()).isEqualTo(number("select count(*) from gear where not gone"));
    assertThat(figures.gone())
        .isEqualTo(number("select count(*) from gear where gone"))
        .isPositive();
    assertThat(figures.in())
        .isEqualTo(number("select count(*) from gear where not gone and service = 'IN'"));
    assertThat(figures.noticed())
        .isEqualTo(number("select count(*) from gear where not gone and noticed"))
        .isPositive();
    assertThat(named(figures.byKind()))
        .isEqualTo(numbers("select kind, count(*) from gear where not gone group by kind"));
    assertThat(figures.inspectionsDue())
        .isEqualTo(number("select count(distinct d.n) from " + late + inspected))
        .isPositive();
    assertThat(figures.inspectionsDue() - figures.inspectedInTime())
        .isEqualTo(number("select count(distinct d.n) from " + late + inspected + " and " + over))
        .isPositive();
    assertThat(figures.overdue())
        .isEqualTo(number("select count(distinct d.n) from " + late + over));
    String days =
        "(select max(datediff(day, d.last_day, date '"
            + DAY
            + "')) as days from "
            + late
            + "d.last_day < date '"
            + DAY
            + "' group by d.n)";
    assertThat(figures.overdueDays()).isEqualTo(number("select sum(days) from " + days));
    assertThat(figures.longestOverdue()).isEqualTo(number("select max(days) from " + days));
    assertThat(figures.overdueSinceUnknown())
        .isEqualTo(number("select count(distinct d.n) from " + late + "d.last_day is null"));
    assertThat(named(figures.because()))
        .isEqualTo(
            numbers(
                "select cause, count(*) from cause c join gear g on g.n = c.n where not g.gone"
                    + " group by cause"));
    assertThat(named(figures.why()))
        .isEqualTo(
            numbers(
                "select r.kind, count(distinct r.n) from reason r join gear g on g.n = r.n"
                    + " where not g.gone group by r.kind"));
    // Whole years are those of birthdays; the database counts calendar years.
    String years =
        "datediff(year, made, date '"
            + DAY
            + "') - case when dateadd(year, datediff(year, made, date '"
            + DAY
            + "'), made) > date '"
            + DAY
            + "' then 1 else 0 end";
    String known =
        "(select g.n as n, max("
            + years
            + ") as years, count(*) as labels, count(made) as made from gear g left join label l"
            + " on l.n = g.n where not g.gone group by g.n)";
    assertThat(named(figures.ages()))
        .isEqualTo(
            numbers(
                "select years, count(*) from " + known + " where labels = made group by years"));
    assertThat(figures.ageUnknown())
        .isEqualTo(number("select count(*) from " + known + " where labels > made"));
  }

  @Test
  void readiness() throws SQLException {
    Readiness ready =
        GEAR.stream()
            .collect(
                Readiness.collector(
                    DemoRoster.members(),
                    new SetCheck(
                        DemoPolicies.sets(), DemoPolicies.sizes(), DemoRoster.fittings(), DAY),
                    DemoPolicies.sizes()));
    Map<String, Long> in = new TreeMap<>();
    Map<String, Long> out = new TreeMap<>();
    Map<String, Long> because = new TreeMap<>();
    ready
        .counts()
        .forEach(
            (group, count) -> {
              String key = group.station().orElse("null") + " " + group.kind() + " " + group.use();
              in.put(key, count.in());
              out.put(key, count.out());
              count.because().forEach((cause, some) -> because.put(key + " " + cause, some));
            });
    String groups = "select station, kind, used, ";
    assertThat(in)
        .isEqualTo(
            numbers(
                groups
                    + "sum(case service when 'IN' then 1 else 0 end) from gear where not gone"
                    + " group by station, kind, used"));
    assertThat(out)
        .isEqualTo(
            numbers(
                groups
                    + "sum(case service when 'OUT' then 1 else 0 end) from gear where not gone"
                    + " group by station, kind, used"));
    assertThat(because)
        .isEqualTo(
            numbers(
                groups
                    + "cause, count(*) from cause c join gear g on g.n = c.n where not g.gone"
                    + " group by station, kind, used, cause"));
  }

  @Test
  void forecast() throws SQLException {
    Forecast forecast = GEAR.stream().collect(Forecast.collector(DAY, 10));
    Map<String, Long> months = new TreeMap<>();
    forecast
        .months()
        .forEach(
            (month, groups) ->
                groups.forEach(
                    (group, count) ->
                        months.merge(
                            month
                                + " "
                                + group.kind()
                                + " "
                                + group.layer().map(Enum::name).orElse("null"),
                            count,
                            Long::sum)));
    assertThat(months)
        .isEqualTo(
            numbers(
                "select formatdatetime(first_out, 'yyyy-MM'), kind, layer, count(*) from leaving"
                    + " where first_out > date '"
                    + DAY
                    + "' and first_out < dateadd(year, 10, date '"
                    + DAY
                    + "') group by formatdatetime(first_out, 'yyyy-MM'), kind, layer"))
        .isNotEmpty();
    assertThat(sum(forecast.now()))
        .isEqualTo(number("select count(*) from leaving where first_out <= date '" + DAY + "'"));
    assertThat(sum(forecast.never()))
        .isEqualTo(number("select count(*) from leaving where what = 'Never'"));
    assertThat(sum(forecast.unknown()))
        .isEqualTo(number("select count(*) from leaving where what = 'Unknown'"));
  }

  private static long sum(Map<?, Long> counts) {
    return counts.values().stream().mapToLong(Long::longValue).sum();
  }

  @Test
  void plan() throws SQLException {
    List<UnitCost> costs =
        DemoPolicies.costs().stream()
            .filter(CostEntry.NewGear.class::isInstance)
            .map(entry -> ((CostEntry.NewGear) entry).cost())
            .toList();
    Prices prices = Prices.of(costs, new BigDecimal("3"));
    Budget budget = new Budget(new BigDecimal("30000"), 2027, 10);
    List<Need> needs =
        GEAR.stream().collect(ReplacementPlan.needs(prices, LocalDate.of(2036, 12, 31)));
    for (ReplacementPlan.Pace pace : ReplacementPlan.Pace.values()) {
      ReplacementPlan plan = ReplacementPlan.of(needs, prices, budget, pace);
      try (Statement statement = database.createStatement()) {
        statement.execute("drop table if exists need");
        statement.execute("drop table if exists bought");
        statement.execute("create table need(what varchar, needed date, today numeric(20, 2))");
        statement.execute("create table bought(what varchar, in_year int, price numeric(20, 2))");
      }
      for (Need need : needs) {
        insert("need", what(need), need.by().orElse(null), need.today().orElse(null));
      }
      for (PlanYear year : plan.years()) {
        for (PlanYear.Bought bought : year.bought()) {
          insert("bought", what(bought.need()), year.year(), bought.price());
        }
      }
      Map<String, Long> spent = new TreeMap<>();
      Map<String, Long> uncovered = new TreeMap<>();
      for (PlanYear year : plan.years()) {
        spent.put("" + year.year(), year.spent().movePointRight(2).longValueExact());
        uncovered.put("" + year.year(), (long) year.uncovered().size());
      }
      assertThat(spent)
          .isEqualTo(numbers("select in_year, sum(price) * 100 from bought group by in_year"));
      assertThat(plan.spent().movePointRight(2).longValueExact())
          .isEqualTo(number("select sum(price) * 100 from bought"));
      assertThat(uncovered)
          .isEqualTo(
              numbers(
                  "select y.x, (select count(*) from need n where n.today is not null"
                      + " and extract(year from n.needed) <= y.x and not exists (select 1 from"
                      + " bought b where b.what = n.what and b.in_year <= y.x))"
                      + " from system_range(2027, 2036) y"));
      // Prices grow from year to year and are rounded up to the cent.
      assertThat(
              number(
                  "select count(*) from bought b join need n on n.what = b.what where b.price <>"
                      + " ceil(n.today * power(cast(1.03 as decfloat(60)), b.in_year - 2027) * 100)"
                      + " / 100"))
          .isZero();
      assertThat(number("select count(*) - count(distinct what) from bought")).isZero();
      assertThat(plan.unpriced())
          .hasSize(
              (int) number("select count(*) from need where today is null and needed is not null"));
      assertThat(plan.undated())
          .hasSize((int) number("select count(*) from need where needed is null"));
      assertThat(
              number(
                  "select max(total) * 100 from (select sum(price) as total from bought group by"
                      + " in_year)"))
          .isLessThanOrEqualTo(3_000_000);
    }
  }

  private static String what(Need need) {
    return need.element() + " " + need.group().layer().map(Enum::name).orElse("");
  }
}
