package kitstow.tui.runtime;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kitstow.planner.model.Catalogue;
import kitstow.planner.model.Item;
import kitstow.tui.app.Msg;
import kitstow.tui.app.Shelf;
import kitstow.tui.app.Source;
import kitstow.tui.cli.CatalogueSource;
import kitstow.tui.cli.CheckInput;
import kitstow.tui.cli.GearCsv;
import kitstow.tui.cli.InputFaults;
import kitstow.tui.edit.Design;
import kitstow.tui.view.Plain;

/** Finds and reads the files of scenarios and plans. */
final class ScenarioFiles {
  private static final String ENDING = ".json";
  private static final String PLAN_ENDING = ".plan.json";
  private static final String FOLDER = "scenarios";

  /** As much of a file as its head is looked for in. */
  private static final int HEAD_BYTES = 4_000;

  private final Optional<Path> catalogue;

  ScenarioFiles(Optional<Path> catalogue) {
    this.catalogue = catalogue;
  }

  /** Where to look when nothing is named: here, or in the folder of scenarios in it. */
  static Path folder(Path here) {
    Path inside = here.resolve(FOLDER);
    return Files.isDirectory(inside) && scenarios(here).isEmpty() ? inside : here;
  }

  /** The scenarios in a folder, by file name. */
  static List<Shelf.Entry> list(Path folder) {
    List<Shelf.Entry> entries = new ArrayList<>();
    for (Path file : scenarios(folder)) {
      String head = head(file);
      entries.add(
          new Shelf.Entry(
              file,
              text(head, "title").orElse(file.getFileName().toString()),
              text(head, "note").orElse(""),
              Files.exists(planOf(file))));
    }
    return entries;
  }

  private static List<Path> scenarios(Path folder) {
    List<Path> files = new ArrayList<>();
    if (Files.isDirectory(folder)) {
      try (DirectoryStream<Path> found = Files.newDirectoryStream(folder, "*" + ENDING)) {
        for (Path file : found) {
          if (isKind(head(file), "scenario")) {
            files.add(file);
          }
        }
      } catch (IOException | DirectoryIteratorException e) {
        return List.of();
      }
    }
    Collections.sort(files);
    return files;
  }

  /** Reads a scenario with the plan beside it, or a plan with its scenario. */
  Msg open(Path file) {
    Path scenario = file;
    Path plan = planOf(file);
    if (isKind(head(file), "plan")) {
      plan = file;
      Optional<Path> of = scenarioOf(file);
      if (of.isEmpty()) {
        return new Msg.NotOpened(
            List.of(
                file
                    + " is a plan, and the scenario it is for is not in its folder. Hint: put them"
                    + " in one folder"));
      }
      scenario = of.get();
    }
    return Files.exists(plan) ? both(scenario, plan) : alone(scenario, plan);
  }

  private Msg both(Path scenario, Path plan) {
    InputFaults faults = new InputFaults();
    Optional<CheckInput> input = CheckInput.read(scenario, plan, catalogue.orElse(null), faults);
    return input
        .map(
            read ->
                opened(
                    new Source(scenario, plan),
                    new Design(read.scenario(), read.plan()),
                    read.catalogue(),
                    faults))
        .orElseGet(() -> new Msg.NotOpened(faults.lines()));
  }

  private Msg alone(Path scenario, Path plan) {
    InputFaults faults = new InputFaults();
    return CheckInput.readAlone(scenario, catalogue.orElse(null), faults)
        .map(
            read ->
                opened(
                    new Source(scenario, plan),
                    Design.unpacked(read.scenario()),
                    read.catalogue(),
                    faults))
        .orElseGet(() -> new Msg.NotOpened(faults.lines()));
  }

  private Msg opened(Source source, Design design, Catalogue stock, InputFaults faults) {
    return new Msg.Opened(source, design, faults.lines(), Recovery.find(source, design), stock);
  }

  /** The catalogue that scenarios in a folder are made from. */
  Msg catalogue(Path folder) {
    InputFaults faults = new InputFaults();
    return CatalogueSource.read(catalogue.orElse(null), folder.resolve("x" + ENDING), faults)
        .<Msg>map(Msg.CatalogueRead::new)
        .orElseGet(() -> new Msg.NotOpened(faults.lines()));
  }

  /** Gear from a table; a name without a folder is looked for beside the scenario. */
  static Msg gear(String name, Source source, List<Item> known) {
    InputFaults faults = new InputFaults();
    Optional<List<Item>> items;
    try {
      items = GearCsv.read(source.scenarioFile().resolveSibling(name.strip()), known, faults);
    } catch (InvalidPathException e) {
      return new Msg.GearRefused(
          List.of("\"" + Plain.safe(name) + "\" cannot be the name of a file."));
    }
    return items.<Msg>map(Msg.GearRead::new).orElseGet(() -> new Msg.GearRefused(faults.lines()));
  }

  /** The file of the plan for a scenario: beside it, with the ending of plans. */
  static Path planOf(Path scenario) {
    String name = scenario.getFileName().toString();
    String stem = name.endsWith(ENDING) ? name.substring(0, name.length() - ENDING.length()) : name;
    return scenario.resolveSibling(stem + PLAN_ENDING);
  }

  private static Optional<Path> scenarioOf(Path plan) {
    Optional<String> id = text(head(plan), "scenario");
    Path folder = plan.toAbsolutePath().getParent();
    if (folder == null) {
      return Optional.empty();
    }
    List<Path> fitting =
        scenarios(folder).stream().filter(one -> text(head(one), "id").equals(id)).toList();
    // Several scenarios may have one id; the one whose name the plan has comes first.
    return fitting.stream()
        .filter(one -> planOf(one).getFileName().equals(plan.getFileName()))
        .findFirst()
        .or(() -> fitting.stream().findFirst());
  }

  private static String head(Path file) {
    try {
      byte[] bytes = Files.readAllBytes(file);
      return new String(bytes, 0, Math.min(bytes.length, HEAD_BYTES), StandardCharsets.UTF_8);
    } catch (IOException e) {
      return "";
    }
  }

  private static boolean isKind(String head, String kind) {
    return text(head, "kind").filter(kind::equals).isPresent();
  }

  /** The first text under a key; enough for a list, the reader has the last word. */
  private static Optional<String> text(String head, String key) {
    Matcher found =
        Pattern.compile("\"" + key + "\"\\s*:\\s*\"((?:[^\"\\\\]|\\\\.)*)\"").matcher(head);
    return found.find()
        ? Optional.of(Plain.safe(found.group(1).replace("\\\"", "\"").replace("\\\\", "\\")))
        : Optional.empty();
  }
}
