package org.ensemblerules.assess;

import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Collections;
import java.util.Deque;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Finds the classes of all objects that an object keeps in memory, by its fields. */
final class Reachable {
  private final Set<Object> seen = Collections.newSetFromMap(new IdentityHashMap<>());
  private final Deque<Object> open = new ArrayDeque<>();

  private Reachable() {}

  static Set<Class<?>> from(Object root) {
    Reachable walk = new Reachable();
    walk.add(root);
    Set<Class<?>> classes = new HashSet<>();
    while (!walk.open.isEmpty()) {
      Object next = walk.open.pop();
      classes.add(next.getClass());
      walk.contents(next);
    }
    return classes;
  }

  private void add(Object object) {
    if (object != null && !(object instanceof Enum<?>) && seen.add(object)) {
      open.push(object);
    }
  }

  /** The fields of the platform's own classes are closed; what they hold is asked of them. */
  private void contents(Object object) {
    if (object instanceof Object[] array) {
      Arrays.asList(array).forEach(this::add);
    } else if (object instanceof Optional<?> optional) {
      optional.ifPresent(this::add);
    } else if (object.getClass().getClassLoader() != null) {
      fields(object);
    } else if (object instanceof Iterable<?> values) {
      values.forEach(this::add);
    } else if (object instanceof Map<?, ?> map) {
      map.forEach(
          (key, value) -> {
            add(key);
            add(value);
          });
    }
  }

  private void fields(Object object) {
    for (Class<?> type = object.getClass(); type != null; type = type.getSuperclass()) {
      if (type.getClassLoader() == null) {
        return;
      }
      for (Field field : type.getDeclaredFields()) {
        if (!Modifier.isStatic(field.getModifiers()) && !field.getType().isPrimitive()) {
          try {
            field.setAccessible(true);
            add(field.get(object));
          } catch (IllegalAccessException e) {
            throw new AssertionError(field.toString(), e);
          }
        }
      }
    }
  }
}
