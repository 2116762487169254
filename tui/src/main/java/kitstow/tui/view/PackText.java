package kitstow.tui.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import kitstow.planner.advice.Entrance;
import kitstow.planner.advice.PackList;
import kitstow.planner.model.Facing;
import kitstow.planner.model.Item;
import kitstow.planner.model.Loading;
import kitstow.planner.model.PlacedItem;

/** The sheet to pack from, and the one to find things by. */
public final class PackText {
  private final PackList list;
  private final Loading loading;
  private final Subjects subjects;
  private final Keys keys;
  private final Page page;

  /** The pack list of a loading on a page. */
  public PackText(PackList list, Loading loading, Page page) {
    this.list = list;
    this.loading = loading;
    this.subjects = new Subjects(loading);
    this.keys = Keys.of(loading);
    this.page = page;
  }

  /** What goes in where, in which order. */
  public List<String> packList() {
    List<String> lines = new ArrayList<>();
    if (list.stops().isEmpty()) {
      lines.add("Nothing is aboard.");
      return lines;
    }
    lines.addAll(
        page.paragraph(
            "",
            "Door by door, from the kerb side on; in each space in the order in which things go in."
                + " Key: number in the drawings. Along and across are meant of the vehicle. Move:"
                + " how many things to move before it comes out."));
    for (PackList.Stop stop : list.stops()) {
      lines.add("");
      lines.addAll(page.paragraph("", heading(stop)));
      lines.addAll(stop(stop));
    }
    return lines;
  }

  private String heading(PackList.Stop stop) {
    long massG = 0L;
    int units = 0;
    for (PackList.Filled filled : stop.spaces()) {
      units += filled.steps().size();
      for (PackList.Step step : filled.steps()) {
        massG += step.item().item().mass().massG();
      }
    }
    return withSide(stop.entrance()).toUpperCase(Locale.ROOT)
        + ": "
        + units
        + (units == 1 ? " unit, " : " units, ")
        + Figures.loadKg(massG / 1000.0)
        + " kg";
  }

  private String withSide(Entrance entrance) {
    Facing kerb = loading.scenario().settings().kerbSide();
    String side =
        entrance
            .side()
            .filter(facing -> facing != Facing.REAR)
            .map(facing -> facing == kerb ? ", kerb side" : ", traffic side")
            .orElse("");
    return entrance(entrance) + side;
  }

  private String entrance(Entrance entrance) {
    return switch (entrance.kind()) {
      case DOOR -> entrance.door().map(door -> subjects.any(door.door().id())).orElse("door");
      case OUTSIDE -> "Outside, " + side(entrance.side().orElse(Facing.REAR));
      case ABOVE -> "Outside, from above";
      case CANOPY_ROOF -> "Canopy roof";
      case CAB_ROOF -> "Cab roof";
      case CAB -> "Cab";
    };
  }

  private static String side(Facing facing) {
    return switch (facing) {
      case LEFT -> "left";
      case RIGHT -> "right";
      case REAR -> "rear";
    };
  }

  private List<String> stop(PackList.Stop stop) {
    Table table =
        new Table()
            .words("")
            .figures("Key")
            .rest("Put in")
            .figures("kg")
            .rest("How it stands")
            .rest("On")
            .figures("Move");
    boolean squeezed = false;
    for (PackList.Filled filled : stop.spaces()) {
      table.group(subjects.space(filled.space()));
      for (PackList.Step step : filled.steps()) {
        squeezed |= step.squeezed();
        table.row(cells(step));
      }
    }
    List<String> lines = new ArrayList<>(table.lines(page));
    if (squeezed) {
      lines.addAll(page.paragraph("* ", "gets to its place only past others; tilt or lift it in."));
    }
    return lines;
  }

  private String[] cells(PackList.Step step) {
    PlacedItem item = step.item();
    return new String[] {
      "[ ]",
      keys.items().getOrDefault(item.key(), ""),
      subjects.item(item.key()) + (step.squeezed() ? " *" : ""),
      Figures.loadKg(item.item().mass().massG() / 1000.0),
      Standing.inWords(item),
      on(step),
      String.valueOf(step.toMove().size())
    };
  }

  private String on(PackList.Step step) {
    if (step.onBars()) {
      return "bars";
    }
    List<String> under = new ArrayList<>();
    if (step.onFloor()) {
      under.add("floor");
    }
    step.standsOn().forEach(item -> under.add(subjects.item(item.key())));
    return String.join(", ", under);
  }

  private record Where(String what, String key, String door, String place) {}

  /** Every unit of gear from A to Z: through which door, in which space, where in it. */
  public List<String> index() {
    List<Where> all = new ArrayList<>();
    for (PackList.Stop stop : list.stops()) {
      for (PackList.Filled filled : stop.spaces()) {
        for (PackList.Step step : filled.steps()) {
          String key = step.item().key();
          String place = PlaceInSpace.inWords(step.item(), !step.standsOn().isEmpty());
          all.add(
              new Where(
                  subjects.item(key),
                  keys.items().getOrDefault(key, ""),
                  entrance(stop.entrance()),
                  subjects.space(filled.space()) + (place.isEmpty() ? "" : "; " + place)));
        }
      }
    }
    for (Item item : loading.scenario().items()) {
      for (int unit = 1; unit <= item.quantity(); unit++) {
        String key = item.keyOf(unit);
        if (loading.home().contains(key)) {
          all.add(new Where(subjects.item(key), "", "stays home", ""));
        }
      }
    }
    all.sort(
        Comparator.comparing(Where::what, String.CASE_INSENSITIVE_ORDER)
            .thenComparing(Where::what));
    Table table =
        new Table().rest("What").figures("Key").rest("Door").rest("Space and place in it");
    for (Where one : all) {
      table.row(one.what(), one.key(), one.door(), one.place());
    }
    return table.isEmpty() ? List.of("There is no gear.") : table.lines(page);
  }
}
