package org.ensemblerules.tables.json;

import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The fields of an object in their order. An object has few, and they are asked for by names that
 * the parser has as the same objects, so that going through them is faster than hashing; only where
 * there are many are they found by their hash.
 */
final class JsonFields implements JsonValue {
  private static final int FEW = 4;
  private static final int MANY = 32;
  private static final int NONE = -1;

  private String[] names = new String[FEW];
  private JsonValue[] values = new JsonValue[FEW];
  private int size;
  private @Nullable Map<String, Integer> numbers;

  /**
   * Adds a field.
   *
   * @return false if there is one of this name, which stays
   */
  boolean add(String name, JsonValue value) {
    if (number(name) != NONE) {
      return false;
    }
    if (size == names.length) {
      names = Arrays.copyOf(names, 2 * size);
      values = Arrays.copyOf(values, 2 * size);
    }
    if (size == MANY) {
      numbers = numbered();
    }
    if (numbers != null) {
      numbers.put(name, size);
    }
    names[size] = name;
    values[size++] = value;
    return true;
  }

  private Map<String, Integer> numbered() {
    Map<String, Integer> all = new HashMap<>();
    for (int i = 0; i < size; i++) {
      all.put(names[i], i);
    }
    return all;
  }

  /** Returns the number of a field, from 0; -1 if there is none of this name. */
  int number(String name) {
    if (numbers != null) {
      return numbers.getOrDefault(name, NONE);
    }
    for (int i = 0; i < size; i++) {
      if (names[i].equals(name)) {
        return i;
      }
    }
    return NONE;
  }

  /** Returns the names in their order. */
  List<String> names() {
    return Collections.unmodifiableList(Arrays.asList(names).subList(0, size));
  }

  int size() {
    return size;
  }

  String name(int number) {
    return names[number];
  }

  JsonValue value(int number) {
    return values[number];
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof JsonFields fields
        && Arrays.equals(names, 0, size, fields.names, 0, fields.size)
        && Arrays.equals(values, 0, size, fields.values, 0, fields.size);
  }

  @Override
  public int hashCode() {
    int hash = size;
    for (int i = 0; i < size; i++) {
      hash = 31 * hash + values[i].hashCode();
    }
    return hash;
  }
}
