package org.ensemblerules.tables.json;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** The names of each enumeration, in its order, collected once. */
final class EnumNames {
  private static final ClassValue<Map<String, Enum<?>>> NAMES =
      new ClassValue<>() {
        @Override
        protected Map<String, Enum<?>> computeValue(Class<?> type) {
          Map<String, Enum<?>> names = new LinkedHashMap<>();
          for (Object constant : type.getEnumConstants()) {
            Enum<?> named = (Enum<?>) constant;
            names.put(named.name(), named);
          }
          return Collections.unmodifiableMap(names);
        }
      };

  private EnumNames() {}

  @SuppressWarnings("unchecked")
  static <E extends Enum<E>> Map<String, E> of(Class<E> type) {
    return (Map<String, E>) (Map<String, ?>) NAMES.get(type);
  }
}
