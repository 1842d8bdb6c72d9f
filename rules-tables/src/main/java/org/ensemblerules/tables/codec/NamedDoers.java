package org.ensemblerules.tables.codec;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.Objects;
import org.ensemblerules.effect.DoerRegister;
import org.ensemblerules.tables.message.UnknownDoer;

/**
 * The register whose names a text may use in place of doers in full.
 *
 * @param strict whether a name that the register does not have is a fault; else it stands for
 *     somebody who may do nothing
 */
public record NamedDoers(DoerRegister register, boolean strict) {
  private static final String BY = "by";

  /** Those of a register, strict where others are refused. */
  public static NamedDoers of(DoerRegister register, UnknownDoer unknown) {
    return new NamedDoers(
        Objects.requireNonNull(register, "register"),
        Objects.requireNonNull(unknown, "unknown") == UnknownDoer.REFUSED);
  }

  /** Puts the name in place of each doer in full whom the register has just so. */
  JsonNode shorten(JsonNode node) {
    if (node instanceof ArrayNode list) {
      list.forEach(this::shorten);
    } else if (node instanceof ObjectNode object) {
      object.forEach(this::shorten);
      JsonNode by = object.path(BY);
      register
          .find(by.path("name").asText())
          .filter(doer -> DoerJson.write(doer).equals(by))
          .ifPresent(doer -> object.set(BY, TextNode.valueOf(doer.name())));
    }
    return node;
  }
}
