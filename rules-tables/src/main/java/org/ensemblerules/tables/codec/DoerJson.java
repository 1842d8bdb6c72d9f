package org.ensemblerules.tables.codec;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.ensemblerules.effect.Credential;
import org.ensemblerules.effect.CredentialScope;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.effect.EntityKind;
import org.ensemblerules.effect.Vouched;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.ObjectCursor;
import org.ensemblerules.tables.json.ValueReaders;

/** The JSON form of who did something. */
final class DoerJson {
  private DoerJson() {}

  /** A doer in full, or a name of the register that the text is read beside. */
  static Optional<Doer> read(JsonCursor at) {
    return at.isText() ? named(at) : at.shared(Doer.class, DoerJson::inFull);
  }

  private static Optional<Doer> named(JsonCursor at) {
    Optional<NamedDoers> names = at.beside(NamedDoers.class);
    if (names.isEmpty()) {
      return at.mismatch("an object; a name alone needs a register of doers");
    }
    return at.parsed(name -> names.get().register().doer(name))
        .flatMap(
            doer ->
                doer.registered() || !names.get().strict()
                    ? Optional.of(doer)
                    : at.mismatch("a name that the register of doers has"));
  }

  static Optional<Doer> inFull(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<String> name = object.required("name", value -> value.parsed(Doer::requireName));
    Optional<EntityKind> kind = object.required("kind", value -> value.enumOf(EntityKind.class));
    Optional<List<Credential>> credentials =
        object.optional("credentials", value -> value.list(DoerJson::credential));
    Optional<Boolean> registered = object.optional("registered", JsonCursor::bool);
    return object.make(
        () ->
            new Doer(
                name.orElseThrow(),
                kind.orElseThrow(),
                credentials.orElse(List.of()),
                registered.orElse(true)));
  }

  private static Optional<Credential> credential(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<CredentialScope> scope =
        object.required("scope", value -> value.enumOf(CredentialScope.class));
    Optional<LocalDate> from = object.required("from", ValueReaders::day);
    Optional<LocalDate> through = object.required("through", ValueReaders::day);
    Optional<Vouched> vouched = object.optional("vouched", DoerJson::vouched);
    return object.make(
        () ->
            new Credential(
                scope.orElseThrow(), from.orElseThrow(), through.orElseThrow(), vouched));
  }

  private static Optional<Vouched> vouched(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<String> by = object.required("by", JsonCursor::text);
    Optional<LocalDate> on = object.required("on", ValueReaders::day);
    return object.make(() -> new Vouched(by.orElseThrow(), on.orElseThrow()));
  }

  static JsonNode write(Doer doer) {
    Fields fields =
        new Fields()
            .put("name", doer.name())
            .put("kind", doer.kind())
            .some("credentials", doer.credentials(), DoerJson::write);
    if (!doer.registered()) {
      fields.put("registered", false);
    }
    return fields.node();
  }

  private static JsonNode write(Vouched word) {
    return new Fields().put("by", word.by()).put("on", word.on()).node();
  }

  private static JsonNode write(Credential credential) {
    return new Fields()
        .put("scope", credential.scope())
        .put("from", credential.from())
        .put("through", credential.through())
        .known("vouched", credential.vouched(), DoerJson::write)
        .node();
  }
}
