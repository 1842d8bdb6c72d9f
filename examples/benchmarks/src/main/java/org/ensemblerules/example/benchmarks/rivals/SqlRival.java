package org.ensemblerules.example.benchmarks.rivals;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;

/** A table in a database in memory, with an index and a prepared statement. */
public final class SqlRival implements Rival<Whole> {
  private final Connection connection;
  private final PreparedStatement query;

  /**
   * Fills the table.
   *
   * @param table the lines; not null
   */
  public SqlRival(NeutralTable table) {
    try {
      connection = DriverManager.getConnection("jdbc:h2:mem:");
      try (Statement make = connection.createStatement()) {
        make.execute(
            "create table lines (place int not null, defect int not null, told int not null,"
                + " over_size bigint not null, up_to bigint not null, row_key varchar not null)");
        make.execute("create index cells on lines (place, defect, told, up_to)");
      }
      try (PreparedStatement add =
          connection.prepareStatement("insert into lines values (?, ?, ?, ?, ?, ?)")) {
        for (Line line : table.lines()) {
          add.setInt(1, line.placeNumber());
          add.setInt(2, line.defect().ordinal());
          add.setInt(3, line.by().ordinal());
          add.setLong(4, line.over());
          add.setLong(5, line.upTo());
          add.setString(6, line.row());
          add.addBatch();
        }
        add.executeBatch();
      }
      query =
          connection.prepareStatement(
              "select row_key from lines where place = ? and defect = ? and told = ?"
                  + " and up_to >= ? and over_size < ?");
    } catch (SQLException e) {
      throw new IllegalStateException(e);
    }
  }

  @Override
  public Whole input(Asked asked) {
    return Whole.of(asked);
  }

  @Override
  public String answer(Whole input) {
    try {
      query.setInt(1, input.place());
      query.setInt(2, input.defect());
      query.setInt(3, input.by());
      query.setLong(4, input.size());
      query.setLong(5, input.size());
      try (ResultSet found = query.executeQuery()) {
        return found.next() ? found.getString(1) : "";
      }
    } catch (SQLException e) {
      throw new IllegalStateException(e);
    }
  }

  @Override
  public void close() {
    try {
      connection.close();
    } catch (SQLException e) {
      throw new IllegalStateException(e);
    }
  }
}
