package org.ensemblerules.tables.json;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Fields are found by their names, and the first of a name stays, however many there are. */
class JsonFieldsTest {
  private static JsonFields fields(int count) {
    JsonFields fields = new JsonFields();
    for (int i = 0; i < count; i++) {
      assertThat(fields.add("field" + i, new JsonValue.Text("" + i))).isTrue();
    }
    return fields;
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 4, 5, 31, 32, 33, 64, 65, 1000})
  void eachIsFoundAndStaysTheFirst(int count) {
    JsonFields fields = fields(count);
    assertThat(fields.size()).isEqualTo(count);
    assertThat(fields.names()).hasSize(count);
    for (int i = 0; i < count; i++) {
      assertThat(fields.add("field" + i, JsonValue.Nothing.NOTHING)).isFalse();
      assertThat(fields.number("field" + i)).isEqualTo(i);
      assertThat(fields.name(i)).isEqualTo("field" + i);
      assertThat(fields.value(i)).isEqualTo(new JsonValue.Text("" + i));
    }
    assertThat(fields.number("other")).isEqualTo(-1);
    assertThat(fields.size()).isEqualTo(count);
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 3, 40})
  void theSameFieldsAreEqual(int count) {
    assertThat(fields(count)).isEqualTo(fields(count)).hasSameHashCodeAs(fields(count));
    assertThat(fields(count)).isNotEqualTo(fields(count + 1));
    JsonFields other = fields(count);
    other.add("last", JsonValue.Truth.TRUE);
    JsonFields another = fields(count);
    another.add("last", JsonValue.Truth.FALSE);
    assertThat(other).isNotEqualTo(another);
  }
}
