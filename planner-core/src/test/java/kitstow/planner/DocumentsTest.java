package kitstow.planner;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import kitstow.planner.model.RuleId;
import kitstow.planner.report.CheckReport;
import kitstow.planner.rules.RuleBook;
import kitstow.planner.rules.RuleCard;
import kitstow.planner.rules.SourceStatus;
import kitstow.planner.scenarios.ShippedFiles;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The documents agree with the code, with the files and with each other. */
class DocumentsTest {
  private static final Path ROOT = Path.of("..");
  private static final String README = "README.md";
  private static final String DEVELOPERS = "DEVELOPERS.md";
  private static final String EXAMPLES = "planner-core/WORKED-EXAMPLES.md";
  private static final String CHANGES = "planner-core/CHANGELOG.md";

  private static final Pattern BRACKETS = Pattern.compile("\\[[^\\[\\]]*\\bS\\d+\\b[^\\[\\]]*]");
  private static final Pattern SOURCE_KEY = Pattern.compile("\\bS\\d+\\b");
  private static final Pattern TRADE_KEY = Pattern.compile("\\bT\\d+\\b");
  private static final Pattern LINK = Pattern.compile("]\\(([^)#]+)(#[^)]*)?\\)");
  private static final Pattern SCENARIO_FILE =
      Pattern.compile("scenarios/[A-Za-z0-9./-]*\\.(json|txt)");

  @Test
  void everySourceKeyInTheCodeResolves() {
    Set<String> used = new TreeSet<>();
    for (Path file : filesUnder("planner-core/src", ".java")) {
      used.addAll(sourceKeys(read(file)));
    }
    for (Path file : filesUnder("tui/src", ".java")) {
      used.addAll(sourceKeys(read(file)));
    }
    assertThat(used).hasSizeGreaterThan(15);
    assertThat(firstCells(text(EXAMPLES))).containsAll(used);
  }

  @Test
  void everySourceKeyInTheDocumentsResolves() {
    for (String document : List.of(README, DEVELOPERS, EXAMPLES, CHANGES)) {
      assertThat(firstCells(text(EXAMPLES))).as(document).containsAll(sourceKeys(text(document)));
    }
  }

  @Test
  void everyTradeKeyOfTheCatalogueResolves() {
    Set<String> used = new TreeSet<>();
    for (Path file : filesUnder("scenarios", ".json")) {
      used.addAll(found(TRADE_KEY, read(file)));
    }
    for (Path file : filesUnder("planner-core/src/test/java/kitstow/planner/catalogue", ".java")) {
      used.addAll(found(TRADE_KEY, read(file)));
    }
    assertThat(used).hasSizeGreaterThan(15);
    assertThat(firstCells(text(EXAMPLES))).containsAll(used);
  }

  @Test
  void everyFailureOfTheTradeHasAScenarioOrTestAndWhatSeesIt() {
    String text = text(DEVELOPERS);
    int begin = text.indexOf("## Failures of the trade");
    String section = text.substring(begin, text.indexOf("\n## ", begin + 1));
    Set<String> tests = new TreeSet<>();
    for (Path file : filesUnder("planner-core/src/test/java", ".java")) {
      tests.add(file.getFileName().toString().replace(".java", ""));
    }
    int rows = 0;
    for (String line : section.lines().filter(one -> one.startsWith("| ")).skip(1).toList()) {
      String[] cells = line.split("\\|", -1);
      if (cells[1].trim().startsWith("---")) {
        continue;
      }
      rows++;
      for (String name : found(Pattern.compile("`[A-Za-z0-9-]+`"), cells[2])) {
        String plain = name.replace("`", "");
        boolean there =
            tests.contains(plain)
                || Files.exists(ROOT.resolve("scenarios").resolve(plain + ".plan.json"));
        assertThat(there).as(plain).isTrue();
        if (!tests.contains(plain)) {
          assertThat(rulesOf(cells[3])).as(line).allMatch(rule -> judges(plain, rule));
        }
      }
    }
    assertThat(rows).isGreaterThan(15);
  }

  private static Set<RuleId> rulesOf(String cell) {
    Set<RuleId> rules = EnumSet.noneOf(RuleId.class);
    for (String name : found(Pattern.compile("[A-Z]+(_[A-Z]+)+"), cell)) {
      rules.add(RuleId.valueOf(name));
    }
    return rules;
  }

  /** Whether a shipped plan has a reading or a finding of a rule, or a figure of it in a state. */
  private static boolean judges(String scenario, RuleId rule) {
    CheckReport report = ShippedFiles.checked(scenario);
    return report.tightest().stream().anyMatch(reading -> reading.rule() == rule)
        || report.findings().stream().anyMatch(finding -> finding.rule() == rule)
        || report.states().stream()
            .flatMap(state -> state.checks().stream())
            .anyMatch(check -> check.rule() == rule);
  }

