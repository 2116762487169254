package kitstow.planner.generated;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import kitstow.planner.geometry.SizeMm;
import kitstow.planner.model.Content;
import kitstow.planner.model.Item;
import kitstow.planner.model.KnownMass;
import kitstow.planner.model.Scenario;

/**
 * A scenario with the gear of other people: every item is a little longer or shorter, wider or
 * narrower, higher or lower, heavier or lighter, and of some there is one more or one fewer. All
 * invented. What is pinned stays as it is.
 */
public final class OtherGear {
  private static final double LEAST_SIZE = 0.85;
  private static final double MOST_SIZE = 1.05;
  private static final double LEAST_MASS = 0.7;
  private static final double MOST_MASS = 1.2;

  /** Of so many items one has a unit more, and one that has several a unit fewer. */
  private static final int OTHER_COUNT = 5;

  private final Random random;

  private OtherGear(Random random) {
    this.random = random;
  }

  /** A scenario with other gear, by number. */
  public static Scenario of(Scenario scenario, int number) {
    OtherGear other = new OtherGear(new Random(2749L * number + 13L));
    List<Item> items = new ArrayList<>();
    for (Item item : scenario.items()) {
      items.add(item.pin().isPresent() ? item : other.of(item));
    }
    return scenario.withItems(items);
  }

  private Item of(Item item) {
    double mass = between(LEAST_MASS, MOST_MASS);
    double length = between(LEAST_SIZE, MOST_SIZE);
    double width = between(LEAST_SIZE, MOST_SIZE);
    double height = between(LEAST_SIZE, MOST_SIZE);
    List<SizeMm> shapes =
        item.shapes().stream()
            .map(
                size ->
                    new SizeMm(
                        scaled(size.lengthMm(), length),
                        scaled(size.widthMm(), width),
                        scaled(size.heightMm(), height)))
            .collect(Collectors.toList());
    return new Item(
        item.id(),
        item.title(),
        item.entryId(),
        item.source(),
        shapes,
        new KnownMass(
            Math.round(item.mass().massG() * mass),
            item.mass().source(),
            Math.round(item.mass().toleranceG() * mass)),
        item.content().map(of -> new Content(of.kind(), (long) Math.floor(of.contentG() * mass))),
        item.turns(),
        item.bearsG(),
        item.keepClear(),
        item.marks(),
        item.reach(),
        item.group(),
        item.need(),
        item.value(),
        count(item.quantity()),
        item.growth(),
        item.pin());
  }

  private int count(int units) {
    int draw = random.nextInt(OTHER_COUNT);
    if (draw == 0) {
      return units + 1;
    }
    return draw == 1 && units > 1 ? units - 1 : units;
  }

  private double between(double least, double most) {
    return least + (most - least) * random.nextDouble();
  }

  private static int scaled(int mm, double by) {
    return Math.max(1, (int) Math.round(mm * by));
  }
}
