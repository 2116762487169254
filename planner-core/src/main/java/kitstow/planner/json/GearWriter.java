package kitstow.planner.json;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitstow.planner.model.Item;
import kitstow.planner.model.Pin;

/** Writes gear: its entries once, and the items that name them. */
final class GearWriter {
  private final Output out;
  private final Map<String, Item> entries = new LinkedHashMap<>();

  /** A writer for the gear of one scenario. */
  GearWriter(Output out, List<Item> items) {
    this.out = out;
    for (Item item : items) {
      entries.putIfAbsent(item.entryId(), item);
    }
  }

  /** One item for each entry; its title stands for the entry's. */
  Collection<Item> entries() {
    return entries.values();
  }

  void entry(Item item) {
    out.text("id", item.entryId());
    out.text("title", item.title());
    out.text("source", item.source());
    if (item.shapes().size() == 1) {
      out.size("sizeMm", item.shapes().get(0));
    } else {
      out.listAlways("shapesMm", item.shapes(), out::size);
    }
    out.mass(item.mass());
    item.content()
        .ifPresent(
            content ->
                out.object(
                    "content",
                    fields -> {
                      fields.word("kind", content.kind());
                      fields.milli("contentKg", content.contentG());
                    }));
    out.words("turns", item.turns());
    out.milli("bearsKg", item.bearsG());
    out.list(
        "keepClear",
        item.keepClear(),
        clear -> {
          out.word("face", clear.face());
          out.whole("clearMm", clear.clearMm());
          out.word("kind", clear.kind());
        });
    out.words("marks", item.marks());
    out.word("reach", item.reach());
    item.growth()
        .ifPresent(
            growth ->
                out.object(
                    "growth",
                    fields -> {
                      fields.milli("perPersonDayKg", growth.perPersonDayG());
                      fields.milli("upToKg", growth.upToG());
                      fields.milli("wetKg", growth.wetG());
                    }));
  }

  void choice(Item item) {
    if (!item.id().equals(item.entryId())) {
      out.text("id", item.id());
    }
    out.text("entry", item.entryId());
    if (item.quantity() != 1) {
      out.whole("quantity", item.quantity());
    }
    out.word("need", item.need());
    if (item.value() != ChoiceFields.usualValue(item.need())) {
      out.whole("value", item.value());
    }
    out.text("group", item.group());
    Optional<Item> entry = Optional.ofNullable(entries.get(item.entryId()));
    if (!entry.map(Item::title).equals(Optional.of(item.title()))) {
      out.text("title", item.title());
    }
    item.pin().ifPresent(this::pin);
  }

  private void pin(Pin pin) {
    out.object(
        "pin",
        fields -> {
          fields.text("space", pin.spaceId());
          pin.corner()
              .ifPresent(
                  corner -> fields.point("cornerMm", corner.xMm(), corner.yMm(), corner.zMm()));
          pin.turn().ifPresent(turn -> fields.word("turn", turn));
        });
  }
}