  @Test
  void theTableOfRulesSaysWhatTheRulesSay() {
    List<String> rows = new ArrayList<>();
    Set<String> ids = new TreeSet<>();
    for (RuleCard card : RuleBook.cards()) {
      rows.add(row(card));
      ids.add(card.id().name());
    }
    assertThat(ids).hasSameSizeAs(RuleId.values());
    List<String> table =
        text(DEVELOPERS).lines().filter(line -> line.matches("\\| `[A-Z_]+` \\|.*")).toList();
    assertThat(table).containsExactlyElementsOf(rows);
  }

  private static String row(RuleCard card) {
    return String.join(
            " | ",
            "| `" + card.id() + "`",
            words(card.id().kind()),
            card.title(),
            card.source(),
            status(card.status()),
            card.setting().isEmpty() ? "none" : card.setting(),
            card.overridable() ? "yes" : "no")
        + " |";
  }

  private static String status(SourceStatus status) {
    return switch (status) {
      case READ_SECOND_HAND -> "read second-hand";
      case MEMORY -> "from memory";
      case READ, COMMON_PRACTICE, BY_DEFINITION -> words(status);
    };
  }

  private static String words(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  @Test
  void everyPackageIsInTheMap() {
    Set<String> packages = new TreeSet<>();
    for (String module : List.of("planner-core", "tui")) {
      Path sources = ROOT.resolve(module).resolve("src/main/java");
      for (Path file : filesUnder(module + "/src/main/java", ".java")) {
        packages.add(sources.relativize(file.getParent()).toString().replaceAll("[/\\\\]", "."));
      }
    }
    assertThat(packages).hasSizeGreaterThan(10);
    assertThat(firstCells(text(DEVELOPERS)).stream().filter(cell -> cell.startsWith("kitstow")))
        .containsExactlyInAnyOrderElementsOf(packages);
  }

  @Test
  void everyScenarioFileIsNamedOrItsFolderIs() {
    List<String> missing = new ArrayList<>();
    String named = text(README) + text(DEVELOPERS);
    for (Path file : filesUnder("scenarios", "")) {
      String path = ROOT.relativize(file).toString().replace('\\', '/');
      String folder = path.substring(0, path.lastIndexOf('/'));
      boolean mentioned =
          named.contains(path)
              || (!folder.equals("scenarios") && named.contains("`" + folder + "`"));
      if (!mentioned && !path.endsWith(".gitkeep")) {
        missing.add(path);
      }
    }
    assertThat(missing).isEmpty();
  }

  @Test
  void everyScenarioFileThatIsNamedIsThere() {
    for (String document : List.of(README, DEVELOPERS, EXAMPLES, CHANGES)) {
      for (String path : found(SCENARIO_FILE, text(document))) {
        assertThat(ROOT.resolve(path)).as(document).exists();
      }
    }
  }

  @Test
  void theReadmeBuildsAsTheChecksDo() {
    assertThat(text(README).lines())
        .contains("mvn -q verify")
        .anyMatch(
            line ->
                line.startsWith(
                    "mvn -q -DskipTests package && java -jar tui/target/kitstow.jar plan"));
    assertThat(text(".ci/run").lines()).anyMatch(line -> line.startsWith("mvn -q verify"));
  }

  @Test
  void everyLinkLeadsSomewhere() {
    int links = 0;
    for (String document : List.of(README, DEVELOPERS, EXAMPLES, CHANGES)) {
      Path folder = ROOT.resolve(document).getParent();
      Matcher link = LINK.matcher(text(document));
      while (link.find()) {
        if (!link.group(1).startsWith("http")) {
          assertThat(folder.resolve(link.group(1))).as(document).exists();
          links++;
        }
      }
    }
    assertThat(links).isGreaterThan(4);
  }

  @ParameterizedTest
  @ValueSource(strings = {README, DEVELOPERS, EXAMPLES, CHANGES})
  void documentsSpeakOfTheProgramOnly(String document) {
    assertThat(text(document).toLowerCase(Locale.ROOT))
        .doesNotContain("shared/", "issue #", "todo", "fixme");
  }

  private static Set<String> sourceKeys(String text) {
    Set<String> keys = new TreeSet<>();
    for (String brackets : found(BRACKETS, text)) {
      keys.addAll(found(SOURCE_KEY, brackets));
    }
    return keys;
  }

  private static Set<String> found(Pattern pattern, String text) {
    Set<String> all = new TreeSet<>();
    Matcher matcher = pattern.matcher(text);
    while (matcher.find()) {
      all.add(matcher.group());
    }
    return all;
  }

  /** What stands in the first cells of all table rows, a list in one cell taken apart. */
  private static Set<String> firstCells(String text) {
    Set<String> cells = new TreeSet<>();
    text.lines()
        .filter(line -> line.startsWith("| "))
        .map(line -> line.substring(2, line.indexOf(" |", 2)))
        .forEach(cell -> cells.addAll(List.of(cell.replace("`", "").split(", ", -1))));
    return cells;
  }

  private static List<Path> filesUnder(String folder, String ending) {
    try (Stream<Path> paths = Files.walk(ROOT.resolve(folder))) {
      return paths
          .filter(Files::isRegularFile)
          .filter(path -> path.toString().endsWith(ending))
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  private static String text(String path) {
    return read(ROOT.resolve(path));
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new AssertionError(file.toString(), e);
    }
  }
}
