package org.ensemblerules.tables;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.tables.set.OverlayFile;

/**
 * The overlays that come with this library: what laws of places ask beside the editions, as far as
 * their own text was seen. None applies unless it is laid over rules.
 *
 * @since 0.1
 */
public final class ShippedOverlays {
  private static final List<String> FILES =
      List.of("michigan.json", "new-jersey.json", "new-mexico.json", "washington.json");

  private ShippedOverlays() {}

  private static final class Holder {
    static final List<OverlayFile> ALL =
        FILES.stream()
            .map(name -> "overlays/" + name)
            .map(name -> OverlayJson.read(name, text(name)).orElseThrow())
            .toList();
  }

  /**
   * Lists the shipped overlays.
   *
   * @return the overlays in the order of their names; never null
   */
  public static List<OverlayFile> all() {
    return Holder.ALL;
  }

  /**
   * Finds a shipped overlay.
   *
   * @param id its name, as in {@code WASHINGTON}; not null
   * @return the overlay; empty if there is none of this name
   */
  public static Optional<OverlayFile> of(OriginId id) {
    return all().stream().filter(file -> file.overlay().id().equals(id)).findFirst();
  }

  private static String text(String name) {
    try (InputStream stream =
        Objects.requireNonNull(ShippedOverlays.class.getResourceAsStream(name), name)) {
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(name, e);
    }
  }
}
