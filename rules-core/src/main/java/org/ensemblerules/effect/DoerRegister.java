package org.ensemblerules.effect;

import com.google.common.collect.ImmutableMap;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ensemblerules.source.InvalidValueException;

/**
 * Those who do things for an organization, each once, by name: its members, its gear room, its
 * providers, the manufacturers. A record then names them and need not repeat what they are trained
 * or verified for.
 *
 * @since 0.1
 */
public final class DoerRegister {
  private static final DoerRegister EMPTY = new DoerRegister(Map.of());

  private final ImmutableMap<String, Doer> byName;

  private DoerRegister(Map<String, Doer> byName) {
    this.byName = ImmutableMap.copyOf(byName);
  }

  /**
   * Makes a register.
   *
   * @param doers the doers; the same one may stand there again; not null
   * @return the register; never null
   * @throws InvalidValueException if one name stands for two who differ, or a doer is not
   *     registered
   */
  public static DoerRegister of(List<Doer> doers) {
    Map<String, Doer> byName = new LinkedHashMap<>();
    for (Doer doer : doers) {
      InvalidValueException.require(
          doer.registered(), "DoerRegister.doers", doer.name(), "a doer who is registered");
      Doer other = byName.putIfAbsent(doer.name(), doer);
      InvalidValueException.require(
          other == null || other.equals(doer),
          "DoerRegister.doers",
          doer.name(),
          "each name once, or again with the same particulars");
    }
    return new DoerRegister(byName);
  }

  /**
   * Returns the register that has nobody.
   *
   * @return the register; never null
   */
  public static DoerRegister empty() {
    return EMPTY;
  }

  /**
   * Returns the doer of a name.
   *
   * @param name the name as the record has it; not null
   * @return the doer; one who may do nothing if the register does not have the name; never null
   * @throws InvalidValueException if the name is blank or longer than 200 characters
   */
  public Doer doer(String name) {
    return find(name).orElseGet(() -> Doer.unregistered(name));
  }

  /**
   * Looks a name up.
   *
   * @param name the name; not null
   * @return the doer; empty if the register does not have the name
   */
  public Optional<Doer> find(String name) {
    return Optional.ofNullable(byName.get(name));
  }

  /**
   * Lists the names on which two registers disagree.
   *
   * @param other another register; not null
   * @return the names that both have with other particulars, in the order of this one; never null
   */
  public List<String> disagreements(DoerRegister other) {
    return byName.values().stream()
        .filter(doer -> other.find(doer.name()).filter(found -> !found.equals(doer)).isPresent())
        .map(Doer::name)
        .toList();
  }

  /**
   * Joins two registers.
   *
   * @param other another register; not null
   * @return those of both; never null
   * @throws InvalidValueException if they {@linkplain #disagreements disagree} on a name
   */
  public DoerRegister with(DoerRegister other) {
    List<Doer> all = new ArrayList<>(doers());
    all.addAll(other.doers());
    return of(all);
  }

  /**
   * Returns everybody.
   *
   * @return the doers in the order given; never null
   */
  public List<Doer> doers() {
    return byName.values().asList();
  }

  @Override
  public boolean equals(Object object) {
    return object instanceof DoerRegister other && byName.equals(other.byName);
  }

  @Override
  public int hashCode() {
    return byName.hashCode();
  }

  @Override
  public String toString() {
    return "DoerRegister" + byName.keySet();
  }
}
